import { atLeastZero, Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** Capital gains as they count in income. */
export interface CapitalGain {
  /** Dollars in gross income: the net, a loss only up to its limit. */
  readonly inIncome: Decimal;
  /** Dollars that bear the preferential rates: net long-term gain beyond a net short-term loss. */
  readonly preferentialIncome: Decimal;
}

/**
 * Nets long-term and short-term gains and losses.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer may use half as much loss.
 * @param longTerm - Dollars of net long-term gain, negative for a loss.
 * @param shortTerm - Dollars of net short-term gain, negative for a loss.
 * @param rules - How much of a loss counts against other income.
 * @returns What is income and what of it is preferential; a loss beyond the limit is carried to the next year.
 * @throws NotInTableError for a year before 2022.
 * @see 26 U.S.C. 1211(b), 1222(11)
 */
export function capitalGain(
  taxYear: TaxYear,
  status: FilingStatus,
  longTerm: Decimal,
  shortTerm: Decimal,
  rules: Pick<Rulebook, "capitalLossLimit">
): CapitalGain {
  const { figures } = entryOn(rules.capitalLossLimit, taxYear.firstDay);
  const most = status === "separate" ? figures.mostSeparate : figures.most;
  const net = longTerm.plus(shortTerm);
  return {
    inIncome: Decimal.max(net, most.negated()),
    preferentialIncome: atLeastZero(Decimal.min(longTerm, net)),
  };
}
