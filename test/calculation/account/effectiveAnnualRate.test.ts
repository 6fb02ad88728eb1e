import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { effectiveAnnualRate } from "../../../src/calculation/account/effectiveAnnualRate";
import { day, dollarsUpTo, RUNS, usd } from "./givenAccount";

const due = day("2026-04-15");
const rate = (charges: string, unpaid: string, paidOn: string): string =>
  effectiveAnnualRate(usd(charges), usd(unpaid), due, day(paidOn)).toFixed(6);

// The effective annual rate as lenders state it: (1 + charges / amount) to the power of 365 / days, less one (common practice, no source).
describe("the effective annual rate of a delay", () => {
  it("compounds what the charges are to a year", () => {
    // 1.04 to the power of 365/183
    expect(rate("200", "5000", "2026-10-15")).toBe((1.04 ** (365 / 183) - 1).toFixed(6));
    expect(rate("200", "5000", "2026-10-15")).toBe("0.081368");
  });

  it("is the plain share for a delay of 365 days, and its square for half as many", () => {
    expect(rate("700", "10000", "2027-04-15")).toBe("0.070000");
    expect(rate("700", "10000", "2026-06-27")).toBe((1.07 ** 5 - 1).toFixed(6));
  });

  it.each([
    ["nothing charged", "0", "5000", "2026-10-15"],
    ["nothing unpaid", "200", "0", "2026-10-15"],
    ["more paid than due", "200", "-50", "2026-10-15"],
    ["paid on the due date", "200", "5000", "2026-04-15"],
    ["paid before it", "200", "5000", "2026-04-14"],
  ])("is nothing with %s", (_what, charges, unpaid, paidOn) => {
    expect(rate(charges, unpaid, paidOn)).toBe("0.000000");
  });

  it("brings the unpaid amount to what it cost, at any length", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 2000 }),
        fc.integer({ min: 0, max: 50 }),
        dollarsUpTo(50_000),
        (days, percent, unpaid) => {
          fc.pre(unpaid.greaterThan(0));
          const charges = unpaid.times(percent).div(100);
          const found = effectiveAnnualRate(charges, unpaid, due, addDays(due, days)).toNumber();
          const grown = unpaid.toNumber() * (1 + found) ** (days / 365);
          const owed = unpaid.plus(charges).toNumber();
          expect(Math.abs(grown / owed - 1)).toBeLessThan(1e-9);
        }
      ),
      RUNS
    );
  });
});
