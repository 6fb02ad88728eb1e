import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * State and local taxes that may be itemized, up to a cap. From 2025 income reduces the cap, down to a floor.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxes - Dollars of state and local taxes paid.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Cap, threshold and floor by year.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 164(b)(6), (7)
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
  const threshold = figureForStatus(figures.reducedAbove, status);
  const above = atLeastZero(adjustedGrossIncome.minus(threshold));
  const reduced = figureForStatus(figures.cap, status).minus(above.times(figures.reductionRate));
  return Decimal.min(taxes, Decimal.max(reduced, figureForStatus(figures.floor, status)));
}
