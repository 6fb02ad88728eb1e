import { describe, expect, it } from "vitest";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { readArgument } from "../../../src/functions/arguments/argumentKind";
import { optionalPeriods, periods } from "../../../src/functions/arguments/periods";
import { fiscalYear } from "../../calculation/given";

const HEADINGS = ["", "January–March", "January–May", "January–August", "January–December"];
const AGI = ["AGI", 1_000, 2_000, 3_000, 4_000];

const read = (rows: unknown, taxYear: TaxYear = calendarTaxYear(2025)) =>
  readArgument(periods, "periods", rows, { taxYear });
const sentence = (rows: unknown, taxYear?: TaxYear): string => {
  try {
    read(rows, taxYear);
  } catch (thrown) {
    return (thrown as Error).message;
  }
  throw new RangeError("the rows were read");
};

describe("a block of periods", () => {
  it("is read by its labels, in any order and case; a row left out is nothing", () => {
    const found = read([
      HEADINGS,
      ["Wages", 1, 2, 3, 4],
      ["", "", "", null, 0],
      ["adjusted gross income", "(500)", "$1,000", 0, 2_000.5],
      ["credits", "", "", "", ""],
      ["QBI deduction", 10, 10, 10, 10],
      ["Other Deductions", 1, 2, 3, 4],
    ]);
    expect(found.map(({ adjustedGrossIncome }) => adjustedGrossIncome.toString())).toEqual([
      "-500",
      "1000",
      "0",
      "2000.5",
    ]);
    expect(found.map(({ wages }) => wages.toString())).toEqual(["1", "2", "3", "4"]);
    expect(found.map((one) => one.businessIncomeDeduction.toString())).toEqual([
      "11",
      "12",
      "13",
      "14",
    ]);
    expect(found.map(({ credits }) => credits.toString())).toEqual(["0", "0", "0", "0"]);
    expect(found.map(({ tax, standardDeduction }) => [tax, standardDeduction])).toEqual(
      Array.from({ length: 4 }, () => [undefined, undefined])
    );
  });

  it("takes a tax and a standard deduction that are given, 0 in some columns", () => {
    const found = read([
      HEADINGS,
      AGI,
      ["standard deduction", 17_750, 17_750, 17_750, 17_750],
      ["tax on the annualized income", 0, 0, 0, 500],
    ]);
    expect(found.map(({ standardDeduction }) => standardDeduction?.toString())).toEqual(
      Array.from({ length: 4 }, () => "17750")
    );
    expect(found.map(({ tax }) => tax?.toString())).toEqual(["0", "0", "0", "500"]);
  });

  it.each([
    ["Jan-Mar", "Jan-May", "Jan-Aug", "Jan-Dec"],
    ["–March", "–May", "–August", "–December"],
    ["through March", "through May", "through Aug.", "Full year through December"],
    ["1/1/25–3/31/25", "1/1/25 - 5/31/25", "1/1–8/31", "1/1/2025–12/31/2025"],
    ["3/31/2025", "May 31, 2025", 45_900, "2025-12-31"],
  ])("has headings such as %s", (...headings) => {
    expect(read([["", ...headings], AGI])).toHaveLength(4);
  });

  it("has the months of a fiscal year", () => {
    const year = fiscalYear("2024-06-30");
    const months = ["July–September", "July-November", "2/29/2024", "June"];
    expect(read([["", ...months], AGI], year)).toHaveLength(4);
    expect(sentence([HEADINGS, AGI], year)).toBe(
      'periods row 1, column 2: "January–March" is not the period of this column. Enter the headings July–September, July–November, July–February, July–June, in this order.'
    );
  });

  const ALL = "January–March, January–May, January–August, January–December";
  it.each([
    [["Q1", "Q2", "Q3", "Q4"], 2, '"Q1"'],
    [["January–March", "January–August", "January–May", "January–December"], 3, '"January–August"'],
    [["January–March", "April–May", "June–August", "September–December"], 3, '"April–May"'],
    [["1/1–3/31", "4/1–5/31", "6/1–8/31", "9/1–12/31"], 3, '"4/1–5/31"'],
    [["3/31/2025", "5/31/2024", "8/31/2025", "12/31/2025"], 3, '"5/31/2024"'],
    [["1/1/24–3/31/24", "", "", ""], 2, '"1/1/24–3/31/24"'],
    [["March", "May", "August", ""], 5, '""'],
    [["March", "May", "August", null], 5, "nothing"],
    [["March", "May", "August", 4], 5, "4"],
  ])("refuses the headings %j", (headings, column, quoted) => {
    expect(sentence([["", ...headings], AGI])).toBe(
      `periods row 1, column ${String(column)}: ${quoted} is not the period of this column. Enter the headings ${ALL}, in this order.`
    );
  });

  it.each([
    [
      [HEADINGS.slice(0, 4), AGI.slice(0, 4)],
      `periods: The range has 4 columns. Select a column of labels and the four columns ${ALL}.`,
    ],
    [
      "AGI",
      `periods: The range has 1 column. Select a column of labels and the four columns ${ALL}.`,
    ],
    [
      [HEADINGS],
      "periods: The range has no row below its headings. Select the headings and the labeled rows.",
    ],
    [[HEADINGS, ["wages", 1, 2, 3, 4]], "periods: The range has no row for AGI. Add that row."],
    [
      [HEADINGS, AGI, ["wagse", 1, 2, 3, 4]],
      'periods row 3: "wagse" is not a recognized label. The closest label is "wages".',
    ],
    [
      [HEADINGS, AGI, ["", 1, 2, 3, 4]],
      "periods row 3: The row has no label. Enter a label such as AGI.",
    ],
    [
      [HEADINGS, ["AGI", 1_000, "", 3_000, 4_000]],
      "periods row 2, column 3: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [HEADINGS, AGI, ["credits", 1, 2, 3, -4]],
      "periods row 3, column 5: -4 is negative. Enter zero or a positive dollar amount.",
    ],
    [
      [HEADINGS, AGI, ["wages", 9_000, 6_000, 9_000, 12_000]],
      "periods: The wages fall from one period to the next. Enter amounts from the first day of the year, so that each period includes the earlier ones.",
    ],
    [
      [HEADINGS, AGI, ["tax on the annualized income", 0, 0, 0, 0]],
      "periods row 3: All amounts of the row are 0. Remove the row to have the tax calculated, or enter 0.01 if there is none.",
    ],
    [
      [HEADINGS, AGI, ["standard deduction", 0, 0, 0, 0]],
      "periods row 3: All amounts of the row are 0. Remove the row to use the regular standard deduction, or enter 0.01 if there is none.",
    ],
  ])("refuses %j", (rows, expected) => {
    expect(sentence(rows)).toBe(expected);
  });

  it("is required by ANNUALIZED, and may be left out of the penalty", () => {
    expect(sentence(null)).toBe(
      "periods: The cell is blank. Select the headings and the labeled rows of the four periods."
    );
    expect(readArgument(optionalPeriods, "periods", null)).toBeUndefined();
  });
});
