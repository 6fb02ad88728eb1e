import type { Decimal } from "../../money/dollars";
import type { Source } from "../../rules/source";

/** A line of the calculation from income to total tax. */
export interface LiabilityLine {
  readonly what: string;
  /** Whole dollars, as on the return; negative if the line is subtracted. */
  readonly amount: Decimal;
  /** The source of the year's figures, if the line uses any. */
  readonly source: Source | undefined;
}
