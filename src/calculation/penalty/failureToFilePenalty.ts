import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { monthEnd, monthsBegun } from "../../calendar/monthOfDelinquency";
import { atLeastZero, Decimal, isMoreThanZero, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import { concurrentMonths } from "./concurrentMonths";
import type { FailureToPayPenalty } from "./failureToPayPenalty";
import { failureToFileMinimum, type FailureToFileMinimum } from "./failureToFileMinimum";
import { shareOfMonths } from "./shareOfMonths";

/** A return filed late, and the failure-to-pay penalty for the same months. */
export interface FailureToFileInput {
  /** Due date of the return, including any extension. */
  readonly due: DueDate;
  /** Due date of the return without an extension. */
  readonly regular: DueDate;
  readonly filedOn: CalendarDate;
  /** Dollars of tax required to be shown on the return, less credits and payments by the regular due date. */
  readonly unpaidTax: Decimal;
  /** The failure-to-pay penalty that reduces this one; if not given, nothing is reduced. */
  readonly failureToPay?: FailureToPayPenalty | undefined;
}

/** The penalty with its steps; there is none if `months` is zero. */
export interface FailureToFilePenalty {
  readonly months: number;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly monthlyRate: Decimal;
  readonly base: Decimal;
  readonly gross: Decimal;
  /** Dollars of failure-to-pay penalty for the same months. */
  readonly reduction: Decimal;
  /** Given if the return is late enough for it. */
  readonly minimum: FailureToFileMinimum | undefined;
  /** Dollars, not rounded: gross less reduction, but at least the minimum. */
  readonly amount: Decimal;
  readonly source: Source;
}

/**
 * Failure-to-file penalty.
 *
 * A percent of the unpaid tax for each month or part of a month after the due date including the extension, up to a maximum.
 * Payments after the regular due date never reduce the tax it is computed on, even with an extension (section 6651(b)(1)).
 *
 * @param input - Dollars and dates.
 * @param rules - Penalty rates, day count, minimum by year.
 * @returns The penalty with its steps.
 * @throws NotInTableError if the minimum applies and the year's amount is not published.
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
  const { due, regular, filedOn, unpaidTax, failureToPay } = input;
  const { figures, source } = entryOn(rules.failureToFile, regular.statutory);
  const { monthlyRate, maximumRate } = figures;
  const from = addDays(due.countedFrom, 1);
  if (filedOn <= due.lastDay || !isMoreThanZero(unpaidTax))
    return {
      months: 0,
      from,
      to: due.countedFrom,
      monthlyRate,
      base: unpaidTax,
      gross: ZERO,
      reduction: ZERO,
      minimum: undefined,
      amount: ZERO,
      source,
    };
  const begun = monthsBegun(due.countedFrom, filedOn);
  const { months, share } = shareOfMonths(begun, monthlyRate, maximumRate);
  const gross = unpaidTax.times(share);
  const reduction =
    months > 0 && failureToPay ? concurrentMonths(due, months, regular, failureToPay) : ZERO;
  const minimum = failureToFileMinimum(due, regular, filedOn, unpaidTax, rules);
  const reduced = gross.minus(reduction);
  return {
    months,
    from,
    to: monthEnd(due.countedFrom, months),
    monthlyRate,
    base: unpaidTax,
    gross,
    reduction,
    minimum,
    amount: minimum ? Decimal.max(reduced, minimum.amount) : atLeastZero(reduced),
    source,
  };
}
