import type { CalendarDate } from "../../calendar/calendarDate";
import { once } from "../../calendar/once";
import { atLeastZero, Decimal, isMoreThanZero, toCents, ZERO } from "../../money/dollars";
import type { Charges, ChargesInput, ChargesRules } from "./charges";
import { failureToFilePenalty } from "./failureToFilePenalty";
import { failureToPayAccount } from "./failureToPayAccount";
import type { FailureToPayPenalty } from "./failureToPayPenalty";
import { interestAccount } from "./interestAccount";
import { paidBeyond } from "./paidBeyond";
import { reasonableCauseTest } from "./reasonableCauseTest";
import {
  underpaymentInterest,
  type Payment,
  type UnderpaymentInterest,
} from "./underpaymentInterest";
import { unpaidAfterDue } from "./unpaidAfterDue";

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
 * Both penalties and the interest, asked for one date after another.
 *
 * Whether the 90% reasonable-cause test is met, and whether the return is on time, is decided once, from all payments and the date the
 * return is filed in the end. So no date shows an amount that a later date removes.
 *
 * @param input - The return and every payment; `charges` explains what is charged.
 * @param rules - Penalty rates, minimum penalty, 90% test, interest rates.
 * @returns The parts through a date, which must not be before the date asked for last, of a return filed by a second date: the date it
 *   is filed, or the date asked for if it is not filed by then.
 * @throws NotInTableError where a rate or the minimum is not published.
 * @see 26 U.S.C. 6601(a), (b)(1), (e)(2), 6651(a), (c)(1); 26 CFR 301.6651-1(c)(3)
 */
export function chargesAccount(
  input: Omit<ChargesInput, "through">,
  rules: ChargesRules
): (through: CalendarDate, filedOn: CalendarDate) => Charges {
  const { dates, totalTax, payments, validExtension, afterNotice } = input;
  const interestRates = { table: rules.underpaymentRate, assumedRate: input.assumedRate };
  const filingDue = validExtension ? dates.extended : dates.regular;
  const owed = atLeastZero(totalTax.minus(input.paidOnTime));
  const paymentsForInterest = afterNotice?.paymentsForInterest ?? payments;
  const forInterest = unpaidAfterDue(dates.payment, owed, paymentsForInterest);
  const forPenalties = unpaidAfterDue(dates.regular, owed, payments);
  const beyondTax = once(() => paidBeyond(owed, paymentsForInterest));

  const excused = reasonableCauseTest(
    {
      validExtension,
      regular: dates.regular,
      extendedDue: dates.extended,
      totalTax,
      unpaidTax: forPenalties.unpaid,
      paidInFullOn: datePaidInFull(owed, payments),
      filedOn: input.filedOn,
    },
    rules
  );
  const timely = input.filedOn <= filingDue.lastDay;
  const failureToPayThrough = failureToPayAccount(
    {
      due: dates.regular,
      unpaidTax: forPenalties.unpaid,
      payments: forPenalties.later,
      agreementOn: timely ? input.agreementOn : undefined,
      levyNoticeRate: input.levyNoticeRate,
    },
    rules.failureToPay
  );
  const interestOnTaxThrough = interestAccount(
    forInterest.unpaid,
    dates.payment.countedFrom,
    forInterest.later,
    interestRates
  );

  return (through, filedOn) => {
    const failureToPay = excused ? NO_PENALTY : failureToPayThrough(through);
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
      through > dates.payment.lastDay ? interestOnTaxThrough(through) : NO_INTEREST;
    const filingPenalty = toCents(failureToFile.amount);
    const payingPenalty = toCents(failureToPay.amount);
    const paidFirst = afterNotice
      ? Decimal.min(payingPenalty, afterNotice.failureToPay)
      : payingPenalty;
    const interestOnPenalty = isMoreThanZero(filingPenalty)
      ? underpaymentInterest(
          filingPenalty,
          filingDue.countedFrom,
          paidBeyond(paidFirst, beyondTax()),
          through,
          interestRates
        )
      : NO_INTEREST;
    const total = filingPenalty
      .plus(payingPenalty)
      .plus(toCents(interestOnTax.amount))
      .plus(toCents(interestOnPenalty.amount));
    return { failureToFile, failureToPay, excused, interestOnTax, interestOnPenalty, total };
  };
}
