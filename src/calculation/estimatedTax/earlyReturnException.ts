import {
  addDays,
  earlierDate,
  lastDayOfMonth,
  type CalendarDate,
} from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { dateAfterTaxYear } from "../dueDate/dateAfterTaxYear";
import type { DisasterPostponement } from "../dueDate/disasterPostponement";
import { dueDate, type MovingRules } from "../dueDate/dueDate";
import type { Payment } from "../penalty/underpaymentInterest";
import type { TaxYear } from "../taxYear";

/** When the return was filed and the tax paid. */
export interface EarlyReturnInput {
  readonly taxYear: TaxYear;
  readonly filedOn?: CalendarDate | undefined;
  /** The date the remaining tax was paid. */
  readonly paidOn?: CalendarDate | undefined;
  /** Dollars of tax on the return. Payments that reach it by the date leave nothing to pay. */
  readonly currentYearTax?: Decimal | undefined;
  readonly withholding: Decimal;
  readonly payments: readonly Payment[];
  readonly farmerOrFisherman?: boolean | undefined;
  readonly postponement?: DisasterPostponement | undefined;
}

/**
 * The date by which an early return with full payment ends the penalty on the last installment, if both were made by then.
 *
 * January 31, or March 1 for farmers and fishermen, whose only installment is the last. For a fiscal year the corresponding dates.
 * Weekends, holidays of the District of Columbia and postponements move them. An extension of time does not. The last of a nonresident
 * alien's three installments counts as the fourth, as in the last column of the form.
 *
 * @param input - Dates and dollars.
 * @param rules - The dates, holidays and postponements.
 * @returns The date, or `undefined` if the return was not filed and paid in full by it, as far as is known.
 * @throws NotInTableError for a date that the holiday table does not cover.
 * @see 26 U.S.C. 6654(h), (i)(1)(D), (k)(1), 7503, 7508A; Form 2210 instructions, line 19
 */
export function earlyReturnException(
  input: EarlyReturnInput,
  rules: MovingRules & Pick<Rulebook, "requiredAnnualPayment">
): CalendarDate | undefined {
  const { taxYear, filedOn, paidOn, currentYearTax, withholding, postponement } = input;
  if (filedOn === undefined) return undefined;
  const { figures, source } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const [month, day] =
    input.farmerOrFisherman === true
      ? [figures.farmerReturnMonth, figures.farmerReturnDay]
      : [figures.earlyReturnMonth, figures.earlyReturnDay];
  const firstOfMonth = dateAfterTaxYear(taxYear, month.toNumber(), 1);
  const named = earlierDate(
    addDays(firstOfMonth, day.toNumber() - 1),
    lastDayOfMonth(firstOfMonth)
  );
  const { lastDay } = dueDate("return", named, source, { postponement }, rules);
  if (filedOn > lastDay) return undefined;
  const paidBy = input.payments
    .filter(({ date }) => date <= lastDay)
    .reduce((sum, { amount }) => sum.plus(amount), withholding);
  const isPaid =
    (paidOn !== undefined && paidOn <= lastDay) ||
    (currentYearTax !== undefined && paidBy.greaterThanOrEqualTo(currentYearTax));
  return isPaid ? lastDay : undefined;
}
