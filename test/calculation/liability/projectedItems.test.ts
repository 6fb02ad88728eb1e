import { describe, expect, it } from "vitest";
import { projectedItems, type ItemChange } from "../../../src/calculation/liability/projectedItems";
import { known, usd, type Written } from "./givenTax";

type Change = readonly [ItemChange["item"], ItemChange["kind"], number];

/** The items of the new year as numbers. */
function projected(priorYear: Written, ...changes: readonly Change[]) {
  const items = projectedItems(
    known(priorYear),
    changes.map(([item, kind, value]) => ({ item, kind, value: usd(value) }))
  );
  return Object.fromEntries(
    Object.entries(items).map(([name, amount]) => [name, amount.toNumber()])
  );
}

// Plain arithmetic, no source.
describe("last year's items with changes", () => {
  it("are the same items without changes", () => {
    expect(projected({ wages: 80_000, interest: 50 })).toEqual({ wages: 80_000, interest: 50 });
  });

  it("increase and decrease by dollars, and start from zero if not known last year", () => {
    expect(
      projected(
        { wages: 80_000, longTermGain: 5_000, childrenUnder17: 1, blind: 1 },
        ["wages", "difference", -5_000],
        ["longTermGain", "difference", -7_000],
        ["childrenUnder17", "difference", 2],
        ["interest", "difference", 0.5]
      )
    ).toEqual({ wages: 75_000, longTermGain: -2_000, childrenUnder17: 3, blind: 1, interest: 0.5 });
  });

  it("change by a fraction of last year's amount, whatever comes first", () => {
    const changes: Change[] = [
      ["wages", "difference", 1_000],
      ["wages", "fraction", 0.05],
      ["wages", "fraction", -0.1],
    ];
    expect(projected({ wages: 80_000 }, ...changes)).toEqual({ wages: 77_000 });
    expect(projected({ wages: 80_000 }, ...changes.toReversed())).toEqual({ wages: 77_000 });
    expect(projected({ businessProfit: -2_000 }, ["businessProfit", "fraction", 0.5])).toEqual({
      businessProfit: -3_000,
    });
  });

  it("take a new amount as it is", () => {
    expect(projected({ specifiedService: 1 }, ["specifiedService", "newAmount", 0])).toEqual({
      specifiedService: 0,
    });
    expect(projected({}, ["specifiedService", "newAmount", 1])).toEqual({ specifiedService: 1 });
  });

  // Form 1040, lines 3a and 3b: qualified dividends are included in ordinary dividends.
  it("count qualified dividends among last year's ordinary dividends", () => {
    expect(
      projected({ qualifiedDividends: 5_000 }, ["ordinaryDividends", "difference", 1_000])
    ).toEqual({ qualifiedDividends: 5_000, ordinaryDividends: 6_000 });
    expect(
      projected({ qualifiedDividends: 5_000, ordinaryDividends: 8_000 }, [
        "ordinaryDividends",
        "fraction",
        0.5,
      ])
    ).toEqual({ qualifiedDividends: 5_000, ordinaryDividends: 12_000 });
  });

  // Form 5329, line 1, and Form 1040, line 4b: early distributions are included in distributions.
  it("count early distributions among last year's retirement distributions", () => {
    expect(
      projected({ earlyDistributions: 5_000 }, ["retirementDistributions", "difference", 1_000])
    ).toEqual({ earlyDistributions: 5_000, retirementDistributions: 6_000 });
  });
});
