import { ZERO, type Decimal } from "../../money/dollars";
import type { ProjectedTaxInput } from "./projectedTax";
import type { ReturnItem } from "./returnItems";

/** The differences from last year that a projection uses. */
export type ProjectedChanges = Pick<
  ProjectedTaxInput,
  "ordinary" | "businessProfit" | "gain" | "deductions" | "children"
>;

const KINDS = {
  wages: "ordinary",
  interest: "ordinary",
  ordinaryDividends: "ordinary",
  pensions: "ordinary",
  retirementDistributions: "ordinary",
  unemployment: "ordinary",
  rentalIncome: "ordinary",
  partnershipIncome: "ordinary",
  shortTermGain: "ordinary",
  taxableSocialSecurity: "ordinary",
  otherIncome: "ordinary",
  businessProfit: "businessProfit",
  qualifiedDividends: "gain",
  longTermGain: "gain",
  adjustments: "deductions",
  itemizedDeductions: "deductions",
  childrenUnder17: "children",
} as const satisfies Partial<Record<ReturnItem, keyof ProjectedChanges>>;

/** An item of a return whose difference a projection can use. */
export type ProjectedItem = keyof typeof KINDS;

/** The items of a return whose difference a projection can use. */
export const PROJECTED_ITEMS = Object.keys(KINDS) as readonly ProjectedItem[];

/**
 * The differences from last year by their effect on the tax: income at ordinary rates, business profit, gain at capital gain rates,
 * deductions, and children under 17.
 *
 * @param differences - More than last year, negative if less: dollars, and a whole number of children.
 * @returns The differences, added up by kind.
 * @see 26 U.S.C. 1(h), 24(a), 62, 63, 1401
 *
 * @example
 * // wages 1,000 more, interest 200 less, one child more //=> ordinary 800, children 1
 */
export function projectedChanges(
  differences: Readonly<Partial<Record<ProjectedItem, Decimal>>>
): ProjectedChanges {
  const sumOf = (kind: keyof ProjectedChanges): Decimal =>
    PROJECTED_ITEMS.filter((item) => KINDS[item] === kind).reduce(
      (sum, item) => sum.plus(differences[item] ?? ZERO),
      ZERO
    );
  return {
    ordinary: sumOf("ordinary"),
    businessProfit: sumOf("businessProfit"),
    gain: sumOf("gain"),
    deductions: sumOf("deductions"),
    children: sumOf("children").toNumber(),
  };
}
