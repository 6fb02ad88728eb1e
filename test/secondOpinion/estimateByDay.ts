import { civil, daysInMonth, dayNumber, isLeap } from "./civilDays";
import type { Payment } from "./dayByDayInterest";
import { pointsOn, type Assumed } from "./quarterlyRates";
import {
  fifteenthOfFourthMonth,
  installmentDates,
  type ActDate,
  type Relief,
} from "./statuteDates";

/** A year's estimates in whole cents. */
export interface Estimates {
  /** The last day of the tax year. */
  readonly yearEnd: number;
  readonly required: number;
  readonly withheld: number;
  readonly payments: readonly Payment[];
  /** The day on which is paid what neither withholding nor the payments bring. */
  readonly restOn: number | undefined;
  /** The year's tax, where it is told. */
  readonly tax: number | undefined;
  readonly farmerOrFisherman: boolean;
  readonly postponement?: Relief | undefined;
  readonly assumed?: Assumed;
}

/** A line of the form: an amount, not paid from one day to another, at one rate. */
export interface EstimateLine {
  readonly installment: number;
  /** In quarters of a cent, so that a fourth of the year stays whole. */
  readonly amount: number;
  readonly from: number;
  readonly to: number;
  readonly points: number;
  readonly divisor: number;
  /** Rounded, as on Form 2210. */
  readonly cents: number;
}

const LEAST_TAX = 100_000;

/** Section 6621(b)(2)(B): the rate of the third month after the year goes on through the 15th of the fourth. */
function rateOn(day: number, { yearEnd, assumed }: Estimates): { points: number; divisor: number } {
  const fifteenth = fifteenthOfFourthMonth(yearEnd);
  const points = pointsOn(Math.min(day, fifteenth - 15), assumed);
  return { points, divisor: isLeap(civil(day).year) ? 366 : 365 };
}

function lineOf(line: Omit<EstimateLine, "cents">): EstimateLine {
  const { amount, from, to, points, divisor } = line;
  const exact = BigInt(amount) * BigInt(to - from) * BigInt(points);
  const whole = 4n * 10_000n * BigInt(divisor);
  return { ...line, cents: Number((exact * 2n + whole) / (whole * 2n)) };
}

/** The lines of one installment: day after day what is open of it, a line where some of it is paid, the rate changes or all ends. */
function linesOf(
  installment: number,
  due: ActDate,
  open: (day: number) => number,
  given: Estimates
): readonly EstimateLine[] {
  const lines: EstimateLine[] = [];
  const end = fifteenthOfFourthMonth(given.yearEnd);
  let from = due.named;
  for (let day = due.named + 1; day <= end; day++) {
    const bears = open(Math.max(due.last, day - 1));
    if (bears === 0) break;
    const { points, divisor } = rateOn(day, given);
    const left = day === end ? 0 : open(Math.max(due.last, day));
    const next = left === 0 ? undefined : rateOn(day + 1, given);
    const goesOn = next?.points === points && next.divisor === divisor;
    const amount = goesOn ? bears - left : bears;
    if (amount > 0) lines.push(lineOf({ installment, amount, from, to: day, points, divisor }));
    if (!goesOn) from = day;
  }
  return lines;
}

/**
 * The addition of section 6654 by the regular method, line by line: each installment from the 15th until paid, or until the 15th day of
 * the fourth month after the year. Payments go to the earliest installments (subsection (b)(3)), withholding counts in equal parts on
 * their days (subsection (g)(1)), less than $1,000 of tax after withholding costs nothing (subsection (e)(1)), farmers have one
 * installment in January (subsection (i)(1)).
 *
 * @throws NoFigure for a day without a rate.
 */
export function estimateByDay(given: Estimates): readonly EstimateLine[] {
  const { yearEnd, required, withheld, payments, tax, farmerOrFisherman, postponement } = given;
  if (tax !== undefined && tax - withheld < LEAST_TAX) return [];
  const dues = installmentDates(yearEnd, postponement).slice(farmerOrFisherman ? 3 : 0);
  const each = 4 / dues.length;
  const other = payments.reduce((sum, { cents }) => sum + cents, withheld);
  const rest = { day: given.restOn ?? Infinity, cents: Math.max(0, required - other) };
  const inBy = (day: number): number =>
    dues.filter(({ named }) => named <= day).length * withheld * each +
    [...payments, rest].reduce((sum, one) => (one.day <= day ? sum + one.cents * 4 : sum), 0);
  return dues.flatMap((due, index) => {
    // what so many installments are more than all that came in, between nothing and the whole of this one
    const open = (day: number): number =>
      Math.min(required * each, Math.max(0, required * each * (index + 1) - inBy(day)));
    return linesOf(farmerOrFisherman ? 4 : index + 1, due, open, given);
  });
}

/** Status, taxes and income on which the required annual payment rests, in cents. */
export interface Harbors {
  readonly status: string;
  readonly tax: number;
  readonly priorYearTax: number | undefined;
  readonly priorIncome: number;
  readonly farmerOrFisherman: boolean;
}

/** The share of last year's tax in hundredths: 6654(d)(1)(C), which farmers are spared (subsection (i)(1)(C)). */
export function priorShare({ status, priorIncome, farmerOrFisherman }: Harbors): number {
  const threshold = status === "separate" ? 7_500_000 : 15_000_000;
  return !farmerOrFisherman && priorIncome > threshold ? 110 : 100;
}

/** The required annual payment in cents, section 6654(d)(1)(B), (i)(1)(C). */
export function requiredInCents(given: Harbors): number {
  const { tax, priorYearTax, farmerOrFisherman } = given;
  // in three-hundredths of a cent
  const ofThis = tax * (farmerOrFisherman ? 200 : 270);
  const ofPrior = priorYearTax === undefined ? Infinity : priorYearTax * priorShare(given) * 3;
  return Math.floor((Math.min(ofThis, ofPrior) + 150) / 300);
}

/** The first day of a tax year. */
export function firstDayOf(yearEnd: number): number {
  const { year, month } = civil(yearEnd);
  return dayNumber(year - 1, month, daysInMonth(year - 1, month)) + 1;
}
