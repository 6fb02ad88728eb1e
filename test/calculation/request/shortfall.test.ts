import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shortfall } from "../../../src/calculation/request/shortfall";
import { dollarsUpTo, RUNS } from "../arbitrary";
import { usd } from "../given";

// Form 4868, line 6: line 4 less line 5; if line 5 is more, zero.
describe("the balance due", () => {
  it.each([
    ["18250", "15000", "3250"],
    ["18250", "18250", "0"],
    ["18250", "20000", "0"],
    ["0", "0", "0"],
    ["100.10", "100.09", "0.01"],
  ])("of a tax of %s with %s paid is %s", (totalTax, payments, due) => {
    expect(shortfall(usd(totalTax), usd(payments)).toString()).toBe(due);
  });

  it("with the payments covers the tax, exactly unless more was paid", () => {
    fc.assert(
      fc.property(dollarsUpTo(100_000), dollarsUpTo(100_000), (totalTax, payments) => {
        const due = shortfall(totalTax, payments);
        expect(due.isNegative()).toBe(false);
        const covered = due.plus(payments);
        expect(covered.equals(totalTax.greaterThan(payments) ? totalTax : payments)).toBe(true);
      }),
      RUNS
    );
  });
});
