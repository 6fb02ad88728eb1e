import { atLeastZero, Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import { rateColumn } from "./rateColumn";

type GainFigures = Rulebook["capitalGainRates"]["entries"][number]["figures"];

/**
 * Tax on preferential income at 0, 15 and 20%, ordinary income filling the brackets first.
 *
 * @param status - Filing status.
 * @param ordinary - Dollars of taxable income at ordinary rates, beneath the gain.
 * @param gain - Dollars of preferential income.
 * @param figures - Edges and rates of the year.
 * @returns Dollars, not rounded.
 * @see 26 U.S.C. 1(h)(1)(B) to (D), (j)(5)
 */
export function gainTax(
  status: FilingStatus,
  ordinary: Decimal,
  gain: Decimal,
  figures: GainFigures
): Decimal {
  const column = rateColumn(status);
  const room = (edge: Decimal, filled: Decimal): Decimal => atLeastZero(edge.minus(filled));
  const atZero = Decimal.min(gain, room(figures[`${column}ZeroTop`], ordinary));
  const filled = ordinary.plus(atZero);
  const left = gain.minus(atZero);
  const atMiddle = Decimal.min(left, room(figures[`${column}FifteenTop`], filled));
  const atHighest = left.minus(atMiddle);
  return atMiddle.times(figures.middleRate).plus(atHighest.times(figures.highestRate));
}
