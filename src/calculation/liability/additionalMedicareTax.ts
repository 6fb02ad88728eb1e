import { atLeastZero, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Additional Medicare Tax on wages and self-employment income above the threshold. Wages use up the threshold first.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param wages - Dollars of Medicare wages, of both spouses on a joint return.
 * @param netEarnings - Dollars of net earnings from self-employment (92.35% of profit); a loss counts as zero.
 * @param rules - Rate and thresholds.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 3101(b)(2), 1401(b)(2); Form 8959
 *
 * @example
 * additionalMedicareTax(2025, "single", 225_000, 0) //=> 225
 */
export function additionalMedicareTax(
  taxYear: TaxYear,
  status: FilingStatus,
  wages: Decimal,
  netEarnings: Decimal,
  rules: Pick<Rulebook, "additionalMedicareTax">
): Decimal {
  const { figures } = entryOn(rules.additionalMedicareTax, taxYear.firstDay);
  const threshold = figureForStatus(figures.threshold, status);
  const onWages = atLeastZero(wages.minus(threshold));
  const left = atLeastZero(threshold.minus(wages));
  const onEarnings = atLeastZero(atLeastZero(netEarnings).minus(left));
  return onWages.plus(onEarnings).times(figures.rate);
}
