import type { TaxYear } from "../taxYear";

/** What became of a penalty of an earlier year, as far as relief for a clean history depends on it. */
export const PENALTY_KINDS = [
  "unreversed penalty",
  "estimated tax penalty",
  "reversed penalty",
  "clean-history relief",
] as const;

/** What became of a penalty of an earlier year. */
export type PenaltyKind = (typeof PENALTY_KINDS)[number];

/** A penalty of an earlier year. */
export interface PastPenalty {
  readonly taxYear: TaxYear;
  readonly kind: PenaltyKind;
}

/**
 * Whether a penalty speaks against relief for a later year. The estimated tax penalty does not, and neither does a penalty that was
 * reversed in full, unless it was reversed by relief for a clean history.
 *
 * @see IRM 20.1.1.3.3.2.1(2), (5)(c)
 */
export const COUNTS_AGAINST_RELIEF: Readonly<Record<PenaltyKind, boolean>> = {
  "unreversed penalty": true,
  "estimated tax penalty": false,
  "reversed penalty": false,
  "clean-history relief": true,
};
