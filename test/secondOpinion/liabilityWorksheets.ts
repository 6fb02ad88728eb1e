/**
 * Two worksheets line by line, in whole numbers: the Qualified Dividends and Capital Gain Tax Worksheet of the Form 1040 instructions,
 * lines 1 to 25, and Form 6251, lines 4 to 40 (lines as printed for 2024, from a transcription). Lines from the Schedule D worksheet
 * are zero. Incomes are cents, taxes are hundredths of a cent.
 */
import { figuresOf, type Column } from "./liabilityFigures";
import { onTaxableIncome } from "./liabilityTaxTable";

const positive = (amount: number): number => Math.max(0, amount);

/** The items of a return that the worksheets use, in cents. */
export interface Figured {
  readonly year: number;
  readonly column: Column;
  readonly taxableIncome: number;
  readonly qualifiedDividends: number;
  /** Net capital gain: the smaller of lines 15 and 16 of Schedule D. */
  readonly netGain: number;
  /** Lines 2a to 3 of Form 6251. */
  readonly amtAdjustments: number;
}

/** The capital gain worksheet, its lines by number. */
export function gainWorksheet(given: Figured): Readonly<Record<number, number>> {
  const { year, column } = given;
  const [zeroTop, fifteenTop] = figuresOf(year).columns[column].gainTops;
  const l: Record<number, number> = {};
  const line = (number: number): number => l[number] ?? NaN;
  l[1] = given.taxableIncome;
  l[2] = given.qualifiedDividends;
  l[3] = positive(given.netGain);
  l[4] = line(2) + line(3);
  l[5] = positive(line(1) - line(4));
  l[6] = zeroTop * 100;
  l[7] = Math.min(line(1), line(6));
  l[8] = Math.min(line(5), line(7));
  l[9] = line(7) - line(8);
  l[10] = Math.min(line(1), line(4));
  l[11] = line(9);
  l[12] = line(10) - line(11);
  l[13] = fifteenTop * 100;
  l[14] = Math.min(line(1), line(13));
  l[15] = line(5) + line(9);
  l[16] = positive(line(14) - line(15));
  l[17] = Math.min(line(12), line(16));
  l[18] = line(17) * 15;
  l[19] = line(9) + line(17);
  l[20] = line(10) - line(19);
  l[21] = line(20) * 20;
  l[22] = onTaxableIncome(year, column, line(5));
  l[23] = line(18) + line(21) + line(22);
  l[24] = onTaxableIncome(year, column, line(1));
  l[25] = Math.min(line(23), line(24));
  return l;
}

/** Form 6251, its lines by number. Line 11 is the alternative minimum tax. */
export function form6251(given: Figured): Readonly<Record<number, number>> {
  const { year, column } = given;
  const { columns, break28, centsPerDollar } = figuresOf(year);
  const { exemption, shrinksAbove, gainTops } = columns[column];
  const worksheet = gainWorksheet(given);
  const regular = (number: number): number => worksheet[number] ?? NaN;
  const l: Record<number, number> = {};
  const line = (number: number): number => l[number] ?? NaN;
  const breaksAt = (column === "separate" ? break28 / 2 : break28) * 100;
  const at26or28 = (amount: number): number =>
    amount <= breaksAt ? amount * 26 : amount * 28 - breaksAt * 2;

  l[4] = given.taxableIncome + given.amtAdjustments;
  const lost = (positive(line(4) - shrinksAbove * 100) * centsPerDollar) / 100;
  l[5] = positive(exemption * 100 - lost);
  l[6] = positive(line(4) - line(5));
  l[12] = line(6);
  l[13] = regular(4);
  l[14] = 0;
  l[15] = line(13);
  l[16] = Math.min(line(12), line(15));
  l[17] = line(12) - line(16);
  l[18] = at26or28(line(17));
  l[19] = gainTops[0] * 100;
  l[20] = regular(5);
  l[21] = positive(line(19) - line(20));
  l[22] = Math.min(line(12), line(13));
  l[23] = Math.min(line(21), line(22));
  l[24] = line(22) - line(23);
  l[25] = gainTops[1] * 100;
  l[26] = line(21);
  l[27] = regular(5);
  l[28] = line(26) + line(27);
  l[29] = positive(line(25) - line(28));
  l[30] = Math.min(line(24), line(29));
  l[31] = line(30) * 15;
  l[32] = line(23) + line(30);
  l[33] = line(32) === line(12) ? 0 : line(22) - line(32);
  l[34] = line(33) * 20;
  l[38] = line(18) + line(31) + line(34);
  l[39] = at26or28(line(12));
  l[40] = Math.min(line(38), line(39));
  l[7] = line(13) > 0 ? line(40) : at26or28(line(6));
  l[9] = line(7);
  l[10] = regular(25);
  l[11] = line(6) > 0 ? positive(line(9) - line(10)) : 0;
  return l;
}
