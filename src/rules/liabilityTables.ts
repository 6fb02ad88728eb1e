import additionalDeductions from "../../rules/additional-deductions.json";
import additionalMedicareTax from "../../rules/additional-medicare-tax.json";
import alternativeMinimumTax from "../../rules/alternative-minimum-tax.json";
import businessIncomeDeduction from "../../rules/business-income-deduction.json";
import capitalGainRates from "../../rules/capital-gain-rates.json";
import capitalLossLimit from "../../rules/capital-loss-limit.json";
import charitableWithoutItemizing from "../../rules/charitable-without-itemizing.json";
import childTaxCredit from "../../rules/child-tax-credit.json";
import dependentStandardDeduction from "../../rules/dependent-standard-deduction.json";
import earlyDistribution from "../../rules/early-distribution.json";
import excessBusinessLoss from "../../rules/excess-business-loss.json";
import incomeTaxRates from "../../rules/income-tax-rates.json";
import itemizedLimit from "../../rules/itemized-limit.json";
import netInvestmentIncomeTax from "../../rules/net-investment-income-tax.json";
import selfEmploymentTax from "../../rules/self-employment-tax.json";
import socialSecurityBenefits from "../../rules/social-security-benefits.json";
import standardDeduction from "../../rules/standard-deduction.json";
import stateAndLocalCap from "../../rules/state-and-local-cap.json";
import taxTable from "../../rules/tax-table.json";
import { readDatedTable } from "./datedTable";
import type { Written } from "./schema/schemas";

/** Reads the rules behind the estimated total tax. */
export const liabilityReaders = {
  incomeTaxRates: () => readDatedTable(incomeTaxRates as Written["income-tax-rates"]),
  taxTable: () => readDatedTable(taxTable as Written["tax-table"]),
  capitalGainRates: () => readDatedTable(capitalGainRates as Written["capital-gain-rates"]),
  standardDeduction: () => readDatedTable(standardDeduction as Written["standard-deduction"]),
  dependentStandardDeduction: () =>
    readDatedTable(dependentStandardDeduction as Written["dependent-standard-deduction"]),
  selfEmploymentTax: () => readDatedTable(selfEmploymentTax as Written["self-employment-tax"]),
  additionalMedicareTax: () =>
    readDatedTable(additionalMedicareTax as Written["additional-medicare-tax"]),
  netInvestmentIncomeTax: () =>
    readDatedTable(netInvestmentIncomeTax as Written["net-investment-income-tax"]),
  alternativeMinimumTax: () =>
    readDatedTable(alternativeMinimumTax as Written["alternative-minimum-tax"]),
  businessIncomeDeduction: () =>
    readDatedTable(businessIncomeDeduction as Written["business-income-deduction"]),
  childTaxCredit: () => readDatedTable(childTaxCredit as Written["child-tax-credit"]),
  stateAndLocalCap: () => readDatedTable(stateAndLocalCap as Written["state-and-local-cap"]),
  additionalDeductions: () =>
    readDatedTable(additionalDeductions as Written["additional-deductions"]),
  itemizedLimit: () => readDatedTable(itemizedLimit as Written["itemized-limit"]),
  charitableWithoutItemizing: () =>
    readDatedTable(charitableWithoutItemizing as Written["charitable-without-itemizing"]),
  socialSecurityBenefits: () =>
    readDatedTable(socialSecurityBenefits as Written["social-security-benefits"]),
  capitalLossLimit: () => readDatedTable(capitalLossLimit as Written["capital-loss-limit"]),
  excessBusinessLoss: () => readDatedTable(excessBusinessLoss as Written["excess-business-loss"]),
  earlyDistribution: () => readDatedTable(earlyDistribution as Written["early-distribution"]),
};
