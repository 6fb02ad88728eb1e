import type { CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, Decimal, isMoreThanZero, toCents, ZERO } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { ClientDates } from "../dueDate/clientDates";
import {
  underpaymentInterest,
  type Payment,
  type UnderpaymentInterest,
} from "./underpaymentInterest";
import type { AssumedRate } from "./underpaymentRate";
import { reasonableCauseTest } from "./reasonableCauseTest";
import { failureToFilePenalty, type FailureToFilePenalty } from "./failureToFilePenalty";
import {
  failureToPayPenalty,
  type FailureToPayPenalty,
  type LevyNoticeRate,
} from "./failureToPayPenalty";
import { paidBeyond } from "./paidBeyond";
import { unpaidAfterDue } from "./unpaidAfterDue";

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
  /**
   * Given if `through` is a date before the return is filed: the law that excuses failure to pay in the end, and whether the
   * return is on time in the end.
   */
  readonly outcome?: { readonly excused: Source | undefined; readonly timely: boolean } | undefined;
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

const NO_PENALTY: FailureToPayPenalty = { periods: [], amount: ZERO };
const NO_INTEREST: UnderpaymentInterest = { periods: () => [], amount: ZERO };

function datePaidInFull(owed: Decimal, payments: readonly Payment[]): CalendarDate | undefined {
  let unpaid = owed;
  return payments.find((payment) => {
    unpaid = unpaid.minus(payment.amount);
    return !isMoreThanZero(unpaid);
  })?.date;
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
export function charges(
  input: ChargesInput,
  rules: Pick<
    Rulebook,
    | "failureToFile"
    | "failureToFileMinimum"
    | "failureToPay"
    | "reasonableCauseTest"
    | "underpaymentRate"
  >
): Charges {
  const { dates, totalTax, payments, filedOn, validExtension, through, agreementOn } = input;
  const interestRates = { table: rules.underpaymentRate, assumedRate: input.assumedRate };
  const filingDue = validExtension ? dates.extended : dates.regular;
  const owed = atLeastZero(totalTax.minus(input.paidOnTime));
  const paymentsForInterest = input.afterNotice?.paymentsForInterest ?? payments;
  const forInterest = unpaidAfterDue(dates.payment, owed, paymentsForInterest);
  const forPenalties = unpaidAfterDue(dates.regular, owed, payments);

  const excused = input.outcome
    ? input.outcome.excused
    : reasonableCauseTest(
        {
          validExtension,
          regular: dates.regular,
          extendedDue: dates.extended,
          totalTax,
          unpaidTax: forPenalties.unpaid,
          paidInFullOn: datePaidInFull(owed, payments),
          filedOn,
        },
        rules
      );
  const timely = input.outcome?.timely ?? filedOn <= filingDue.lastDay;
  const failureToPay = excused
    ? NO_PENALTY
    : failureToPayPenalty(
        {
          due: dates.regular,
          unpaidTax: forPenalties.unpaid,
          payments: forPenalties.later,
          through,
          agreementOn: timely ? agreementOn : undefined,
          levyNoticeRate: input.levyNoticeRate,
        },
        rules.failureToPay
      );
  const failureToFile = failureToFilePenalty(
    {
      due: filingDue,
      regular: dates.regular,
      filedOn,
      unpaidTax: forPenalties.unpaid,
      failureToPay,
    },
    rules
  );
  // Nothing is late until the payment due date has passed. If it is then missed, interest counts from the date the law names.
  const interestOnTax =
    through > dates.payment.lastDay
      ? underpaymentInterest(
          forInterest.unpaid,
          dates.payment.countedFrom,
          forInterest.later,
          through,
          interestRates
        )
      : NO_INTEREST;
  const filingPenalty = toCents(failureToFile.amount);
  const paidFirst = Decimal.min(
    toCents(failureToPay.amount),
    input.afterNotice?.failureToPay ?? Infinity
  );
  const interestOnPenalty = isMoreThanZero(filingPenalty)
    ? underpaymentInterest(
        filingPenalty,
        filingDue.countedFrom,
        paidBeyond(paidFirst, paidBeyond(owed, paymentsForInterest)),
        through,
        interestRates
      )
    : NO_INTEREST;
  const total = filingPenalty
    .plus(toCents(failureToPay.amount))
    .plus(toCents(interestOnTax.amount))
    .plus(toCents(interestOnPenalty.amount));
  return {
    failureToFile,
    failureToPay,
    excused,
    interestOnTax,
    interestOnPenalty,
    total,
  };
}
