import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * State and local taxes that may be itemized: at most the cap, which from 2025 shrinks with income down to a floor.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer has half of every figure.
 * @param taxes - Dollars of state and local taxes paid.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Cap, threshold, floor by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year whose cap is not held.
 * @see 26 U.S.C. 164(b)(6), (7)
 *
 * @example
 * stateAndLocalDeduction(2025, "joint", 60_000, 550_000) //=> 25000
 */
export function stateAndLocalDeduction(
  taxYear: TaxYear,
  status: FilingStatus,
  taxes: Decimal,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "stateAndLocalCap">
): Decimal {
  const { figures } = entryOn(rules.stateAndLocalCap, taxYear.firstDay);
  const part = status === "separate" ? 2 : 1;
  const above = atLeastZero(adjustedGrossIncome.minus(figures.incomeAbove.div(part)));
  const shrunk = figures.cap.div(part).minus(above.times(figures.shrinkRate));
  return Decimal.min(taxes, Decimal.max(shrunk, figures.floor.div(part)));
}
