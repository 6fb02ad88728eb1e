import { ZERO, type Decimal } from "../../money/dollars";

/** Items of a return that may be known before it is prepared. Amounts are in dollars. */
export const RETURN_ITEMS = [
  "wages",
  "ownerWages",
  "taxExemptInterest",
  "interest",
  "ordinaryDividends",
  "qualifiedDividends",
  "longTermGain",
  "shortTermGain",
  "longTermCarryover",
  "shortTermCarryover",
  "businessProfit",
  "rentalIncome",
  "partnershipIncome",
  "netOperatingLoss",
  "pensions",
  "retirementDistributions",
  "charitableDistribution",
  "earlyDistributions",
  "socialSecurityBenefits",
  "taxableSocialSecurity",
  "livedApart",
  "unemployment",
  "otherIncome",
  "adjustments",
  "itemizedDeductions",
  "stateAndLocalTaxes",
  "charitableCash",
  "tips",
  "overtime",
  "carLoanInterest",
  "qualifiedBusinessIncome",
  "businessWages",
  "businessProperty",
  "specifiedService",
  "childrenUnder17",
  "otherDependents",
  "aged",
  "blind",
  "earnedIfDependent",
  "minimumTaxItems",
  "foreignTaxCredit",
  "educationCredits",
  "elderlyCredit",
  "credits",
  "otherTaxes",
  "withholding",
  "estimatedPayments",
  "overpaymentApplied",
  "refundableCredits",
] as const;

/** A known item of a return. */
export type ReturnItem = (typeof RETURN_ITEMS)[number];

/** Net income or loss of the businesses of a return, whose losses are limited together. */
export const BUSINESSES: readonly ReturnItem[] = [
  "businessProfit",
  "rentalIncome",
  "partnershipIncome",
];

/** Items that are a yes or no: 1 or more is yes. */
export const YES_OR_NO: readonly ReturnItem[] = ["livedApart", "specifiedService"];

/** Items whose amount may be negative: losses. */
export const MAY_BE_NEGATIVE: readonly ReturnItem[] = [
  "longTermGain",
  "shortTermGain",
  "businessProfit",
  "rentalIncome",
  "partnershipIncome",
  "otherIncome",
];

/** The known items, added up by name. */
export type ReturnItems = Readonly<Partial<Record<ReturnItem, Decimal>>>;

/** An item's amount; zero if it is not given. */
export function item(items: ReturnItems, name: ReturnItem): Decimal {
  return items[name] ?? ZERO;
}
