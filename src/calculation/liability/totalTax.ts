import { Decimal, toWholeDollars, ZERO } from "../../money/dollars";
import { entryOn, type DatedTable } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { additionalMedicareTax } from "./additionalMedicareTax";
import { alternativeMinimumTax } from "./alternativeMinimumTax";
import { childTaxCredit } from "./childTaxCredit";
import { grossIncome } from "./grossIncome";
import { incomeTax } from "./incomeTax";
import type { LiabilityLine } from "./liabilityLine";
import { netInvestmentIncomeTax } from "./netInvestmentIncomeTax";
import { item, type ReturnItems } from "./returnItems";
import { taxableIncome } from "./taxableIncome";

/** The estimated total tax with its calculation. */
export interface TotalTax {
  readonly lines: readonly LiabilityLine[];
  /** Whole dollars. */
  readonly amount: Decimal;
}

type TotalTaxRules = Parameters<typeof grossIncome>[3] &
  Parameters<typeof taxableIncome>[4] &
  Pick<
    Rulebook,
    | "taxTable"
    | "capitalGainRates"
    | "alternativeMinimumTax"
    | "childTaxCredit"
    | "additionalMedicareTax"
    | "netInvestmentIncomeTax"
    | "earlyDistribution"
  >;

/**
 * Estimated total tax, line 4 of the request, from the known items of the return.
 *
 * A good-faith estimate, not a return: income tax and alternative minimum tax, less credits up to that amount, plus self-employment
 * tax, Additional Medicare Tax, net investment income tax, the additional tax on early distributions and other taxes.
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
  const rateSource = entryOn(rules.incomeTaxRates, begins).source;
  const gross = grossIncome(taxYear, status, items, rules);
  const taxable = taxableIncome(taxYear, status, items, gross, rules);
  const { adjustedGrossIncome, preferentialIncome } = gross;
  const whole = (amount: Decimal): Decimal => toWholeDollars(amount);

  const regular = whole(
    incomeTax(taxYear, status, taxable.taxableIncome, preferentialIncome, rules)
  );
  const minimum = whole(
    alternativeMinimumTax(
      {
        taxYear,
        status,
        preferentialIncome,
        taxableIncome: taxable.beforeZero,
        amtAdjustments: taxable.amtAdjustments,
      },
      rules
    )
  );
  const beforeCredits = regular.plus(minimum);
  const family = childTaxCredit(
    taxYear,
    status,
    item(items, "childrenUnder17").toNumber(),
    item(items, "otherDependents").toNumber(),
    adjustedGrossIncome,
    rules
  );
  const familyCredit = Decimal.min(whole(family), beforeCredits);
  const otherCredits = Decimal.min(
    whole(item(items, "credits")),
    beforeCredits.minus(familyCredit)
  );
  const medicare = additionalMedicareTax(
    taxYear,
    status,
    item(items, "wages"),
    gross.netEarnings,
    rules
  );
  const investment = netInvestmentIncomeTax(
    taxYear,
    status,
    gross.netInvestmentIncome,
    adjustedGrossIncome,
    rules
  );
  const early = entryOn(rules.earlyDistribution, begins);
  const onEarly = item(items, "earlyDistributions").times(early.figures.rate);
  const law = (table: DatedTable<object>): LiabilityLine["source"] => entryOn(table, begins).source;

  const taxes: LiabilityLine[] = [
    { what: "Income tax", amount: regular, source: rateSource },
    { what: "Alternative minimum tax", amount: minimum, source: law(rules.alternativeMinimumTax) },
    {
      what: "Less child tax credit and credit for other dependents",
      amount: familyCredit.negated(),
      source: law(rules.childTaxCredit),
    },
    { what: "Less other credits", amount: otherCredits.negated(), source: undefined },
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
  const amount = taxes.reduce((sum, line) => sum.plus(line.amount), ZERO);
  const shown = taxes.filter((line, index) => index === 0 || !line.amount.isZero());
  return {
    lines: [
      ...gross.lines,
      ...taxable.lines,
      ...shown,
      { what: "Total tax", amount, source: undefined },
    ],
    amount,
  };
}
