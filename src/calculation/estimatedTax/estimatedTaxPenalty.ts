import {
  daysBetween,
  earlierDate,
  laterDate,
  written,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import { dateAfterTaxYear } from "../dueDate/dateAfterTaxYear";
import type { MovingRules } from "../dueDate/dueDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import type { AssumedRate } from "../penalty/underpaymentRate";
import type { FilerType } from "../filerType";
import { earlyReturnException, type EarlyReturnInput } from "./earlyReturnException";
import { estimateRatePeriods } from "./estimateRatePeriods";
import { installmentPayments, type InstallmentPart } from "./installmentPayments";
import { requiredInstallments } from "./requiredInstallments";

/** The estimated tax payments of a year, and when its return was filed. Payments are in any order. */
export interface EstimatedTaxInput extends EarlyReturnInput {
  /** Dollars, section 6654(d). */
  readonly requiredAnnualPayment: Decimal;
  /** Dollars of each installment by the annualized method, in order; `undefined` for parts of the required annual payment. */
  readonly installments?: readonly Decimal[] | undefined;
  /** Filer type in the year; a nonresident alien without wages subject to withholding has three installments. */
  readonly filerType?: FilerType | undefined;
  readonly assumedRate?: AssumedRate | undefined;
}

/** The penalty on a part of an installment in one rate period. */
export interface PenaltyLine {
  readonly installment: number;
  readonly amount: Decimal;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly days: number;
  readonly rate: Decimal;
  readonly divisor: 365 | 366;
  /** Dollars and cents; each line is rounded, as on Form 2210. */
  readonly penalty: Decimal;
  readonly sources: readonly Source[];
}

/** The penalty with its lines. */
export interface EstimatedTaxPenalty {
  readonly lines: readonly PenaltyLine[];
  /** Dollars and cents. */
  readonly amount: Decimal;
  /** The date of the exception for an early return with full payment, if it ends the penalty on the last installment. */
  readonly earlyReturnBy: CalendarDate | undefined;
}

/**
 * Estimated tax penalty.
 *
 * The underpayment rate, not compounded, on each part of an installment from its due date until it is paid, or until the 15th day
 * of the fourth month after the year, which no extension moves. A payment on the workday after a weekend is on time; for a later
 * one the penalty counts from the 15th. The safe harbors are in the required annual payment, the exception for less than $1,000 is in
 * `smallBalanceException`, and the exception for an early return in `earlyReturnException`. Waivers are not calculated, and a short
 * tax year is not possible.
 *
 * @param input - Dollars and dates.
 * @param rules - Installment dates, holidays, postponements, rates.
 * @returns The penalty, line by line.
 * @throws NotInTableError if a rate or a date is not in its table.
 * @see 26 U.S.C. 6654(a), (b), (d)(2), (h), (i)(1), (j), 6621(b)(2)(B), 6622(b); Form 2210, regular method; Form 2210-F
 */
export function estimatedTaxPenalty(
  input: EstimatedTaxInput,
  rules: MovingRules & Pick<Rulebook, "installments" | "requiredAnnualPayment" | "underpaymentRate">
): EstimatedTaxPenalty {
  const { taxYear, requiredAnnualPayment, withholding, payments, paidOn, postponement } = input;
  const { filerType = "resident", farmerOrFisherman = false } = input;
  const earlyReturnBy = earlyReturnException(input, rules);
  const required = requiredInstallments(taxYear, filerType, farmerOrFisherman, rules);
  const dues = required.map(({ number }) =>
    installmentDueDate(taxYear, filerType, number, postponement, rules)
  );
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const end = dateAfterTaxYear(
    taxYear,
    figures.penaltyEndMonth.toNumber(),
    figures.penaltyEndDay.toNumber()
  );
  const installments =
    input.installments ?? required.map(({ share }) => requiredAnnualPayment.times(share));
  const all = installments.reduce((sum, one) => sum.plus(one), ZERO);
  const balance = atLeastZero(
    payments.reduce((left, { amount }) => left.minus(amount), all.minus(withholding))
  );
  const parts = installmentPayments(
    dues,
    installments,
    withholding,
    paidOn === undefined ? payments : [...payments, { date: paidOn, amount: balance }]
  );
  const stopOf = (part: InstallmentPart): CalendarDate => earlierDate(part.paidOn ?? end, end);
  const charged = earlyReturnBy === undefined ? dues.length : dues.length - 1;
  const late = parts.filter(
    ({ installment, paidOn: on = end, due }) => installment <= charged && on > due.lastDay
  );
  if (late.length === 0) return { lines: [], amount: ZERO, earlyReturnBy };
  const lastStop = late.map(stopOf).reduce(laterDate);
  // A postponement that ends on a weekend can move the first installment after the second.
  const firstDay = dues.map((due) => due.countedFrom).reduce(earlierDate);
  const periods = estimateRatePeriods(firstDay, taxYear, lastStop, input.assumedRate, rules);

  const lines = new Map<string, PenaltyLine>();
  for (const part of late) {
    const { due, amount } = part;
    const installment = required[part.installment - 1]?.number ?? part.installment;
    const stops = stopOf(part);
    for (const { from, to, rate, divisor, sources } of periods) {
      const begins = laterDate(from, due.countedFrom);
      const ends = earlierDate(to, stops);
      if (begins >= ends) continue;
      const key = `${String(installment)}|${written(begins)}|${written(ends)}`;
      const lineAmount = amount.plus(lines.get(key)?.amount ?? ZERO);
      const days = daysBetween(begins, ends);
      const penalty = toCents(lineAmount.times(days).times(rate).div(divisor));
      const line = { installment, amount: lineAmount, from: begins, to: ends, days, rate, divisor };
      lines.set(key, { ...line, penalty, sources });
    }
  }
  const allLines = [...lines.values()];
  const amount = allLines.reduce((sum, line) => sum.plus(line.penalty), ZERO);
  return { lines: allLines, amount, earlyReturnBy };
}
