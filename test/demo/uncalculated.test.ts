import { describe, expect, it } from "vitest";
import { formula, recalculated, workbookFile } from "./workbookFixture";

async function reasons(cells: Record<string, string>): Promise<Record<string, string>> {
  const path = await workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Sheet");
    for (const row of [1, 2, 3]) sheet.getCell(row, 26).value = 46000 + row;
    for (const [address, text] of Object.entries(cells)) {
      sheet.getCell(address).value = formula(text, 777);
    }
  });
  const { report } = await recalculated(path);
  expect(report.formulas).toBe(Object.keys(cells).length);
  return Object.fromEntries(
    report.notCalculated.map(({ row, column, reason }) => [
      `${String.fromCharCode(64 + column)}${row}`,
      reason,
    ])
  );
}

describe("a formula that is not calculated", () => {
  it("is listed when it cannot be read", async () => {
    expect(await reasons({ A1: "A3#", B1: "1+1" })).toEqual({
      A1: "it could not be read as a formula",
    });
  });

  it("is listed when any part of it calls an unknown function", async () => {
    expect(
      await reasons({
        A1: "IF(FALSE,FROBNICATE(1),2)",
        B1: "_xldudf_OTHER_SUM(1)",
      })
    ).toEqual({
      A1: "the function FROBNICATE is not supported",
      B1: "the function _XLDUDF_OTHER_SUM is not supported",
    });
  });

  it("is listed when it uses a name that the workbook does not define", async () => {
    expect(await reasons({ A1: "Nowhere+1" })).toEqual({
      A1: "the name NOWHERE is not defined in this workbook",
    });
  });

  it("is listed when it refers to another workbook", async () => {
    const found = await reasons({
      A1: "[1]Sheet1!A1+1",
      A2: "'[Book.xlsx]Sheet1'!A1",
    });
    expect(new Set(Object.values(found))).toEqual(new Set(["it refers to another workbook"]));
    expect(Object.keys(found)).toEqual(["A1", "A2"]);
  });

  it("is listed with all formulas that depend on it when it is circular", async () => {
    expect(await reasons({ A1: "B1+1", B1: "A1+1", C1: "B1*2", D1: "D1", E1: "1" })).toEqual({
      A1: "it is part of a circular reference: Sheet!A1, Sheet!B1",
      B1: "it is part of a circular reference: Sheet!A1, Sheet!B1",
      C1: "it depends on Sheet!B1, which was not calculated",
      D1: "it is part of a circular reference: Sheet!D1",
    });
  });

  it("is listed when a function would read only the first of several cells", async () => {
    const found = await reasons({
      A1: "SUMPRODUCT(YEAR(Z1:Z3))",
      A2: "SUMPRODUCT((Z1:Z3>46001)*1)",
      A3: "SUMPRODUCT(COUNTIF(Z1:Z3,Z1:Z2))",
      A4: "COUNTIF(Z1:Z3,Z1)",
    });
    expect(found).toEqual({
      A1: "YEAR receives several cells, of which only the first would be read",
      A3: "COUNTIF receives several cells, of which only the first would be read",
    });
  });

  it("is listed when it reads formulas, which are rewritten before the calculation", async () => {
    expect(await reasons({ A1: "FORMULATEXT(B1)", B1: "EXT.DOUBLE(1)" })).toEqual({
      A1: "FORMULATEXT is not supported",
    });
  });

  it("keeps the value of the file", async () => {
    const path = await workbookFile((workbook) => {
      workbook.addWorksheet("Sheet").getCell("A1").value = formula("A3#", 777);
    });
    expect((await recalculated(path)).value("Sheet", "A1")).toBe(777);
  });
});

describe("unusual formulas", () => {
  it("are LET and LAMBDA with their own names, and a circular reference that the workbook allows", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("_xlfn.LET(_xlpm.x,2,_xlpm.x*3)");
      sheet.getCell("A2").value = formula(
        "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.y,_xlpm.y+1),_xlpm.f(4))"
      );
      sheet.getCell("A3").value = formula("A3/2+1");
      workbook.calcProperties.iterate = true;
    });
    const out = await recalculated(path);
    expect(out.report.notCalculated).toEqual([]);
    expect(out.value("Sheet", "A1")).toBe(6);
    expect(out.value("Sheet", "A2")).toBe(5);
    expect(out.value("Sheet", "A3")).toBeCloseTo(2, 2);
  });
});
