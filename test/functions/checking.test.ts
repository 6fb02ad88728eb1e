import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check, checkCount } from "../../src/functions/checking";
import { rulebook } from "../../src/rules/rulebook";
import { RUNS } from "../calculation/arbitrary";
import { answerOf, badInput, down, inCell, notHeld, serial } from "./sheet";

const HEADINGS = ["Severity", "What", "Day", "Dollars", "About", "What to do", "Source"];

/** The arguments of ISSUES in order, and a client of whom nothing is to be said. */
const PLAIN = {
  ...{ taxYear: 2025, totalTax: 20000, payments: 15000, paidWithRequest: 5000, asOf: "2026-04-10" },
  ...{ requestedOn: "", confirmedOn: "", rejectedOn: "", filedOn: "", state: "", filerType: "" },
  ...{ method: "", carrier: "", line8Checked: "", priorYearTax: "", firstInstallment: 0 },
  ...{ postponementBegins: "", postponementEnds: "" },
};
type Cells = Partial<Record<keyof typeof PLAIN, unknown>>;
const argumentsOf = (cells: Cells): unknown[] => Object.values({ ...PLAIN, ...cells });

const table = (cells: Cells): unknown[][] =>
  check(...(argumentsOf(cells) as Parameters<typeof check>));
const rowsOf = (cells: Cells): unknown[][] => table(cells).slice(1);
const count = (cells: Cells, counted: unknown = ""): unknown =>
  inCell(checkCount, ...argumentsOf(cells), counted);

/** Findings by their word in the rules. */
const wordOf = new Map(rulebook.requestIssues.rows.map((row) => [row.what, row.check as string]));
const found = (cells: Cells): unknown[] =>
  rowsOf(cells).map((row) => (row[0] === "none" ? "none" : wordOf.get(String(row[1]))));

/** Rejected three days before the due date: to be sent again by 2026-04-17. */
const SENT_BACK: Cells = { requestedOn: "2026-04-11", rejectedOn: "2026-04-12" };

