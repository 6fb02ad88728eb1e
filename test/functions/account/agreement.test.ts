import { describe, expect, it } from "vitest";
import { agreement } from "../../../src/functions/account/agreement";
import { afterTable, answerOf, badInput, serial } from "../sheet";

const tableOf = (...cells: Parameters<typeof agreement>): unknown[][] => agreement(...cells);
const rowsNamed = (what: string, table: readonly unknown[][]): readonly unknown[][] =>
  table.filter((row) => String(row[0]).startsWith(what));

describe("AGREEMENT", () => {
  it("has a row for each kind, then one for each setup fee", () => {
    const table = tableOf(12_000, "yes", "10/15/2026", 11_000, 2025, 1);
    expect(table[0]).toEqual([
      "Kind or fee",
      "Open",
      "Limit",
      "Limit applies to",
      "Longest term",
      "Monthly payments",
      "Monthly payment",
      "Penalties and interest until paid",
      "Failure-to-pay penalty per month",
      "Setup fee",
      "Condition",
      "Text dated",
      "Source",
    ]);
    // 26 U.S.C. 6651(h) and (a)(2), 6601(a): 31 days at 7% on 12,000, and a month on 11,000 at 0.25% or 0.5%
    const interest = Number((12_000 * ((1 + 0.07 / 365) ** 31 - 1)).toFixed(2));
    const [plan] = rowsNamed("Simple payment plan", table);
    expect(plan?.slice(0, 9)).toEqual([
      "Simple payment plan",
      "yes",
      50_000,
      "tax, penalties and interest",
      "120 months",
      1,
      12_027.5 + interest,
      27.5 + interest,
      0.0025,
    ]);
    // A short-term plan is not an agreement under section 6159 (from memory).
    const [short] = rowsNamed("Short-term payment plan", table);
    expect(short?.slice(6, 9)).toEqual([12_055 + interest, 55 + interest, 0.005]);
    const [guaranteed] = rowsNamed("Guaranteed", table);
    expect(guaranteed?.slice(1, 9)).toEqual(["no", 10_000, "tax", "36 months", "", "", "", 0.0025]);
    expect(rowsNamed("Setup fee: direct debit, online", table).map((row) => row.slice(9))).toEqual([
      [22, "", serial("2026-06-28"), expect.stringContaining("secondary source")],
      [29, "", serial("2026-03-03"), expect.stringContaining("March 3, 2026")],
    ]);
  });

  it("shows which row another text contradicts", () => {
    const table = tableOf(5_000, "yes", "10/15/2026", "", "", 1);
    expect(
      table.filter(([what]) => String(what).includes("contradicted")).map(([what]) => what)
    ).toEqual([
      "Short-term payment plan (contradicted by the row above)",
      "Setup fee: direct debit, online (contradicted by the row above)",
    ]);
  });

  it("has the full penalty rate where the return was late", () => {
    const [plan] = rowsNamed("Simple", tableOf(5_000, "no", "10/15/2026", "", "", 1));
    expect(plan?.[8]).toBe(0.005);
  });

  it("shows the error of a rate that is not published only in the payment and the cost", () => {
    const [plan] = rowsNamed("Simple", tableOf(5_000, "yes", "10/15/2026"));
    const error: unknown = expect.objectContaining(
      afterTable("underpayment-rate", "1/1/2027", "12/31/2026")
    );
    expect(plan?.slice(5, 9)).toEqual([120, error, error, 0.0025]);
  });

  it.each([
    [
      [5_000, "yes", "10/15/2026", 5_000.01],
      "unpaidTax: 5000.01 is more than the 5000 owed. Enter the tax without penalties and interest, or leave the cell blank.",
    ],
    [
      [5_000, "yes", "4/15/2026", "", 2025],
      "agreementOn: 4/15/2026 is not after the payment due date, 4/15/2026. Check the date and the tax year.",
    ],
    [[5_000, "yes", ""], "agreementOn: The cell is blank. Enter a date such as 4/15/2026."],
    [
      ["", "yes", "10/15/2026"],
      "owed: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [5_000, "yes", "10/15/2026", "", "", 121],
      "months: 121 is not a valid number. Enter a whole number from 0 to 120.",
    ],
  ] as const)("refuses %j", (cells, sentence) => {
    expect(
      answerOf(() => agreement(...(cells as unknown as Parameters<typeof agreement>)))
    ).toEqual(badInput(sentence));
  });

  it("is refused for a date that the tables do not cover", () => {
    expect(answerOf(() => agreement(5_000, "yes", "1/4/2027"))).toEqual(
      afterTable("installment-agreements", "1/4/2027", "12/31/2026")
    );
  });
});
