import { describe, expect, it } from "vitest";
import {
  PROJECTED_ITEMS,
  projectedChanges,
  type ProjectedItem,
} from "../../../src/calculation/liability/projectedChanges";
import { ZERO } from "../../../src/money/dollars";
import { usd } from "../given";

/** The differences of a projection as numbers. */
function changesOf(differences: Readonly<Partial<Record<ProjectedItem, number>>>) {
  const given = Object.fromEntries(
    Object.entries(differences).map(([item, amount]) => [item, usd(amount)])
  );
  const { ordinary, businessProfit, gain, deductions, children } = projectedChanges(given);
  return [ordinary, businessProfit, gain, deductions].map(Number).concat(children);
}

describe("the changes of a projection", () => {
  // 26 U.S.C. 61(a) and 1(h)(11): what is taxed at ordinary rates, and what at capital gain rates; 1402(a): business profit;
  // 62 and 63(d): deductions; 24(a): children.
  it.each<[string, ProjectedItem[], number[]]>([
    [
      "income at ordinary rates",
      [
        ...(["wages", "interest", "ordinaryDividends", "pensions"] as const),
        ...(["retirementDistributions", "unemployment", "rentalIncome"] as const),
        ...(["partnershipIncome", "shortTermGain", "taxableSocialSecurity"] as const),
        "otherIncome",
      ],
      [3, 0, 0, 0, 0],
    ],
    ["business profit", ["businessProfit"], [0, 3, 0, 0, 0]],
    ["capital gain rates", ["qualifiedDividends", "longTermGain"], [0, 0, 3, 0, 0]],
    ["deductions", ["adjustments", "itemizedDeductions"], [0, 0, 0, 3, 0]],
    ["children", ["childrenUnder17"], [0, 0, 0, 0, 3]],
  ])("%s", (_kind, items, expected) => {
    for (const item of items) expect(changesOf({ [item]: 3 })).toEqual(expected);
  });

  it("has a case above for every item", () => {
    expect(PROJECTED_ITEMS).toHaveLength(17);
  });

  it("adds up, with decreases negative", () => {
    expect(
      changesOf({ wages: 1000, interest: -200, longTermGain: -50, childrenUnder17: -1 })
    ).toEqual([800, 0, -50, 0, -1]);
  });

  it("is zero without differences", () => {
    expect(projectedChanges({})).toEqual({
      ordinary: ZERO,
      businessProfit: ZERO,
      gain: ZERO,
      deductions: ZERO,
      children: 0,
    });
  });
});
