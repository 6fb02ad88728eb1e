import { describe, expect, it } from "vitest";
import { catalog } from "../../../src/functions/catalog";

const plain = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;

/** What a function answers, without number formats. `null` is an omitted argument. */
function answer(id: string, ...cells: unknown[]): unknown {
  const found = catalog[id]?.answer(cells);
  return Array.isArray(found) ? found.map((row) => row.map(plain)) : plain(found);
}
/** What a function answers in one cell. */
const cellOf = (id: string, ...cells: unknown[]): unknown => {
  const found = answer(id, ...cells);
  return Array.isArray(found) ? (found as unknown[][])[0]?.[0] : found;
};
/** A worksheet date of the 1900 system, in which January 1, 1970 is 25569. */
const serial = (date: string): number => Date.parse(date) / 86_400_000 + 25_569;

// 26 U.S.C. 6654(j)(1), (2): three installments, due June 15, September 15 and January 15.
describe("INSTALLMENT for a nonresident", () => {
  it.each([
    [1, "2026-06-15"],
    [2, "2026-09-15"],
    [3, "2027-01-15"],
  ])("number %d is due %s", (number, date) => {
    expect(cellOf("INSTALLMENT", 2026, number, null, null, "nonresident")).toBe(serial(date));
  });

  it("returns a sentence for number 4", () => {
    expect(() => cellOf("INSTALLMENT", 2026, 4, null, null, "nonresident")).toThrow(
      "installmentNumber: A nonresident has no installment 4. Enter 1, 2 or 3, or correct the filer type."
    );
  });

  // Section 6654(c)(2).
  it("is not meant by a blank filer type or out of country", () => {
    for (const filerType of [null, "", "resident", "out of country"]) {
      expect(cellOf("INSTALLMENT", 2026, 1, null, null, filerType)).toBe(serial("2026-04-15"));
      expect(cellOf("INSTALLMENT", 2026, 4, null, null, filerType)).toBe(serial("2027-01-15"));
    }
  });
});

describe("CALENDAR for a nonresident", () => {
  it("lists three installments of the new year", () => {
    const rows = answer("CALENDAR", 2025, "foreign", "nonresident") as unknown[][];
    const installments = rows.filter(([label]) => String(label).includes("installment"));
    expect(installments.map(([label, date]) => [label, date])).toEqual([
      ["First 2026 estimated tax installment", serial("2026-06-15")],
      ["Second 2026 estimated tax installment", serial("2026-09-15")],
      ["Third 2026 estimated tax installment", serial("2027-01-15")],
    ]);
    expect(String(installments[0]?.at(-1))).toContain("6654(c)(2), (j)(2)");
  });
});

describe("ISSUES for a nonresident", () => {
  const first = (asOf: string): unknown => {
    const request = [2025, 20000, 20000, 0, asOf, null, null, null, null, "foreign", "nonresident"];
    const rows = answer("ISSUES", ...request) as unknown[][];
    return rows.find(([, issue]) => String(issue).startsWith("The first estimated tax"))?.[2];
  };

  // 26 U.S.C. 6654(j)(2): June 15.
  it.each(["2026-04-01", "2026-04-16", "2026-06-15"])("reminds of June 15 on %s", (asOf) => {
    expect(first(asOf)).toBe(serial("2026-06-15"));
  });
});

// 26 U.S.C. 6654(j)(3)(A): 50 percent of the required annual payment; (g)(1): an equal part of the withholding on each due date.
describe("FIRSTINSTALLMENT for a nonresident", () => {
  const firstOf = (withholding: unknown, applied: unknown, isFarmer: unknown): unknown =>
    cellOf(
      "FIRSTINSTALLMENT",
      2026,
      "single",
      24_000,
      20_000,
      120_000,
      withholding,
      applied,
      isFarmer,
      "nonresident"
    );

  it.each([
    [null, null, null, 10_000],
    [6000, null, null, 8000],
    [6000, 1500, null, 6500],
    [1000, null, null, 9666.67],
    [23_000.01, null, null, 0],
    [null, null, "yes", 0],
  ])("with %s withheld, %s applied, farmer %s, is %d", (withheld, applied, isFarmer, amount) => {
    expect(firstOf(withheld, applied, isFarmer)).toBe(amount);
  });
});

// Section 6654(j). 4,000 for 304 days, 2,000 for 212 and 2,000 for 90 at 7%.
describe("ESTPENALTY and ESTPENALTYLINES for a nonresident", () => {
  const nonresident = [2025, 8000, 0, null, null, null, null, null, null, null, "nonresident"];

  it("charge three installments", () => {
    expect(cellOf("ESTPENALTY", ...nonresident)).toBe(349.05);
    const rows = answer("ESTPENALTYLINES", ...nonresident) as unknown[][];
    expect(rows.slice(1, -1).map((row) => [row[0], row[1], row[2], row[6]])).toEqual([
      [1, 4000, serial("2025-06-15"), 233.21],
      [2, 2000, serial("2025-09-15"), 81.32],
      [3, 2000, serial("2026-01-15"), 34.52],
    ]);
  });

  it("charge nothing in April", () => {
    const payments = [
      [serial("2025-06-15"), 4000],
      [serial("2025-09-15"), 2000],
      [serial("2026-01-15"), 2000],
    ];
    const [year, required, withholding] = nonresident;
    const rest = nonresident.slice(4);
    expect(cellOf("ESTPENALTY", year, required, withholding, payments, ...rest)).toBe(0);
    const resident = cellOf("ESTPENALTY", year, required, withholding, payments);
    // 2,000 of April for 61 days at 7%
    expect(resident).toBe(23.4);
  });
});
