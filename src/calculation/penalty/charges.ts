import type { CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { ClientDates } from "../dueDate/clientDates";
import type { DueDate } from "../dueDate/dueDate";
import {
  underpaymentInterest,
  type LatePayment,
  type UnderpaymentInterest,
} from "./underpaymentInterest";
import type { AssumedRate } from "./underpaymentRate";
import { reasonableCauseTest } from "./reasonableCauseTest";
import { failureToFilePenalty, type FailureToFilePenalty } from "./failureToFilePenalty";
import { failureToPayPenalty, type FailureToPayPenalty } from "./failureToPayPenalty";

/** A return as it was, or is planned to be, filed and paid. */
export interface ChargesInput {
  readonly dates: ClientDates;
  /** Dollars of total tax as the return will show it. */
  readonly totalTax: Decimal;
  /** Dollars paid by the last day to pay: withholding, estimates, credits, what went with the request. */
  readonly paidOnTime: Decimal;
  /** Payments after that, rising by day. */
  readonly payments: readonly LatePayment[];
  readonly filedOn: CalendarDate;
  /** Whether a valid request was made in time. */
  readonly extended: boolean;
  /** Day through which what is still open is worked out. */
  readonly through: CalendarDate;
  readonly agreementBegins?: CalendarDate | undefined;
  /** How the return ends, where the charges are those of an earlier day: what excuses failure to pay, and whether it was timely. */
  readonly outcome?: { readonly excused: Source | undefined; readonly timely: boolean } | undefined;
  readonly assumedRate?: AssumedRate | undefined;
}

/** What a return filed or paid late costs, part by part. */
export interface Charges {
  readonly failureToFile: FailureToFilePenalty;
  readonly failureToPay: FailureToPayPenalty;
  /** The law that excuses failure to pay, where it does. */
  readonly excused: Source | undefined;
  readonly interestOnTax: UnderpaymentInterest;
  /** Interest on the failure-to-file addition. */
  readonly interestOnAddition: UnderpaymentInterest;
  /** Dollars and cents: the four parts, each rounded once. */
  readonly total: Decimal;
}

const NOTHING_CHARGED: FailureToPayPenalty = { charged: [], amount: ZERO };
const NO_INTEREST: UnderpaymentInterest = { periods: [], amount: ZERO };

/** What is unpaid after the last day for a timely payment, and the payments that come later. */
function afterDue(
  due: DueDate,
  owed: Decimal,
  payments: readonly LatePayment[]
): { readonly unpaid: Decimal; readonly later: readonly LatePayment[] } {
  const later = payments.filter((payment) => payment.day > due.lastDay);
  const timely = payments.filter((payment) => payment.day <= due.lastDay);
  const paid = timely.reduce((sum, payment) => sum.plus(payment.amount), ZERO);
  return { unpaid: atLeastZero(owed.minus(paid)), later };
}

function dayPaidInFull(owed: Decimal, payments: readonly LatePayment[]): CalendarDate | undefined {
  let unpaid = owed;
  return payments.find((payment) => {
    unpaid = unpaid.minus(payment.amount);
    return !unpaid.greaterThan(0);
  })?.day;
}

/**
 * Both additions to tax and the interest on a return filed or paid late, every reduction and presumption applied.
 *
 * Interest runs on the tax from the regular day to pay whatever was asked; on the failure-to-file addition from the day the return
 * was due with its extension (section 6601(e)(2)(B)); on the failure-to-pay addition not before notice. Interest so far is taken to
 * be paid together with the last of the tax.
 *
 * @param input - The return and the payments.
 * @param rules - Shares, minimum, presumption, rates.
 * @returns The parts and their total in dollars and cents.
 * @throws NotInTableError where a rate or the minimum is not published.
 * @see 26 U.S.C. 6601(a), (b)(1), (e)(2), 6651(a), (c)(1); 26 CFR 301.6651-1(c)(3)
 *
 * @example
 * // 26 CFR 301.6651-1(f), Example 2, additions: 112.50 and 20.00
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
  const { dates, totalTax, payments, filedOn, extended, through, agreementBegins } = input;
  const interestRates = { table: rules.underpaymentRate, assumedRate: input.assumedRate };
  const filingDue = extended ? dates.extended : dates.regular;
  const owed = atLeastZero(totalTax.minus(input.paidOnTime));
  const forInterest = afterDue(dates.payment, owed, payments);
  const forAdditions = afterDue(dates.regular, owed, payments);

  const excused = input.outcome
    ? input.outcome.excused
    : reasonableCauseTest(
        {
          extended,
          regular: dates.regular,
          extendedDue: dates.extended,
          totalTax,
          unpaid: forAdditions.unpaid,
          paidInFullOn: dayPaidInFull(owed, payments),
          filedOn,
        },
        rules
      );
  const timely = input.outcome?.timely ?? filedOn <= filingDue.lastDay;
  const failureToPay = excused
    ? NOTHING_CHARGED
    : failureToPayPenalty(
        {
          due: dates.regular,
          unpaid: forAdditions.unpaid,
          payments: forAdditions.later,
          through,
          agreementBegins: timely ? agreementBegins : undefined,
        },
        rules.failureToPay
      );
  const failureToFile = failureToFilePenalty(
    {
      due: filingDue,
      unextended: dates.regular,
      filedOn,
      netTax: forAdditions.unpaid,
      failureToPay,
    },
    rules
  );
  // Until the last day to pay has passed nothing is late, though the days of a weekend before it would count.
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
  const addition = toCents(failureToFile.amount);
  const interestOnAddition = addition.greaterThan(0)
    ? underpaymentInterest(addition, filingDue.countedFrom, [], through, interestRates)
    : NO_INTEREST;
  const total = addition
    .plus(toCents(failureToPay.amount))
    .plus(toCents(interestOnTax.amount))
    .plus(toCents(interestOnAddition.amount));
  return { failureToFile, failureToPay, excused, interestOnTax, interestOnAddition, total };
}
