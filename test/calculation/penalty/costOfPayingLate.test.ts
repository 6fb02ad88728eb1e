import { describe, expect, it } from "vitest";
import { costOfPayingLate } from "../../../src/calculation/penalty/costOfPayingLate";
import { paid } from "../given";
import { chargesOf } from "./givenReturn";

// 26 U.S.C. 6651(a)(2): 0.5% for each month or part of a month; 6601(a): interest, at 7% from April 1, 2026 (Rev. Rul. by quarter).
describe("the cost of paying late", () => {
  const return2025 = { taxYear: 2025, totalTax: "10000", paidOnTime: "0" };
  const paidInApril = { ...return2025, payments: [paid("2026-04-16", 10_000)] };

  it("is the failure-to-pay penalty and the interest on the tax, however late the return is filed", () => {
    const onTime = costOfPayingLate(chargesOf({ ...paidInApril, filedOn: "2026-04-15" }));
    const late = chargesOf({ ...paidInApril, filedOn: "2026-09-30" });
    expect(costOfPayingLate(late).toFixed(2)).toBe(onTime.toFixed(2));
    expect(late.total.greaterThan(2000)).toBe(true);
  });

  it("is the whole where the return is filed on time", () => {
    const charged = chargesOf({
      ...return2025,
      filedOn: "2026-04-10",
      payments: [paid("2026-07-01", 10_000)],
    });
    expect(costOfPayingLate(charged).toFixed(2)).toBe(charged.total.toFixed(2));
  });
});
