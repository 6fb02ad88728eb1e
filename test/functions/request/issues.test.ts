import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { issues, issueCount } from "../../../src/functions/request/issues";
import { rulebook } from "../../../src/rules/rulebook";
import { RUNS } from "../../calculation/arbitrary";
import { answerOf, badInput, beforeTable, down, inCell, serial } from "../sheet";

const HEADINGS = ["Severity", "Issue", "Date", "Amount", "Details", "What to do", "Source"];

/** The arguments of ISSUES in order, of a client without an issue. */
const PLAIN = {
  taxYear: 2025,
  totalTax: 20000,
  payments: 15000,
  paidWithRequest: 5000,
  asOf: "2026-04-10",
  requestedOn: "",
  confirmedOn: "",
  rejectedOn: "",
  filedOn: "",
  state: "",
  filerType: "",
  method: "",
  carrier: "",
  line8Checked: "",
  priorYearTax: "",
  firstInstallment: 0,
  postponementBegins: "",
  postponementEnds: "",
};
type Cells = Partial<Record<keyof typeof PLAIN, unknown>>;
const argumentsOf = (cells: Cells): unknown[] => Object.values({ ...PLAIN, ...cells });

const table = (cells: Cells): unknown[][] =>
  issues(...(argumentsOf(cells) as Parameters<typeof issues>));
const rowsOf = (cells: Cells): unknown[][] => table(cells).slice(1);
const count = (cells: Cells, counted: unknown = ""): unknown =>
  inCell(issueCount, ...argumentsOf(cells), counted);

/** Issues by their key in the rules. */
const wordOf = new Map(rulebook.requestIssues.rows.map((row) => [row.what, row.check as string]));
const found = (cells: Cells): unknown[] =>
  rowsOf(cells).map((row) => (row[0] === "none" ? "none" : wordOf.get(String(row[1]))));

/** The text of an issue in the rules. */
function textOf(check: string) {
  const row = rulebook.requestIssues.rows.find((rule) => rule.check === check);
  if (!row) throw new RangeError(`${check} is not an issue of the rules`);
  return row;
}

/** Rejected three days before the due date: to be resent by 2026-04-17. */
const SENT_BACK: Cells = { requestedOn: "2026-04-11", rejectedOn: "2026-04-12" };

