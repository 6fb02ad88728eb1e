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
import incomeTaxRates from "../../rules/income-tax-rates.json";
import itemizedLimit from "../../rules/itemized-limit.json";
import netInvestmentIncomeTax from "../../rules/net-investment-income-tax.json";
import selfEmploymentTax from "../../rules/self-employment-tax.json";
import socialSecurityBenefits from "../../rules/social-security-benefits.json";
import standardDeduction from "../../rules/standard-deduction.json";
import stateAndLocalCap from "../../rules/state-and-local-cap.json";
import { readDatedTable } from "./datedTable";

/** Columns of the rate schedules; a surviving spouse uses the joint one. */
export const RATE_COLUMNS = ["single", "joint", "separate", "head"] as const;

/** Rates below the highest, in percent, as the edges of the brackets are named. */
export const BRACKETS = [10, 12, 22, 24, 32, 35] as const;

/** Names of the seven rates, lowest first. */
export const RATE_NAMES = [
  "lowestRate",
  "secondRate",
  "thirdRate",
  "fourthRate",
  "fifthRate",
  "sixthRate",
  "highestRate",
] as const;

/** A column of the rate schedules. */
export type RateColumn = (typeof RATE_COLUMNS)[number];

const edges = RATE_COLUMNS.flatMap((column) =>
  BRACKETS.map((bracket) => `${column}${bracket}` as const)
);
const gainEdges = RATE_COLUMNS.flatMap(
  (column) => [`${column}ZeroTop`, `${column}FifteenTop`] as const
);

/** The rules behind the estimate of total tax. */
export const liabilityTables = {
  incomeTaxRates: readDatedTable(incomeTaxRates, [...edges, ...RATE_NAMES]),
  capitalGainRates: readDatedTable(capitalGainRates, [...gainEdges, "middleRate", "highestRate"]),
  standardDeduction: readDatedTable(standardDeduction, [
    "single",
    "joint",
    "separate",
    "head",
    "agedOrBlindUnmarried",
    "agedOrBlindMarried",
  ]),
  dependentStandardDeduction: readDatedTable(dependentStandardDeduction, ["floor", "earnedPlus"]),
  selfEmploymentTax: readDatedTable(selfEmploymentTax, [
    "netEarningsShare",
    "socialSecurityRate",
    "medicareRate",
    "leastNetEarnings",
    "wageBase",
  ]),
  additionalMedicareTax: readDatedTable(additionalMedicareTax, [
    "rate",
    "single",
    "joint",
    "separate",
  ]),
  netInvestmentIncomeTax: readDatedTable(netInvestmentIncomeTax, [
    "rate",
    "single",
    "joint",
    "separate",
  ]),
  alternativeMinimumTax: readDatedTable(alternativeMinimumTax, [
    "exemptionSingle",
    "exemptionJoint",
    "exemptionSeparate",
    "phaseoutSingle",
    "phaseoutJoint",
    "phaseoutSeparate",
    "phaseoutRate",
    "lowerRate",
    "higherRate",
    "higherRateAbove",
    "higherRateAboveSeparate",
  ]),
  businessIncomeDeduction: readDatedTable(businessIncomeDeduction, [
    "rate",
    "threshold",
    "thresholdJoint",
    "thresholdSeparate",
    "phaseIn",
    "phaseInJoint",
    "minimum",
    "minimumFrom",
  ]),
  childTaxCredit: readDatedTable(childTaxCredit, [
    "child",
    "otherDependent",
    "phaseoutJoint",
    "phaseoutOthers",
    "phaseoutStep",
    "phaseoutPerStep",
  ]),
  stateAndLocalCap: readDatedTable(stateAndLocalCap, ["cap", "incomeAbove", "shrinkRate", "floor"]),
  additionalDeductions: readDatedTable(additionalDeductions, [
    "seniorAmount",
    "seniorJoint",
    "seniorOthers",
    "seniorRate",
    "tipsCap",
    "overtimeCap",
    "overtimeCapJoint",
    "workJoint",
    "workOthers",
    "workPerThousand",
    "carLoanCap",
    "carLoanJoint",
    "carLoanOthers",
    "carLoanPerThousand",
  ]),
  itemizedLimit: readDatedTable(itemizedLimit, ["numerator", "denominator"]),
  charitableWithoutItemizing: readDatedTable(charitableWithoutItemizing, ["most", "mostJoint"]),
  socialSecurityBenefits: readDatedTable(socialSecurityBenefits, [
    "base",
    "baseJoint",
    "adjustedBase",
    "adjustedBaseJoint",
    "lowerShare",
    "higherShare",
  ]),
  capitalLossLimit: readDatedTable(capitalLossLimit, ["most", "mostSeparate"]),
  earlyDistribution: readDatedTable(earlyDistribution, ["rate"]),
};
