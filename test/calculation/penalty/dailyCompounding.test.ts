import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dailyCompounding } from "../../../src/calculation/penalty/dailyCompounding";
import published from "../../fixtures/published/interest-factors.json";
import { RUNS } from "../arbitrary";
import { usd } from "../given";

const wholePercents = fc.integer({ min: 1, max: 20 }).map((percent) => usd(percent).div(100));
const divisors = fc.constantFrom<365 | 366>(365, 366);
const dayCounts = fc.integer({ min: 0, max: 366 });

describe("daily compounding", () => {
  it.each(published.factors)("$case ($source.document)", ({ inputs, expected }) => {
    expect(inputs.divisor).toBe(365);
    const growth = dailyCompounding(usd(inputs.rate), 365, inputs.days);
    expect(growth.minus(1).toFixed(9)).toBe(expected);
  });

  it("of no day is no growth", () => {
    expect(dailyCompounding(usd("0.07"), 365, 0).toString()).toBe("1");
  });

  it("of one day is the daily rate, by 365 or 366 (26 CFR 301.6622-1(a))", () => {
    expect(dailyCompounding(usd("0.07"), 365, 1).times(365).minus(365).toFixed(20)).toBe(
      usd("0.07").toFixed(20)
    );
    expect(dailyCompounding(usd("0.07"), 366, 1).times(366).minus(366).toFixed(20)).toBe(
      usd("0.07").toFixed(20)
    );
  });

  it("answers the same when asked again after other questions", () => {
    const first = dailyCompounding(usd("0.08"), 366, 91).toString();
    for (let days = 0; days < 92; days++) dailyCompounding(usd("0.08"), 365, days);
    expect(dailyCompounding(usd("0.08"), 366, 91).toString()).toBe(first);
    expect(dailyCompounding(usd("0.08"), 365, 91).toString()).not.toBe(first);
  });

  it("over two spans is the product of both", () => {
    fc.assert(
      fc.property(wholePercents, divisors, dayCounts, dayCounts, (rate, divisor, one, other) => {
        const whole = dailyCompounding(rate, divisor, one + other);
        const parts = dailyCompounding(rate, divisor, one).times(
          dailyCompounding(rate, divisor, other)
        );
        expect(whole.minus(parts).abs().lessThan("1e-24")).toBe(true);
      }),
      RUNS
    );
  });

  it("exceeds simple interest from the second day on, and a leap year's divisor gives less", () => {
    fc.assert(
      fc.property(wholePercents, fc.integer({ min: 2, max: 366 }), (rate, days) => {
        const growth = dailyCompounding(rate, 365, days);
        expect(growth.minus(1).greaterThan(rate.times(days).div(365))).toBe(true);
        expect(dailyCompounding(rate, 366, days).lessThan(growth)).toBe(true);
      }),
      RUNS
    );
  });
});
