import { describe, expect, it } from "vitest";
import { firstTime } from "../../../src/functions/penalty/firstTime";
import { afterTable, answerOf, badInput, down, NONE, serial } from "../sheet";

const tableOf = (...values: unknown[]): unknown[][] =>
  answerOf(() => (firstTime as (...cells: unknown[]) => unknown)(...values)) as unknown[][];
/** Item, year and result of each row. */
const results = (...values: unknown[]): unknown[] =>
  tableOf(...values)
    .slice(1)
    .map((row) => row.slice(0, 3));

describe("FIRSTTIME", () => {
  // IRM 20.1.1.3.3.2.1(2) to (5): the estimated tax penalty and a penalty before the three years do not count.
  it("shows the result, the name of the relief, how to get it, what to confirm, and each year", () => {
    const table = tableOf(2025, [
      [2023, "estimated tax penalty"],
      [2021, ""],
    ]);
    expect(table[0]).toEqual(["Item", "Tax year", "Result", "Reason", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["Relief", 2025, "likely"],
      ["Name of the relief", 2025, ""],
      ["How to get it", 2025, ""],
      ["Confirm first", 2025, ""],
      ["Look-back year", 2022, "does not count"],
      ["Look-back year", 2023, "does not count"],
      ["Look-back year", 2024, "does not count"],
      ["Other year", 2021, "does not count"],
    ]);
    expect(table[1]?.[3]).toBe("No year counts against relief. Relief is likely, but not certain");
    expect(table[2]?.[3]).toBe(
      "automatic exemption from penalty (AEP) or first-time abatement (FTA)"
    );
    expect(table[4]?.[3]).toMatch(/^Reports of 2026 disagree/);
    expect(table[6]?.[3]).toBe("The estimated tax penalty does not count");
  });

  it("marks the sources that are not the official text", () => {
    const sources = (year: number) => tableOf(year, NONE).map((row) => row[4]);
    expect(sources(2024).slice(1, 3)).toEqual([
      "IRM 20.1.1.3.3.2.1(1) to (5)",
      "IRM 20.1.1.3.3.2.1(1) to (5)",
    ]);
    expect(sources(2025)[2]).toMatch(/^IRS, Administrative penalty relief .*\(secondary source\)$/);
    expect(sources(2026)[2]).toMatch(/^IRS, Automatic Exemption .*\(secondary source\)$/);
  });

  // IRM 20.1.1.3.3.2.1: the amount below which a penalty is disregarded is not public, so a penalty makes relief unlikely only.
  it("says that a penalty may be refused over, and that a small one may not count", () => {
    const table = tableOf(2025, [[2024]]);
    expect(table[1]?.slice(2, 4)).toEqual([
      "not likely",
      "A year counts against relief. The IRS may deny it",
    ]);
    expect(table[7]?.slice(2, 4)).toEqual([
      "counts",
      "The penalty was not reversed. A small one may be disregarded, but the amount is not public",
    ]);
  });

  it("gives the relief to the earliest of several late years", () => {
    expect(results(2025, NONE, down(2023, 2026)).filter((row) => (row as unknown[])[2])).toEqual([
      ["Relief", 2025, "not likely"],
      ["Look-back year", 2022, "does not count"],
      ["Look-back year", 2023, "counts"],
      ["Look-back year", 2024, "does not count"],
      ["Other year", 2026, "does not count"],
    ]);
    expect(tableOf(2025, NONE, down(2023))[1]?.[3]).toBe("An earlier late year takes the relief");
    expect(results(2023, NONE, down(2025))[0]).toEqual(["Relief", 2023, "likely"]);
  });

  it("shows fiscal years by their last dates", () => {
    expect(results("6/30/2026", NONE).map((row) => (row as unknown[])[1])).toEqual([
      ...Array.from({ length: 4 }, () => serial("2026-06-30")),
      serial("2023-06-30"),
      serial("2024-06-30"),
      serial("2025-06-30"),
    ]);
  });

  it("has one kind of value a column", () => {
    for (const row of tableOf(2025, [[2024]], [[2021, 2027]]).slice(1))
      expect(row.map((cell) => typeof cell)).toEqual([
        "string",
        "number",
        "string",
        "string",
        "string",
      ]);
  });

  it("refuses a year of penalty that is not before the tax year", () => {
    expect(tableOf(2025, [[2025]])).toEqual(
      badInput(
        "penaltyYears row 1: 2025 is not before the tax year, which begins on 1/1/2025. Enter earlier years only."
      )
    );
  });

  it("has no answer for a tax year that the rules do not cover", () => {
    expect(tableOf(2027, NONE)).toEqual(
      afterTable("clean-history-relief", "12/31/2027", "12/31/2026")
    );
  });
});
