import { civil, daysInMonth, dayNumber, isLeap } from "./civilDays";
import type { Payment } from "./dayByDayInterest";
import { pointsOn, type Assumed } from "./quarterlyRates";
import {
  earlyReturnDeadline,
  fifteenthOfFourthMonth,
  installmentDates,
  type ActDate,
  type Relief,
} from "./statuteDates";

/** The estimated tax payments of a year in whole cents. */
export interface Estimates {
  /** The last day of the tax year. */
  readonly yearEnd: number;
  readonly required: number;
  readonly withheld: number;
  readonly payments: readonly Payment[];
  /** The date on which the balance is paid after withholding and payments. */
  readonly restOn: number | undefined;
  /** The tax of the year, if given. */
  readonly tax: number | undefined;
  readonly farmerOrFisherman: boolean;
  /** A nonresident alien under section 6072(c). */
  readonly isNonresident?: boolean;
  readonly postponement?: Relief | undefined;
  readonly assumed?: Assumed;
  /** The date of the return, if given. */
  readonly filedOn?: number | undefined;
  /** The installments of Schedule AI in twelfths of a cent, if they are annualized. */
  readonly annualized?: readonly number[] | undefined;
}

/** A line of the form: an amount unpaid between two dates, at one rate. */
export interface EstimateLine {
  readonly installment: number;
  /** In twelfths of a cent, so that a fourth and a third of the annual amount are whole numbers. */
  readonly amount: number;
  readonly from: number;
  readonly to: number;
  readonly points: number;
  readonly divisor: number;
  /** Rounded, as on Form 2210. */
  readonly cents: number;
}

const LEAST_TAX = 100_000;

/** Section 6621(b)(2)(B): the rate of the third month after the year continues through the 15th of the fourth. */
function rateOn(day: number, { yearEnd, assumed }: Estimates): { points: number; divisor: number } {
  const fifteenth = fifteenthOfFourthMonth(yearEnd);
  const points = pointsOn(Math.min(day, fifteenth - 15), assumed);
  return { points, divisor: isLeap(civil(day).year) ? 366 : 365 };
}

function lineOf(line: Omit<EstimateLine, "cents">): EstimateLine {
  const { amount, from, to, points, divisor } = line;
  const exact = BigInt(amount) * BigInt(to - from) * BigInt(points);
  const whole = 12n * 10_000n * BigInt(divisor);
  return { ...line, cents: Number((exact * 2n + whole) / (whole * 2n)) };
}

/** The lines of one installment from its unpaid amount each day: a line ends where a part is paid, the rate changes or the period ends. */
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
    const unpaid = open(Math.max(due.last, day - 1));
    if (unpaid === 0) break;
    const { points, divisor } = rateOn(day, given);
    const left = day === end ? 0 : open(Math.max(due.last, day));
    const next = left === 0 ? undefined : rateOn(day + 1, given);
    const goesOn = next?.points === points && next.divisor === divisor;
    const amount = goesOn ? unpaid - left : unpaid;
    if (amount > 0) lines.push(lineOf({ installment, amount, from, to: day, points, divisor }));
    if (!goesOn) from = day;
  }
  return lines;
}

/** Whether the return was filed, and the tax of the year paid, by the deadline of section 6654(h). */
export function isEarlyReturn(given: Estimates): boolean {
  const { yearEnd, filedOn, restOn, tax, withheld, farmerOrFisherman, postponement } = given;
  const deadline = earlyReturnDeadline(yearEnd, farmerOrFisherman, postponement);
  if (filedOn === undefined || filedOn > deadline) return false;
  const inTime = given.payments.filter(({ day }) => day <= deadline);
  const paid = inTime.reduce((sum, { cents }) => sum + cents, withheld);
  return (restOn ?? Infinity) <= deadline || paid >= (tax ?? Infinity);
}

