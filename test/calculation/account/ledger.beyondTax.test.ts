import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarDate, addDays, compareDates } from "../../../src/calendar/calendarDate";
import { ledger, type LedgerInput, type LedgerRow } from "../../../src/calculation/account/ledger";
import { ZERO, type Decimal } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import {
  anyAccount,
  chargedSoFar,
  dollarsUpTo,
  lastOf,
  ledgerOf,
  paid,
  RUNS,
  withNotices,
} from "./givenAccount";

/** Interest of a dollar over days at a rate, in binary numbers: no code of src. */
const growth = (percent: number, days: number): number => (1 + percent / 36_500) ** days;

const interest = (rows: readonly LedgerRow[], on: string): string =>
  rows.findLast(({ date }) => date === calendarDate(on))?.interest.toFixed(2) ?? "";

// 26 U.S.C. 6601(e)(2)(B): interest on the failure-to-file penalty runs from the date the return is required to be filed, including
// extensions, to the date the penalty is paid. 6% in the second quarter of 2026, 7% in the third and fourth (the revenue rulings).
describe("a payment history with more paid than the tax", () => {
  /** $10,000 of tax, half of it on time, and the return filed on June 20 with a failure-to-file penalty of 675. */
  const rowsWith = (...later: ReturnType<typeof paid>[]): readonly LedgerRow[] =>
    ledgerOf({
      totalTax: 10_000,
      payments: [paid("2026-04-15", 5_000), ...later, paid("2026-12-01", 10)],
      filedOn: "2026-06-20",
    });
  const onTax = 5_000 * (growth(6, 66) - 1);
  /** The interest of a row: on the tax and on the penalty, each rounded to cents. */
  const withTax = (onPenalty: number): string =>
    (Number(onTax.toFixed(2)) + Number(onPenalty.toFixed(2))).toFixed(2);

  it("has interest on the penalty until the payment beyond the tax has paid it", () => {
    const toJune = 675 * (growth(6, 66) - 1);
    const rows = rowsWith(paid("2026-06-20", 6_000));
    const whole = withTax(toJune);
    expect([interest(rows, "2026-06-20"), interest(rows, "2026-12-01")]).toEqual([whole, whole]);
    expect(lastOf(rows).overpayment.toFixed(2)).toBe("198.10");
  });

  it("has interest on what the payments have left of the penalty, after the failure-to-pay penalty of 75", () => {
    const toJune = 675 * (growth(6, 66) - 1);
    const toAugust = (450 + toJune) * growth(6, 10) * growth(7, 32) - 450;
    const toDecember = (50 + toAugust) * growth(7, 122) - 50;
    const rows = rowsWith(paid("2026-06-20", 5_300), paid("2026-08-01", 400));
    expect(interest(rows, "2026-08-01")).toBe(withTax(toAugust));
    expect(interest(rows, "2026-12-01")).toBe(withTax(toDecember));
  });

  it("has none on what was paid beyond the tax before the extended due date", () => {
    // The $1,000 beyond the tax is there on October 15, when interest on the failure-to-file penalty would begin.
    const rows = ledgerOf({
      totalTax: 10_000,
      payments: [paid("2026-04-15", 5_000), paid("2026-06-15", 6_000)],
      filedOn: "2026-11-10",
      validExtension: true,
    });
    const { failureToFile, failureToPay, overpayment } = lastOf(rows);
    // 6651(a)(1), (b)(1): 5% of 5,000 for one month without a failure-to-pay penalty; (a)(2): 0.5% for two months
    expect([failureToFile.toFixed(), failureToPay.toFixed()]).toEqual(["250", "50"]);
    expect(interest(rows, "2026-11-10")).toBe((5_000 * (growth(6, 61) - 1)).toFixed(2));
    expect(overpayment.toFixed(2)).toBe((700 - 5_000 * (growth(6, 61) - 1)).toFixed(2));
  });

  /** Any account with one payment more, mostly beyond the tax, and a small payment at the end. */
  const overpaid: fc.Arbitrary<LedgerInput> = fc
    .tuple(
      anyAccount,
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 0, max: 25 }),
      dollarsUpTo(20)
    )
    .map(([input, after, percent, more]) => {
      const large = {
        date: addDays(input.dates.payment.lastDay, after),
        amount: input.totalTax
          .times(100 + percent)
          .div(100)
          .toDecimalPlaces(2),
      };
      const end = { date: addDays(input.dates.payment.lastDay, 500), amount: more };
      const payments = [...input.payments, large, end];
      payments.sort((one, other) => compareDates(one.date, other.date));
      return { ...input, payments };
    });

  it("adds nothing after everything is paid and the return is filed", () => {
    let found = 0;
    fc.assert(
      fc.property(withNotices(overpaid), (input) => {
        const rows = ledger(input, rulebook);
        const isSettled = (row: LedgerRow): boolean =>
          row.date >= input.filedOn && row.unpaidTax.plus(row.unpaidPenaltiesAndInterest).isZero();
        const settled = rows.filter(isSettled);
        const charged = new Set(settled.map((row) => chargedSoFar(row).toFixed()));
        expect(charged.size).toBeLessThanOrEqual(1);
        if (settled.length > 1 && chargedSoFar(lastOf(rows)).greaterThan(0)) found++;
      }),
      RUNS
    );
    expect(found).toBeGreaterThan(RUNS.numRuns / 4);
  });

  it("carries each row on from the row before: what is left grows by new penalties and interest, and falls by the payment", () => {
    const balance = (row: LedgerRow): Decimal =>
      row.unpaidTax.plus(row.unpaidPenaltiesAndInterest).minus(row.overpayment);
    fc.assert(
      fc.property(withNotices(overpaid), (input) => {
        const rows = ledger(input, rulebook);
        rows.slice(1).forEach((row, index) => {
          const before = rows[index];
          if (!before) return;
          const added = chargedSoFar(row).minus(chargedSoFar(before));
          const paidNow = row.event === "payment" ? (row.amount ?? ZERO) : ZERO;
          expect(added.greaterThanOrEqualTo(0)).toBe(true);
          expect(balance(row).toFixed()).toBe(balance(before).plus(added).minus(paidNow).toFixed());
        });
      }),
      RUNS
    );
  });
});
