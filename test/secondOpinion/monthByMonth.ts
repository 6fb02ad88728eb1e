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
  /** The day on which an installment agreement is accepted. */
  readonly agreementOn?: number | undefined;
  /** Notice and demand, and notice of intent to levy. */
  readonly noticeOn?: number | undefined;
  readonly levyNoticeOn?: number | undefined;
  readonly assumed?: Assumed;
}

/** The final facts of the return, where only its first days are calculated. */
export interface Outcome {
  readonly presumed: boolean;
  readonly timely: boolean;
}

/** What a notice and demand bills: section 6601(e)(2)(A), (e)(3). */
export interface Bill {
  readonly on: number;
  /** Last day to pay it. */
  readonly until: number;
  /** Failure-to-pay penalty in cents. */
  readonly failureToPay: number;
}

/** The parts in cents. */
export interface Parts {
  readonly failureToFile: number;
  readonly failureToPay: number;
  readonly interestOnTax: number;
  readonly interestOnAddition: number;
  /** On the failure-to-pay penalty that a notice bills. */
  readonly interestAfterNotice: number;
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
const ONE_PERCENT = 100n;
const DAYS_AFTER_LEVY_NOTICE = 10;
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

/**
 * What counts as paid for interest at the end of a date. From the day of a notice on, that is all paid by the end of the time to pay
 * (section 6601(e)(3)).
 */
const countedThrough = (day: number, given: LateReturn, bill: Bill | undefined): number =>
  paidThrough(bill && day >= bill.on ? Math.max(day, bill.until) : day, given);

/** The days on which more counts as paid. */
const daysOfPayment = ({ payments }: LateReturn, bill: Bill | undefined): readonly number[] => [
  ...new Set([...payments.map(({ day }) => day), ...(bill ? [bill.on] : [])]),
];

/** The unpaid tax at the end of a date. */
export const unpaidAfter = (day: number, given: LateReturn): number =>
  Math.max(0, given.taxCents - paidThrough(day, given));

/** Section 6651(d) and (h). Where both apply, the project shows the higher rate. */
function monthlyShare(begins: number, ends: number, given: LateReturn, timely: boolean): bigint {
  const { levyNoticeOn = Infinity, agreementOn = Infinity } = given;
  if (begins > levyNoticeOn + DAYS_AFTER_LEVY_NOTICE) return ONE_PERCENT;
  return timely && ends >= agreementOn ? QUARTER_PERCENT : HALF_PERCENT;
}

/**
 * The failure-to-pay penalty of each month, section 6651(a)(2), (b)(2), (d), (h). A payment on the first day of a month does not reduce its
 * penalty. The rate is half in months with an installment agreement, if the return was timely.
 */
export function failureToPayMonths(
  given: LateReturn,
  due: ActDate,
  timely: boolean
): readonly PayMonth[] {
  const months: PayMonth[] = [];
  let charged = 0n;
  for (let month = 1; ; month++) {
    const begins = endOfMonth(due.named, month - 1) + 1;
    const ends = endOfMonth(due.named, month);
    const unpaid = unpaidAfter(month === 1 ? due.last : begins - 1, given);
    if (begins > given.through || given.through <= due.last) break;
    if (unpaid === 0 || charged === MOST_SHARE) break;
    const wanted = monthlyShare(begins, ends, given, timely);
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

/** Interest on an amount that is paid once an amount before it is paid. */
function interestBehind(
  cents: number,
  before: number,
  from: number,
  given: LateReturn,
  bill: Bill | undefined
): number {
  const beyond = (day: number): number => Math.max(0, countedThrough(day, given, bill) - before);
  const later = daysOfPayment(given, bill)
    .filter((day) => day > from)
    .map((day) => ({ day, cents: beyond(day) - beyond(day - 1) }));
  const { through, assumed } = given;
  return dayByDayInterest(cents - beyond(from), from, later, through, assumed);
}

/**
 * Penalties and interest of a return.
 *
 * Interest on the failure-to-file penalty runs from the due date of the return, including extensions, to the date on which the penalty
 * is paid: section 6601(e)(2)(B). What is paid beyond the tax and the failure-to-pay penalty pays it; after a notice, only the penalty
 * that it bills comes first. That order is the project's position.
 *
 * @param given - The return.
 * @param outcome - Its final facts, where `given` describes it only up to a date.
 * @param bill - The notice and demand, if there is one.
 */
export function monthByMonth(given: LateReturn, outcome = outcomeOf(given), bill?: Bill): Parts {
  const { filing, paidWithRequest, extended } = statuteDates(given);
  const due = given.extended ? extended : filing;
  const months = outcome.presumed ? [] : failureToPayMonths(given, filing, outcome.timely);
  const filed = failureToFile(given, due, filing, months);
  const exact = filed.gross - filed.reduction;
  const addition = Math.max(rounded(exact), filed.least);
  const paying = rounded(months.reduce((sum, { amount }) => sum + amount, 0n));
  const counted = (day: number): number => countedThrough(day, given, bill);
  const later = daysOfPayment(given, bill)
    .filter((day) => day > paidWithRequest.last)
    .map((day) => ({ day, cents: counted(day) - counted(day - 1) }));
  const { through, assumed, taxCents } = given;
  const first = Math.min(paying, bill?.failureToPay ?? Infinity);
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
    interestOnAddition:
      addition === 0 ? 0 : interestBehind(addition, taxCents + first, due.named, given, bill),
    interestAfterNotice: bill
      ? interestBehind(bill.failureToPay, taxCents, bill.on, given, bill)
      : 0,
  };
}
