import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { ClientDates } from "../dueDate/clientDates";
import { chargesAccount } from "./chargesAccount";
import type { FailureToFilePenalty } from "./failureToFilePenalty";
import type { FailureToPayPenalty, LevyNoticeRate } from "./failureToPayPenalty";
import type { Payment, UnderpaymentInterest } from "./underpaymentInterest";
import type { AssumedRate } from "./underpaymentRate";

/** A return as it was, or is planned to be, filed and paid. */
export interface ChargesInput {
  readonly dates: ClientDates;
  /** Dollars of total tax as the return will show it. */
  readonly totalTax: Decimal;
  /**
   * Dollars paid by the payment due date: withholding, estimated tax payments, credits, and the amount paid with the request.
   */
  readonly paidOnTime: Decimal;
  /** Later payments, in order of dates. */
  readonly payments: readonly Payment[];
  readonly filedOn: CalendarDate;
  /** Whether a valid request was made on time. */
  readonly validExtension: boolean;
  /** Last date of the calculation for tax that is still unpaid. */
  readonly through: CalendarDate;
  readonly agreementOn?: CalendarDate | undefined;
  readonly assumedRate?: AssumedRate | undefined;
  readonly levyNoticeRate?: LevyNoticeRate | undefined;
  readonly afterNotice?: AfterNotice | undefined;
}

/** What a notice and demand changes in the interest. */
export interface AfterNotice {
  /** The payments by the dates on which they stop interest: those within the time to pay count from the date of the notice. */
  readonly paymentsForInterest: readonly Payment[];
  /** Dollars of failure-to-pay penalty that the notice bills. What accrues later is paid last. */
  readonly failureToPay: Decimal;
}

/** The rules that penalties and interest depend on. */
export type ChargesRules = Pick<
  Rulebook,
  | "failureToFile"
  | "failureToFileMinimum"
  | "failureToPay"
  | "reasonableCauseTest"
  | "underpaymentRate"
>;

/** Penalties and interest of a return filed or paid late, part by part. */
export interface Charges {
  readonly failureToFile: FailureToFilePenalty;
  readonly failureToPay: FailureToPayPenalty;
  /** The law that excuses failure to pay, if any. */
  readonly excused: Source | undefined;
  readonly interestOnTax: UnderpaymentInterest;
  /** Interest on the failure-to-file penalty. */
  readonly interestOnPenalty: UnderpaymentInterest;
  /** Dollars and cents: the four parts, each rounded once. */
  readonly total: Decimal;
}

/**
 * Both penalties and the interest on a return filed or paid late, after every reduction and the 90% reasonable-cause test.
 *
 * Interest accrues on the tax from the payment due date, with or without an extension. On the failure-to-file penalty it accrues
 * from the due date including the extension to the date the penalty is paid (section 6601(e)(2)(B)). On the failure-to-pay penalty
 * none accrues before a notice; interestAfterNotice has what accrues after it.
 *
 * What is paid beyond the tax pays the failure-to-pay penalty, then the failure-to-file penalty. That is the cautious order, because
 * only the second accrues interest. No authority names one; Rev. Proc. 2002-26, section 3.02, applies a payment without a designation
 * in the best interest of the government. After a notice, what it bills is paid before a penalty that accrues later. Interest to date
 * on an amount no longer grows once the amount is paid.
 *
 * @param input - The return and the payments.
 * @param rules - Penalty rates, minimum penalty, 90% test, interest rates.
 * @returns The parts and their total in dollars and cents.
 * @throws NotInTableError where a rate or the minimum is not published.
 * @see 26 U.S.C. 6601(a), (b)(1), (e)(2), 6651(a), (c)(1); 26 CFR 301.6651-1(c)(3); Rev. Proc. 2002-26, section 3.02
 *
 * @example
 * // 26 CFR 301.6651-1(f), Example 2, penalties: 112.50 and 20.00
 */
export function charges(input: ChargesInput, rules: ChargesRules): Charges {
  return chargesAccount(input, rules)(input.through, input.filedOn);
}
