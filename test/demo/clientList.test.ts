import { Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { describe, expect, it } from "vitest";
import { newClientList } from "../../src/addin/list/newClientList";
import { calendarDate } from "../../src/calendar/calendarDate";
import { worksheetDate } from "../../src/demo/season/sheetStyle";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";

const { cells, headingRow } = newClientList({
  taxYear: 2025,
  asOf: calendarDate("2026-04-01"),
  assumedRate: "latest",
});

describe("a new client list in a workbook", () => {
  it("calculates its example, due April 15 with a balance due of 5,000.00, and leaves the other rows blank", async () => {
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
    expect(under("Balance due")).toBe(5000);
    expect(under("Suggested payment")).toBe(5000);
    // all of it is paid with the request
    expect(under("Penalties and interest (planned)")).toBe(0);
    expect(under("Status")).toBe("not requested");
    expect(under("Days left")).toBe(14);
    expect(under("Issues")).toBe(0);
    const below = answered.getWorksheet("Clients")?.getCell(headingRow + 2, 2);
    expect(below?.result ?? "").toBe("");
  });
});
