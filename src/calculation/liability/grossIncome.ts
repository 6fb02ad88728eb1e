import { atLeastZero, toWholeDollars, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { capitalGain } from "./capitalGain";
import { completedItems } from "./completedItems";
import type { LiabilityLine } from "./liabilityLine";
import { netEarnings } from "./netEarnings";
import { item, type ReturnItem, type ReturnItems } from "./returnItems";
import { selfEmploymentTax } from "./selfEmploymentTax";
import { selfEmploymentTaxDeduction } from "./selfEmploymentTaxDeduction";
import { taxableBenefits } from "./taxableBenefits";

/** Adjusted gross income, with the amounts that later steps need. */
export interface GrossIncome {
  readonly lines: readonly LiabilityLine[];
  readonly adjustedGrossIncome: Decimal;
  readonly selfEmploymentTax: Decimal;
  readonly netEarnings: Decimal;
  readonly preferentialIncome: Decimal;
  readonly netInvestmentIncome: Decimal;
}

type GrossIncomeRules = Pick<
  Rulebook,
  "capitalLossLimit" | "selfEmploymentTax" | "socialSecurityBenefits"
>;

const PLAIN: readonly (readonly [ReturnItem, string])[] = [
  ["wages", "Wages"],
  ["interest", "Taxable interest"],
  ["ordinaryDividends", "Ordinary dividends"],
  ["retirementDistributions", "Retirement distributions"],
  ["pensions", "Pensions"],
  ["businessProfit", "Business profit or loss"],
  ["rentalIncome", "Rental income or loss"],
  ["partnershipIncome", "Partnership, S corporation, trust income or loss"],
  ["unemployment", "Unemployment compensation"],
  ["otherIncome", "Other income"],
];

/**
 * Adjusted gross income from the known items.
 *
 * Losses from rentals and partnerships count as given: the limits on them are not calculated. On a joint return wages use up the
 * Social Security wage base only if they are given as the business owner's own, so that the tax is not understated.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param given - Known items, dollars.
 * @param rules - Tables for self-employment tax, capital losses and benefits.
 * @returns The lines in whole dollars, and the amounts that later steps need.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 61, 62(a), 86, 164(f), 1211(b)
 */
export function grossIncome(
  taxYear: TaxYear,
  status: FilingStatus,
  given: ReturnItems,
  rules: GrossIncomeRules
): GrossIncome {
  const begins = taxYear.firstDay;
  const items = completedItems(given);
  const plain = PLAIN.map(([name, what]) => ({
    what,
    amount: toWholeDollars(item(items, name)),
    source: undefined,
  }));
  const longTerm = item(items, "longTermGain");
  const gain = capitalGain(taxYear, status, longTerm, item(items, "shortTermGain"), rules);
  const gainLine = {
    what: "Capital gain or loss",
    amount: toWholeDollars(gain.inIncome),
    source: entryOn(rules.capitalLossLimit, begins).source,
  };

  const profit = item(items, "businessProfit");
  const ownerWages = items.ownerWages ?? (status === "joint" ? ZERO : item(items, "wages"));
  const employment = toWholeDollars(selfEmploymentTax(taxYear, profit, ownerWages, rules));
  const { source: employmentSource } = entryOn(rules.selfEmploymentTax, begins);
  const deductible = selfEmploymentTaxDeduction(taxYear, employment, rules);
  const adjustments = toWholeDollars(item(items, "adjustments"));

  const beforeBenefits = [...plain, gainLine].reduce((sum, { amount }) => sum.plus(amount), ZERO);
  const otherIncome = beforeBenefits
    .minus(deductible)
    .minus(adjustments)
    .plus(item(items, "taxExemptInterest"));
  const benefits = item(items, "socialSecurityBenefits");
  const taxable = taxableBenefits(taxYear, status, benefits, otherIncome, rules);
  const benefitsLine = {
    what: "Taxable Social Security benefits",
    amount: toWholeDollars(taxable.plus(item(items, "taxableSocialSecurity"))),
    source: entryOn(rules.socialSecurityBenefits, begins).source,
  };
  const total = beforeBenefits.plus(benefitsLine.amount);
  const adjustedGrossIncome = total.minus(deductible).minus(adjustments);
  const shown = [...plain, gainLine, benefitsLine].filter(({ amount }) => !amount.isZero());
  const deductibleLine = {
    what: "Less deductible part of self-employment tax",
    amount: deductible.negated(),
    source: employmentSource,
  };
  const adjustmentLine = {
    what: "Less other adjustments",
    amount: adjustments.negated(),
    source: undefined,
  };
  return {
    lines: [
      ...shown,
      { what: "Total income", amount: total, source: undefined },
      ...[deductibleLine, adjustmentLine].filter(({ amount }) => !amount.isZero()),
      { what: "Adjusted gross income", amount: adjustedGrossIncome, source: undefined },
    ],
    adjustedGrossIncome,
    selfEmploymentTax: employment,
    netEarnings: netEarnings(taxYear, profit, rules),
    preferentialIncome: gain.preferentialIncome.plus(item(items, "qualifiedDividends")),
    netInvestmentIncome: atLeastZero(
      item(items, "interest")
        .plus(item(items, "ordinaryDividends"))
        .plus(gain.inIncome)
        .plus(item(items, "rentalIncome"))
    ),
  };
}
