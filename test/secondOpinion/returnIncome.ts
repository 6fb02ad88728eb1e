/**
 * Income of a whole return by the lines of the forms, in whole dollars: Form 1040, lines 1 to 11, Schedules D and SE, Form 461 and the
 * Social Security Benefits Worksheet. Imports nothing from src or rules.
 */
import { returnFigures, type Status } from "./returnFigures";

/** A filer: items of a return by name, whole dollars or a number of persons. */
export interface Filer {
  readonly year: number;
  readonly status: Status;
  readonly items: Readonly<Record<string, number>>;
}

/** Whole dollars, half up. The small part more makes up for binary fractions of an exact half. */
export const rounded = (amount: number): number => Math.floor(amount + 0.5 + 1e-6);
/** Never below zero. */
export const positive = (amount: number): number => Math.max(0, amount);
/** The amount of an item, or 0. */
export const given = ({ items }: Filer, name: string): number => items[name] ?? 0;

/** Adjusted gross income and what later forms take from these. */
export interface Income {
  readonly adjustedGrossIncome: number;
  readonly selfEmploymentTax: number;
  readonly halfOfIt: number;
  readonly netEarnings: number;
  readonly qualifiedDividends: number;
  /** The smaller of lines 15 and 16 of Schedule D. */
  readonly netGain: number;
  readonly netInvestmentIncome: number;
  readonly excessLoss: number;
  readonly benefits: number;
}

/** Social Security Benefits Worksheet, lines 1 to 18. */
function benefitsWorksheet(filer: Filer, otherIncome: number): number {
  const { status } = filer;
  const line1 = given(filer, "socialSecurityBenefits");
  const line2 = line1 / 2;
  const line7 = line2 + otherIncome;
  const line17 = line1 * 0.85;
  if (status === "separate" && given(filer, "livedApart") === 0)
    return Math.min(line17, positive(line7) * 0.85);
  const line9 = positive(line7 - (status === "joint" ? 32_000 : 25_000));
  const line10 = status === "joint" ? 12_000 : 9_000;
  const line14 = Math.min(line2, Math.min(line9, line10) / 2);
  return Math.min(line17, line14 + positive(line9 - line10) * 0.85);
}

/** Works out income down to adjusted gross income. */
export function incomeOf(filer: Filer): Income {
  const of = (name: string): number => given(filer, name);
  const { wageBase, businessLoss } = returnFigures(filer.year);
  const isSeparate = filer.status === "separate";

  // Schedule D, lines 7, 15, 16 and 21; lines 6 and 14 are the carryovers.
  const line7 = of("shortTermGain") - of("shortTermCarryover");
  const line15 = of("longTermGain") - of("longTermCarryover");
  const line16 = line7 + line15;
  const gain = Math.max(line16, isSeparate ? -1_500 : -3_000);

  // Schedule SE, lines 3 to 13.
  const earnings = of("businessProfit") * 0.9235;
  const netEarnings = earnings < 400 ? 0 : earnings;
  const ownWages = filer.items["ownerWages"] ?? (filer.status === "joint" ? 0 : of("wages"));
  const line10 = Math.min(netEarnings, positive(wageBase - ownWages)) * 0.124;
  const selfEmploymentTax = rounded(line10 + netEarnings * 0.029);
  const halfOfIt = rounded(selfEmploymentTax / 2);

  // Form 461, lines 2, 5, 14 and 16.
  const businesses = ["businessProfit", "rentalIncome", "partnershipIncome"].map(of);
  const combined = businesses.reduce((sum, one) => sum + one, 0);
  const limit = filer.status === "joint" ? businessLoss * 2 : businessLoss;
  const excessLoss = positive(-combined - limit);

  const qualifiedDividends = of("qualifiedDividends");
  const dividends = Math.max(of("ordinaryDividends"), qualifiedDividends);
  const early = of("earlyDistributions") - of("pensions");
  const distributions = Math.max(of("retirementDistributions"), early);
  const beforeBenefits =
    of("wages") +
    of("interest") +
    dividends +
    positive(distributions - of("charitableDistribution")) +
    of("pensions") +
    combined +
    excessLoss +
    gain +
    of("unemployment") +
    of("otherIncome") -
    of("netOperatingLoss");
  const deducted = halfOfIt + of("adjustments");
  const otherIncome = beforeBenefits + of("taxExemptInterest") - deducted;
  const benefits = rounded(benefitsWorksheet(filer, otherIncome) + of("taxableSocialSecurity"));

  // Form 8960, lines 1 to 5. Where the law is silent the excess is divided by the losses, as src does.
  const losses = businesses.reduce((sum, one) => sum + positive(-one), 0);
  const rentalShare = losses === 0 ? 0 : positive(-of("rentalIncome")) / losses;
  const investment =
    of("interest") + dividends + gain + of("rentalIncome") + excessLoss * rentalShare;
  return {
    adjustedGrossIncome: beforeBenefits + benefits - deducted,
    selfEmploymentTax,
    halfOfIt,
    netEarnings,
    qualifiedDividends,
    netGain: positive(Math.min(line15, line16)),
    netInvestmentIncome: positive(investment),
    excessLoss,
    benefits,
  };
}
