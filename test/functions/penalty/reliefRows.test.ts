import { describe, expect, it } from "vitest";
import { chargeLines, charges } from "../../../src/functions/penalty/charges";
import { afterTable, answerOf, badInput, inCell } from "../sheet";

const LATE = [2025, 20000, 10000, "2026-06-10", "2026-06-10"];
const PRESUMED = [2025, 20000, 18500, "2026-10-15", "2026-10-15", "yes"];
/** The arguments of CHARGELINES with an answer to whether the history is clean. */
const withHistory = (values: readonly unknown[], cleanHistory: unknown): unknown[] => [
  ...values,
  ...Array.from({ length: 12 - values.length }, () => ""),
  cleanHistory,
];

const tableOf = (values: readonly unknown[]): unknown[][] =>
  answerOf(() => (chargeLines as (...cells: unknown[]) => unknown)(...values)) as unknown[][];
/** Item and amount of the rows that a clean history adds. */
const added = (values: readonly unknown[]): unknown[][] =>
  tableOf(withHistory(values, "yes"))
    .slice(tableOf(values).length)
    .map((row) => [row[0], row[7]]);

describe("CHARGELINES with a clean history", () => {
  // Section 6651(c)(1): two months of 4.5% and 0.5% of 10,000; sections 6601 and 6622: 56 days at 6%, compounded daily.
  it("shows the total, likely relief and what would remain, below the lines of the total", () => {
    expect(added(LATE)).toEqual([
      ["Total penalties and interest", 1100.79],
      ["Likely relief: failure-to-file penalty", -900],
      ["Likely relief: failure-to-pay penalty", -100],
      ["Likely relief: interest on the failure-to-file penalty", -8.32],
      ["Likely to remain: interest on the tax", 92.47],
      [
        "Relief is likely, but not certain: automatic exemption from penalty (AEP) or first-time abatement (FTA)",
        "",
      ],
      ["The failure-to-pay penalty continues until the tax is paid. Ask for relief after that", ""],
    ]);
  });

  it("leaves the lines above as they are, and CHARGES too", () => {
    const lines = tableOf(LATE);
    expect(tableOf(withHistory(LATE, "yes")).slice(0, lines.length)).toEqual(lines);
    expect(inCell(charges, ...LATE)).toBe(1100.79);
  });

  it.each(["", "no", false, 0])("adds nothing for %j", (answer) => {
    expect(tableOf(withHistory(LATE, answer))).toEqual(tableOf(LATE));
  });

  it("names the relief of the tax year and its source", () => {
    const relief = (year: number) =>
      tableOf(
        withHistory([year, 1000, 0, `${String(year + 1)}-07-01`, `${String(year + 1)}-07-01`], "x")
      ).find((row) => String(row[0]).startsWith("Relief is likely"));
    expect(relief(2023)).toEqual([
      "Relief is likely, but not certain: first-time abatement (FTA)",
      ...Array.from({ length: 7 }, () => ""),
      "IRM 20.1.1.3.3.2.1(1) to (5)",
    ]);
    expect(relief(2025)?.[8]).toMatch(/\(secondary source\)$/);
  });

  it("has one relief line where only one penalty applies", () => {
    expect(added([2025, 20000, 10000, "2026-04-16", "2026-04-15"]).map(([item]) => item)).toEqual([
      "Total penalties and interest",
      "Likely relief: failure-to-pay penalty",
      "Likely to remain: interest on the tax",
      expect.stringMatching(/^Relief is likely/),
      expect.stringMatching(/^The failure-to-pay penalty continues/),
    ]);
  });

  it("says so where there is no penalty to remove", () => {
    expect(added(PRESUMED)).toEqual([
      ["Total penalties and interest", 50.34],
      ["There is no penalty to remove. Interest on the tax remains", ""],
    ]);
    expect(added([2025, 20000, 20000, "2026-04-15", "2026-04-15"])).toEqual([]);
  });

  it("keeps one width", () => {
    expect(new Set(tableOf(withHistory(LATE, "yes")).map((row) => row.length))).toEqual(
      new Set([9])
    );
  });

  it("refuses a clean history that is not yes or no", () => {
    expect(tableOf(withHistory(LATE, "three years"))).toEqual(
      badInput(
        'cleanHistory: "three years" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.'
      )
    );
  });

  it("has no answer for a tax year whose relief is not in the rules", () => {
    const late = [2027, 20000, 19000, "2028-04-20", "2028-04-16", "", "", "", "7%"];
    expect(tableOf(withHistory(late, "yes"))).toEqual(
      afterTable("clean-history-relief", "12/31/2027", "12/31/2026")
    );
  });
});
