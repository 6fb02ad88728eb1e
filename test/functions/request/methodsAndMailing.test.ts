import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isDesignated, mailTo } from "../../../src/functions/request/mailing";
import { method, methodLines } from "../../../src/functions/request/methods";
import { STATES } from "../../../src/calculation/state";
import published from "../../fixtures/published/mailing-addresses.json";
import { RUNS } from "../../calculation/arbitrary";
import {
  afterTable,
  answerOf,
  badInput,
  beforeTable,
  down,
  inCell,
  notInTable,
  serial,
  tableTitle,
} from "../sheet";

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
    // IR-2025-41, as reported: the postponement extends paper requests only.
    ["a postponement", [2025, 0, "2026-06-08", "", "", "", ...RELIEF], "paper"],
    ["a postponement, too late", [2025, 0, "2026-06-09", "", "", "", ...RELIEF], "too late"],
  ])("knows %s", (_what, values, way) => {
    expect(inCell(method, ...values)).toBe(way);
  });

  it.each([
    [
      [2025, null, "2026-04-10"],
      badInput("paidWithRequest: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [[2025, 0, null], badInput("asOf: The cell is blank. Enter a date such as 4/15/2026.")],
    [
      [2021, 0, "2022-04-19", "2022-04-15"],
      beforeTable("perfection-period", "4/18/2022", "1/1/2023"),
    ],
    [[2025, { code: "#DIV/0!" }, "2026-04-10"], { code: "#DIV/0!" }],
    [[2012, 0, "2013-04-10"], beforeTable("request-methods", "12/31/2012", "12/31/2016")],
    [[2015, 1500, "2016-04-10"], beforeTable("request-methods", "12/31/2015", "12/31/2016")],
    [[2027, 1500, "2028-04-10"], afterTable("request-methods", "12/31/2027", "12/31/2025")],
    [
      [2025, 0, "2026-04-10", "2025-12-31"],
      badInput(
        "rejectedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      ),
    ],
    [
      ["2025-06-30", 0, "2025-10-10", "2025-06-30"],
      badInput(
        "rejectedOn: 6/30/2025 is not after the tax year ends on 6/30/2025. Check the year, and that the workbook does not use the 1904 date system."
      ),
    ],
  ])("refuses %j, and METHODLINES with it", (values, refusal) => {
    expect(inCell(method, ...values)).toEqual(refusal);
    const [taxYear, paidWithRequest, asOf, rejectedOn] = values;
    expect(answerOf(() => methodLines(taxYear, paidWithRequest, asOf, rejectedOn))).toEqual(
      refusal
    );
  });

  it("answers a client list, a bad row with its own error", () => {
    expect(method(down(2025, 2025, 0), down(0, -1, 0), [["2026-04-10"]])).toEqual([
      ["e-file"],
      [badInput("paidWithRequest: -1 is negative. Enter zero or a positive dollar amount.")],
      [""],
    ]);
  });
});

describe("METHODLINES", () => {
  it("is a table of one width, headings first, with the law behind each way", () => {
    const table = methodLines(2025, 0, "2026-04-10");
    expect(table[0]).toEqual(["Method", "Available", "Deadline", "How", "Proof to keep", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["e-file", "yes", serial("2026-04-15")],
      ["paper", "yes", serial("2026-04-15")],
      ["electronic payment", "no: no payment with the request", serial("2026-04-15")],
    ]);
    for (const row of table.slice(1)) {
      expect(row).toHaveLength(6);
      expect(row[5]).toMatch(/^Form 4868/);
    }
  });

  it("shows the perfection period for e-file alone", () => {
    const table = methodLines(2025, 1500, "2026-04-17", "2026-04-14");
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["e-file", "yes", serial("2026-04-19")],
      ["electronic payment", "no: the deadline has passed", serial("2026-04-15")],
      ["paper", "no: the deadline has passed", serial("2026-04-15")],
    ]);
  });

  it("begins with the method that METHOD returns", () => {
    const days = ["2026-04-10", "2026-04-15", "2026-04-16", "2026-04-20", "2026-04-21"];
    for (const asOf of days)
      for (const paidWithRequest of [0, 1500])
        for (const rejectedOn of ["", "2026-04-09", "2026-04-11", "2026-04-15"]) {
          const [, first = []] = methodLines(2025, paidWithRequest, asOf, rejectedOn);
          const best = first[1] === "yes" ? first[0] : "too late";
          expect(inCell(method, 2025, paidWithRequest, asOf, rejectedOn)).toBe(best);
        }
  });

  it("refuses a column", () => {
    expect(answerOf(() => methodLines(down(2025, 2024), 0, "2026-04-10"))).toEqual(
      badInput("taxYear: The range has 2 cells. Select one cell.")
    );
  });
});

