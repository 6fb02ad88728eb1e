import type { Decimal } from "../../money/dollars";
import type { Source } from "../../rules/source";

/** One line of the working from income to total tax. */
export interface LiabilityLine {
  readonly what: string;
  /** Whole dollars, as the return wants them; negative where the line takes away. */
  readonly amount: Decimal;
  /** The law of the year's figures, where the line rests on any. */
  readonly source: Source | undefined;
}
