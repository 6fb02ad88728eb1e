import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STATES } from "../../src/calculation/state";
import { carrier, mailTo, method, routeLines } from "../../src/functions/filing";
import published from "../fixtures/published/mailing-addresses.json";
import { RUNS } from "../calculation/arbitrary";
import { answerOf, badInput, down, inCell, notHeld, serial } from "./sheet";

const RELIEF = ["2026-01-22", "2026-06-08"];

// Form 4868 (2025), how to ask; 26 CFR 1.6081-4(b): by the due date of the return.
describe("METHOD", () => {
  it.each([
    ["a payment marked for it", [2025, 1500, "2026-04-10"], "electronic payment"],
    ["a cent of it", [2025, 0.01, "2026-04-15"], "electronic payment"],
    ["no payment", [2025, 0, "2026-04-15"], "e-file"],
    ["the day after the last", [2025, 1500, "2026-04-16"], "too late"],
    ["a fiscal year", ["2025-06-30", 1500, "2025-10-15"], "paper"],
    ["a fiscal year on the form of the year it begins", ["2026-06-30", 0, "2026-10-01"], "paper"],
    [
      "a fiscal year after a rejection, whose e-file is closed all the same",
      ["2022-06-30", 0, "2022-10-01", "2022-09-20"],
      "paper",
    ],
    ["a fiscal year, too late", ["2025-06-30", 1500, "2025-10-16"], "too late"],
    ["the fifth day after a rejection", [2025, 1500, "2026-04-19", "2026-04-14"], "e-file"],
    ["the sixth", [2025, 1500, "2026-04-20", "2026-04-14"], "too late"],
    ["the fifth day after the due date", [2025, 1500, "2026-04-20", "2026-04-16"], "e-file"],
    ["the sixth after it", [2025, 1500, "2026-04-21", "2026-04-16"], "too late"],
    ["a rejection long before, on the due date", [2025, 0, "2026-04-15", "2026-04-01"], "e-file"],
    ["a rejection long before, a day on", [2025, 0, "2026-04-16", "2026-04-01"], "too late"],
    ["a rejection on the year's first day", [2025, 0, "2026-04-15", "2026-01-01"], "e-file"],
    ["the first tax year held", [2016, 0, "2017-04-18"], "e-file"],
    ["the last tax year held", [2025, 0, "2026-04-15"], "e-file"],
    ["a rejection still to come", [2025, 0, "2026-04-16", "2026-04-17"], "too late"],
    ["a state with a holiday", [2023, 0, "2024-04-17", "", "ME"], "e-file"],
    ["a state without it", [2023, 0, "2024-04-17", "", "NY"], "too late"],
    ["out of country", [2025, 0, "2026-06-15", "", "", "out of country"], "e-file"],
    ["abroad, too late", [2025, 0, "2026-06-16", "", "", "out of country"], "too late"],
    ["postponement", [2025, 0, "2026-06-08", "", "", "", ...RELIEF], "e-file"],
    ["relief, too late", [2025, 0, "2026-06-09", "", "", "", ...RELIEF], "too late"],
  ])("knows %s", (_what, values, way) => {
    expect(inCell(method, ...values)).toBe(way);
  });

  it.each([
    [[2025, null, "2026-04-10"], badInput("paying: is empty; give dollars, 0 if there is nothing")],
    [
      [2025, 0, null],
      badInput("asOf: is empty; give a worksheet date, or text such as 2026-04-15"),
    ],
    [
      [2021, 0, "2022-04-19", "2022-04-15"],
      notHeld(
        "Days to send a rejected request again: no figure for 2022-04-18; held only from 2023-01-01 on (rules/reject-window.json)"
      ),
    ],
    [[2025, { code: "#DIV/0!" }, "2026-04-10"], { code: "#DIV/0!" }],
    [
      [2012, 0, "2013-04-10"],
      notHeld(
        "Ways to make the request: no figure for 2012-12-31; held only from 2016-12-31 on (rules/request-routes.json)"
      ),
    ],
    [
      [2015, 1500, "2016-04-10"],
      notHeld(
        "Ways to make the request: no figure for 2015-12-31; held only from 2016-12-31 on (rules/request-routes.json)"
      ),
    ],
    [
      [2027, 1500, "2028-04-10"],
      notHeld(
        "Ways to make the request: no figure for 2027-12-31; known only through 2025-12-31 (rules/request-routes.json)"
      ),
    ],
    [
      [2025, 0, "2026-04-10", "2025-12-31"],
      badInput(
        "rejectedOn: 2025-12-31 is not after the tax year ends, 2025-12-31; check the year, and that the workbook does not count dates from 1904"
      ),
    ],
    [
      ["2025-06-30", 0, "2025-10-10", "2025-06-30"],
      badInput(
        "rejectedOn: 2025-06-30 is not after the tax year ends, 2025-06-30; check the year, and that the workbook does not count dates from 1904"
      ),
    ],
  ])("refuses %j, and METHODLINES with it", (values, refusal) => {
    expect(inCell(method, ...values)).toEqual(refusal);
    const [taxYear, paidWithRequest, asOf, rejectedOn] = values;
    expect(answerOf(() => routeLines(taxYear, paidWithRequest, asOf, rejectedOn))).toEqual(refusal);
  });

  it("answers a client list, a bad row with its own error", () => {
    expect(method(down(2025, 2025, 0), down(0, -1, 0), [["2026-04-10"]])).toEqual([
      ["e-file"],
      [badInput("paying: -1 is negative; give dollars, zero or more")],
      [""],
    ]);
  });
});

