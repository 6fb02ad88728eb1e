import { describe, expect, it } from "vitest";
import { catalog } from "../../../src/functions/catalog";
import { inCell } from "../sheet";

const answer = (id: string, ...values: unknown[]): unknown =>
  inCell((...cells: unknown[]) => catalog[id]?.answer(cells), ...values);

const NOT_GIVEN = [null, null, null, null] as const;

// 26 U.S.C. 6654(g)(1): an equal part of the withholding is deemed paid on each due date. 26 CFR 301.7508A-1(b)(4): a postponement
// disregards days and does not move the due date.
describe("withholding in a year with a postponement", () => {
  const payments = [
    ["9/15/2025", 2_000],
    ["1/15/2026", 1_000],
  ];
  const period = ["6/1/2025", "8/20/2025"] as const;

  it("ends an April underpayment in June in ESTPENALTYLINES and ESTPENALTY", () => {
    const given = [2025, 8_000, 4_000, payments, ...NOT_GIVEN] as const;
    const lineOfApril = expect.arrayContaining([1_000, 61, 11.7]) as unknown;
    const lines = answer("ESTPENALTYLINES", ...given, ...period) as unknown[][];
    expect(lines[1]).toEqual(lineOfApril);
    expect((answer("ESTPENALTYLINES", ...given) as unknown[][])[1]).toEqual(lineOfApril);
    expect(answer("ESTPENALTY", ...given, ...period)).toBe(62.33);
  });

  it("does not make the penalty larger", () => {
    const paid = [
      ["6/16/2025", 2_908],
      ["9/12/2025", 514],
      ["7/27/2025", 2_125],
    ];
    const given = [2025, 10_989, 7_493, paid, ...NOT_GIVEN] as const;
    const plain = Number(answer("ESTPENALTY", ...given));
    const postponed = Number(answer("ESTPENALTY", ...given, "6/11/2025", "11/29/2025"));
    expect(plain).toBe(10.22);
    expect(postponed).toBeGreaterThan(0);
    expect(postponed).toBeLessThanOrEqual(plain);
  });
});
