import { describe, expect, it } from "vitest";
import { installment } from "../../src/functions/dueDates";
import { calendar } from "../../src/functions/season";
import { answerOf, badInput, down, inCell, notHeld, serial } from "./sheet";

const HEADINGS = ["What", "Day", "Weekday", "Moved from", "Why", "Source"];

function rowOf(table: unknown[][], what: string): unknown[] | undefined {
  return table.find((row) => row[0] === what);
}

describe("CALENDAR", () => {
  const table = calendar([[2025]]);

  it("is a table of one width, headings first, with the law behind each date", () => {
    expect(table[0]).toEqual(HEADINGS);
    expect(new Set(table.map((row) => row.length))).toEqual(new Set([HEADINGS.length]));
    for (const row of table.slice(1)) expect(row[5]).toMatch(/\d/);
  });

  it("rises by day", () => {
    const days = table.slice(1).map((row) => row[1] as number);
    expect(days).toEqual(days.toSorted((one, other) => one - other));
  });

  // 26 U.S.C. 7503; Rev. Rul. 2015-13: Emancipation Day of 2022 kept on Friday, April 15, Patriots' Day on Monday, April 18.
  it("tells the weekday, the day it moved from and why", () => {
    expect(rowOf(calendar(2021, "MA"), "File, or ask for the extension")).toEqual([
      "File, or ask for the extension",
      serial("2022-04-19"),
      "Tuesday",
      serial("2022-04-15"),
      expect.stringMatching(/^Emancipation Day.*Saturday, Sunday, Patriots' Day/),
      expect.stringContaining("26 U.S.C. 7503"),
    ]);
  });

  it.each([
    ["out of country", "2026-06-15"],
    ["nonresident", "2026-06-15"],
    ["resident", "2026-04-15"],
  ])("tells the day to file of who is %s", (filerType, day) => {
    expect(rowOf(calendar(2025, null, filerType), "File, or ask for the extension")?.[1]).toBe(
      serial(day)
    );
  });

  it("tells disaster relief", () => {
    const relieved = calendar(2023, "CA", "", "2024-01-21", "2024-06-17"); // IR-2024-146
    expect(rowOf(relieved, "File, or ask for the extension")).toEqual([
      "File, or ask for the extension",
      serial("2024-06-17"),
      "Monday",
      serial("2024-04-15"),
      "disaster relief",
      expect.stringContaining("26 U.S.C. 7508A"),
    ]);
  });

  it.each([
    [2025, 2026],
    ["2026-06-30", "2027-06-30"],
    ["2025-02-28", "2026-02-28"],
    ["2024-02-29", "2025-02-28"],
    ["2023-02-28", "2024-02-29"],
  ])("has the estimates of the year after the one that ends %j", (year, newYear) => {
    const estimates = calendar(year).filter((row) => String(row[0]).includes("estimate"));
    expect(estimates.map((row) => row[1])).toEqual(
      [1, 2, 3, 4].map((number) => inCell(installment, newYear, number))
    );
  });

  it.each([
    [[2025, "ZZ"], badInput('state: "ZZ" is no state; give a postal code such as ME, or foreign')],
    [
      [2099],
      notHeld(
        "Due date of an individual income tax return: no figure for 2099-12-31; known only through 2027-12-31 (rules/return-due-date.json)"
      ),
    ],
    [[down(2024, 2025)], badInput("taxYear: is a range of 2 cells; give one cell")],
    [[{ code: "#N/A" }], { code: "#N/A" }],
  ])("refuses %j", (values, refusal) => {
    const [year, ...rest] = values;
    expect(answerOf(() => calendar(year, ...rest))).toEqual(refusal);
  });
});
