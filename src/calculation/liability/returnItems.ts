import { ZERO, type Decimal } from "../../money/dollars";

/** What may be known of a return before it is prepared. Amounts are dollars unless said otherwise. */
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

/** The items given, added up by name. */
export type ReturnItems = Readonly<Partial<Record<ReturnItem, Decimal>>>;

/** An item's amount; nothing where it is not given. */
export function item(items: ReturnItems, name: ReturnItem): Decimal {
  return items[name] ?? ZERO;
}
