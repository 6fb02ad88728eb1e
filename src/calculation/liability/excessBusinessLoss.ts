import { atLeastZero, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/**
 * Excess business loss: the part of the year's net loss from all businesses above the limit. The year may not deduct it. It carries
 * forward as a net operating loss.
 *
 * Wages are not business income, and losses from sales of capital assets do not count. Gains from sales of business property would
 * raise the amount that may be deducted: the items do not name them.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; only a joint return has the higher limit.
 * @param businessIncome - Dollars of net income from all businesses, negative for a loss, after the limits on passive losses.
 * @param rules - The limit by year.
 * @returns Dollars, not rounded; zero without an excess.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 461(l)(1), (3), (6); Form 461
 *
 * @example
 * excessBusinessLoss(2025, "single", -500_000) //=> 187000
 */
export function excessBusinessLoss(
  taxYear: TaxYear,
  status: FilingStatus,
  businessIncome: Decimal,
  rules: Pick<Rulebook, "excessBusinessLoss">
): Decimal {
  const { figures } = entryOn(rules.excessBusinessLoss, taxYear.firstDay);
  return atLeastZero(businessIncome.negated().minus(figureForStatus(figures.limit, status)));
}
