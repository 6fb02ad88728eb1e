import { Decimal, toWholeDollars, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { capitalGain } from "./capitalGain";
import { completedItems } from "./completedItems";
import { excessBusinessLoss } from "./excessBusinessLoss";
import type { LiabilityLine } from "./liabilityLine";
import { netEarnings } from "./netEarnings";
import { netInvestmentIncome } from "./netInvestmentIncome";
import { BUSINESSES, item, type ReturnItem, type ReturnItems } from "./returnItems";
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
  "capitalLossLimit" | "excessBusinessLoss" | "selfEmploymentTax" | "socialSecurityBenefits"
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
 * Losses from rentals and partnerships count as given, within the limit on excess business losses: the other limits on them are not
 * calculated. A net operating loss from other years counts as given. On a joint return wages use up the Social Security wage base
 * only if they are given as the business owner's own, so that the tax is not understated.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param given - Known items, dollars.
 * @param rules - Tables for self-employment tax, capital losses, business losses and benefits.
 * @returns The lines in whole dollars, and the amounts that later steps need.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 61, 62(a), 86, 164(f), 172(a), 408(d)(8), 461(l), 1211(b), 1212(b)
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
  const longTerm = item(items, "longTermGain").minus(item(items, "longTermCarryover"));
  const shortTerm = item(items, "shortTermGain").minus(item(items, "shortTermCarryover"));
  const gain = capitalGain(taxYear, status, longTerm, shortTerm, rules);
  const gainLine = {
    what: "Capital gain or loss",
    amount: toWholeDollars(gain.inIncome),
    source: entryOn(rules.capitalLossLimit, begins).source,
  };

  const charitable = Decimal.min(
    item(items, "charitableDistribution"),
    item(items, "retirementDistributions")
  );
  const charitableLine = {
    what: "Less qualified charitable distribution",
    amount: toWholeDollars(charitable).negated(),
    source: undefined,
  };
  const businessIncome = BUSINESSES.reduce((sum, name) => sum.plus(item(items, name)), ZERO);
  const excessLoss = excessBusinessLoss(taxYear, status, businessIncome, rules);
  const excessLine = {
    what: "Excess business loss, not deductible this year",
    amount: toWholeDollars(excessLoss),
    source: entryOn(rules.excessBusinessLoss, begins).source,
  };
  const operatingLossLine = {
    what: "Less net operating loss carryforward",
    amount: toWholeDollars(item(items, "netOperatingLoss")).negated(),
    source: undefined,
  };

  const profit = item(items, "businessProfit");
  const ownerWages = items.ownerWages ?? (status === "joint" ? ZERO : item(items, "wages"));
  const employment = toWholeDollars(selfEmploymentTax(taxYear, profit, ownerWages, rules));
  const { source: employmentSource } = entryOn(rules.selfEmploymentTax, begins);
  const deductible = selfEmploymentTaxDeduction(taxYear, employment, rules);
  const adjustments = toWholeDollars(item(items, "adjustments"));

  const income = [...plain, charitableLine, gainLine, excessLine, operatingLossLine];
  const beforeBenefits = income.reduce((sum, { amount }) => sum.plus(amount), ZERO);
  const otherIncome = beforeBenefits
    .minus(deductible)
    .minus(adjustments)
    .plus(item(items, "taxExemptInterest"));
  const benefits = item(items, "socialSecurityBenefits");
  const livedApart = item(items, "livedApart").greaterThan(0);
  const taxable = taxableBenefits(taxYear, status, livedApart, benefits, otherIncome, rules);
  const benefitsLine = {
    what: "Taxable Social Security benefits",
    amount: toWholeDollars(taxable.plus(item(items, "taxableSocialSecurity"))),
    source: entryOn(rules.socialSecurityBenefits, begins).source,
  };
  const total = beforeBenefits.plus(benefitsLine.amount);
  const adjustedGrossIncome = total.minus(deductible).minus(adjustments);
  const shown = [...income, benefitsLine].filter(({ amount }) => !amount.isZero());
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
    netInvestmentIncome: netInvestmentIncome(items, gain.inIncome, excessLoss),
  };
}
