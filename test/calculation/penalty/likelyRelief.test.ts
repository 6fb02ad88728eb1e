import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { charges, type Charges } from "../../../src/calculation/penalty/charges";
import { likelyRelief, type ChargedParts } from "../../../src/calculation/penalty/likelyRelief";
import { toCents } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { paid } from "../given";
import { RUNS } from "../arbitrary";
import { anyReturn, chargesOf, type GivenReturn } from "./givenReturn";

const partsOf = (charged: Charges): ChargedParts => ({
  failureToFile: toCents(charged.failureToFile.amount),
  failureToPay: toCents(charged.failureToPay.amount),
  interestOnPenalties: toCents(charged.interestOnPenalty.amount),
  interestOnTax: toCents(charged.interestOnTax.amount),
});

/** Dollars removed and remaining. */
const reliefOf = (given: GivenReturn): readonly [string, string] => {
  const { removed, remaining } = likelyRelief(partsOf(chargesOf(given)));
  return [removed.toFixed(2), remaining.toFixed(2)];
};

describe("likely relief for a clean history", () => {
  // Section 6651(a), (c)(1): two months at 4.5% and at 0.5% of 10,000. Sections 6601 and 6622: 56 days at 6% (Rev. Rul. 2026-5),
  // 10,000 and 900 times ((1 + 0.06/365)^56 - 1) = 0.0092472. IRM 20.1.1.3.3.2.1(1): both penalties go; section 6601(e)(2): their
  // interest with them.
  it("removes both penalties and the interest on the first, and leaves the interest on the tax", () => {
    expect(
      reliefOf({
        taxYear: 2025,
        totalTax: "20000",
        paidOnTime: "10000",
        payments: [paid("2026-06-10", "10000")],
        filedOn: "2026-06-10",
      })
    ).toEqual(["1008.32", "92.47"]);
  });

  // The minimum penalty of a return due in 2026 is 525 (Rev. Proc. 2024-40).
  it("removes the minimum penalty whole", () => {
    const given = { taxYear: 2025, totalTax: "1000", paidOnTime: "0", filedOn: "2026-06-15" };
    const charged = partsOf(chargesOf(given));
    expect(charged.failureToFile.toFixed(2)).toBe("525.00");
    expect(likelyRelief(charged).removed.greaterThan(525)).toBe(true);
  });

  it("removes nothing where reasonable cause is presumed", () => {
    const payments = [paid("2026-10-15", "1500")];
    const given = { taxYear: 2025, totalTax: "20000", paidOnTime: "18500", payments };
    expect(reliefOf({ ...given, validExtension: true, filedOn: "2026-10-15" })).toEqual([
      "0.00",
      "50.34",
    ]);
  });

  it("removes and leaves the whole to the cent, and leaves the interest on the tax", () => {
    fc.assert(
      fc.property(anyReturn, (given) => {
        const charged = charges(given, rulebook);
        const { removed, remaining } = likelyRelief(partsOf(charged));
        expect(removed.plus(remaining).toFixed(2)).toBe(charged.total.toFixed(2));
        expect(remaining.toFixed(2)).toBe(toCents(charged.interestOnTax.amount).toFixed(2));
      }),
      RUNS
    );
  });
});
