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
  "businessProfit",
  "rentalIncome",
  "partnershipIncome",
  "pensions",
  "retirementDistributions",
  "earlyDistributions",
  "socialSecurityBenefits",
  "taxableSocialSecurity",
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
  "credits",
  "otherTaxes",
  "withholding",
  "estimatedPayments",
  "overpaymentApplied",
  "refundableCredits",
] as const;

/** A known item of a return. */
export type ReturnItem = (typeof RETURN_ITEMS)[number];

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
