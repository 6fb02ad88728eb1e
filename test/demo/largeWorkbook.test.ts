import { expect, it } from "vitest";
import { formula, recalculated, workbookFile } from "./workbookFixture";

const ROWS = 12_000;

it("calculates 12,000 different formulas, each resting on one further down", async () => {
  const path = await workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Sheet");
    for (let row = 1; row <= ROWS; row += 1) {
      const next = row === ROWS ? "0" : `A${row + 1}`;
      sheet.getCell(row, 1).value = formula(`${next}+1`);
    }
    sheet.getCell("C1").value = formula(`SUBTOTAL(9,A1:A${ROWS})`);
    sheet.getCell("C2").value = formula("EXT.DOUBLE(A1)");
    sheet.getCell("C3").value = formula("SUBTOTAL(9,C1:C2)");
  });
  const out = await recalculated(path);
  expect(out.report.notCalculated).toEqual([]);
  expect(out.report.formulas).toBe(ROWS + 3);
  const sheet = out.workbook.getWorksheet("Sheet");
  const wrong: number[] = [];
  for (let row = 1; row <= ROWS; row += 1) {
    if (sheet?.getCell(row, 1).result !== ROWS - row + 1) wrong.push(row);
  }
  expect(wrong).toEqual([]);
  expect(out.value("Sheet", "C1")).toBe((ROWS * (ROWS + 1)) / 2);
  expect(out.value("Sheet", "C2")).toBe(2 * ROWS);
  expect(out.value("Sheet", "C3")).toBe(2 * ROWS);
}, 60_000);

it("calculates 12,000 different calls of ours", async () => {
  const path = await workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Sheet");
    for (let row = 1; row <= ROWS; row += 1) {
      sheet.getCell(row, 1).value = row;
      sheet.getCell(row, 2).value = formula(`_xldudf_EXT_DOUBLE(A${row})`);
    }
  });
  const out = await recalculated(path);
  expect(out.report).toMatchObject({
    ownCalls: ROWS,
    notCalculated: [],
    errors: [],
  });
  const sheet = out.workbook.getWorksheet("Sheet");
  const wrong: number[] = [];
  for (let row = 1; row <= ROWS; row += 1) {
    if (sheet?.getCell(row, 2).result !== 2 * row) wrong.push(row);
  }
  expect(wrong).toEqual([]);
}, 60_000);
