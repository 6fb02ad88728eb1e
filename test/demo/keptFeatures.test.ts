import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { expect, it } from "vitest";
import { formula, recalculated, workbookFile } from "./workbookFixture";

it("keeps what else the file holds", async () => {
  const path = await workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Grid", {
      views: [{ state: "frozen", ySplit: 1 }],
    });
    sheet.getCell("A1").value = "Head";
    sheet.getCell("A1").font = { bold: true };
    sheet.getCell("A1").fill = {
      type: "pattern",
      pattern: "solid",
      fgColor: { argb: "FFDDEEFF" },
    };
    sheet.getCell("A2").value = new Date(Date.UTC(2026, 3, 15));
    sheet.getCell("A2").numFmt = "yyyy-mm-dd";
    sheet.getCell("B2").value = formula("EXT.DOUBLE(A2)");
    sheet.getCell("B2").numFmt = "#,##0.00";
    sheet.getCell("C2").dataValidation = {
      type: "list",
      allowBlank: true,
      formulae: ['"yes,no"'],
    };
    sheet.getColumn(1).width = 23;
    sheet.mergeCells("D2:E3");
    sheet.getCell("D2").value = "merged";
    workbook.addWorksheet("Notes").getCell("B7").value = "untouched";
    workbook.definedNames.add("Grid!$A$2", "FirstDay");
  });
  const { workbook, value } = await recalculated(path);
  const sheet = workbook.getWorksheet("Grid");
  expect(value("Grid", "A2")).toEqual(new Date(Date.UTC(2026, 3, 15)));
  expect(value("Grid", "B2")).toBe(2 * 46127);
  expect(sheet?.getCell("A1").font?.bold).toBe(true);
  expect(sheet?.getCell("A1").fill).toMatchObject({
    fgColor: { argb: "FFDDEEFF" },
  });
  expect(sheet?.getCell("B2").numFmt).toBe("#,##0.00");
  expect(sheet?.getCell("C2").dataValidation).toMatchObject({
    formulae: ['"yes,no"'],
  });
  expect(sheet?.getColumn(1).width).toBe(23);
  expect(sheet?.views[0]).toMatchObject({ state: "frozen", ySplit: 1 });
  expect(sheet?.getCell("E3").master.address).toBe("D2");
  expect(value("Notes", "B7")).toBe("untouched");
  expect(workbook.definedNames.getRanges("FirstDay").ranges).toEqual(["Grid!$A$2"]);
});

it("keeps a chart and the cells it draws", async () => {
  const path = await workbookFile((workbook) => {
    installChartSupport();
    const sheet = workbook.addWorksheet("Grid");
    for (const [index, label] of ["one", "two"].entries()) {
      sheet.getCell(index + 1, 1).value = label;
      sheet.getCell(index + 1, 2).value = formula(`EXT.DOUBLE(${index + 1})`);
    }
    sheet.addColumnChart(
      { title: "Doubles", series: [{ categories: "Grid!$A$1:$A$2", values: "Grid!$B$1:$B$2" }] },
      "D1:H10"
    );
  });
  const { part, value } = await recalculated(path);
  expect(value("Grid", "B2")).toBe(4);
  const chart = part("xl/charts/chart1.xml");
  for (const drawn of ["Doubles", "Grid!$A$1:$A$2", "Grid!$B$1:$B$2"])
    expect(chart).toContain(drawn);
});
