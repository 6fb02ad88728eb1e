import type { Workbook } from "@cj-tech-master/excelts";
import { DATE_FORMAT, MONEY_FORMAT, WHOLE_DOLLAR_FORMAT } from "../../functions/cells/answerCell";
import { setPage } from "./pageSetup";
import {
  putFormula,
  putInput,
  putLabel,
  putTitle,
  setWidths,
  styleHeadings,
  styleTotal,
} from "./sheetStyle";
import { totalTaxCells } from "./totalTaxSheets";

/** The sheet's name. */
const PROJECTION_SHEET = "Projection";

const CLIENT = "Anise";
const HEADINGS_ROW = 5;
const FIRST = HEADINGS_ROW + 1;
const ROWS = 12;
const LAST = FIRST + ROWS - 1;
/** Expected changes from 2025 to 2026: dollars, or a percent as text. */
const CHANGES: readonly (readonly [label: string, change: string | number])[] = [
  ["wages", "3%"],
  ["ordinary dividends", 250],
];

/** Adds the estimated total tax of the new year for one client, from last year's items and the expected changes. */
export function addProjectionSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(PROJECTION_SHEET);
  setWidths(sheet, [34, 16, 4, 34, 16, 60]);
  putTitle(sheet, `="Projection for tax year 2026: ${CLIENT}, as of "&TEXT(AsOf,"${DATE_FORMAT}")`);
  const estimate = totalTaxCells(CLIENT);
  if (estimate === undefined) throw new RangeError(`${CLIENT} has no estimate of total tax.`);
  putLabel(sheet, "A3", "Filing status");
  putFormula(sheet, "B3", estimate.filingStatus);
  for (const [cell, heading] of [
    [`A${HEADINGS_ROW}`, "Item of 2025"],
    [`B${HEADINGS_ROW}`, "Amount"],
    [`D${HEADINGS_ROW}`, "Item that changes"],
    [`E${HEADINGS_ROW}`, "Change"],
  ] as const)
    sheet.getCell(cell).value = heading;
  styleHeadings(sheet, HEADINGS_ROW, 20);
  for (let index = 0; index < ROWS; index += 1) {
    const row = FIRST + index;
    const [item, amount] = estimate.entered[index] ?? [];
    if (item !== undefined) putFormula(sheet, `A${row}`, item);
    if (amount !== undefined) putFormula(sheet, `B${row}`, amount, WHOLE_DOLLAR_FORMAT);
    const [label = null, change = null] = CHANGES[index] ?? [];
    putInput(sheet, `D${row}`, label);
    putInput(sheet, `E${row}`, change, WHOLE_DOLLAR_FORMAT);
    sheet.getCell(`E${row}`).alignment = { horizontal: "right" };
  }
  const lines: readonly (readonly [label: string, formula: string, explanation: string])[] = [
    [
      "Total tax 2025",
      totalTaxCells(CLIENT)?.totalTax ?? "",
      `From the sheet Total tax ${CLIENT}.`,
    ],
    [
      "Projected total tax 2026",
      `EXT.PROJECTEDTAX(2026,B3,${estimate.items},D${FIRST}:E${LAST})`,
      "The tax of the changed items under the rules of 2026.",
    ],
  ];
  for (const [index, [label, formula, explanation]] of lines.entries()) {
    const row = LAST + 2 + index;
    sheet.getCell(`A${row}`).value = label;
    putFormula(sheet, `B${row}`, formula, MONEY_FORMAT);
    sheet.getCell(`D${row}`).value = explanation;
  }
  const total = LAST + 2 + lines.length;
  sheet.getCell(`A${total}`).value = "Increase";
  putFormula(sheet, `B${total}`, `B${total - 1}-B${total - 2}`, MONEY_FORMAT);
  styleTotal(sheet, total, 2);
  setPage(sheet);
}
