import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { describe, expect, it } from "vitest";
import { clientGrid } from "../../src/addin/clientGrid";
import { worksheetDate } from "../../src/demo/season/sheetStyle";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";

const { cells, headingRow } = clientGrid("2026-04-01");

describe("a new client list in a workbook", () => {
  it("calculates its example: due April 15, balance due 5,000.00, interest on the 2,000.00 left", async () => {
    const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
    const sheet = workbook.addWorksheet("Clients");
    for (const [row, line] of cells.entries())
      for (const [column, value] of line.entries()) {
        const cell = sheet.getCell(row + 1, column + 1);
        const isFormula = typeof value === "string" && value.startsWith("=");
        cell.value = isFormula ? { formula: value.slice(1) } : value === "" ? null : value;
      }
    const { bytes, report } = await recalculateWorkbook(workbook, hostOfBuiltAddIn("null"));
    expect(report.errors).toEqual([]);
    const answered = new Workbook();
    await answered.xlsx.load(bytes);
    const headings = (cells[headingRow - 1] ?? []).map(String);
    const under = (heading: string) =>
      answered.getWorksheet("Clients")?.getCell(headingRow + 1, headings.indexOf(heading) + 1)
        .result;
    expect(under("Regular due date")).toEqual(worksheetDate("2026-04-15"));
    expect(under("Extended due date")).toEqual(worksheetDate("2026-10-15"));
    expect(under("Payment due date")).toEqual(worksheetDate("2026-04-15"));
    expect(under("Balance due")).toBe(5000);
    expect(under("Suggested payment")).toBe(5000);
    // 90% is paid by the due date, so only interest accrues: as =EXT.CHARGES(2025,20000,18000,"10/15/2026","10/15/2026","yes").
    expect(under("Penalties and interest (planned)")).toBe(67.12);
    expect(under("Status")).toBe("not requested");
    expect(under("Days left")).toBe(14);
  });
});
