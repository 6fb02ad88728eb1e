import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, daysBetween, daysInYear, yearOf } from "../../../src/calendar/calendarDate";
import { ratePeriods } from "../../../src/calculation/penalty/ratePeriods";
import { underpaymentRate } from "../../../src/calculation/penalty/underpaymentRate";
import { ZERO, type Decimal } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import dayCounts from "../../fixtures/published/day-counts.json";
import shortMethod from "../../fixtures/published/short-method-factors.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day, usd } from "../given";

const rates = { table: rulebook.underpaymentRate };
const held = dayCounts.cases.filter(({ inputs }) => day(inputs.from) >= rates.table.knownFrom);

/** Simple interest on one dollar: rate by days by divisor, period after period. */
function simpleInterest(from: string, to: string): Decimal {
  return ratePeriods(day(from), day(to), rates).reduce(
    (sum, { rate, days, divisor }) => sum.plus(rate.times(days).div(divisor)),
    ZERO
  );
}

describe("rate periods", () => {
  it.each(held)("count the days of $source.document: $case", ({ inputs, expected }) => {
    const periods = ratePeriods(day(inputs.from), day(inputs.to), rates);
    expect(periods.reduce((sum, period) => sum + period.days, 0)).toBe(expected);
  });

  // Rates, days and divisors of fourteen tax years against the factors printed on Form 2210. That penalty is not compounded,
  // and takes the rate of the first quarter through April 15 (section 6621(b)(2)(B)).
  it.each(shortMethod.cases)(
    "yield the short-method factor of $case ($source.document)",
    ({ inputs, expected }) => {
      const [year, next] = [String(inputs.taxYear), String(inputs.taxYear + 1)];
      const march31 = `${next}-03-31`;
      const firstQuarter = underpaymentRate(day(march31), rates).rate;
      const aprilDays = firstQuarter.times(15).div(daysInYear(inputs.taxYear + 1));
      const installments = [`${year}-04-15`, `${year}-06-15`, `${year}-09-15`, `${next}-01-15`];
      const sum = installments.reduce(
        (total, from) => total.plus(simpleInterest(from, march31)).plus(aprilDays),
        ZERO
      );
      expect(sum.div(4).toFixed(5)).toBe(expected);
    }
  );

  it("give the last day of a quarter to that quarter", () => {
    const turn = (from: string, to: string): readonly string[] =>
      ratePeriods(day(from), day(to), rates).map((period) => period.rate.toString());
    expect(turn("2026-03-30", "2026-03-31")).toEqual(["0.07"]);
    expect(turn("2026-03-31", "2026-04-01")).toEqual(["0.06"]);
    expect(turn("2026-03-30", "2026-04-01")).toEqual(["0.07", "0.06"]);
  });

  it("cut at the end of a year, where the divisor changes", () => {
    const periods = ratePeriods(day("2023-12-01"), day("2024-03-01"), rates);
    expect(periods.map(({ from, to, days, divisor }) => [from, to, days, divisor])).toEqual([
      [day("2023-12-01"), day("2023-12-31"), 30, 365],
      [day("2023-12-31"), day("2024-03-01"), 61, 366],
    ]);
  });

  it("count February 29", () => {
    const days = (from: string, to: string): number | undefined =>
      ratePeriods(day(from), day(to), rates)[0]?.days;
    expect(days("2024-02-28", "2024-03-01")).toBe(2);
    expect(days("2025-02-28", "2025-03-01")).toBe(1);
  });

  it("are none when nothing is late", () => {
    expect(ratePeriods(day("2026-04-15"), day("2026-04-15"), rates)).toEqual([]);
    expect(ratePeriods(day("2026-04-15"), day("2026-04-14"), rates)).toEqual([]);
  });

  it("refuse days beyond the published rates, and cut assumed years by their divisors", () => {
    const { knownThrough } = rates.table;
    const later = addDays(knownThrough, 1);
    expect(ratePeriods(addDays(knownThrough, -1), knownThrough, rates)).toHaveLength(1);
    expect(() => ratePeriods(addDays(knownThrough, -1), later, rates)).toThrow(NotInTableError);
    const assumed = { ...rates, assumedRate: usd("0.05") };
    const periods = ratePeriods(day("2099-12-01"), day("2101-02-01"), assumed);
    expect(periods.map(({ days, divisor }) => [days, divisor])).toEqual([
      [30, 365],
      [365, 365],
      [32, 365],
    ]);
    const leap = ratePeriods(day("2095-12-31"), day("2096-12-31"), assumed);
    expect(leap.map(({ days, divisor, source }) => [days, divisor, source])).toEqual([
      [366, 366, undefined],
    ]);
  });

  it("refuse days before the first rate in the table", () => {
    expect(() => ratePeriods(day("1994-12-30"), day("1995-02-01"), rates)).toThrow(NotInTableError);
    expect(ratePeriods(day("1994-12-31"), day("1995-02-01"), rates)[0]?.days).toBe(32);
  });

  it("join without gap, hold one rate and one year each, and count every day once", () => {
    const span = daysFrom("1995-01-01", "2026-12-31");
    fc.assert(
      fc.property(span, span, (from, to) => {
        const periods = ratePeriods(from, to, rates);
        expect(periods.reduce((sum, { days }) => sum + days, 0)).toBe(
          Math.max(0, daysBetween(from, to))
        );
        let reached = from;
        for (const period of periods) {
          expect(period.from).toBe(reached);
          const firstDay = addDays(period.from, 1);
          expect(yearOf(firstDay)).toBe(yearOf(period.to));
          expect(period.divisor).toBe(daysInYear(yearOf(period.to)));
          for (const on of [firstDay, period.to])
            expect(underpaymentRate(on, rates).rate.equals(period.rate)).toBe(true);
          reached = period.to;
        }
      }),
      RUNS
    );
  });
});
