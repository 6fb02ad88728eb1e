import { civil, dayNumber, daysInMonth, endsMonth } from "./civilDays";
import { dayByDayInterest, type Payment } from "./dayByDayInterest";
import { NoFigure } from "./noFigure";
import type { Assumed } from "./quarterlyRates";
import { statuteDates, type ActDate, type StatuteDates, type Whose } from "./statuteDates";

/**
 * Both penalties of section 6651 and the interest, month by month, in whole numbers: cents times 10,000, so that 0.5% and 0.25% of a
 * cent are whole.
 */
export interface LateReturn extends Whose {
  readonly taxCents: number;
  readonly paidOnTimeCents: number;
  readonly payments: readonly Payment[];
  readonly filed: number;
  readonly extended: boolean;
  readonly through: number;
  /** First day of an installment agreement. */
  readonly agreementBegins?: number | undefined;
  readonly assumed?: Assumed;
}

/** The final facts of the return, where only its first days are calculated. */
export interface Outcome {
  readonly presumed: boolean;
  readonly timely: boolean;
}

/** The parts in cents. */
export interface Parts {
  readonly failureToFile: number;
  readonly failureToPay: number;
  readonly interestOnTax: number;
  readonly interestOnAddition: number;
}

/** A month of failure to pay: its dates, the rate on the unpaid tax, and the amount. */
export interface PayMonth {
  readonly begins: number;
  readonly ends: number;
  readonly share: bigint;
  readonly amount: bigint;
}

const FINE = 10_000n;
const HALF_PERCENT = 50n;
const QUARTER_PERCENT = 25n;
const FIVE_PERCENT = 500n;
const MOST_SHARE = 2_500n;

/** Minimum failure-to-file penalty in dollars by the year of the due date: section 6651(a) and the procedures that adjust it. */
export const LEAST: Readonly<Record<number, number>> = {
  2009: 135,
  2010: 135,
  2011: 135,
  2012: 135,
  2013: 135,
  2014: 135,
  2015: 135,
  2016: 205,
  2017: 205,
  2018: 210,
  2019: 210,
  2020: 435,
  2021: 435,
  2022: 435,
  2023: 450,
  2024: 485,
  2025: 510,
  2026: 525,
  2027: 535,
};

/** The minimum of a year in dollars: none before 1983 (Pub. L. 97-248), then $100 through 2008. */
export function leastOf(year: number): number {
  if (year < 2009) return year < 1983 ? 0 : 100;
  const least = LEAST[year];
  if (least === undefined) throw new NoFigure(`no minimum for returns due in ${String(year)}`);
  return least;
}

const rounded = (fine: bigint): number => Number((fine + FINE / 2n) / FINE);

/** The date so many months after a date: the same day of the month, or the last day of a shorter month (26 CFR 301.6651-1(b)). */
export function endOfMonth(named: number, count: number): number {
  const { year, month, date } = civil(named);
  const months = year * 12 + month - 1 + count;
  const inYear = Math.floor(months / 12);
  const inMonth = (months % 12) + 1;
  const days = daysInMonth(inYear, inMonth);
  return dayNumber(inYear, inMonth, endsMonth(named) ? days : Math.min(date, days));
}

const paidThrough = (day: number, { paidOnTimeCents, payments }: LateReturn): number =>
  payments.reduce((sum, paid) => (paid.day <= day ? sum + paid.cents : sum), paidOnTimeCents);

/** The unpaid tax at the end of a date. */
export const unpaidAfter = (day: number, given: LateReturn): number =>
  Math.max(0, given.taxCents - paidThrough(day, given));

/**
 * The failure-to-pay penalty of each month, section 6651(a)(2), (b)(2), (h). A payment on the first day of a month does not reduce its
 * penalty. The rate is half in months with an installment agreement, if the return was timely.
 */
export function failureToPayMonths(
  given: LateReturn,
  due: ActDate,
  timely: boolean
): readonly PayMonth[] {
  const months: PayMonth[] = [];
  const agreement = timely ? (given.agreementBegins ?? Infinity) : Infinity;
  let charged = 0n;
  for (let month = 1; ; month++) {
    const begins = endOfMonth(due.named, month - 1) + 1;
    const ends = endOfMonth(due.named, month);
    const unpaid = unpaidAfter(month === 1 ? due.last : begins - 1, given);
    if (begins > given.through || given.through <= due.last) break;
    if (unpaid === 0 || charged === MOST_SHARE) break;
    const wanted = ends >= agreement ? QUARTER_PERCENT : HALF_PERCENT;
    const share = charged + wanted > MOST_SHARE ? MOST_SHARE - charged : wanted;
    charged += share;
    months.push({ begins, ends, share, amount: BigInt(unpaid) * share });
  }
  return months;
}

