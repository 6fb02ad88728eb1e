/**
 * The full Tax Table of a year and the rate schedules above it, in whole numbers: incomes in cents, taxes in hundredths of a cent. The
 * schedules are written as they are printed: base plus percent of the excess.
 */
import { figuresOf, type Column } from "./liabilityFigures";

const PERCENTS = [10, 12, 22, 24, 32, 35, 37];
/** Hundredths of a cent in a dollar. */
export const DOLLAR = 10_000;
const ROWS_END = 100_000;

/** The tax by the schedule in hundredths of a cent, from an income in cents. */
export function bySchedule(year: number, column: Column, cents: number): number {
  const { tops } = figuresOf(year).columns[column];
  const over = [0, ...tops].map((top) => top * 100);
  const bases = [0];
  PERCENTS.forEach((percent, line) => {
    const [from, to] = [over[line], over[line + 1]];
    if (from !== undefined && to !== undefined) {
      bases.push((bases[line] ?? NaN) + (to - from) * percent);
    }
  });
  let line = 0;
  over.forEach((edge, index) => {
    if (cents > edge) line = index;
  });
  return (bases[line] ?? NaN) + (cents - (over[line] ?? NaN)) * (PERCENTS[line] ?? NaN);
}

/** A row: at least, but less than, and the tax, in dollars. */
export interface Row {
  readonly atLeast: number;
  readonly lessThan: number;
  readonly tax: number;
}

/** Every row of the table. */
export function taxTable(year: number, column: Column): readonly Row[] {
  const edges = [0, 5, 15];
  for (let edge = 25; edge < 3_000; edge += 25) edges.push(edge);
  for (let edge = 3_000; edge <= ROWS_END; edge += 50) edges.push(edge);
  return edges.slice(0, -1).map((atLeast, row) => {
    const lessThan = edges[row + 1] ?? NaN;
    if (row === 0) return { atLeast, lessThan, tax: 0 };
    const middle = (atLeast + lessThan) * 50;
    const tax = Math.floor((bySchedule(year, column, middle) + DOLLAR / 2) / DOLLAR);
    return { atLeast, lessThan, tax };
  });
}

const tables = new Map<string, readonly Row[]>();

/** The tax in hundredths of a cent on an income in cents: from the table below $100,000, from the schedule above. */
export function onTaxableIncome(year: number, column: Column, cents: number): number {
  if (cents >= ROWS_END * 100) return bySchedule(year, column, cents);
  const key = `${String(year)} ${column}`;
  const rows = tables.get(key) ?? taxTable(year, column);
  tables.set(key, rows);
  const row = rows.find(({ lessThan }) => cents < lessThan * 100);
  return (row?.tax ?? NaN) * DOLLAR;
}
