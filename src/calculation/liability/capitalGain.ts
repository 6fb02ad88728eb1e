import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** Capital gains as they count in income. */
export interface CapitalGain {
  /** Dollars in gross income: the net gain, or the net loss up to the limit. */
  readonly inIncome: Decimal;
  /** Dollars taxed at capital gain rates: net long-term gain less a net short-term loss. */
  readonly preferentialIncome: Decimal;
}

/**
 * Nets long-term and short-term gains and losses.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param longTerm - Dollars of net long-term gain, negative for a loss.
 * @param shortTerm - Dollars of net short-term gain, negative for a loss.
 * @param rules - The limit on losses.
 * @returns The amount in income and the part at capital gain rates. A loss above the limit carries over to the next year.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 1211(b), 1222(11)
 */
export function capitalGain(
  taxYear: TaxYear,
  status: FilingStatus,
  longTerm: Decimal,
  shortTerm: Decimal,
  rules: Pick<Rulebook, "capitalLossLimit">
): CapitalGain {
  const { figures } = entryOn(rules.capitalLossLimit, taxYear.firstDay);
  const limit = figureForStatus(figures.limit, status);
  const net = longTerm.plus(shortTerm);
  return {
    inIncome: Decimal.max(net, limit.negated()),
    preferentialIncome: atLeastZero(Decimal.min(longTerm, net)),
  };
}
