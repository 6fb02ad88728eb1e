import { describe, expect, it } from "vitest";
import { completedItems } from "../../../src/calculation/liability/completedItems";
import { known, type Written } from "./givenTax";

function completed(written: Written) {
  const { ordinaryDividends, retirementDistributions } = completedItems(known(written));
  return [ordinaryDividends?.toNumber(), retirementDistributions?.toNumber()];
}

// Form 1040, lines 3a and 3b; Form 5329, line 1.
describe("ordinary dividends and retirement distributions", () => {
  it.each<[Written, number, number]>([
    [{ wages: 9 }, 0, 0],
    [{ ordinaryDividends: 5, qualifiedDividends: 3 }, 5, 0],
    [{ ordinaryDividends: 3, qualifiedDividends: 5 }, 5, 0],
    [{ retirementDistributions: 5, earlyDistributions: 3 }, 0, 5],
    [{ retirementDistributions: 3, earlyDistributions: 5 }, 0, 5],
    [{ pensions: 2, earlyDistributions: 5 }, 0, 3],
    [{ pensions: 8, earlyDistributions: 5 }, 0, 0],
  ])("of %j are %d and %d", (written, dividends, distributions) => {
    expect(completed(written)).toEqual([dividends, distributions]);
  });

  it("leave the other items as they are", () => {
    expect(completedItems(known({ wages: 9, earlyDistributions: 5 }))).toMatchObject(
      known({ wages: 9, earlyDistributions: 5 })
    );
  });
});
