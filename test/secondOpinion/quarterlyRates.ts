import { civil, dayNumber } from "./civilDays";
import { NoFigure } from "./noFigure";

/**
 * Underpayment rates in whole percents by quarter, copied by hand from secondary copies of the cumulative table in Rev. Rul. 2024-18
 * (1995 to 2024) and of the later rulings, and not read from the rules.
 */
const PERCENTS: readonly (readonly [number, string])[] = [
  [1995, "9 10 9 9"],
  [1996, "9 8 9 9"],
  [1997, "9 9 9 9"],
  [1998, "9 8 8 8"],
  [1999, "7 8 8 8"],
  [2000, "8 9 9 9"],
  [2001, "9 8 7 7"],
  [2002, "6 6 6 6"],
  [2003, "5 5 5 4"],
  [2004, "4 5 4 5"],
  [2005, "5 6 6 7"],
  [2006, "7 7 8 8"],
  [2007, "8 8 8 8"],
  [2008, "7 6 5 6"],
  [2009, "5 4 4 4"],
  [2010, "4 4 4 4"],
  [2011, "3 4 4 3"],
  [2012, "3 3 3 3"],
  [2013, "3 3 3 3"],
  [2014, "3 3 3 3"],
  [2015, "3 3 3 3"],
  [2016, "3 4 4 4"],
  [2017, "4 4 4 4"],
  [2018, "4 5 5 5"],
  [2019, "6 6 5 5"],
  [2020, "5 5 3 3"],
  [2021, "3 3 3 3"],
  [2022, "3 4 5 6"],
  [2023, "7 7 7 8"],
  [2024, "8 8 8 8"],
  [2025, "7 7 7 7"],
  [2026, "7 6 7 7"],
];

const byYear = new Map(PERCENTS.map(([year, four]) => [year, four.split(" ").map(Number)]));

/** The rate on a date in whole percents. */
export function percentOn(day: number): number {
  const { year, month } = civil(day);
  const percent = byYear.get(year)?.[Math.floor((month - 1) / 3)];
  if (percent === undefined) throw new NoFigure(`no rate in ${String(year)}`);
  return percent;
}

/** The assumed rate for dates after the last published quarter: hundredths of a percent, or the last published rate. */
export type Assumed = number | "latest" | undefined;

/** The last date of the last quarter above. */
export const RATES_END = dayNumber(2026, 12, 31);

/** The rate on a date in hundredths of a percent. */
export function pointsOn(day: number, assumed?: Assumed): number {
  if (day <= RATES_END || assumed === undefined) return percentOn(day) * 100;
  return assumed === "latest" ? percentOn(RATES_END) * 100 : assumed;
}
