import { describe, expect, it } from "vitest";
import { dynamic, formula, recalculated, workbookFile } from "./workbookFixture";

describe("a result that spills", () => {
  it("fills the cells beside it and is written as a dynamic array", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("EXT.STEPS(2)");
      sheet.getCell("E1").value = formula("SUM(B2:B3)");
    });
    const out = await recalculated(path);
    const cells = ["A1", "B1", "A2", "B2", "A3", "B3", "E1"];
    expect(cells.map((cell) => out.value("Sheet", cell))).toEqual(["Step", "Value", 1, 1, 2, 4, 5]);
    const xml = out.part("xl/worksheets/sheet1.xml");
    expect(xml).toContain('cm="1" t="str"><f t="array" ref="A1:B3">_xldudf_EXT_STEPS(2)</f>');
    expect(out.part("xl/metadata.xml")).toContain('fDynamic="1"');
    expect(out.part("[Content_Types].xml")).toContain("/xl/metadata.xml");
    expect(out.part("xl/_rels/workbook.xml.rels")).toContain("metadata.xml");
    expect(out.report.spills).toBe(1);
  });

  it("replaces an older and larger one in the file", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = dynamic("_xldudf_EXT_STEPS(1)", "A1:B4", 9);
      for (const cell of ["B1", "A2", "B2", "A3", "B3", "A4", "B4"]) sheet.getCell(cell).value = 9;
      sheet.getCell("D1").value = formula("COUNT(A1:B4)");
    });
    const out = await recalculated(path);
    expect(out.report.errors).toEqual([]);
    expect(["A2", "B2", "A3", "B4"].map((cell) => out.value("Sheet", cell))).toEqual([
      1,
      1,
      null,
      null,
    ]);
    expect(out.value("Sheet", "D1")).toBe(2);
    expect(out.part("xl/worksheets/sheet1.xml")).toContain('ref="A1:B2"');
  });

  it("is #SPILL! where a cell is not empty, and says which one", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = dynamic("_xldudf_EXT_STEPS(2)", "A1");
      sheet.getCell("B3").value = "mine";
    });
    const out = await recalculated(path);
    expect(out.report.errors).toMatchObject([
      {
        row: 1,
        column: 1,
        error: "#SPILL!",
        sentence: "The result fills 3 rows by 2 columns, but B3 is not empty.",
      },
    ]);
    expect(out.value("Sheet", "B3")).toBe("mine");
    expect(out.value("Sheet", "A2")).toBeNull();
  });

  it("shows only its first value in a formula that was saved as an ordinary one", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("_xldudf_EXT_STEPS(2)");
    });
    const out = await recalculated(path);
    expect(out.value("Sheet", "A1")).toBe("Step");
    expect(out.value("Sheet", "A2")).toBeNull();
    expect(out.part("xl/worksheets/sheet1.xml")).not.toContain('t="array"');
  });

  it("is read by formulas that refer to the whole spill", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      workbook.addWorksheet("Other").getCell("A1").value = formula(
        "ROWS(_xlfn.ANCHORARRAY(Sheet!$B$2))"
      );
      sheet.getCell("D2").value = formula("SUM(_xlfn.ANCHORARRAY(B2))");
      sheet.getCell("B2").value = dynamic("_xldudf_EXT_DOUBLE(A2:A4)", "B2");
      for (const [row, value] of [1, 2, 3].entries()) sheet.getCell(row + 2, 1).value = value;
    });
    const out = await recalculated(path);
    expect(out.value("Sheet", "D2")).toBe(12);
    expect(out.value("Other", "A1")).toBe(3);
    expect(out.part("xl/worksheets/sheet1.xml")).toContain("SUM(_xlfn.ANCHORARRAY(B2))");
  });

  it("sets the number format of every cell it fills", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.getCell("A1").value = formula("EXT.DAY({1;2})");
    });
    const { workbook } = await recalculated(path);
    expect(workbook.getWorksheet("Sheet")?.getCell("A2").numFmt).toBe("yyyy-mm-dd");
  });
});

describe("an older array formula", () => {
  it("fills exactly its own range", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      const block = {
        formula: "_xldudf_EXT_DOUBLE({1;2;3})",
        ref: "A1:A2",
        shareType: "array",
      };
      sheet.getCell("A1").value = { ...block, result: 0 };
      sheet.getCell("A2").value = 0;
      sheet.getCell("C1").value = formula("A2+1");
    });
    const out = await recalculated(path);
    expect(["A1", "A2", "A3", "C1"].map((cell) => out.value("Sheet", cell))).toEqual([
      2,
      4,
      null,
      5,
    ]);
    expect(out.part("xl/worksheets/sheet1.xml")).not.toContain("cm=");
  });
});
