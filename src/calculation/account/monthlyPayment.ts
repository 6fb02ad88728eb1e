import { addMonths, type CalendarDate } from "../../calendar/calendarDate";
import { Decimal, toCents, upToCents } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { DueDate } from "../dueDate/dueDate";
import { failureToPayPenalty } from "../penalty/failureToPayPenalty";
import { underpaymentInterest, type Payment } from "../penalty/underpaymentInterest";
import type { AssumedRate } from "../penalty/underpaymentRate";

/** A balance that is paid in equal monthly payments. */
export interface MonthlyPaymentInput {
  /** Dollars of tax, penalties and interest on the date of the agreement. */
  readonly owed: Decimal;
  /** Dollars of tax among them. */
  readonly unpaidTax: Decimal;
  /** Date of the agreement. The first payment is due a month later. */
  readonly agreementOn: CalendarDate;
  /** Number of monthly payments, one or more. */
  readonly months: number;
  /** Payment due date of the tax, from which the months of the penalty count. */
  readonly due: Pick<DueDate, "countedFrom" | "lastDay">;
  /** Whether the agreement halves the failure-to-pay penalty. */
  readonly isHalved: boolean;
  readonly assumedRate?: AssumedRate | undefined;
}

/** The monthly payment and the cost of paying over time. */
export interface MonthlyPayment {
  /** Dollars, rounded up to cents. The last payment may be smaller. */
  readonly payment: Decimal;
  /** Dollars and cents after the date of the agreement. */
  readonly penaltiesAndInterest: Decimal;
}

const CENT = new Decimal("0.01");

/**
 * Monthly payment with which a balance, and the penalty and interest that accrue on it, is paid in a number of months.
 *
 * The law is that of the payment history: payments pay the tax first, the failure-to-pay penalty accrues on the unpaid tax of each
 * month, at half the rate under an agreement, up to 25% with the months before it. The whole balance has been billed, so that interest
 * accrues on all of it. Penalty of later months has no interest before a notice of its own.
 *
 * @param input - The balance and the number of payments.
 * @param rules - Penalty rate and interest rates.
 * @returns The smallest payment that pays everything with the last payment.
 * @throws NotInTableError if an interest rate is not published and none is assumed.
 * @see 26 U.S.C. 6601(a), (b)(1), (e)(2)(A), 6622, 6651(a)(2), (h)
 *
 * @example
 * // $12,000 in one payment a month later, at 7%: about 12,101
 */
export function monthlyPayment(
  input: MonthlyPaymentInput,
  rules: Pick<Rulebook, "failureToPay" | "underpaymentRate">
): MonthlyPayment {
  const { owed, unpaidTax, agreementOn, months, due, isHalved, assumedRate } = input;
  const dates = Array.from({ length: months }, (_, index) => addMonths(agreementOn, index + 1));
  const last = dates.at(-1) ?? agreementOn;
  const rates = { table: rules.underpaymentRate, assumedRate };
  const penalty = (payments: readonly Payment[], through: CalendarDate): Decimal => {
    const agreement = isHalved ? agreementOn : undefined;
    const balance = { due, unpaidTax, payments, through, agreementOn: agreement };
    return failureToPayPenalty(balance, rules.failureToPay).amount;
  };
  const before = penalty([], agreementOn);
  const cost = (amount: Decimal): Decimal => {
    const payments = dates.map((date) => ({ date, amount }));
    const interest = underpaymentInterest(owed, agreementOn, payments, last, rates).amount;
    return toCents(penalty(payments, last).minus(before)).plus(toCents(interest));
  };
  const pays = (amount: Decimal): boolean =>
    amount.times(months).greaterThanOrEqualTo(owed.plus(cost(amount)));

  // A larger payment never costs more, so that the answer is between these two.
  let tooSmall = upToCents(owed.div(months)).minus(CENT);
  let enough = upToCents(owed.plus(cost(upToCents(owed.div(months)))).div(months));
  while (enough.minus(tooSmall).greaterThan(CENT)) {
    const middle = upToCents(tooSmall.plus(enough).div(2));
    if (pays(middle)) enough = middle;
    else tooSmall = middle;
  }
  return { payment: enough, penaltiesAndInterest: cost(enough) };
}
