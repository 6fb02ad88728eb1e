import { toWholeDollars, type Decimal } from "../../money/dollars";
import { entryOn, type DatedTable } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { additionalMedicareTax } from "./additionalMedicareTax";
import { grossIncome } from "./grossIncome";
import { leastTax } from "./leastTax";
import type { LiabilityLine } from "./liabilityLine";
import { netInvestmentIncomeTax } from "./netInvestmentIncomeTax";
import { item, type ReturnItems } from "./returnItems";

/** The estimated total tax with its calculation. */
export interface TotalTax {
  readonly lines: readonly LiabilityLine[];
  /** Whole dollars. */
  readonly amount: Decimal;
}

type TotalTaxRules = Parameters<typeof grossIncome>[3] &
  Parameters<typeof leastTax>[4] &
  Pick<Rulebook, "additionalMedicareTax" | "netInvestmentIncomeTax" | "earlyDistribution">;

/**
 * Estimated total tax, line 4 of the request, from the known items of the return.
 *
 * A good-faith estimate, not a return: income tax and alternative minimum tax with the deductions that lead to the least tax, less
 * credits up to that amount, plus self-employment tax, Additional Medicare Tax, net investment income tax, the additional tax on
 * early distributions and other taxes.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param items - Known items, dollars.
 * @param rules - The tables of the year.
 * @returns The lines in the order of the return, and their total in whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see Form 1040, lines 1 to 24; IRC section 6102(a)
 */
export function totalTax(
  taxYear: TaxYear,
  status: FilingStatus,
  items: ReturnItems,
  rules: TotalTaxRules
): TotalTax {
  const begins = taxYear.firstDay;
  // A tax year without rates is refused with this table, whichever table the items need first.
  entryOn(rules.incomeTaxRates, begins);
  const gross = grossIncome(taxYear, status, items, rules);
  const least = leastTax(taxYear, status, items, gross, rules);
  const { adjustedGrossIncome, netEarnings, netInvestmentIncome } = gross;
  const whole = (amount: Decimal): Decimal => toWholeDollars(amount);
  const wages = item(items, "wages");
  const medicare = additionalMedicareTax(taxYear, status, wages, netEarnings, rules);
  const investment = netInvestmentIncomeTax(
    taxYear,
    status,
    netInvestmentIncome,
    adjustedGrossIncome,
    rules
  );
  const early = entryOn(rules.earlyDistribution, begins);
  const onEarly = item(items, "earlyDistributions").times(early.figures.rate);
  const law = (table: DatedTable<object>): LiabilityLine["source"] => entryOn(table, begins).source;

  const others: LiabilityLine[] = [
    {
      what: "Self-employment tax",
      amount: gross.selfEmploymentTax,
      source: law(rules.selfEmploymentTax),
    },
    {
      what: "Additional Medicare Tax",
      amount: whole(medicare),
      source: law(rules.additionalMedicareTax),
    },
    {
      what: "Net investment income tax",
      amount: whole(investment),
      source: law(rules.netInvestmentIncomeTax),
    },
    { what: "Additional tax on early distributions", amount: whole(onEarly), source: early.source },
    { what: "Other taxes", amount: whole(item(items, "otherTaxes")), source: undefined },
  ];
  const amount = others.reduce((sum, line) => sum.plus(line.amount), least.amount);
  return {
    lines: [
      ...gross.lines,
      ...least.lines,
      ...others.filter((line) => !line.amount.isZero()),
      { what: "Total tax", amount, source: undefined },
    ],
    amount,
  };
}
