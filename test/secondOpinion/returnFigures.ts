/**
 * Figures of a whole return for an independent calculation, copied by hand from the procedures named in liabilityFigures.ts, from
 * Pub. L. 119-21 and from the statute, and not from the rules. Whole dollars.
 */
import type { Column } from "./liabilityFigures";

/** A filing status. */
export type Status = "single" | "joint" | "separate" | "head" | "survivor";

/** The column of the rate schedules for a status. */
export const COLUMN: Readonly<Record<Status, Column>> = {
  single: "single",
  joint: "joint",
  separate: "separate",
  head: "head",
  survivor: "joint",
};

/** What changes from year to year. */
export interface ReturnFigures {
  /** Standard deduction, section 63(c). */
  readonly standard: Readonly<Record<Column, number>>;
  /** For each box of age or blindness, section 63(f): unmarried, and married or surviving spouse. */
  readonly boxes: readonly [unmarried: number, married: number];
  /** Standard deduction of a dependent, section 63(c)(5): at least, and on top of earned income. */
  readonly dependent: readonly [floor: number, more: number];
  /** Contribution and benefit base, section 1402(b)(1). */
  readonly wageBase: number;
  /** Section 199A(e)(2): threshold of joint, separate and other returns. */
  readonly businessThreshold: readonly [joint: number, separate: number, others: number];
  /** Child tax credit for each child, section 24(h)(2). */
  readonly child: number;
  /** Section 461(l)(3)(A)(ii)(II), other than a joint return. */
  readonly businessLoss: number;
}

const standard = (single: number, head: number): ReturnFigures["standard"] => ({
  single,
  joint: single * 2,
  separate: single,
  head,
});

const FIGURES: Readonly<Record<number, ReturnFigures>> = {
  2022: {
    standard: standard(12_950, 19_400),
    boxes: [1_750, 1_400],
    dependent: [1_150, 400],
    wageBase: 147_000,
    businessThreshold: [340_100, 170_050, 170_050],
    child: 2_000,
    businessLoss: 270_000,
  },
  2023: {
    standard: standard(13_850, 20_800),
    boxes: [1_850, 1_500],
    dependent: [1_250, 400],
    wageBase: 160_200,
    businessThreshold: [364_200, 182_100, 182_100],
    child: 2_000,
    businessLoss: 289_000,
  },
  2024: {
    standard: standard(14_600, 21_900),
    boxes: [1_950, 1_550],
    dependent: [1_300, 450],
    wageBase: 168_600,
    businessThreshold: [383_900, 191_950, 191_950],
    child: 2_000,
    businessLoss: 305_000,
  },
  2025: {
    standard: standard(15_750, 23_625),
    boxes: [2_000, 1_600],
    dependent: [1_350, 450],
    wageBase: 176_100,
    businessThreshold: [394_600, 197_300, 197_300],
    child: 2_200,
    businessLoss: 313_000,
  },
  2026: {
    standard: standard(16_100, 24_150),
    boxes: [2_050, 1_650],
    dependent: [1_350, 450],
    wageBase: 184_500,
    businessThreshold: [403_500, 201_775, 201_750],
    child: 2_200,
    businessLoss: 256_000,
  },
};

/** The figures of a year. */
export function returnFigures(year: number): ReturnFigures {
  const figures = FIGURES[year];
  if (!figures) throw new RangeError(`There are no figures for ${String(year)}.`);
  return figures;
}
