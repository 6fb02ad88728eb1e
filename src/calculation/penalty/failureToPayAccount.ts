import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { isMoreThanZero, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type {
  FailureToPayInput,
  FailureToPayPenalty,
  FailureToPayRates,
  PenaltyPeriod,
} from "./failureToPayPenalty";
import { shareOfMonths } from "./shareOfMonths";

/**
 * Failure-to-pay penalty, asked for one date after another. Each payment is looked at once, so that a long payment history takes no
 * more time for each of its rows.
 *
 * @param input - Dollars and dates; `failureToPayPenalty` explains them.
 * @param rates - rules/failure-to-pay.json.
 * @returns The penalty through a date, which must not be before the date asked for last. A date asked for ends a period of months, so
 *   that the same penalty can have more periods.
 * @throws NotInTableError for a month that begins before the table.
 * @see 26 U.S.C. 6651(a)(2), (b)(2), (d), (h); 26 CFR 301.6651-1(a)(2), (b), (d)(2)
 */
export function failureToPayAccount(
  input: Omit<FailureToPayInput, "through">,
  rates: FailureToPayRates
): (through: CalendarDate) => FailureToPayPenalty {
  const { due, payments, agreementOn, levyNoticeRate } = input;
  const countedFrom = due.countedFrom;
  const agreementMonth =
    agreementOn === undefined ? Infinity : Math.max(1, monthsBegun(countedFrom, agreementOn));
  const levyMonth = levyNoticeRate ? monthsBegun(countedFrom, levyNoticeRate.after) + 1 : Infinity;
  const periods: PenaltyPeriod[] = [];
  let amount = ZERO;
  let shareToDate = ZERO;

  const chargeMonths = (first: number, last: number, base: Decimal): void => {
    for (let month = first; month <= last;) {
      const from = addDays(monthEnd(countedFrom, month - 1), 1);
      const { figures, source: law } = entryOn(rates, from);
      const left = figures.maximumRate.minus(shareToDate);
      if (!isMoreThanZero(left)) return;
      const afterLevyNotice = month >= levyMonth ? levyNoticeRate : undefined;
      const underAgreement = month >= agreementMonth;
      const next = rates.entries.find((entry) => entry.from > from);
      const lastAtSameRate = Math.min(
        last,
        afterLevyNotice ? Infinity : levyMonth - 1,
        afterLevyNotice || underAgreement ? Infinity : agreementMonth - 1,
        next ? monthsBegun(countedFrom, addDays(next.from, -1)) : Infinity
      );
      const ordinaryRate = underAgreement ? figures.agreementRate : figures.monthlyRate;
      const monthlyRate = afterLevyNotice?.monthlyRate ?? ordinaryRate;
      const source = afterLevyNotice?.source ?? law;
      const { months, share } = shareOfMonths(lastAtSameRate - month + 1, monthlyRate, left);
      const penalty = base.times(share);
      const to = monthEnd(countedFrom, month + months - 1);
      periods.push({
        firstMonth: month,
        months,
        from,
        to,
        monthlyRate,
        share,
        base,
        amount: penalty,
        source,
      });
      amount = amount.plus(penalty);
      shareToDate = shareToDate.plus(share);
      month += months;
    }
  };

  let unpaid = input.unpaidTax;
  let monthsToDate = 0;
  const chargeThrough = (date: CalendarDate): void => {
    const months = date <= due.lastDay ? 0 : monthsBegun(countedFrom, date);
    if (isMoreThanZero(unpaid) && months > monthsToDate)
      chargeMonths(monthsToDate + 1, months, unpaid);
    monthsToDate = Math.max(monthsToDate, months);
  };
  let next = 0;
  return (through) => {
    for (let payment = payments[next]; payment && payment.date <= through;) {
      chargeThrough(payment.date);
      unpaid = unpaid.minus(payment.amount);
      payment = payments[++next];
    }
    chargeThrough(through);
    return { periods: [...periods], amount };
  };
}