describe("ISSUES", () => {
  it("says so where nothing is found", () => {
    expect(table({})).toEqual([HEADINGS, ["none", "Nothing found", "", "", "", "", ""]]);
    expect(rowsOf({ filedOn: "2026-04-10", totalTax: "" })[0]?.[0]).toBe("none");
  });

  // 26 CFR 301.6651-1(c)(3): 18,000 of 20,000; 26 U.S.C. 6601(a).
  it("tells the gravity, the finding, its day and dollars, the remedy and the law", () => {
    expect(table({ paidWithRequest: 1000 })).toEqual([
      HEADINGS,
      [
        ...["risk", "Less than 90% of the estimate will be paid by the due date"],
        ...[serial("2026-04-15"), 2000, "", expect.stringMatching(/^Pay the shortfall/)],
        expect.stringContaining("301.6651-1(c)(3)"),
      ],
      [
        ...["reminder", "Tax will be unpaid after the last day to pay, and bears interest from it"],
        ...[serial("2026-04-15"), 4000, "", expect.stringMatching(/^Pay more/)],
        expect.stringContaining("6601(a)"),
      ],
    ]);
  });

  it("takes blank payments and a blank payment for nothing", () => {
    const unpaid = (cells: Cells): unknown =>
      rowsOf(cells).find((row) => row[0] === "reminder")?.[3];
    expect(unpaid({ payments: "" })).toBe(15000);
    expect(unpaid({ paidWithRequest: "" })).toBe(5000);
    expect(unpaid({ payments: "", paidWithRequest: "" })).toBe(20000);
  });

  it("names the state, the filer or the way it is about", () => {
    const about = (cells: Cells): unknown => rowsOf(cells)[0]?.[4];
    expect(about({ state: "NY" })).toMatch(/^New York: /);
    expect(about({ line8Checked: "yes" })).toBe("resident");
    expect(about({ taxYear: "2025-06-30", asOf: "2025-10-01", method: "e-file" })).toBe("e-file");
  });

  it.each([
    ["a blank estimate", { totalTax: "" }, ["estimate blank"]],
    ["blank payments", { payments: "", paidWithRequest: 20000 }, ["none"]],
    ["a blank payment", { paidWithRequest: "", payments: 20000 }, ["none"]],
    ["a request asked late", { requestedOn: "2026-04-16", asOf: "2026-04-17" }, ["requested late"]],
    ["a request without proof", { requestedOn: "2026-04-09" }, ["no proof"]],
    ["proof", { requestedOn: "2026-04-09", confirmedOn: "2026-04-09" }, ["none"]],
    [
      "a rejection",
      { requestedOn: "2026-04-09", rejectedOn: "2026-04-10" },
      ["perfection period open"],
    ],
    [
      "a rejection, the last day to send again",
      { ...SENT_BACK, asOf: "2026-04-17" },
      ["perfection period open"],
    ],
    ["a rejection, the day after", { ...SENT_BACK, asOf: "2026-04-18" }, ["perfection period over"]],
    [
      "a request sent again in time",
      { ...SENT_BACK, confirmedOn: "2026-04-17", asOf: "2026-05-01" },
      ["none"],
    ],
    [
      "a request sent again too late",
      { ...SENT_BACK, confirmedOn: "2026-04-18", asOf: "2026-05-01" },
      ["perfection period over"],
    ],
    ["a state", { state: "NY" }, ["state asks for its own request", "state rule unverified"]],
    [
      "a filer and line 8",
      { filerType: "out of country", line8Checked: "no" },
      ["line 8 not checked"],
    ],
    ["line 8", { line8Checked: "x" }, ["line 8 checked"]],
    [
      "a zero for line 8, which is a blank",
      { filerType: "out of country", line8Checked: 0 },
      ["none"],
    ],
    [
      "FALSE for line 8",
      { filerType: "out of country", line8Checked: false },
      ["line 8 not checked"],
    ],
    [
      "a way",
      { taxYear: "2025-06-30", asOf: "2025-10-01", method: " E-File " },
      ["fiscal year not on paper"],
    ],
    [
      "a way without money",
      { paidWithRequest: 0, payments: 20000, method: "electronic payment" },
      ["no electronic payment"],
    ],
    ["a carrier", { carrier: "yes" }, ["carrier to a P.O. box"]],
    [
      "a service",
      { carrier: "UPS Ground", paidWithRequest: 0, payments: 20000 },
      ["carrier not designated"],
    ],
    [
      "a listed service",
      { carrier: "UPS Next Day Air", paidWithRequest: 0, payments: 20000 },
      ["none"],
    ],
    ["the postal service, said", { carrier: "no" }, ["none"]],
    ["a written 0 for the carrier", { carrier: " 0 " }, ["none"]],
    ["a 0 for the carrier, which is a blank", { carrier: 0 }, ["none"]],
    ["a written 1 for the carrier", { carrier: " 1 " }, ["carrier to a P.O. box"]],
    ["a 1 for the carrier", { carrier: 1 }, ["carrier to a P.O. box"]],
    [
      "a number that is no yes or no for the carrier",
      { carrier: "10" },
      ["carrier to a P.O. box", "carrier not designated"],
    ],
    ["a state without a return", { state: "NH" }, ["none"]],
    [
      "a state before its rule begins",
      { taxYear: 2023, state: "NH", asOf: "2024-04-10" },
      ["state rule unverified"],
    ],
    [
      "a tax last year",
      { totalTax: 0, payments: 0, paidWithRequest: 0, priorYearTax: 900 },
      ["zero estimate after tax last year"],
    ],
    ["no word of the first estimate", { firstInstallment: "" }, ["first installment due"]],
    [
      "postponement",
      { postponementBegins: "2026-01-22", postponementEnds: "2026-06-08" },
      ["postponement moves dates"],
    ],
  ])("reads %s", (_what, cells, issues) => {
    expect(found(cells)).toEqual(issues);
  });

  it.each([
    [{ method: "fax" }, badInput('route: "fax" is none of electronic payment, e-file, paper')],
    [{ method: 7 }, badInput("route: 7 is none of electronic payment, e-file, paper")],
    [
      { line8Checked: "maybe" },
      badInput('outOfCountry: "maybe" is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0'),
    ],
    [{ totalTax: "x" }, badInput('totalTax: "x" is not an amount in dollars')],
    [{ payments: -1 }, badInput("payments: -1 is negative; give dollars, zero or more")],
    [{ priorYearTax: "?" }, badInput('priorTax: "?" is not an amount in dollars')],
    [
      { confirmedOn: "2026-04-10" },
      badInput(
        "askedOn: is empty while confirmedOn is 2026-04-10; give the day the request was made"
      ),
    ],
    [{ asOf: "" }, badInput("asOf: is empty; give a worksheet date, or text such as 2026-04-15")],
    [
      { taxYear: 2021, requestedOn: "2022-04-14", rejectedOn: "2022-04-15", asOf: "2022-04-19" },
      notHeld(
        "Days to send a rejected request again: no figure for 2022-04-18; held only from 2023-01-01 on (rules/reject-window.json)"
      ),
    ],
    [{ state: { code: "#N/A" } }, { code: "#N/A" }],
    [{ totalTax: down(1, 2) }, badInput("totalTax: is a range of 2 cells; give one cell")],
  ])("refuses %j", (cells, refusal) => {
    expect(answerOf(() => table(cells))).toEqual(refusal);
  });
});

