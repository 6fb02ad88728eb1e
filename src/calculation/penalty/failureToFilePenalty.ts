import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import { concurrentMonths } from "./concurrentMonths";
import type { FailureToPayPenalty } from "./failureToPayPenalty";
import { failureToFileMinimum, type FailureToFileMinimum } from "./failureToFileMinimum";

/** What was filed late, and what runs beside it. */
export interface FailureToFileInput {
  /** When the return was due, with its extension if there was one. */
  readonly due: DueDate;
  /** When it was due without one. */
  readonly unextended: DueDate;
  readonly filedOn: CalendarDate;
  /** Dollars of tax required to be shown, less what was paid by the last day to pay and credits. */
  readonly netTax: Decimal;
  /** The failure-to-pay addition whose months reduce this one; left out, this addition stands alone. */
  readonly failureToPay?: FailureToPayPenalty | undefined;
}

/** The addition with its steps; nothing charged when `months` is zero. */
export interface FailureToFilePenalty {
  readonly months: number;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly monthlyRate: Decimal;
  readonly base: Decimal;
  readonly gross: Decimal;
  /** What the failure-to-pay addition of the same months takes off. */
  readonly reduction: Decimal;
  /** Given where the return is late enough for it. */
  readonly minimum: FailureToFileMinimum | undefined;
  /** Dollars, not rounded: gross less reduction, not below the minimum. */
  readonly amount: Decimal;
  readonly source: Source;
}

/**
 * Addition to tax for failure to file.
 *
 * A share of the net tax for each month or part of a month from the due date with its extension, up to a maximum. Payments after
 * the regular day to pay never shrink its base, even under an extension (section 6651(b)(1)).
 *
 * @param input - Dollars and days.
 * @param rules - Shares, day count, minimum by year.
 * @returns The addition with its steps.
 * @throws NotInTableError where the minimum applies and the year's amount is not published.
 * @see 26 U.S.C. 6651(a)(1), (b)(1), (c)(1); 26 CFR 301.6651-1(a)(1), (d)(1)
 *
 * @example
 * // 26 CFR 301.6651-1(f), Example 2: $500 unpaid, filed 1970-12-02
 * //=> 112.50
 */
export function failureToFilePenalty(
  input: FailureToFileInput,
  rules: Pick<Rulebook, "failureToFile" | "failureToFileMinimum">
): FailureToFilePenalty {
  const { due, unextended, filedOn, netTax, failureToPay } = input;
  const { figures, source } = entryOn(rules.failureToFile, unextended.countedFrom);
  const { monthlyRate, maximumRate } = figures;
  const most = maximumRate.div(monthlyRate).ceil().toNumber();
  const timely = filedOn <= due.lastDay || !netTax.greaterThan(0);
  const months = timely ? 0 : Math.min(monthsBegun(due.countedFrom, filedOn), most);
  const gross = netTax.times(Decimal.min(monthlyRate.times(months), maximumRate));
  const reduction =
    months > 0 && failureToPay ? concurrentMonths(due, months, unextended, failureToPay) : ZERO;
  const minimum = timely
    ? undefined
    : failureToFileMinimum(due, unextended, filedOn, netTax, rules);
  return {
    months,
    from: addDays(due.countedFrom, 1),
    to: monthEnd(due.countedFrom, months),
    monthlyRate,
    base: netTax,
    gross,
    reduction,
    minimum,
    amount: Decimal.max(gross.minus(reduction), minimum?.amount ?? ZERO),
    source,
  };
}