describe("METHODLINES", () => {
  it("is a table of one width, headings first, with the law behind each way", () => {
    const table = routeLines(2025, 0, "2026-04-10");
    expect(table[0]).toEqual(["Way", "Open", "Last day", "Needs", "Proof", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["e-file", "yes", serial("2026-04-15")],
      ["paper", "yes", serial("2026-04-15")],
      ["electronic payment", "no: nothing is paid", serial("2026-04-15")],
    ]);
    for (const row of table.slice(1)) {
      expect(row).toHaveLength(6);
      expect(row[5]).toMatch(/^Form 4868/);
    }
  });

  it("shows the days to send again beside e-file alone", () => {
    const table = routeLines(2025, 1500, "2026-04-17", "2026-04-14");
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["e-file", "yes", serial("2026-04-19")],
      ["electronic payment", "no: the last day has passed", serial("2026-04-15")],
      ["paper", "no: the last day has passed", serial("2026-04-15")],
    ]);
  });

  it("begins with the way that METHOD names", () => {
    const days = ["2026-04-10", "2026-04-15", "2026-04-16", "2026-04-20", "2026-04-21"];
    for (const asOf of days)
      for (const paidWithRequest of [0, 1500])
        for (const rejectedOn of ["", "2026-04-09", "2026-04-11", "2026-04-15"]) {
          const [, first = []] = routeLines(2025, paidWithRequest, asOf, rejectedOn);
          const best = first[1] === "yes" ? first[0] : "too late";
          expect(inCell(method, 2025, paidWithRequest, asOf, rejectedOn)).toBe(best);
        }
  });

  it("refuses a column", () => {
    expect(answerOf(() => routeLines(down(2025, 2024), 0, "2026-04-10"))).toEqual(
      badInput("taxYear: is a range of 2 cells; give one cell")
    );
  });
});