/**
 * The estimated tax penalty of section 6654 by the regular method, line by line. It runs on each installment from the 15th until it is
 * paid, or until the 15th day of the fourth month after the year. Payments go to the earliest installments (subsection (b)(3)).
 * Withholding counts in equal parts on the due dates (subsection (g)(1)), which no postponement moves (26 CFR 301.7508A-1(b)(4)).
 * There is no penalty if the tax after withholding is less than $1,000 (subsection (e)(1)). Farmers and fishermen have one installment
 * in January (subsection (i)(1)). A nonresident alien under section 6072(c) has three, the first of half the annual amount (subsection
 * (j)). After an early return with full payment the last installment has none (subsection (h), (i)(1)(D)).
 *
 * @throws NoFigure for a date without a rate.
 */
export function estimateByDay(given: Estimates): readonly EstimateLine[] {
  const { yearEnd, required, withheld, payments, tax, farmerOrFisherman, postponement } = given;
  if (tax !== undefined && tax - withheld < LEAST_TAX) return [];
  const isNonresident = given.isNonresident === true;
  const all = installmentDates(yearEnd, postponement, isNonresident);
  const dues = farmerOrFisherman ? all.slice(-1) : all;
  const withheldEach = 12 / dues.length;
  // In twelfths of the annual amount.
  const shares = farmerOrFisherman ? [12] : isNonresident ? [6, 3, 3] : [3, 3, 3, 3];
  const installments = given.annualized ?? shares.map((share) => share * required);
  const through = installments.map((_, index) =>
    installments.slice(0, index + 1).reduce((sum, one) => sum + one, 0)
  );
  const other = payments.reduce((sum, { cents }) => sum + cents, withheld);
  const rest = Math.max(0, (through.at(-1) ?? 0) - other * 12);
  const inBy = (day: number): number =>
    dues.filter(({ fifteenth }) => fifteenth <= day).length * withheld * withheldEach +
    payments.reduce((sum, one) => (one.day <= day ? sum + one.cents * 12 : sum), 0) +
    ((given.restOn ?? Infinity) <= day ? rest : 0);
  const charged = isEarlyReturn(given) ? dues.slice(0, -1) : dues;
  return charged.flatMap((due, index) => {
    const [before, now] = [through[index - 1] ?? 0, through[index] ?? 0];
    // The installments so far less everything paid, at least 0 and at most this installment.
    const open = (day: number): number => Math.min(now - before, Math.max(0, now - inBy(day)));
    return linesOf(farmerOrFisherman ? all.length : index + 1, due, open, given);
  });
}

/** Filing status, taxes and income that determine the required annual payment. Amounts are cents. */
export interface Harbors {
  readonly status: string;
  readonly tax: number;
  readonly priorYearTax: number | undefined;
  readonly priorIncome: number;
  readonly farmerOrFisherman: boolean;
}

/** Percent of the prior year's tax: 6654(d)(1)(C), which does not apply to farmers and fishermen (subsection (i)(1)(C)). */
export function priorShare({ status, priorIncome, farmerOrFisherman }: Harbors): number {
  const threshold = status === "separate" ? 7_500_000 : 15_000_000;
  return !farmerOrFisherman && priorIncome > threshold ? 110 : 100;
}

/** The required annual payment in cents, section 6654(d)(1)(B), (i)(1)(C). */
export function requiredInCents(given: Harbors): number {
  const { tax, priorYearTax, farmerOrFisherman } = given;
  // In three-hundredths of a cent.
  const ofThis = tax * (farmerOrFisherman ? 200 : 270);
  const ofPrior = priorYearTax === undefined ? Infinity : priorYearTax * priorShare(given) * 3;
  return Math.floor((Math.min(ofThis, ofPrior) + 150) / 300);
}

/** The first day of a tax year. */
export function firstDayOf(yearEnd: number): number {
  const { year, month } = civil(yearEnd);
  return dayNumber(year - 1, month, daysInMonth(year - 1, month)) + 1;
}
