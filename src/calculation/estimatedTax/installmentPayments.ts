import { compareDates, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, ZERO } from "../../money/dollars";
import type { DueDate } from "../dueDate/dueDate";
import type { LatePayment } from "../penalty/underpaymentInterest";

/** A part of an installment, and the day it was paid; `undefined` while it is open. */
export interface InstallmentPart {
  /** Its place among the due dates, from 1. */
  readonly installment: number;
  readonly due: DueDate;
  readonly amount: Decimal;
  readonly paidOn: CalendarDate | undefined;
}

/**
 * Lays payments against installments, each to the earliest one still open, whatever the payer meant by it.
 *
 * @param dues - Due dates of the installments, in order.
 * @param installment - Dollars of each.
 * @param withholding - Dollars withheld in the year: equal parts on the due dates, unless shown otherwise.
 * @param payments - Estimated payments, in any order.
 * @returns The parts of each installment in the order in which they were paid; what nobody paid is open.
 * @see 26 U.S.C. 6654(b)(3), (g)(1)
 */
export function installmentPayments(
  dues: readonly DueDate[],
  installment: Decimal,
  withholding: Decimal,
  payments: readonly LatePayment[]
): readonly InstallmentPart[] {
  const withheld = dues.map(({ countedFrom }) => ({
    day: countedFrom,
    amount: withholding.div(dues.length),
  }));
  const credits = [...withheld, ...payments].sort((one, other) => compareDates(one.day, other.day));
  const open = dues.map(() => installment);
  const parts: InstallmentPart[] = [];
  for (const credit of credits) {
    let left = credit.amount;
    dues.forEach((due, index) => {
      const amount = Decimal.min(left, open[index] ?? ZERO);
      if (!amount.greaterThan(0)) return;
      parts.push({ installment: index + 1, due, amount, paidOn: credit.day });
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
