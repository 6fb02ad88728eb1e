import { describe, expect, it } from "vitest";
import { dynamic, formula, recalculated, workbookFile } from "./workbookFixture";
import { fixtureHost } from "../host/fixtureAddIn";

describe("our functions in a workbook", () => {
  it("return results in both spellings and inside ordinary formulas", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = 21;
      sheet.getCell("B1").value = formula("_xldudf_EXT_DOUBLE(A1)");
      sheet.getCell("B2").value = formula("EXT.DOUBLE(A1)");
      sheet.getCell("B3").value = formula("IF(EXT.DOUBLE(A1)>41,EXT.DOUBLE(1)+1,0)");
      sheet.getCell("B4").value = formula("SUM(EXT.DOUBLE(A1:A3),1)");
      sheet.getCell("A2").value = 1;
      sheet.getCell("A3").value = 2;
    });
    const out = await recalculated(path);
    expect(["B1", "B2", "B3", "B4"].map((cell) => out.value("Sheet", cell))).toEqual([
      42, 42, 3, 49,
    ]);
    expect(out.report).toMatchObject({
      formulas: 4,
      formulasWithOwnFunctions: 4,
      ownCalls: 5,
    });
    expect(out.report.notCalculated).toEqual([]);
  });

  it("are written as files spell them, newer built-in functions with their prefix", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("XLOOKUP(4,EXT.DOUBLE({1;2}),{5;6})");
    });
    const out = await recalculated(path);
    expect(out.value("Sheet", "A1")).toBe(6);
    const xml = out.part("xl/worksheets/sheet1.xml");
    expect(xml).toContain(">_xlfn.XLOOKUP(4,_xldudf_EXT_DOUBLE({1;2}),{5;6})</f>");
    expect(xml).not.toContain("EXT.");
  });

  it("are recognized with the qualifiers of a damaged name", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("[2]!_xldudf_EXT_DOUBLE(4)+1");
      sheet.getCell("A2").value = formula("'C:\\Add ins\\FUNCRES.XLAM'!_xldudf_EXT_DOUBLE(5)");
    });
    const out = await recalculated(path);
    expect([out.value("Sheet", "A1"), out.value("Sheet", "A2")]).toEqual([9, 10]);
  });

  it("distinguish an omitted argument from a blank cell", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula('EXT.ECHO(B1,,"a,b(")');
      sheet.getCell("A2").value = formula("EXT.ECHO(1, )");
    });
    const out = await recalculated(path, fixtureHost("zero"));
    expect(out.value("Sheet", "A1")).toBe('[[[0]],null,[["a,b("]]]');
    expect(out.value("Sheet", "A2")).toBe("[[[1]],null,null]");
  });

  it("follow references across sheets, names, tables and in any order", async () => {
    const path = await workbookFile((workbook) => {
      const first = workbook.addWorksheet("First");
      const second = workbook.addWorksheet("Second one");
      first.getCell("A1").value = formula("EXT.DOUBLE('Second one'!B2)+Base");
      second.getCell("B2").value = formula("EXT.DOUBLE(B9)");
      second.getCell("B9").value = formula("SUM(Grid[Amount])");
      second.getCell("D20").value = formula("First!A1+Twice");
      second.addTable({
        name: "Grid",
        ref: "F1",
        headerRow: true,
        columns: [{ name: "Amount" }],
        rows: [[3], [4]],
      });
      second.getCell("C1").value = formula("1+1");
      workbook.definedNames.add("'Second one'!$C$1", "Base");
      workbook.definedNames.model = [
        ...workbook.definedNames.model,
        {
          name: "Twice",
          ranges: [],
          formulaExpression: "EXT.DOUBLE('Second one'!$C$1)",
        },
      ];
    });
    const out = await recalculated(path);
    expect(out.report.notCalculated).toEqual([]);
    expect(out.value("First", "A1")).toBe(30);
    expect(out.value("Second one", "D20")).toBe(34);
  });

  it("return results in shared formulas and in table columns", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      for (const row of [1, 2, 3]) sheet.getCell(row, 1).value = row;
      sheet.fillFormula("B1:B3", "EXT.DOUBLE(A1)+$A$1");
      sheet.fillFormula("C1:C3", "_xldudf_EXT_DOUBLE(A1)");
      sheet.addTable({
        name: "Grid",
        ref: "E1",
        headerRow: true,
        columns: [{ name: "Amount" }, { name: "Twice" }],
        rows: [
          [5, formula("_xldudf_EXT_DOUBLE(Grid[[#This Row],[Amount]])")],
          [6, formula("_xldudf_EXT_DOUBLE(Grid[[#This Row],[Amount]])")],
        ],
      });
    });
    const out = await recalculated(path);
    expect(out.report.notCalculated).toEqual([]);
    const cells = ["B1", "B2", "B3", "C1", "C2", "C3", "F2", "F3"];
    expect(cells.map((cell) => out.value("Sheet", cell))).toEqual([3, 5, 7, 2, 4, 6, 10, 12]);
    expect(out.part("xl/worksheets/sheet1.xml")).toContain("_xldudf_EXT_DOUBLE(A3)+$A$1");
  });

  it("set the number format of cells that have none", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("EXT.DAY(46000)");
      sheet.getCell("A2").value = formula("EXT.DAY(46000)");
      sheet.getCell("A2").numFmt = "m/d/yyyy";
      sheet.getCell("A3").value = formula("EXT.DAY(46000)+1");
    });
    const { workbook } = await recalculated(path);
    const formats = ["A1", "A2", "A3"].map(
      (cell) => workbook.getWorksheet("Sheet")?.getCell(cell).numFmt
    );
    expect(formats).toEqual(["yyyy-mm-dd", "m/d/yyyy", undefined]);
  });

  it("are reported as faults when they throw, and the other formulas are calculated", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("EXT.BREAK()");
      sheet.getCell("A2").value = formula("EXT.DOUBLE(2)");
    });
    const out = await recalculated(path);
    expect(out.report.faults).toMatchObject([{ functionName: "BREAK" }]);
    expect(out.value("Sheet", "A1")).toEqual({ error: "#VALUE!" });
    expect(out.value("Sheet", "A2")).toBe(4);
  });
});

describe("messages of errors", () => {
  it("are listed by cell, with the cell in which an error began", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = "ten";
      sheet.getCell("B1").value = formula("EXT.DOUBLE(A1)");
      sheet.getCell("C1").value = formula("B1+1");
      sheet.getCell("D1").value = formula("1/0");
    });
    const { report } = await recalculated(path);
    expect(report.errors).toEqual([
      {
        sheet: "Sheet",
        row: 1,
        column: 2,
        error: "#VALUE!",
        sentence: 'amount: "ten" is not a number. Enter a number such as 4.',
        takenFrom: undefined,
      },
      {
        sheet: "Sheet",
        row: 1,
        column: 3,
        error: "#VALUE!",
        sentence: "",
        takenFrom: { sheet: "Sheet", row: 1, column: 2 },
      },
      expect.objectContaining({ column: 4, error: "#DIV/0!", sentence: "" }),
    ]);
    expect(report.notCalculated).toEqual([]);
  });

  it("name the row of a spilled column", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = 1;
      sheet.getCell("A2").value = "two";
      sheet.getCell("B1").value = dynamic("_xldudf_EXT_DOUBLE(A1:A2)", "B1");
    });
    const { report } = await recalculated(path);
    expect(report.errors).toMatchObject([
      { row: 2, column: 2, sentence: 'amount: "two" is not a number. Enter a number such as 4.' },
    ]);
  });
});