/**
 * Section 6651(a), last sentence, (j): no minimum up to 60 days late, then the smaller of the year's amount and the net tax. The year
 * is the one in which the return was required to be filed. A postponement disregards days and does not move the due date (26 CFR
 * 301.7508A-1(b)(4)).
 */
function leastAddition(given: LateReturn, due: ActDate, withoutExtension: ActDate): number {
  const net = unpaidAfter(withoutExtension.last, given);
  if (given.filed - due.named <= 60) return 0;
  return Math.min(net, leastOf(civil(withoutExtension.fifteenth).year) * 100);
}

/** The parts of the failure-to-file penalty, in cents times 10,000. */
export interface FilingAddition {
  readonly months: number;
  readonly gross: bigint;
  readonly reduction: bigint;
  /** In cents. */
  readonly least: number;
}

/** Section 6651(a)(1), (b)(1), (c)(1). */
export function failureToFile(
  given: LateReturn,
  due: ActDate,
  withoutExtension: ActDate,
  paidWithRequest: readonly PayMonth[]
): FilingAddition {
  const net = BigInt(unpaidAfter(withoutExtension.last, given));
  if (given.filed <= due.last || net === 0n)
    return { months: 0, gross: 0n, reduction: 0n, least: 0 };
  let months = 0;
  let reduction = 0n;
  while (months < 5) {
    const begins = endOfMonth(due.named, months) + 1;
    if (begins > given.filed) break;
    months++;
    // The failure-to-pay month that includes that date. This is the project's position where a postponement separates the months.
    const beside = paidWithRequest.find((month) => month.begins <= begins && begins <= month.ends);
    reduction += beside?.amount ?? 0n;
  }
  const least = leastAddition(given, due, withoutExtension);
  return { months, gross: net * FIVE_PERCENT * BigInt(months), reduction, least };
}

/** The 90% test of 26 CFR 301.6651-1(c)(3), which a late return does not meet. */
export function causeIsPresumed(given: LateReturn, { filing, extended }: StatuteDates): boolean {
  const late = unpaidAfter(filing.last, given);
  return (
    given.extended &&
    given.filed <= extended.last &&
    unpaidAfter(given.filed, given) === 0 &&
    late * 10 <= given.taxCents
  );
}

/** The final facts of a return. */
export function outcomeOf(given: LateReturn): Outcome {
  const dates = statuteDates(given);
  const due = given.extended ? dates.extended : dates.filing;
  return { presumed: causeIsPresumed(given, dates), timely: given.filed <= due.last };
}

/**
 * Interest on the failure-to-file penalty from the due date of the return, including extensions, to the date on which the penalty is
 * paid: section 6601(e)(2)(B). What is paid beyond the tax and the failure-to-pay penalty pays it. That order is the project's position.
 */
function interestOnAddition(
  given: LateReturn,
  { named }: ActDate,
  addition: number,
  failureToPay: number
): number {
  const { taxCents, payments, through, assumed } = given;
  const beyond = (day: number): number =>
    Math.max(0, paidThrough(day, given) - taxCents - failureToPay);
  const later = [...new Set(payments.map(({ day }) => day))]
    .filter((day) => day > named)
    .map((day) => ({ day, cents: beyond(day) - beyond(day - 1) }));
  return dayByDayInterest(addition - beyond(named), named, later, through, assumed);
}

/**
 * Penalties and interest of a return.
 *
 * @param given - The return.
 * @param outcome - Its final facts, where `given` describes it only up to a date.
 */
export function monthByMonth(given: LateReturn, outcome = outcomeOf(given)): Parts {
  const { filing, paidWithRequest, extended } = statuteDates(given);
  const due = given.extended ? extended : filing;
  const months = outcome.presumed ? [] : failureToPayMonths(given, filing, outcome.timely);
  const filed = failureToFile(given, due, filing, months);
  const exact = filed.gross - filed.reduction;
  const addition = Math.max(rounded(exact), filed.least);
  const paying = rounded(months.reduce((sum, { amount }) => sum + amount, 0n));
  const later = given.payments.filter((payment) => payment.day > paidWithRequest.last);
  const { through, assumed } = given;
  return {
    failureToFile: addition,
    failureToPay: paying,
    interestOnTax:
      through <= paidWithRequest.last
        ? 0
        : dayByDayInterest(
            unpaidAfter(paidWithRequest.last, given),
            paidWithRequest.named,
            later,
            through,
            assumed
          ),
    interestOnAddition: addition === 0 ? 0 : interestOnAddition(given, due, addition, paying),
  };
}
