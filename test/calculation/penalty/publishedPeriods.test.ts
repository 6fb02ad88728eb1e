import { describe, expect, it } from "vitest";
import { addDays, daysInYear, yearOf } from "../../../src/calendar/calendarDate";
import { dailyCompounding } from "../../../src/calculation/penalty/dailyCompounding";
import { publishedPeriods, wholePeriod } from "../../../src/calculation/penalty/publishedPeriods";
import { Decimal } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook, type Rulebook } from "../../../src/rules/rulebook";
import { day, MADE_UP, usd } from "../given";

const table = rulebook.underpaymentRate;

describe("a whole period", () => {
  it("runs to the day before the rate changes", () => {
    expect(wholePeriod(day("2026-04-15"), { table })).toMatchObject({
      from: day("2026-04-15"),
      to: day("2026-06-30"),
      days: 76,
      divisor: 365,
    });
  });

  it("that begins on the last day of a quarter has the next quarter's rate", () => {
    const period = wholePeriod(day("2026-03-31"), { table });
    expect(period).toMatchObject({ to: day("2026-06-30"), days: 91 });
    expect(period.rate.toString()).toBe("0.06");
  });

  it("ends with the year where the same rate goes on into a leap year", () => {
    const from = day("2023-06-01");
    const oneRate: Rulebook["underpaymentRate"] = {
      ...table,
      knownFrom: from,
      knownThrough: day("2025-05-31"),
      entries: [{ from, figures: { rate: usd("0.08") }, source: MADE_UP }],
    };
    const { periods } = publishedPeriods({ table: oneRate });
    expect(periods.map(({ from: begins, to, divisor }) => [begins, to, divisor])).toEqual([
      [day("2023-05-31"), day("2023-12-31"), 365],
      [day("2023-12-31"), day("2024-12-31"), 366],
      [day("2024-12-31"), day("2025-05-31"), 365],
    ]);
  });

  it("beyond the published rates is refused, or a whole assumed year", () => {
    const beyond = day("2030-12-31");
    expect(() => wholePeriod(beyond, { table })).toThrow(NotInTableError);
    const period = wholePeriod(beyond, { table, assumedRate: usd("0.07") });
    expect(period).toMatchObject({ to: day("2031-12-31"), days: 365, source: undefined });
  });
});

describe("the published periods", () => {
  // a table not seen before, so that nothing kept is given back
  const workedOut = () => publishedPeriods({ table: { ...table } });

  it("reach from the first rate to the last without gap", () => {
    const { periods } = workedOut();
    expect(periods[0]?.from).toBe(addDays(table.knownFrom, -1));
    expect(periods.at(-1)?.to).toBe(table.knownThrough);
    expect(periods.slice(1).map((period) => period.from)).toEqual(
      periods.slice(0, -1).map((period) => period.to)
    );
  });

  it("have the divisor of the year in which they lie", () => {
    for (const { from, to, divisor } of workedOut().periods) {
      expect(yearOf(addDays(from, 1))).toBe(yearOf(to));
      expect(divisor).toBe(daysInYear(yearOf(to)));
    }
  });

  it("come with the growth of a dollar up to each", () => {
    const { periods, growthBefore } = workedOut();
    expect(growthBefore).toHaveLength(periods.length);
    let growth = new Decimal(1);
    periods.forEach(({ rate, divisor, days }, index) => {
      const known = growthBefore[index] ?? new Decimal(0);
      expect(known.minus(growth).abs().lessThan("1e-24")).toBe(true);
      growth = growth.times(dailyCompounding(rate, divisor, days));
    });
  });
});
