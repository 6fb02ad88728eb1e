import type { Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import { bracketTax } from "./bracketTax";
import { rateColumn } from "./rateColumn";

type GainFigures = Rulebook["capitalGainRates"]["entries"][number]["figures"];

/**
 * Tax on preferential income at 0%, 15% and 20%. Ordinary income uses up the lower brackets first.
 *
 * @param status - Filing status.
 * @param ordinary - Dollars of taxable income at ordinary rates.
 * @param gain - Dollars of preferential income.
 * @param figures - Brackets of the year.
 * @returns Dollars, not rounded.
 * @see IRC section 1(h)(1)(B) to (D), (j)(5)
 */
export function gainTax(
  status: FilingStatus,
  ordinary: Decimal,
  gain: Decimal,
  figures: GainFigures
): Decimal {
  return bracketTax(figures.brackets[rateColumn(status)], ordinary, ordinary.plus(gain));
}
