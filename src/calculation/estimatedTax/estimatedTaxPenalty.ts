import {
  daysBetween,
  earlierDate,
  laterDate,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import { dayAfterTaxYear } from "../dueDate/dayAfterTaxYear";
import type { DisasterPostponement } from "../dueDate/disasterPostponement";
import type { MovingRules } from "../dueDate/dueDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import type { LatePayment } from "../penalty/underpaymentInterest";
import type { AssumedRate } from "../penalty/underpaymentRate";
import type { TaxYear } from "../taxYear";
import { estimateRatePeriods } from "./estimateRatePeriods";
import { installmentPayments, type InstallmentPart } from "./installmentPayments";

/** A year's estimates as they were paid. */
export interface EstimatedTaxInput {
  readonly taxYear: TaxYear;
  /** Dollars, section 6654(d). */
  readonly requiredAnnualPayment: Decimal;
  readonly withholding: Decimal;
  /** Estimated payments, in any order. */
  readonly payments: readonly LatePayment[];
  /** The day the rest was paid, if before the addition ends by itself. */
  readonly paidOn?: CalendarDate | undefined;
  /** Farmers and fishers have one installment, the fourth, of the whole. */
  readonly farmerOrFisherman?: boolean | undefined;
  readonly postponement?: DisasterPostponement | undefined;
  readonly assumedRate?: AssumedRate | undefined;
}

/** What a part of an installment costs in one rate period. */
export interface EstimateLine {
  readonly installment: number;
  readonly amount: Decimal;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly days: number;
  readonly rate: Decimal;
  readonly divisor: 365 | 366;
  /** Dollars and cents: each line rounds, as on Form 2210. */
  readonly addition: Decimal;
  readonly sources: readonly Source[];
}

/** The addition with its lines. */
export interface EstimatedTaxPenalty {
  readonly lines: readonly EstimateLine[];
  /** Dollars and cents. */
  readonly amount: Decimal;
}

const INSTALLMENTS = [1, 2, 3, 4] as const;
const OF_FARMERS = [4] as const;

/**
 * Addition to tax for underpaid estimates.
 *
 * Each part of an installment bears the underpayment rate, not compounded, from its due date until it is paid or until the 15th day of
 * the fourth month after the year, which no extension moves. A payment by the workday after a weekend is timely; one later counts
 * from the 15th. Whether any addition is due at all (harbors, $1,000, no tax last year) lies in the required annual payment.
 *
 * @param input - Dollars and days.
 * @param rules - Installment dates, holidays, postponements, rates.
 * @returns The addition, line by line.
 * @throws NotInTableError where a rate or a date is not held.
 * @see 26 U.S.C. 6654(a), (b), (i)(1), 6621(b)(2)(B), 6622(b); Form 2210, regular method; Form 2210-F
 */
export function estimatedTaxPenalty(
  input: EstimatedTaxInput,
  rules: MovingRules & Pick<Rulebook, "installments" | "requiredAnnualPayment" | "underpaymentRate">
): EstimatedTaxPenalty {
  const { taxYear, requiredAnnualPayment, withholding, payments, paidOn, postponement } = input;
  const numbers = input.farmerOrFisherman ? OF_FARMERS : INSTALLMENTS;
  const dues = numbers.map((number) => installmentDueDate(taxYear, number, postponement, rules));
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const end = dayAfterTaxYear(
    taxYear,
    figures.penaltyEndMonth.toNumber(),
    figures.penaltyEndDay.toNumber()
  );
  const share = input.farmerOrFisherman ? figures.farmerInstallmentShare : figures.installmentShare;
  const rest = atLeastZero(
    payments.reduce(
      (left, { amount }) => left.minus(amount),
      requiredAnnualPayment.minus(withholding)
    )
  );
  const parts = installmentPayments(
    dues,
    requiredAnnualPayment.times(share),
    withholding,
    paidOn === undefined ? payments : [...payments, { day: paidOn, amount: rest }]
  );
  const stopOf = (part: InstallmentPart): CalendarDate => earlierDate(part.paidOn ?? end, end);
  const late = parts.filter((part) => (part.paidOn ?? end) > part.due.lastDay);
  if (late.length === 0) return { lines: [], amount: ZERO };
  const rates = { table: rules.underpaymentRate, assumedRate: input.assumedRate };
  const lastStop = late.map(stopOf).reduce(laterDate);
  // relief that ends within a weekend puts the first installment after the second
  const firstDay = dues.map((due) => due.countedFrom).reduce(earlierDate);
  const periods = estimateRatePeriods(firstDay, taxYear, lastStop, rates);

  const lines = new Map<string, EstimateLine>();
  for (const part of late) {
    const { due, amount } = part;
    const installment = numbers[part.installment - 1] ?? part.installment;
    const stops = stopOf(part);
    for (const { from, to, rate, divisor, sources } of periods) {
      const begins = laterDate(from, due.countedFrom);
      const ends = earlierDate(to, stops);
      if (begins >= ends) continue;
      const key = `${String(installment)}|${begins}|${ends}`;
      const together = amount.plus(lines.get(key)?.amount ?? ZERO);
      const days = daysBetween(begins, ends);
      const addition = toCents(together.times(days).times(rate).div(divisor));
      const line = { installment, amount: together, from: begins, to: ends, days, rate, divisor };
      lines.set(key, { ...line, addition, sources });
    }
  }
  const charged = [...lines.values()];
  const amount = charged.reduce((sum, line) => sum.plus(line.addition), ZERO);
  return { lines: charged, amount };
}
