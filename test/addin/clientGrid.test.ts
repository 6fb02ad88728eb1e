import { describe, expect, it } from "vitest";
import { clientGrid } from "../../src/addin/clientGrid";
import { worksheetDate } from "../../src/demo/season/sheetStyle";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";

const { cells, widths, formats, choices, headingRow } = clientGrid("2026-04-01");

describe("a new client list", () => {
  it("has as many widths, formats and choices as headings, and an example under them", () => {
    const headings = cells[headingRow - 1] ?? [];
    expect(new Set(headings).size).toBe(headings.length);
    for (const list of [widths, formats, choices, cells[headingRow] ?? []])
      expect(list).toHaveLength(headings.length);
  });

  it("offers the states and the kinds of filer to choose from", () => {
    expect(choices[2]).toContain("ME");
    expect(choices[3]).toEqual(["resident", "out of country", "nonresident"]);
  });

  it("answers its example: due April 15, 5,000.00 short, charges on the 2,000.00 left", async () => {
    const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
    const sheet = workbook.addWorksheet("Grid");
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
      answered.getWorksheet("Grid")?.getCell(headingRow + 1, headings.indexOf(heading) + 1).result;
    expect(under("Due")).toEqual(worksheetDate("2026-04-15"));
    expect(under("Extended due")).toEqual(worksheetDate("2026-10-15"));
    expect(under("Shortfall")).toBe(5000);
    // as =EXT.CHARGES(2025,20000,18000,"2026-10-15","2026-10-15","yes"): 90% is paid, interest alone
    expect(under("Charges to planned day")).toBe(67.12);
    expect(under("Stage")).toBe("not requested");
    expect(under("Days left")).toBe(14);
  });
});
