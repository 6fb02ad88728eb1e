import { compareDates, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, ZERO } from "../../money/dollars";
import type { DueDate } from "../dueDate/dueDate";
import type { Payment } from "../penalty/underpaymentInterest";

/** A part of an installment, and the date it was paid; `undefined` while it is unpaid. */
export interface InstallmentPart {
  /** Number of the installment among the due dates, from 1. */
  readonly installment: number;
  readonly due: DueDate;
  readonly amount: Decimal;
  readonly paidOn: CalendarDate | undefined;
}

/** Decimal places of a part of the withholding. A quarter of whole cents needs four; a third is seldom exact. */
const PLACES = 10;

/** An amount in equal parts that add up to it: what the places cut off is in the last part. */
function equalParts(amount: Decimal, count: number): readonly Decimal[] {
  const part = amount.div(count).toDecimalPlaces(PLACES, Decimal.ROUND_DOWN);
  const others = Array.from({ length: count - 1 }, () => part);
  return [...others, amount.minus(part.times(count - 1))];
}

/**
 * Applies each payment to the earliest unpaid installment, whatever the payer designated.
 *
 * Withholding counts as paid in equal parts on the due dates. A postponement does not move them: section 7508A
 * disregards the days of the period, so it delays the penalty on an installment, but not the credit for withholding.
 *
 * @param dues - Due dates of the installments, in order.
 * @param installments - Dollars of each, in the same order.
 * @param withholding - Dollars withheld in the year, counted in equal parts on the due dates that the law names.
 * @param payments - Estimated tax payments, in any order.
 * @returns The parts of the installments in the order in which they were paid, then the unpaid parts.
 * @see 26 U.S.C. 6654(b)(3), (g)(1), 7508A(a); 26 CFR 301.7508A-1(b)(4)
 */
export function installmentPayments(
  dues: readonly DueDate[],
  installments: readonly Decimal[],
  withholding: Decimal,
  payments: readonly Payment[]
): readonly InstallmentPart[] {
  const shares = equalParts(withholding, dues.length);
  const withheld = dues.map(({ statutory }, index) => ({
    date: statutory,
    amount: shares[index] ?? ZERO,
  }));
  const credits = [...withheld, ...payments].sort((one, other) =>
    compareDates(one.date, other.date)
  );
  const open = [...installments];
  const parts: InstallmentPart[] = [];
  for (const credit of credits) {
    let left = credit.amount;
    dues.forEach((due, index) => {
      const amount = Decimal.min(left, open[index] ?? ZERO);
      if (!amount.greaterThan(0)) return;
      parts.push({ installment: index + 1, due, amount, paidOn: credit.date });
      open[index] = (open[index] ?? ZERO).minus(amount);
      left = left.minus(amount);
    });
  }
  dues.forEach((due, index) => {
    const amount = open[index] ?? ZERO;
    if (amount.greaterThan(0))
      parts.push({ installment: index + 1, due, amount, paidOn: undefined });
  });
  return parts;
}
