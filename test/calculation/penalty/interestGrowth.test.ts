import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, written } from "../../../src/calendar/calendarDate";
import { dailyCompounding } from "../../../src/calculation/penalty/dailyCompounding";
import { interestGrowth } from "../../../src/calculation/penalty/interestGrowth";
import { ratePeriods } from "../../../src/calculation/penalty/ratePeriods";
import { Decimal } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/interest-factors.json";
import { daysFrom, RUNS } from "../arbitrary";
import { day, usd } from "../given";

const table = rulebook.underpaymentRate;
const growth = (from: string, to: string): Decimal => interestGrowth(day(from), day(to), { table });

describe("the growth of a dollar", () => {
  // The two printed 6% factors: second and third quarter of 2002.
  it("is the product of the printed factors over two quarters of 2002", () => {
    const factors = published.factors.slice(-2).map(({ expected }) => usd(expected).plus(1));
    const product = factors.reduce((whole, factor) => whole.times(factor), new Decimal(1));
    const found = growth("2002-04-15", "2002-09-30");
    expect(factors).toHaveLength(2);
    expect(found.minus(product).abs().lessThan("2e-9")).toBe(true);
  });

  it("is none through the day the dollar was due", () => {
    expect(growth("2026-04-15", "2026-04-15").toString()).toBe("1");
    expect(growth("2026-04-15", "2026-04-14").toString()).toBe("1");
  });

  it.each([
    ["2026-03-31", "2026-04-01", "0.06"],
    ["2026-03-30", "2026-03-31", "0.07"],
    ["2023-12-31", "2024-01-01", "0.08"],
  ])("from %s to %s is a day at %s", (from, to, rate) => {
    const divisor = to.startsWith("2024") ? 366 : 365;
    expect(growth(from, to).equals(dailyCompounding(usd(rate), divisor, 1))).toBe(true);
  });

  it("refuses days without a rate at either end, unless one is assumed", () => {
    expect(() => growth("1994-12-30", "1995-06-30")).toThrow(NotInTableError);
    expect(() => growth("2026-12-01", "2027-01-01")).toThrow(NotInTableError);
    expect(() => growth("2030-01-01", "2030-02-01")).toThrow(NotInTableError);
    expect(() => growth("1994-12-31", "1995-06-30")).not.toThrow();
    expect(() => growth("2026-12-01", "2026-12-31")).not.toThrow();
  });

  it("goes on at the assumed rate where the published ones end", () => {
    const rates = { table, assumedRate: usd("0.05") };
    const whole = interestGrowth(day("2026-12-01"), day("2027-01-31"), rates);
    const parts = growth("2026-12-01", "2026-12-31").times(dailyCompounding(usd("0.05"), 365, 31));
    expect(whole.minus(parts).abs().lessThan("1e-24")).toBe(true);
  });

  it("kept for a span is never that of an assumed rate", () => {
    const [from, to] = [day("2026-12-01"), day("2027-01-31")];
    const at = (rate: string): Decimal =>
      interestGrowth(from, to, { table, assumedRate: usd(rate) });
    expect(at("0.05").lessThan(at("0.09"))).toBe(true);
    expect(at("0.05").equals(at("0.05"))).toBe(true);
    expect(() => interestGrowth(from, to, { table })).toThrow(NotInTableError);
  });

  it("by running products is the growth multiplied period by period", () => {
    const span = daysFrom("1995-01-01", "2026-12-31");
    fc.assert(
      fc.property(span, fc.integer({ min: 0, max: 4000 }), (from, days) => {
        const later = addDays(from, days);
        const to = later < table.knownThrough ? later : table.knownThrough;
        const stepped = ratePeriods(from, to, { table }).reduce(
          (whole, { rate, divisor, days: length }) =>
            whole.times(dailyCompounding(rate, divisor, length)),
          new Decimal(1)
        );
        expect(growth(written(from), written(to)).minus(stepped).abs().lessThan("1e-23")).toBe(
          true
        );
      }),
      RUNS
    );
  });
});
