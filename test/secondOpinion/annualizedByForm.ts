/**
 * Schedule AI of Form 2210 line by line (lines of 2018 to 2021) in whole numbers, without code from src. Amounts of the periods are
 * cents. Standard deductions and wage bases are copied by hand from Rev. Proc. 2021-45, 2022-38, 2023-34, 2025-32, Pub. L. 119-21 and
 * the announcements of the Social Security Administration.
 */
import { FIGURES, figuresOf, type Column } from "./liabilityFigures";
import { DOLLAR, onTaxableIncome } from "./liabilityTaxTable";
import { NoFigure } from "./noFigure";

/** Amounts of one period in cents, from the first day of the year. Undefined: not given. */
export interface PeriodOfForm {
  readonly income: number;
  readonly itemized: number;
  readonly business: number;
  readonly earnings: number;
  readonly wages: number;
  readonly otherTaxes: number;
  readonly credits: number;
  readonly standard: number | undefined;
  readonly tax: number | undefined;
}

/** The year and its four periods. */
export interface YearOfForm {
  /** The calendar year in which the tax year begins. */
  readonly year: number;
  readonly status: string;
  readonly isNonresident: boolean;
  readonly periods: readonly PeriodOfForm[];
}

const STANDARD: Readonly<Record<number, readonly [single: number, joint: number, head: number]>> = {
  2022: [12_950, 25_900, 19_400],
  2023: [13_850, 27_700, 20_800],
  2024: [14_600, 29_200, 21_900],
  2025: [15_750, 31_500, 23_625],
  2026: [16_100, 32_200, 24_150],
};
const WAGE_BASE: Readonly<Record<number, number>> = {
  2022: 147_000,
  2023: 160_200,
  2024: 168_600,
  2025: 176_100,
  2026: 184_500,
};
const MONTHS = [3, 5, 8, 12];
/** In thousandths. */
const SHARES = [225, 450, 675, 900];
const FIRST_YEAR_OF_LIMIT = 2026;

const positive = (amount: number): number => Math.max(0, amount);
/** A quotient in whole numbers, half away from zero. */
function rounded(numerator: number, denominator: number): number {
  const size = Math.floor((2 * Math.abs(numerator) + denominator) / (2 * denominator));
  return numerator < 0 ? -size : size;
}
const whole = (cents: number): number => rounded(cents, 100);

const columnOf = (status: string): Column => (status === "survivor" ? "joint" : (status as Column));

function standardOf(year: number, status: string): number {
  const [single = NaN, joint = NaN, head = NaN] = STANDARD[year] ?? [];
  const column = columnOf(status);
  return column === "joint" ? joint : column === "head" ? head : single;
}

/** Line 6 with section 68 as amended: from 2026 2/37 of the deductions or of the income above the 35% bracket is lost. */
function itemizedLine(given: YearOfForm, itemized: number, months: number, before: number): number {
  const { year, status } = given;
  const [times, parts] = [itemized * 12, months * 100];
  if (year < FIRST_YEAR_OF_LIMIT) return rounded(times, parts);
  const top = figuresOf(year).columns[columnOf(status)].tops[5] ?? NaN;
  const lost = Math.min(times, positive(before - top) * parts) * 2;
  return rounded(times * 37 - lost, parts * 37);
}

/** Part II in whole dollars. */
function employmentLine(year: number, { earnings, wages }: PeriodOfForm, months: number): number {
  const net = positive(earnings);
  const base = ((WAGE_BASE[year] ?? NaN) * 100 * months) / 12;
  const counted = Math.min(net, positive(base - wages));
  return rounded(counted * 12 * 124 + net * 12 * 29, months * 1_000 * 100);
}

/** Lines of a column in whole dollars, by number. */
export function columnByForm(given: YearOfForm, index: number): Readonly<Record<number, number>> {
  const { year, status, isNonresident } = given;
  if (!(year in FIGURES)) throw new NoFigure(`There are no rates for ${String(year)}.`);
  const period = given.periods[index];
  const months = MONTHS[index] ?? NaN;
  if (!period) throw new RangeError(`There is no period ${String(index)}.`);
  const l: Record<number, number> = {};
  const line = (number: number): number => l[number] ?? NaN;
  l[3] = rounded(period.income * 12, months * 100);
  l[9] = whole(period.business);
  l[6] = itemizedLine(given, period.itemized, months, line(3) - line(9));
  const regular = isNonresident ? 0 : standardOf(year, status);
  l[7] = period.standard === undefined ? regular : whole(period.standard);
  l[8] = Math.max(line(6), line(7));
  l[10] = line(8) + line(9);
  l[11] = line(3) - line(10);
  l[13] = positive(line(11));
  l[14] =
    period.tax === undefined
      ? rounded(onTaxableIncome(year, columnOf(status), line(13) * 100), DOLLAR)
      : whole(period.tax);
  l[36] = employmentLine(year, period, months);
  l[17] = line(14) + line(36) + whole(period.otherTaxes);
  l[19] = positive(line(17) - whole(period.credits));
  l[21] = rounded(line(19) * (SHARES[index] ?? NaN), 1_000);
  return l;
}

/** Lines 22 to 27: each installment from what is due so far and the regular installments, in any one unit. */
export function installmentsByForm(
  due: readonly number[],
  regular: readonly number[]
): readonly number[] {
  const required: number[] = [];
  due.forEach((through, index) => {
    const earlier = required.reduce((sum, one) => sum + one, 0);
    const regularSoFar = regular.slice(0, index + 1).reduce((sum, one) => sum + one, 0);
    // Line 26 is all regular installments so far less the earlier required ones.
    required.push(Math.min(positive(through - earlier), regularSoFar - earlier));
  });
  return required;
}

/** The required installments in twelfths of a cent. The required annual payment is in cents. */
export function annualizedByForm(given: YearOfForm, required: number): readonly number[] {
  const indices = given.isNonresident ? [1, 2, 3] : [0, 1, 2, 3];
  const due = indices.map((index) => (columnByForm(given, index)[21] ?? NaN) * 100 * 12);
  const twelfths = given.isNonresident ? [6, 3, 3] : [3, 3, 3, 3];
  return installmentsByForm(
    due,
    twelfths.map((part) => required * part)
  );
}