// Form 4868, chart of addresses: test/fixtures/published/mailing-addresses.json.
describe("MAILTO", () => {
  const UNVERIFIED = notInTable(
    `${tableTitle("mailing-addresses")}: The address is not shown because it is unverified. Check the form's instructions, or set allowUnverified to yes.`
  );

  it.each(published.cases)("$case ($source.mark)", ({ inputs, expected, source }) => {
    for (const residence of inputs.residences) {
      const values = [inputs.taxYear, residence, inputs.paidWithRequest, "", "", ""];
      const address = expected.join(", ");
      expect(inCell(mailTo, ...values, "yes")).toBe(address);
      for (const no of ["", "no"])
        expect(inCell(mailTo, ...values, no)).toEqual(
          source.mark === "memory" ? UNVERIFIED : address
        );
    }
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
    // Form 4868 (2025), How To Pay: by check or money order.
    ["a check", [2025, "TX", "check"], CHARLOTTE],
    ["a money order", [2025, "TX", "Money Order"], CHARLOTTE],
    ["a check by U.S. mail", [2025, "TX", "check", "USPS"], CHARLOTTE],
    ["an x", [2025, "tx", " X "], CHARLOTTE],
    ["TRUE", [2025, "TX", true], CHARLOTTE],
    ["written dollars", [2025, "TX", "$1,500.00"], CHARLOTTE],
    ["zero", [2025, "TX", 0], AUSTIN],
    ["written zero", [2025, "TX", "$0.00"], AUSTIN],
    ["a no", [2025, "TX", "No"], AUSTIN],
    ["FALSE", [2025, "TX", false], AUSTIN],
    ["a blank", [2025, "TX", ""], AUSTIN],
    ["U.S. mail, entered as no", [2025, "TX", 0, "no"], AUSTIN],
    ["U.S. mail, FALSE", [2025, "TX", 0, false], AUSTIN],
    ["U.S. mail, a written 0", [2025, "TX", 0, " 0 "], AUSTIN],
    ["U.S. mail, 0", [2025, "TX", 0, 0], AUSTIN],
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
      badInput(
        "state: The cell is blank. Enter a postal code or a name, foreign, estate or nonresident."
      ),
    ],
    [
      [2025, "ZZ", 0, "", "out of country"],
      badInput(
        'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
      ),
    ],
    [
      [2025, "NY", 0, "UPS Ground"],
      badInput(
        'carrier: "UPS Ground" is not a designated private delivery service, so mailing by it would not count as filing on time. Use U.S. mail or a designated service.'
      ),
    ],
    [
      [2025, "NY", 0, "10"],
      badInput(
        'carrier: "10" is not a designated private delivery service, so mailing by it would not count as filing on time. Use U.S. mail or a designated service.'
      ),
    ],
    [
      [2025, "NY", 0, 5],
      badInput("carrier: 5 is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0."),
    ],
    [
      [2025, "NY", "some"],
      badInput(
        'paidWithRequest: "some" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      ),
    ],
    [
      [2025, "NY", -5],
      badInput("paidWithRequest: -5 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      [2025, "NY", 0, "", "expat"],
      badInput(
        'filerType: "expat" is not a filer type. Enter resident, out of country or nonresident, or leave it blank.'
      ),
    ],
    [[2021, "NY", 0], beforeTable("mailing-addresses", "12/31/2021", "12/31/2022")],
    [[2026, "NY", 0], afterTable("mailing-addresses", "12/31/2026", "12/31/2025")],
    [
      [2025, "MP", 0],
      notInTable(
        `${tableTitle("mailing-addresses")}: The chart of 2025 has no address for MP (rules/mailing-addresses.json). Check the form's instructions.`
      ),
    ],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(mailTo, ...values)).toEqual(refusal);
  });

  it("shows the address as lines if asked, with its source beside the first", () => {
    const lines = mailTo([[2025]], [["TX"]], [[1500]], [[""]], [[""]], [["yes"]]);
    expect(lines).toEqual([
      ["Line", "Source"],
      ["Internal Revenue Service", expect.stringMatching(/^Form 4868 \(2025\).*chart/)],
      ["P.O. Box 1302", ""],
      ["Charlotte, NC 28201-1302", ""],
    ]);
    const texas = (allowUnverified: string) =>
      mailTo([[2025]], [["TX"]], [[0]], [["yes"]], [[""]], [["yes"]], [[allowUnverified]]);
    const remembered = texas("yes");
    expect(remembered[1]?.[1]).toMatch(/\(unverified: check the official text\)$/);
    expect(remembered.flat().filter((cell) => /unverified/.test(String(cell)))).toHaveLength(1);
    expect(answerOf(() => texas(""))).toEqual(UNVERIFIED);
  });

  it("takes only yes or no for an unverified address", () => {
    expect(inCell(mailTo, 2025, "TX", 0, "", "", "", "perhaps")).toEqual(
      badInput(
        'allowUnverified: "perhaps" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.'
      )
    );
  });

  it("shows the lines of one client only, and refuses what is not yes or no", () => {
    expect(
      answerOf(() => mailTo(down(2025, 2025), [["TX"]], [[0]], [[""]], [[""]], [["yes"]]))
    ).toEqual(badInput("taxYear: The range has 2 cells. Select one cell."));
    expect(inCell(mailTo, 2025, "TX", 0, "", "", "maybe")).toEqual(
      badInput('asLines: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.')
    );
  });

  it("answers a client list, a bad row with its own error", () => {
    expect(mailTo(down(2025, 2025, 0), down("TX", "ZZ", ""), down(1500, 0, 0))).toEqual([
      [CHARLOTTE],
      [
        badInput(
          'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
        ),
      ],
      [""],
    ]);
  });

  it("for a carrier is not a P.O. box and does not depend on a payment, for every filer", () => {
    const states = fc.constantFrom(...STATES, "estate", "nonresident");
    const filers = fc.constantFrom("resident", "out of country", "nonresident");
    fc.assert(
      fc.property(
        fc.integer({ min: 2021, max: 2026 }),
        states,
        filers,
        (year, state, filerType) => {
          const found = [0, 1500].map((paidWithRequest) =>
            inCell(mailTo, year, state, paidWithRequest, "yes", filerType, "", "yes")
          );
          expect(found[0]).toEqual(found[1]);
          if (typeof found[0] === "string")
            expect(found[0]).toMatch(
              /^Internal Revenue Submission Processing Center, \d.*, [A-Z]{2} \d{5}$/
            );
          else
            expect(found[0]).toMatchObject({
              code: "#N/A",
              message: expect.stringMatching(/./) as string,
            });
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
    expect(inCell(isDesignated, service)).toBe(designated);
  });

  it("refuses a blank cell and a carrier without its service, and passes an error through", () => {
    const refusal = badInput(
      "service: The cell is blank. Enter the carrier and its service level, such as UPS 2nd Day Air."
    );
    for (const blank of ["", " ", null, 0]) expect(inCell(isDesignated, blank)).toEqual(refusal);
    expect(inCell(isDesignated, { code: "#REF!" })).toMatchObject({ code: "#VALUE!" });
    expect(inCell(isDesignated, "FedEx")).toEqual(
      badInput(
        'service: "FedEx" has no service level. Only these are designated: First Overnight, Priority Overnight, Standard Overnight, 2 Day, International Next Flight Out, International Priority, International First, International Economy. Enter one of them.'
      )
    );
    expect(isDesignated(down("UPS Ground", "", "UPS Next Day Air"))).toEqual([
      [false],
      [""],
      [true],
    ]);
  });
});
