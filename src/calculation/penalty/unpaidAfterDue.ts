import { atLeastZero, type Decimal } from "../../money/dollars";
import type { DueDate } from "../dueDate/dueDate";
import type { Payment } from "./underpaymentInterest";

/** What is unpaid after a due date, and what is paid later. */
export interface UnpaidAfterDue {
  /** Dollars. */
  readonly unpaid: Decimal;
  /** The payments after the due date, in order of dates. */
  readonly later: readonly Payment[];
}

/**
 * The tax unpaid after a due date, and the payments after it. A payment by the last day counts as made on the due date.
 *
 * @param due - The due date.
 * @param owed - Dollars owed before the payments.
 * @param payments - In order of dates.
 * @returns The unpaid tax, zero if the payments by the last day cover it, and the later payments.
 * @see 26 U.S.C. 7503
 *
 * @example
 * // 1,000 owed on April 15; 700 on April 10 and 200 on June 1
 * //=> 300 unpaid; 200 on June 1
 */
export function unpaidAfterDue(
  due: DueDate,
  owed: Decimal,
  payments: readonly Payment[]
): UnpaidAfterDue {
  const later = payments.filter((payment) => payment.date > due.lastDay);
  const timely = payments.filter((payment) => payment.date <= due.lastDay);
  const unpaid = timely.reduce((left, payment) => left.minus(payment.amount), owed);
  return { unpaid: atLeastZero(unpaid), later };
}