describe("ISSUES", () => {
  it("says so where there is no issue", () => {
    expect(table({})).toEqual([HEADINGS, ["none", "No issues found", "", "", "", "", ""]]);
    expect(rowsOf({ filedOn: "2026-04-10", totalTax: "" })[0]?.[0]).toBe("none");
  });

  // 26 CFR 301.6651-1(c)(3): 18,000 of 20,000; 26 U.S.C. 6601(a).
  it("shows the severity, the issue, its date and amount, what to do and the law", () => {
    expect(table({ paidWithRequest: 1000 })).toEqual([
      HEADINGS,
      [
        "risk",
        textOf("below 90% test").what,
        serial("2026-04-15"),
        2000,
        "",
        textOf("below 90% test").remedy,
        expect.stringContaining("301.6651-1(c)(3)"),
      ],
      [
        "reminder",
        textOf("interest accrues").what,
        serial("2026-04-15"),
        4000,
        "",
        textOf("interest accrues").remedy,
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

  it("names the state, the filer type or the method in the details", () => {
    const about = (cells: Cells): unknown => rowsOf(cells)[0]?.[4];
    expect(about({ state: "NY" })).toMatch(/^New York: /);
    expect(about({ line8Checked: "yes" })).toBe("resident");
    expect(about({ taxYear: "2025-06-30", asOf: "2025-10-01", method: "e-file" })).toBe("e-file");
  });

  it.each([
    ["a blank estimate", { totalTax: "" }, ["estimate blank"]],
    ["blank payments", { payments: "", paidWithRequest: 20000 }, ["none"]],
    ["a blank payment", { paidWithRequest: "", payments: 20000 }, ["none"]],
    [
      "a request asked late, with its payment",
      { requestedOn: "2026-04-16", asOf: "2026-04-17" },
      ["requested late", "90% test missed", "interest accrues", "relief from penalties"],
    ],
    [
      "a request asked late, the tax paid on time",
      { requestedOn: "2026-04-16", asOf: "2026-04-17", payments: 20000, paidWithRequest: 0 },
      ["requested late"],
    ],
    ["a request without proof", { requestedOn: "2026-04-09" }, ["no proof"]],
    ["proof", { requestedOn: "2026-04-09", confirmedOn: "2026-04-09" }, ["none"]],
    [
      "a rejection",
      { requestedOn: "2026-04-09", rejectedOn: "2026-04-10" },
      ["perfection period open"],
    ],
    [
      "a rejection, the last day to resend",
      { ...SENT_BACK, asOf: "2026-04-17" },
      ["perfection period open"],
    ],
    [
      "a rejection, the day after",
      { ...SENT_BACK, asOf: "2026-04-18" },
      ["perfection period over"],
    ],
    [
      "a request resent in time",
      { ...SENT_BACK, confirmedOn: "2026-04-17", asOf: "2026-05-01" },
      ["none"],
    ],
    [
      "a request resent too late",
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
      "a method",
      { taxYear: "2025-06-30", asOf: "2025-10-01", method: " E-File " },
      ["fiscal year not on paper"],
    ],
    [
      "a method without money",
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
      "a designated service",
      { carrier: "UPS Next Day Air", paidWithRequest: 0, payments: 20000 },
      ["none"],
    ],
    ["U.S. mail, entered as no", { carrier: "no" }, ["none"]],
    ["a written 0 for the carrier", { carrier: " 0 " }, ["none"]],
    ["a 0 for the carrier, which is a blank", { carrier: 0 }, ["none"]],
    ["a written 1 for the carrier", { carrier: " 1 " }, ["carrier to a P.O. box"]],
    ["a 1 for the carrier", { carrier: 1 }, ["carrier to a P.O. box"]],
    [
      "a number that is not yes or no",
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
    ["no first installment entered", { firstInstallment: "" }, ["first installment due"]],
    [
      "postponement",
      { postponementBegins: "2026-01-22", postponementEnds: "2026-06-08" },
      ["postponement moves dates"],
    ],
  ])("reads %s", (_what, cells, issues) => {
    expect(found(cells)).toEqual(issues);
  });

  it.each([
    [
      { method: "fax" },
      badInput('method: "fax" is not a method. Enter electronic payment, e-file or paper.'),
    ],
    [
      { method: 7 },
      badInput("method: 7 is not a method. Enter electronic payment, e-file or paper."),
    ],
    [
      { line8Checked: "maybe" },
      badInput('line8Checked: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.'),
    ],
    [
      { totalTax: "x" },
      badInput(
        'totalTax: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      ),
    ],
    [
      { payments: -1 },
      badInput("payments: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      { priorYearTax: "?" },
      badInput(
        'priorYearTax: "?" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      ),
    ],
    [
      { confirmedOn: "2026-04-10" },
      badInput(
        "requestedOn: The cell is blank, but confirmedOn is 4/10/2026. Enter the date the request was made."
      ),
    ],
    [{ asOf: "" }, badInput("asOf: The cell is blank. Enter a date such as 4/15/2026.")],
    [
      { taxYear: 2021, requestedOn: "2022-04-14", rejectedOn: "2022-04-15", asOf: "2022-04-19" },
      beforeTable("perfection-period", "4/18/2022", "1/1/2023"),
    ],
    [{ state: { code: "#N/A" } }, { code: "#N/A" }],
    [{ totalTax: down(1, 2) }, badInput("totalTax: The range has 2 cells. Select one cell.")],
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
  it("counts problems and risks, problems alone, or reminders too", () => {
    const cells = { paidWithRequest: 1000, carrier: "UPS Ground" };
    expect(found(cells)).toEqual([
      "carrier to a P.O. box",
      "carrier not designated",
      "below 90% test",
      "interest accrues",
    ]);
    expect(count(cells)).toBe(3);
    expect(count(cells, "risk")).toBe(3);
    expect(count(cells, "problem")).toBe(2);
    expect(count(cells, " Reminder ")).toBe(4);
    expect(count({})).toBe(0);
    expect(count({ filedOn: "2026-04-10", paidWithRequest: 0 }, "reminder")).toBe(0);
  });

  it("agrees with the rows of ISSUES by severity", () => {
    fc.assert(
      fc.property(clients, (cells) => {
        const counted = {
          problem: ["problem"],
          risk: ["problem", "risk"],
          reminder: ["problem", "risk", "reminder"],
        };
        const severities = rowsOf(cells).map((row) => String(row[0]));
        for (const [least, those] of Object.entries(counted))
          expect(count(cells, least)).toBe(
            severities.filter((severity) => those.includes(severity)).length
          );
        expect(count(cells)).toBe(count(cells, "risk"));
      }),
      RUNS
    );
  });

  it("refuses another word", () => {
    expect(count({}, "all")).toEqual(
      badInput('minimumSeverity: "all" is not a severity. Enter problem, risk or reminder.')
    );
  });

  it("answers a client list, each row for itself", () => {
    const paidWithRequest = down(1000, 5000, "x", "");
    const totalTax = down(20000, 20000, 20000, "");
    expect(issueCount([[2025]], totalTax, [[15000]], paidWithRequest, [["2026-04-10"]])).toEqual([
      [1],
      [0],
      [
        badInput(
          'paidWithRequest: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
        ),
      ],
      [""],
    ]);
  });
});
