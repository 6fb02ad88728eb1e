import { describe, expect, it } from "vitest";
import { chargeLines, charges } from "../../../src/functions/penalty/charges";
import { answerOf, badInput, down, inCell, serial } from "../sheet";

const HEADINGS = [
  "Item",
  "From",
  "Through",
  "Months",
  "Days",
  "Rate",
  "Computed on",
  "Amount",
  "Source",
];

describe("CHARGELINES", () => {
  // Projected at 7% from 2027 on: two of these run beyond the last published quarter.
  const returns: [string, unknown[]][] = [
    ["the presumption", [2025, 20000, 18500, "2026-10-15", "2026-10-15", "yes"]],
    ["everything late", [2025, 20000, 10000, "2027-06-15", "2027-06-15", "", "", "", "7%"]],
    ["the minimum", [2025, 600, 0, "2026-07-15", "2026-07-15"]],
    [
      "filed before paid",
      [2025, 9999.99, 0, "2026-12-31", "2026-04-01", "", "", "", "", "2026-06-10"],
    ],
    ["paid before filed", [2024, 5000, 1000, "2025-05-01", "2026-03-01", "yes", "TX"]],
    [
      "out of country",
      [2025, 12345.67, 0, "2027-02-01", "2026-08-20", "no", "foreign", "out of country", "latest"],
    ],
    [
      "postponement",
      [2025, 3000, 0, "2026-09-01", "2026-09-01", "", "", "", "", "", "2026-01-22", "2026-06-08"],
    ],
    ["nothing charged", [2025, 20000, 20000, "2026-04-15", "2026-04-15"]],
  ];

  const tableOf = (values: readonly unknown[]) =>
    answerOf(() => (chargeLines as (...cells: unknown[]) => unknown)(...values)) as unknown[][];

  it.each(returns)("is a table of one width, headings first: %s", (_what, values) => {
    const table = tableOf(values);
    expect(table[0]).toEqual(HEADINGS);
    expect(new Set(table.map((row) => row.length))).toEqual(new Set([HEADINGS.length]));
    expect(table.length).toBeGreaterThan(1);
  });

  it.each(returns)("adds up to CHARGES to the cent: %s", (_what, values) => {
    const cents = tableOf(values)
      .slice(1)
      .map((row) => Math.round((row[7] as number) * 100));
    const total = inCell(charges, ...values) as number;
    expect(cents.reduce((sum, cent) => sum + cent, 0)).toBe(Math.round(total * 100));
  });

  it.each(returns)("has one kind of value a column, or nothing: %s", (_what, values) => {
    for (const row of tableOf(values).slice(1)) {
      const kinds = row.map((cell) => (cell === "" ? "nothing" : typeof cell));
      expect(kinds.join()).toMatch(/^string,((number|nothing),){6}number,(string|nothing)$/);
    }
  });

  it("says so in one row when nothing is charged", () => {
    expect(tableOf([2025, 20000, 20000, "2026-04-15", "2026-04-15"]).slice(1)).toEqual([
      ["Filed and paid on time. No penalties or interest.", "", "", "", "", "", "", 0, ""],
    ]);
  });

  it("runs interest on the tax to its payment, on the addition for filing late to the filing", () => {
    const table = tableOf([2025, 5000, 1000, "2026-05-01", "2026-09-01"]);
    const lastDay = (what: string) => table.filter((row) => row[0] === what).at(-1)?.[2];
    expect(lastDay("Interest on the tax")).toBe(serial("2026-05-01"));
    expect(lastDay("Interest on the failure-to-file penalty")).toBe(serial("2026-09-01"));
  });

  it("says which rates are assumed and cites the others", () => {
    const table = tableOf([2025, 20000, 10000, "2027-06-15", "2027-06-15", "", "", "", "7%"]);
    const rates = table.filter((row) => row[0] === "Interest on the tax");
    expect(rates.map((row) => [row[1], row[2], row[4], row[5]])).toEqual([
      [serial("2026-04-15"), serial("2026-06-30"), 76, 0.06],
      [serial("2026-06-30"), serial("2026-09-30"), 92, 0.07],
      [serial("2026-09-30"), serial("2026-12-31"), 92, 0.07],
      [serial("2026-12-31"), serial("2027-06-15"), 166, 0.07],
    ]);
    expect(rates.map((row) => row[8])).toEqual([
      expect.stringMatching(/^Rev\. Rul\. 2026-5,/),
      expect.stringMatching(/^Rev\. Rul\. 2026-10,/),
      expect.stringMatching(/^Rev\. Rul\. 2026-15,/),
      "assumed rate, not published",
    ]);
  });

  it.each([
    [
      [2025, 100, 0, "2026-10-15", down("2026-10-15", "2026-11-15")],
      "filedOn: The range has 2 cells. Select one cell.",
    ],
    [
      [2025, -1, 0, "2026-10-15", "2026-10-15"],
      "totalTax: -1 is negative. Enter zero or a positive dollar amount.",
    ],
  ])("refuses %j", (values, sentence) => {
    expect(tableOf(values)).toEqual(badInput(sentence));
  });
});
