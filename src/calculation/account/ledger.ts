import { earlierDate, type CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { ChargesInput, ChargesRules } from "../penalty/charges";
import { chargesAccount } from "../penalty/chargesAccount";
import type { Payment } from "../penalty/underpaymentInterest";
import type { State } from "../state";
import { accountEvents } from "./accountEvents";
import { interestAfterNotice } from "./interestAfterNotice";
import { noticeAndDemand } from "./noticeAndDemand";
import { rateAfterLevyNotice } from "./rateAfterLevyNotice";

/** What happened on a date of the payment history. */
export type LedgerEvent =
  | "tax due"
  | "payment"
  | "return due"
  | "return filed"
  | "agreement accepted"
  | "notice and demand"
  | "levy notice";

/** The account after one event. */
export interface LedgerRow {
  readonly date: CalendarDate;
  readonly event: LedgerEvent;
  /** Dollars due, paid or demanded; `undefined` for an event without an amount. */
  readonly amount: Decimal | undefined;
  /** For a notice and demand: last date to pay it without further interest. */
  readonly payBy?: CalendarDate | undefined;
  readonly unpaidTax: Decimal;
  /** Dollars of penalties and interest to date, less payments in excess of the tax. */
  readonly unpaidPenaltiesAndInterest: Decimal;
  /** Dollars paid in excess of the tax and of the penalties and interest to date. */
  readonly overpayment: Decimal;
  /** Dollars and cents to date. */
  readonly failureToFile: Decimal;
  readonly failureToPay: Decimal;
  readonly interest: Decimal;
  /** The part of `interest` that accrues on the two penalties. */
  readonly interestOnPenalties: Decimal;
  readonly source: Source;
}

/** A return with partial payments, and what followed its filing. */
export interface LedgerInput extends Omit<
  ChargesInput,
  "paidOnTime" | "payments" | "through" | "levyNoticeRate" | "afterNotice"
> {
  /** Every payment, before and after the due date, in order of dates. Include withholding as a payment. */
  readonly payments: readonly Payment[];
  /** State of residence, whose holidays are no business days. */
  readonly state?: State | undefined;
  /** Date of the first notice and demand, after the payment due date and not before the filing. */
  readonly noticeOn?: CalendarDate | undefined;
  /** Date of the notice of intent to levy, after the first notice. */
  readonly levyNoticeOn?: CalendarDate | undefined;
}

/** The rules that a payment history depends on. */
export type LedgerRules = ChargesRules &
  Pick<Rulebook, "orderOfPayments" | "legalHolidays" | "noticeAndDemand" | "levyNotice">;

/**
 * Payment history of a return with partial payments: each event with the unpaid tax and the penalties and interest to date.
 *
 * A payment is applied to tax first, then to penalties, then to interest. It stops further penalties and interest on the amount it
 * pays: what is paid beyond the tax stops the interest on the failure-to-file penalty once it has paid the penalties. Interest to
 * date on an amount no longer grows once the amount is paid, so nothing grows after all is paid and the return is filed.
 *
 * Whether the 90% reasonable-cause test is met, whether an installment agreement halves the failure-to-pay penalty, and whether a
 * notice is paid in time is decided from all events, so that no row shows an amount that a later row removes. If the payments do not
 * cover the tax, the history ends with the last event.
 *
 * A notice and demand begins interest on the failure-to-pay penalty that it bills, unless it is paid in time. A levy notice raises the
 * rate of that penalty. Later notices of the same kind change nothing.
 *
 * @param input - The return, every payment, on time or late, and the notices.
 * @param rules - Penalty rates, minimum penalty, 90% test, interest rates, order of payments, time to pay a notice.
 * @returns The rows in order of dates. The last row shows the whole amounts.
 * @throws NotInTableError if an interest rate or the minimum penalty is not published, or the table has no order of payments.
 * @see 26 U.S.C. 6601(a), (e)(2), (e)(3), 6651(b), (d), (h); 26 CFR 301.6601-1(f); Rev. Proc. 2002-26, section 3
 */
export function ledger(input: LedgerInput, rules: LedgerRules): readonly LedgerRow[] {
  const { totalTax, filedOn, payments, noticeOn, state, assumedRate } = input;
  const filingDue = input.validExtension ? input.dates.extended : input.dates.regular;
  const interestRates = { table: rules.underpaymentRate, assumedRate };
  const levyNoticeRate = rateAfterLevyNotice(input.levyNoticeOn, rules);
  const whole = { ...input, paidOnTime: ZERO, levyNoticeRate };
  const filedBy = (date: CalendarDate): CalendarDate => earlierDate(filedOn, date);

  const dated = accountEvents(input, filingDue, rules);
  const notice =
    noticeOn === undefined
      ? undefined
      : noticeAndDemand(
          {
            noticeOn,
            totalTax,
            payments,
            state,
            atNotice: chargesAccount(whole, rules)(noticeOn, filedBy(noticeOn)),
          },
          rules
        );
  const chargesThrough = chargesAccount({ ...whole, afterNotice: notice }, rules);
  const afterNoticeThrough = notice && interestAfterNotice(notice, totalTax, interestRates);

  let paid = ZERO;
  return dated.map(({ date, event, amount, source }) => {
    if (event === "payment" && amount) paid = paid.plus(amount);
    const toDate = chargesThrough(date, filedBy(date));
    const failureToFile = toCents(toDate.failureToFile.amount);
    const failureToPay = toCents(toDate.failureToPay.amount);
    const afterNotice = afterNoticeThrough ? toCents(afterNoticeThrough(date).amount) : ZERO;
    const interestOnPenalties = toCents(toDate.interestOnPenalty.amount).plus(afterNotice);
    const interest = toCents(toDate.interestOnTax.amount).plus(interestOnPenalties);
    const penaltiesAndInterest = failureToFile.plus(failureToPay).plus(interest);
    const beyondTax = atLeastZero(paid.minus(totalTax));
    const billed = event === "notice and demand" ? notice : undefined;
    return {
      date,
      event,
      amount: billed?.demanded ?? amount,
      payBy: billed?.payBy,
      failureToFile,
      failureToPay,
      interest,
      interestOnPenalties,
      source,
      unpaidTax: atLeastZero(totalTax.minus(paid)),
      unpaidPenaltiesAndInterest: atLeastZero(penaltiesAndInterest.minus(beyondTax)),
      overpayment: atLeastZero(beyondTax.minus(penaltiesAndInterest)),
    };
  });
}