/** A client whose request may have anything about it. */
const clients: fc.Arbitrary<Cells> = fc.record(
  {
    totalTax: fc.constantFrom<unknown>("", 0, 20000),
    payments: fc.constantFrom<unknown>("", 0, 17999.99, 25000),
    paidWithRequest: fc.constantFrom<unknown>("", 0, 0.01, 5000),
    asOf: fc.constantFrom("2026-04-10", "2026-04-16", "2026-04-21", "2026-10-16"),
    requestedOn: fc.constantFrom("2026-04-09", "2026-04-16"),
    filedOn: fc.constantFrom("", "2026-04-15"),
    state: fc.constantFrom("NY", "OH", "CA", "TX", "KS"),
    filerType: fc.constantFrom("", "out of country"),
    method: fc.constantFrom("", "e-file", "paper", "electronic payment"),
    carrier: fc.constantFrom("", "yes", "UPS Ground"),
    line8Checked: fc.constantFrom("", "yes", "no"),
    priorYearTax: fc.constantFrom<unknown>("", 0, 900),
    firstInstallment: fc.constantFrom<unknown>("", 0, 2500),
  },
  { requiredKeys: [] }
);

describe("ISSUECOUNT", () => {
  it("counts what is wrong and risky, or that wrong alone, or reminders too", () => {
    const cells = { paidWithRequest: 1000, carrier: "UPS Ground" };
    expect(found(cells)).toEqual([
      ...["carrier to a P.O. box", "carrier not designated"],
      ...["below 90% test", "interest"],
    ]);
    expect(count(cells)).toBe(3);
    expect(count(cells, "risk")).toBe(3);
    expect(count(cells, "problem")).toBe(2);
    expect(count(cells, " Reminder ")).toBe(4);
    expect(count({})).toBe(0);
    expect(count({ filedOn: "2026-04-10", paidWithRequest: 0 }, "reminder")).toBe(0);
  });

  it("agrees with the rows of ISSUES by gravity", () => {
    fc.assert(
      fc.property(clients, (cells) => {
        const graver = {
          wrong: ["problem"],
          risk: ["problem", "risk"],
          reminder: ["problem", "risk", "reminder"],
        };
        const gravities = rowsOf(cells).map((row) => String(row[0]));
        for (const [counted, those] of Object.entries(graver))
          expect(count(cells, counted)).toBe(
            gravities.filter((severity) => those.includes(severity)).length
          );
        expect(count(cells)).toBe(count(cells, "risk"));
      }),
      RUNS
    );
  });

  it("refuses another word", () => {
    expect(count({}, "all")).toEqual(badInput('counted: "all" is none of wrong, risk, reminder'));
  });

  it("answers a client list, each row for itself", () => {
    const paidWithRequest = down(1000, 5000, "x", "");
    const totalTax = down(20000, 20000, 20000, "");
    expect(checkCount([[2025]], totalTax, [[15000]], paidWithRequest, [["2026-04-10"]])).toEqual([
      [1],
      [0],
      [badInput('paying: "x" is not an amount in dollars')],
      [""],
    ]);
  });
});
