import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareOfMonths } from "../../../src/calculation/penalty/shareOfMonths";
import { Decimal } from "../../../src/money/dollars";

const share = (months: number, rate: string, most: string) => {
  const found = shareOfMonths(months, new Decimal(rate), new Decimal(most));
  return [found.months, found.share.toString()];
};

// 26 U.S.C. 6651(a)(1): 5 percent, not exceeding 25 percent in the aggregate; (a)(2): 0.5 percent, not exceeding 25 percent.
describe("the share of the tax by months", () => {
  it("grows by the monthly rate", () => {
    expect(share(1, "0.05", "0.25")).toEqual([1, "0.05"]);
    expect(share(8, "0.005", "0.25")).toEqual([8, "0.04"]);
  });

  it("ends with the month that reaches the maximum", () => {
    expect(share(5, "0.05", "0.25")).toEqual([5, "0.25"]);
    expect(share(6, "0.05", "0.25")).toEqual([5, "0.25"]);
    expect(share(600, "0.005", "0.25")).toEqual([50, "0.25"]);
  });

  // 1 percent a month after a notice of levy, section 6651(d)(1), after 0.5 percent: the last month is charged in part.
  it("charges the last month in part where the maximum is within it", () => {
    expect(share(30, "0.01", "0.245")).toEqual([25, "0.245"]);
  });

  it("is the lesser of the months at the rate and the maximum", () => {
    const months = fc.integer({ min: 1, max: 2_000 });
    const rates = fc.constantFrom("0.05", "0.045", "0.005", "0.01");
    fc.assert(
      fc.property(months, rates, (many, rate) => {
        const [charged, fraction] = share(many, rate, "0.25");
        expect(fraction).toBe(Decimal.min(new Decimal(rate).times(many), "0.25").toString());
        expect(charged).toBe(Math.min(many, Math.ceil(0.25 / Number(rate) - 1e-9)));
      })
    );
  });
});
