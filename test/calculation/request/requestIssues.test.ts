import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { requestIssues } from "../../../src/calculation/request/requestIssues";
import { STATES } from "../../../src/calculation/state";
import { METHODS, SEVERITIES } from "../../../src/rules/requestWords";
import { requestIssue, type RequestIssue } from "../../../src/rules/schema/requestTables";
import { rulebook } from "../../../src/rules/rulebook";
import { filers, RUNS } from "../arbitrary";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { givenRequest, type GivenRequest } from "./givenRequest";

const checksOf = (given: GivenRequest): readonly RequestIssue[] =>
  requestIssues(givenRequest(given), rulebook).map(({ check }) => check);

interface Pair {
  /** Where it is found. */
  readonly found: GivenRequest;
  /** The nearest request where it is not. */
  readonly besides: GivenRequest;
}

const asked = { requestedOn: "2026-04-10" };
const extended = { ...asked, confirmedOn: "2026-04-10" };
const rejected = { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" };
const georgia = {
  taxYear: 2024,
  asOf: "2025-04-16",
  postponement: ["2024-09-24", "2025-05-01"],
} as const;
const fiscal = { taxYear: "2025-06-30", asOf: "2025-10-01" };

/** For each issue of the rules a request that has it and the nearest that has not. The law is named in rules/request-issues.json. */
const PAIRS: Readonly<Record<RequestIssue, Pair>> = {
  "not requested on time": { found: { asOf: "2026-04-16" }, besides: { asOf: "2026-04-15" } },
  "requested late": {
    found: { asOf: "2026-04-20", record: { requestedOn: "2026-04-16" } },
    besides: { asOf: "2026-04-20", record: { requestedOn: "2026-04-15" } },
  },
  "extended date missed": {
    found: { asOf: "2026-10-16", record: extended },
    besides: { asOf: "2026-10-15", record: extended },
  },
  "perfection period over": {
    found: { asOf: "2026-04-21", record: rejected },
    besides: { asOf: "2026-04-20", record: rejected },
  },
  "perfection period open": {
    found: { asOf: "2026-04-20", record: rejected },
    besides: { asOf: "2026-04-20", record: { ...rejected, confirmedOn: "2026-04-20" } },
  },
  "estimate blank": { found: { totalTax: null }, besides: { totalTax: "0" } },
  "zero estimate": { found: { totalTax: "0" }, besides: { totalTax: "0.01" } },
  "fiscal year not on paper": {
    found: { ...fiscal, method: "e-file" },
    besides: { ...fiscal, method: "paper" },
  },
  "e-file closed": {
    found: { ...georgia, method: "e-file" },
    besides: { ...georgia, method: "e-file", asOf: "2025-04-15" },
  },
  "no electronic payment": {
    found: { method: "electronic payment", paidWithRequest: "0" },
    besides: { method: "electronic payment", paidWithRequest: "0.01" },
  },
  "carrier to a P.O. box": {
    found: { carrier: "designated", paidWithRequest: "0.01" },
    besides: { carrier: "designated", paidWithRequest: "0" },
  },
  "carrier not designated": {
    found: { carrier: "not designated" },
    besides: { carrier: "designated" },
  },
  "line 8 checked": {
    found: { line8Checked: true },
    besides: { line8Checked: true, filerType: "out of country" },
  },
  "line 8 not checked": {
    found: { line8Checked: false, filerType: "out of country" },
    besides: { line8Checked: false },
  },
  "zero estimate after tax last year": {
    found: { totalTax: "0", priorYearTax: "0.01" },
    besides: { totalTax: "0", priorYearTax: "0" },
  },
  "electronic payment closed": {
    found: { ...georgia, method: "electronic payment" },
    besides: { ...georgia, method: "electronic payment", asOf: "2025-04-15" },
  },
  "below 90% test": {
    found: { paidWithRequest: "2999.99" },
    besides: { paidWithRequest: "3000" },
  },
  "90% test missed": {
    found: { paidWithRequest: "2999.99", record: asked, asOf: "2026-04-16" },
    besides: { paidWithRequest: "2999.99", record: asked, asOf: "2026-04-15" },
  },
  "no proof": { found: { record: asked }, besides: { record: extended } },
  // 26 U.S.C. 6511(b)(2)(A): April 15 three years later, October 15 with the extension.
  "refund claim near": {
    found: { payments: "20000.01", asOf: "2028-04-15" },
    besides: { payments: "20000.01", asOf: "2028-04-14" },
  },
  "refund claim passed": {
    found: { payments: "20000.01", asOf: "2029-10-16", record: extended },
    besides: { payments: "20000.01", asOf: "2029-10-15", record: extended },
  },
  "state asks for its own request": { found: { state: "NY" }, besides: { state: "OH" } },
  "state rule unverified": {
    found: { state: "IL" },
    besides: { state: "IL", taxYear: 2024, asOf: "2025-04-10" },
  },
  "interest accrues": {
    found: { paidWithRequest: "4999.99" },
    besides: { paidWithRequest: "5000" },
  },
  "relief from penalties": {
    found: { paidWithRequest: "2999.99", asOf: "2026-04-16", record: asked },
    besides: { paidWithRequest: "3000", asOf: "2026-04-16", record: asked },
  },
  "refund expected": {
    found: { payments: "20000.01" },
    besides: { payments: "20000" },
  },
  "request gives no time": {
    found: { postponement: ["2026-01-07", "2026-10-15"] },
    besides: { postponement: ["2026-01-07", "2026-10-14"] },
  },
  "low estimate beside last year": {
    found: { priorYearTax: "30000" },
    besides: { priorYearTax: "29850" },
  },
  "postponement moves dates": {
    found: { postponement: ["2026-04-15", "2026-06-08"] },
    besides: { postponement: ["2026-04-16", "2026-06-08"] },
  },
  "first installment due": {
    found: { firstInstallment: "2500", asOf: "2026-04-15" },
    besides: { firstInstallment: "2500", asOf: "2026-04-16" },
  },
};

describe("what may be wrong with a request", () => {
  it.each(requestIssue.options)("is found where it is, and only there: %s", (check) => {
    expect(checksOf(PAIRS[check].found)).toContain(check);
    expect(checksOf(PAIRS[check].besides)).not.toContain(check);
  });

  it("is nothing where all is well", () => {
    expect(checksOf({})).toEqual([]);
    expect(checksOf({ record: extended })).toEqual([]);
  });

  it("is worded in the rules, every one once, the gravest first", () => {
    const { rows } = rulebook.requestIssues;
    expect(rows.map(({ check }) => check)).toEqual([...requestIssue.options]);
    const grave = rows.map(({ severity }) => SEVERITIES.indexOf(severity));
    expect(grave).toEqual(grave.toSorted((one, other) => one - other));
  });

  // common practice, no source: what fails as it stands, what may cost money, what is only not to be forgotten
  it.each([
    ["problem", "not requested on time", "line 8 checked"],
    ["risk", "line 8 not checked", "state asks for its own request"],
    ["reminder", "state rule unverified", "first installment due"],
  ])("is %s from %s to %s", (grade, first, last) => {
    const graded = rulebook.requestIssues.rows.filter(({ severity }) => severity === grade);
    expect([graded.at(0)?.check, graded.at(-1)?.check]).toEqual([first, last]);
  });

  it("comes with its wording, remedy, law, and what it is about", () => {
    const [issue] = requestIssues(givenRequest({ paidWithRequest: "1000" }), rulebook);
    expect(issue).toEqual({
      check: "below 90% test",
      severity: "risk",
      date: calendarDate("2026-04-15"),
      amount: expect.objectContaining({}) as unknown,
      what: "Less than 90% of the estimated total tax will be paid by the regular due date",
      remedy: expect.stringMatching(/^Pay the amount shown to meet the 90% test/) as unknown,
      source: expect.objectContaining({
        citation: expect.stringContaining("301.6651-1(c)(3)") as unknown,
      }) as unknown,
    });
    expect(issue?.amount?.toString()).toBe("2000");
  });

  const many: GivenRequest = {
    totalTax: "20000",
    payments: "1000",
    paidWithRequest: "100",
    carrier: "not designated",
    line8Checked: true,
    record: asked,
    state: "NY",
    firstInstallment: "2500",
  };

  it("stands in the order of the rules", () => {
    expect(checksOf(many)).toEqual([
      "carrier to a P.O. box",
      "carrier not designated",
      "line 8 checked",
      "below 90% test",
      "no proof",
      "state asks for its own request",
      "state rule unverified",
      "interest accrues",
      "first installment due",
    ]);
  });

  it("is nothing from the day the return is filed, and stands the day before", () => {
    const filed = { ...many, record: { ...asked, filedOn: "2026-04-12" } };
    expect(checksOf({ ...filed, asOf: "2026-04-12" })).toEqual([]);
    expect(checksOf({ ...filed, asOf: "2026-04-11" })).toEqual(
      checksOf({ ...many, asOf: "2026-04-11" })
    );
  });

  const dollars = fc.constantFrom("0", "0.01", "1000", "18000", "19999.99", "20000", "25000");
  const anyRequest: fc.Arbitrary<GivenRequest> = fc.record(
    {
      filerType: filers,
      state: fc.constantFrom(...STATES),
      totalTax: fc.oneof(dollars, fc.constant(null)),
      payments: dollars,
      paidWithRequest: dollars,
      asOf: fc.constantFrom("2026-04-10", "2026-04-15", "2026-04-16", "2026-04-21", "2026-10-16"),
      record: fc.constantFrom({}, asked, extended, rejected, { requestedOn: "2026-04-16" }),
      method: fc.constantFrom(...METHODS),
      carrier: fc.constantFrom("designated", "not designated"),
      line8Checked: fc.boolean(),
      priorYearTax: dollars,
      firstInstallment: fc.oneof(dollars, fc.constant(null)),
    },
    { requiredKeys: [] }
  );

  it("is told once each, in order, whatever the request", () => {
    fc.assert(
      fc.property(anyRequest, (given) => {
        const places = checksOf(given).map((check) => requestIssue.options.indexOf(check));
        expect(places).toEqual([...new Set(places)].toSorted((one, other) => one - other));
      }),
      RUNS
    );
  });
});