// Form 4868, chart of addresses: test/fixtures/published/mailing-addresses.json.
describe("MAILTO", () => {
  it.each(published.cases)("$case ($source.mark)", ({ inputs, expected, source }) => {
    const mark = source.mark === "memory" ? " (from memory: check)" : "";
    for (const residence of inputs.residences)
      expect(inCell(mailTo, inputs.taxYear, residence, inputs.paidWithRequest)).toBe(
        expected.join(", ") + mark
      );
  });

  const CHARLOTTE = "Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302";
  const AUSTIN =
    "Department of the Treasury, Internal Revenue Service Center, Austin, TX 73301-0045";
  const AUSTIN_ABROAD =
    "Department of the Treasury, Internal Revenue Service Center, Austin, TX 73301-0215 USA";
  const KANSAS_CITY =
    "Internal Revenue Submission Processing Center, 333 W. Pershing, Kansas City, MO 64108";

  it.each([
    ["dollars", [2025, "TX", 1500], CHARLOTTE],
    ["a cent", [2025, "TX", 0.01], CHARLOTTE],
    ["a yes", [2025, "TX", "yes"], CHARLOTTE],
    ["an x", [2025, "tx", " X "], CHARLOTTE],
    ["TRUE", [2025, "TX", true], CHARLOTTE],
    ["written dollars", [2025, "TX", "$1,500.00"], CHARLOTTE],
    ["zero", [2025, "TX", 0], AUSTIN],
    ["written zero", [2025, "TX", "$0.00"], AUSTIN],
    ["a no", [2025, "TX", "No"], AUSTIN],
    ["FALSE", [2025, "TX", false], AUSTIN],
    ["a blank", [2025, "TX", ""], AUSTIN],
    ["the postal service, said", [2025, "TX", 0, "no"], AUSTIN],
    ["the postal service, FALSE", [2025, "TX", 0, false], AUSTIN],
    ["the postal service, a written 0", [2025, "TX", 0, " 0 "], AUSTIN],
    ["the postal service, 0", [2025, "TX", 0, 0], AUSTIN],
    ["a carrier not yet chosen", [2025, "NY", 1500, "yes"], KANSAS_CITY],
    ["a carrier not yet chosen, a written 1", [2025, "NY", 1500, " 1 "], KANSAS_CITY],
    ["a carrier not yet chosen, 1", [2025, "NY", 1500, 1], KANSAS_CITY],
    ["a written 1 for the payment", [2025, "TX", "1"], CHARLOTTE],
    ["a written 0 for the payment", [2025, "TX", "0"], AUSTIN],
    ["a designated service", [2025, "NY", 1500, "UPS Next Day Air"], KANSAS_CITY],
    ["abroad, whatever the state", [2025, "TX", 0, "", "out of country"], AUSTIN_ABROAD],
    ["abroad without a state", [2025, "", 0, "", "out of country"], AUSTIN_ABROAD],
    ["a nonresident", [2025, "TX", 0, "", "nonresident"], AUSTIN_ABROAD],
    ["a nonresident named as a state", [2025, "Nonresident", 0], AUSTIN_ABROAD],
    ["a fiscal year", ["2026-06-30", "TX", 1500], CHARLOTTE],
  ])("knows %s", (_what, values, address) => {
    expect(inCell(mailTo, ...values)).toBe(address);
  });

  it("tells an estate from other filers, whoever is said to file", () => {
    const estate =
      "Department of the Treasury, Internal Revenue Service Center, Kansas City, MO 64999-0045 USA";
    expect(inCell(mailTo, 2025, "Estate", 0)).toBe(estate);
    expect(inCell(mailTo, 2025, "estate", 0, "", "nonresident")).toBe(estate);
  });

  it.each([
    [
      [2025, "", 0],
      badInput("state: is empty; give a postal code, foreign, estate or nonresident"),
    ],
    [
      [2025, "ZZ", 0, "", "out of country"],
      badInput('state: "ZZ" is no state; give a postal code such as ME, or foreign'),
    ],
    [
      [2025, "NY", 0, "UPS Ground"],
      badInput(
        'carrier: "UPS Ground" is no designated private delivery service; a mailing by it would not count as filed in time'
      ),
    ],
    [
      [2025, "NY", 0, "10"],
      badInput(
        'carrier: "10" is no designated private delivery service; a mailing by it would not count as filed in time'
      ),
    ],
    [
      [2025, "NY", 0, 5],
      badInput("carrier: 5 is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0"),
    ],
    [[2025, "NY", "some"], badInput('paying: "some" is not an amount in dollars')],
    [[2025, "NY", -5], badInput("paying: -5 is negative; give dollars, zero or more")],
    [
      [2025, "NY", 0, "", "expat"],
      badInput('filer: "expat" is none of resident, abroad, nonresident'),
    ],
    [
      [2021, "NY", 0],
      notHeld(
        "Where a paper request goes (Form 4868): no figure for 2021-12-31; held only from 2022-12-31 on (rules/mailing-addresses.json)"
      ),
    ],
    [
      [2026, "NY", 0],
      notHeld(
        "Where a paper request goes (Form 4868): no figure for 2026-12-31; known only through 2025-12-31 (rules/mailing-addresses.json)"
      ),
    ],
    [
      [2025, "MP", 0],
      notHeld(
        "Where a paper request goes (Form 4868): the chart of 2025 names no address for MP (rules/mailing-addresses.json)"
      ),
    ],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(mailTo, ...values)).toEqual(refusal);
  });

  it("spills the lines on demand, the law beside the first", () => {
    const lines = mailTo([[2025]], [["TX"]], [[1500]], [[""]], [[""]], [["yes"]]);
    expect(lines).toEqual([
      ["Line", "Source"],
      ["Internal Revenue Service", expect.stringMatching(/^Form 4868 \(2025\).*chart/)],
      ["P.O. Box 1302", ""],
      ["Charlotte, NC 28201-1302", ""],
    ]);
    const remembered = mailTo([[2025]], [["TX"]], [[0]], [["yes"]], [[""]], [["yes"]]);
    expect(remembered[1]?.[1]).toMatch(/\(from memory: check\)$/);
  });

  it("spills the lines of one client only, and refuses what is neither yes nor no", () => {
    expect(
      answerOf(() => mailTo(down(2025, 2025), [["TX"]], [[0]], [[""]], [[""]], [["yes"]]))
    ).toEqual(badInput("taxYear: is a range of 2 cells; give one cell"));
    expect(inCell(mailTo, 2025, "TX", 0, "", "", "maybe")).toEqual(
      badInput('asLines: "maybe" is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0')
    );
  });

  it("answers a client list, a bad row with its own error", () => {
    expect(mailTo(down(2025, 2025, 0), down("TX", "ZZ", ""), down(1500, 0, 0))).toEqual([
      [CHARLOTTE],
      [badInput('state: "ZZ" is no state; give a postal code such as ME, or foreign')],
      [""],
    ]);
  });

  it("by carrier is no post office box and does not depend on payment, whoever asks", () => {
    const states = fc.constantFrom(...STATES, "estate", "nonresident");
    const filers = fc.constantFrom("resident", "out of country", "nonresident");
    fc.assert(
      fc.property(
        fc.integer({ min: 2021, max: 2026 }),
        states,
        filers,
        (year, state, filerType) => {
          const found = [0, 1500].map((paidWithRequest) =>
            inCell(mailTo, year, state, paidWithRequest, "yes", filerType)
          );
          expect(found[0]).toEqual(found[1]);
          if (typeof found[0] === "string")
            expect(found[0]).toMatch(
              /^Internal Revenue Submission Processing Center, \d.*, [A-Z]{2} \d{5}( \(from memory: check\))?$/
            );
          else
            expect(found[0]).toMatchObject({ code: "#N/A", message: expect.stringMatching(/./) });
        }
      ),
      RUNS
    );
  });
});

// Notice 2016-30.
describe("ISDESIGNATED", () => {
  it.each([
    ["UPS 2nd Day Air", true],
    ["ups 2nd day air a.m.", true],
    ["FedEx Priority Overnight", true],
    ["DHL Express 9:00", true],
    ["UPS Ground", false],
    ["yes", false],
    [5, false],
  ])("of %j is %s", (service, designated) => {
    expect(inCell(carrier, service)).toBe(designated);
  });

  it("refuses an empty cell and passes an error through", () => {
    const refusal = badInput("service: is empty; give the carrier and its service level");
    for (const blank of ["", " ", null, 0]) expect(inCell(carrier, blank)).toEqual(refusal);
    expect(inCell(carrier, { code: "#REF!" })).toMatchObject({ code: "#VALUE!" });
    expect(carrier(down("UPS Ground", "", "UPS Next Day Air"))).toEqual([[false], [""], [true]]);
  });
});
