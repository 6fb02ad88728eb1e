import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { describe, expect, it } from "vitest";
import { estimateSheet } from "../../../src/addin/list/estimateSheet";
import { recalculateWorkbook } from "../../../src/demo/workbook/workbook";
import { ITEM_LABELS } from "../../../src/functions/arguments/itemLabels";
import { hostOfBuiltAddIn } from "../../../src/host/builtAddIn";
import library from "../../fixtures/library/total-tax.json";

type Cells = (string | number)[][];

const { cells: blank, headingRow, widths, formats, choices } = estimateSheet(2025);
const labelsOf = (cells: readonly (readonly (string | number)[])[]): string[] =>
  cells.slice(headingRow).map(([, label = ""]) => String(label));

/** The sheet with amounts beside their labels; a label that is not laid out goes into a row for others. */
function filled(
  taxYear: number,
  status: string,
  amounts: readonly (readonly [string, string | number])[]
): Cells {
  const cells = estimateSheet(taxYear, status).cells.map((row) => [...row]);
  for (const [label, amount] of amounts) {
    const free = (row: (string | number)[] | undefined) => row?.[2] === "";
    const at = cells.findIndex(
      (row, index) => index >= headingRow && row[1] === label && free(row)
    );
    const other = cells.findIndex(
      (row, index) => index >= headingRow && row[1] === "" && free(row)
    );
    const row = cells[at === -1 ? other : at];
    if (row === undefined) throw new RangeError(`There is no row for ${label}.`);
    row.splice(1, 2, label, amount);
  }
  return cells;
}

/** What the cells beside some labels show, calculated as a workbook. */
async function shown(cells: Cells): Promise<(label: string, column?: number) => unknown> {
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  const sheet = workbook.addWorksheet("Estimate");
  for (const [row, line] of cells.entries())
    for (const [column, value] of line.entries()) {
      const isFormula = typeof value === "string" && value.startsWith("=");
      sheet.getCell(row + 1, column + 1).value = isFormula
        ? { formula: value.slice(1) }
        : value === ""
          ? null
          : value;
    }
  const { bytes, report } = await recalculateWorkbook(workbook, hostOfBuiltAddIn("null"));
  expect(report.errors).toEqual([]);
  const answered = new Workbook();
  await answered.xlsx.load(bytes);
  return (label, column = 3) => {
    const row = cells.findIndex((line) => line.includes(label)) + 1;
    const cell = answered.getWorksheet("Estimate")?.getCell(row, column);
    return cell?.formula === undefined ? cell?.value : (cell.result ?? "");
  };
}

const TOTAL_TAX = "Estimated total tax (line 4)";
const PAYMENTS = "Total payments (line 5)";
const BALANCE_DUE = "Balance due (line 6)";

describe("a new estimate sheet", () => {
  it("has a row for each label, but for those of which 0 means something else than a blank cell", () => {
    const labels = labelsOf(blank);
    const missing = Object.values(ITEM_LABELS)
      .map(([first = ""]) => first)
      .filter((label) => !labels.includes(label));
    expect(missing).toEqual([
      "wages of the business owner",
      "qualified business income",
      "earned income of a dependent",
    ]);
    expect(labels.filter((label) => label === "wages")).toHaveLength(2);
  });

  it("has a width, a format and choices for each column", () => {
    const headings = blank[headingRow - 1] ?? [];
    expect(headings).toEqual(["Kind", "Item", "Amount", "Note"]);
    for (const list of [widths, formats, choices]) expect(list).toHaveLength(headings.length);
  });

  it("shows no tax and no error before an amount is entered, and no payments", async () => {
    const answer = await shown(filled(2025, "single", []));
    expect([answer(TOTAL_TAX), answer(PAYMENTS), answer(BALANCE_DUE)]).toEqual(["", 0, ""]);
  });

  // Tax Table 2025, taxable income 60,000 to 60,050, single: 8,120 (as in the example of LIABILITY); standard deduction 15,750.
  it("calculates total tax, payments and balance due from two Forms W-2 with notes", async () => {
    const answer = await shown(
      filled(2025, "single", [
        ["W-2 (Ana)", 50_000],
        ["wages", 25_750],
        ["withholding", 6_000.25],
        ["estimated payments", 500],
      ])
    );
    expect(answer(TOTAL_TAX)).toBe(8_120);
    expect(answer(PAYMENTS)).toBe(6_500.25);
    expect(answer(BALANCE_DUE)).toBe(1_619.75);
  });

  // Tax-Calculator 6.8.1, an open policy library, run on an invented filer with sixteen items; see the fixture.
  it("agrees with an independent calculation of a return with many items", async () => {
    const [many] = library.cases.toSorted(
      (one, other) => Object.keys(other.items).length - Object.keys(one.items).length
    );
    if (many === undefined) throw new RangeError("The fixture has no case.");
    const answer = await shown(filled(many.taxYear, many.status, Object.entries(many.items)));
    expect(Math.abs(Number(answer(TOTAL_TAX)) - many.totalTax)).toBeLessThanOrEqual(many.tolerance);
  });

  it("says beneath what the estimate leaves out", () => {
    expect(labelsOf(blank)).toContain("foreign income");
  });
});
