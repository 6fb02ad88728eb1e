import { describe, expect, it } from "vitest";
import { catalog } from "../../../src/functions/catalog";
import { inCell } from "../sheet";

const answer = (id: string, ...values: unknown[]): unknown =>
  inCell((...cells: unknown[]) => catalog[id]?.answer(cells), ...values);

/** Cells of the rows of LEDGER from the payment of June 20, 2026 on: from the failure-to-file penalty to the overpayment. */
function amountsFromJune(paidInJune: number): readonly (readonly unknown[])[] {
  const payments = [
    ["4/15/2026", 5_000],
    ["6/20/2026", paidInJune],
    ["12/1/2026", 10],
  ];
  const table = answer("LEDGER", 2025, 10_000, payments, "6/20/2026") as unknown[][];
  return table.slice(4).map((row) => row.slice(4, -1));
}

// 26 U.S.C. 6601(e)(2)(B): interest on the failure-to-file penalty accrues to the date the penalty is paid. An undesignated payment is
// applied to tax, then to penalties, then to interest (Notice CP2000, page 9). $5,000 is unpaid for three months, and the return is 66
// days late: 0.5% for three months is 75. The minimum of $525 is less than 4.5% for three months, 675. Interest for 66 days at 6% is
// 54.54 on 5,000 and 7.36 on 675.
describe("LEDGER with more paid than the tax", () => {
  it("adds no interest once the tax, the penalties and the interest are paid", () => {
    const paid = [675, 75, 61.9, 811.9, 0];
    expect(amountsFromJune(6_000)).toEqual([
      [...paid, 188.1],
      [...paid, 188.1],
      [...paid, 198.1],
    ]);
  });

  it("adds no interest once the tax and the penalties are paid", () => {
    const paid = [675, 75, 61.9, 811.9];
    expect(amountsFromJune(5_800)).toEqual([
      [...paid, 11.9, 0],
      [...paid, 11.9, 0],
      [...paid, 1.9, 0],
    ]);
  });

  it("adds interest on the part of the failure-to-file penalty that is unpaid", () => {
    // 225 of the 300 beyond the tax are left for the failure-to-file penalty: 450 is unpaid, with 7.36 of interest. For ten days at 6%
    // and 154 days at 7% that grows by 14.48 to 21.85.
    expect(amountsFromJune(5_300)).toEqual([
      [675, 75, 61.9, 811.9, 511.9, 0],
      [675, 75, 61.9, 811.9, 511.9, 0],
      [675, 75, 76.39, 826.39, 516.39, 0],
    ]);
  });
});
