import { describe, expect, it } from "vitest";
import { catalog } from "../../../src/functions/catalog";
import { inCell } from "../sheet";

const answer = (id: string, ...values: unknown[]): unknown =>
  inCell((...cells: unknown[]) => catalog[id]?.answer(cells), ...values);

const table = (id: string, ...values: unknown[]): readonly (readonly unknown[])[] =>
  answer(id, ...values) as unknown[][];

/** The return of a fiscal year, due on October 15, 2025, and the Texas flood postponement as announced. */
const YEAR = "6/30/2025";
const FLOOD = ["7/2/2025", "2/2/2026"] as const;
const FILED = "6/30/2026";

// 26 U.S.C. 6651(j): the amount of the calendar year in which the return is required to be filed, $510 in 2025 (Rev. Proc. 2023-34).
// 26 CFR 301.7508A-1(b)(4): a postponement disregards days and does not move the due date.
describe("the minimum penalty of a return postponed into the next year", () => {
  it("is that of the year of the due date in LATEFILE", () => {
    expect(answer("LATEFILE", YEAR, 600, FILED, null, "TX", null, ...FLOOD)).toBe(510);
    expect(answer("LATEFILE", YEAR, 600, FILED, null, "TX")).toBe(510);
    // 25% of 600 is more than the $135 of 2015 and less than the $205 of 2016. The postponement is made up.
    const made = ["3/1/2015", "2/1/2016"];
    expect(answer("LATEFILE", 2014, 600, "6/30/2016", null, "TX", null, ...made)).toBe(150);
  });

  // $400 is paid on time and $600 with the return, in the fifth month after the postponement. Failure to pay is 0.5% of 600 for five
  // months, 15. Failure to file is 4.5% of 600 for five months, 135, increased by 375 to 510.
  const place = ["TX", null, null, null, ...FLOOD] as const;

  it("is that of the year of the due date in CHARGELINES", () => {
    const lines = table("CHARGELINES", YEAR, 1000, 400, FILED, FILED, null, ...place);
    const amounts = lines.slice(1).map((line) => line.at(-2));
    expect(amounts.slice(0, 4)).toEqual([150, -15, 375, 15]);
  });

  it("is that of the year of the due date in LEDGER, CHARGES and WHATIF", () => {
    const payments = [
      ["10/15/2025", 400],
      [FILED, 600],
    ];
    const ledger = table("LEDGER", YEAR, 1000, payments, FILED, null, ...place);
    const [, , , , failureToFile, failureToPay, , total] = ledger.at(-1) ?? [];
    expect([failureToFile, failureToPay]).toEqual([510, 15]);
    expect(answer("CHARGES", YEAR, 1000, 400, FILED, FILED, null, ...place)).toBe(total);
    const whatIf = table("WHATIF", YEAR, 1000, 400, [[0]], [[FILED]], null, ...place);
    expect(whatIf.at(-1)?.at(-1)).toBe(total);
  });
});
