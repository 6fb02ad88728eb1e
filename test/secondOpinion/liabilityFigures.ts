/**
 * Figures for an independent calculation of the income tax and the alternative minimum tax, copied by hand from the procedures and
 * not from the rules: brackets, capital gain brackets and minimum tax of Rev. Proc. 2021-45, 2022-38, 2023-34, 2024-40 and 2025-32, whole dollars.
 */

/** A column of the rate schedules. */
export type Column = "single" | "joint" | "separate" | "head";

/** The figures of a year for one column. */
export interface ColumnFigures {
  /** Upper limits of the six lower brackets. */
  readonly tops: readonly number[];
  /** Upper limits of the 0% and 15% capital gain rates. */
  readonly gainTops: readonly [number, number];
  /** Exemption of the minimum tax, and the income above which it is phased out. */
  readonly exemption: number;
  readonly shrinksAbove: number;
}

/** The figures of a year. */
export interface YearFigures {
  readonly columns: Readonly<Record<Column, ColumnFigures>>;
  /** The 28% rate of the minimum tax begins here, at half of it for married filing separately. */
  readonly break28: number;
  /** Cents of exemption lost for each dollar above that income. */
  readonly centsPerDollar: number;
}

const column = (
  tops: readonly number[],
  gainTops: readonly [number, number],
  exemption: number,
  shrinksAbove: number
): ColumnFigures => ({ tops, gainTops, exemption, shrinksAbove });

export const FIGURES: Readonly<Record<number, YearFigures>> = {
  2022: {
    break28: 206100,
    centsPerDollar: 25,
    columns: {
      single: column([10275, 41775, 89075, 170050, 215950, 539900], [41675, 459750], 75900, 539900),
      joint: column(
        [20550, 83550, 178150, 340100, 431900, 647850],
        [83350, 517200],
        118100,
        1079800
      ),
      separate: column(
        [10275, 41775, 89075, 170050, 215950, 323925],
        [41675, 258600],
        59050,
        539900
      ),
      head: column([14650, 55900, 89050, 170050, 215950, 539900], [55800, 488500], 75900, 539900),
    },
  },
  2023: {
    break28: 220700,
    centsPerDollar: 25,
    columns: {
      single: column([11000, 44725, 95375, 182100, 231250, 578125], [44625, 492300], 81300, 578150),
      joint: column(
        [22000, 89450, 190750, 364200, 462500, 693750],
        [89250, 553850],
        126500,
        1156300
      ),
      separate: column(
        [11000, 44725, 95375, 182100, 231250, 346875],
        [44625, 276900],
        63250,
        578150
      ),
      head: column([15700, 59850, 95350, 182100, 231250, 578100], [59750, 523050], 81300, 578150),
    },
  },
  2024: {
    break28: 232600,
    centsPerDollar: 25,
    columns: {
      single: column(
        [11600, 47150, 100525, 191950, 243725, 609350],
        [47025, 518900],
        85700,
        609350
      ),
      joint: column(
        [23200, 94300, 201050, 383900, 487450, 731200],
        [94050, 583750],
        133300,
        1218700
      ),
      separate: column(
        [11600, 47150, 100525, 191950, 243725, 365600],
        [47025, 291850],
        66650,
        609350
      ),
      head: column([16550, 63100, 100500, 191950, 243700, 609350], [63000, 551350], 85700, 609350),
    },
  },
  2025: {
    break28: 239100,
    centsPerDollar: 25,
    columns: {
      single: column(
        [11925, 48475, 103350, 197300, 250525, 626350],
        [48350, 533400],
        88100,
        626350
      ),
      joint: column(
        [23850, 96950, 206700, 394600, 501050, 751600],
        [96700, 600050],
        137000,
        1252700
      ),
      separate: column(
        [11925, 48475, 103350, 197300, 250525, 375800],
        [48350, 300000],
        68500,
        626350
      ),
      head: column([17000, 64850, 103350, 197300, 250500, 626350], [64750, 566700], 88100, 626350),
    },
  },
  2026: {
    break28: 244500,
    centsPerDollar: 50,
    columns: {
      single: column(
        [12400, 50400, 105700, 201775, 256225, 640600],
        [49450, 545500],
        90100,
        500000
      ),
      joint: column(
        [24800, 100800, 211400, 403550, 512450, 768700],
        [98900, 613700],
        140200,
        1000000
      ),
      separate: column(
        [12400, 50400, 105700, 201775, 256225, 384350],
        [49450, 306850],
        70100,
        500000
      ),
      head: column([17700, 67450, 105700, 201750, 256200, 640600], [66200, 579600], 90100, 500000),
    },
  },
};

/** The figures of a year. */
export function figuresOf(year: number): YearFigures {
  const figures = FIGURES[year];
  if (!figures) throw new RangeError(`There are no figures for ${String(year)}.`);
  return figures;
}
