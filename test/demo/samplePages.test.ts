import { describe, expect, it } from "vitest";
import type { Worksheet } from "@cj-tech-master/excelts";
import { INPUT_COLOR } from "../../src/addin/workbook/newSheet";
import { COLUMN_FORMULAS_SHEET } from "../../src/demo/season/columnFormulasSheet";
import { REQUEST_SHEET } from "../../src/demo/season/requestSheet";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sampleClients } from "../../src/demo/terminal/sampleClients";

const workbook = seasonWorkbook(sampleClients(), ["Larch"]);

function sheetOf(name: string): Worksheet {
  const sheet = workbook.getWorksheet(name);
  if (!sheet) throw new RangeError(`There is no sheet ${name}.`);
  return sheet;
}

/** ECMA-376, part 1, 18.3.1.13: a character of the usual font is 7 pixels wide, and a column has 5 more; a pixel is 3/4 point. */
const pointsOf = (characters: number): number => (characters * 7 + 5) * (3 / 4);
/** The size of the usual font, and the smallest one that is read with ease on paper. */
const [FONT, READABLE] = [11, 8];
/** US Letter on its side, in points. */
const PAPER = 11 * 72;

describe("the printed sample", () => {
  it("has column formulas that can be read: the columns of a page fit at 8 points, with the client on each", () => {
    const { pageSetup, columns } = sheetOf(COLUMN_FORMULAS_SHEET);
    const { left, right } = pageSetup.margins;
    const [client = 0, ...others] = columns.map(({ width }) => pointsOf(width ?? 0));
    const onPage = client + others.reduce((sum, width) => sum + width, 0) / pageSetup.fitToWidth;
    const scale = (PAPER - (left + right) * 72) / onPage;
    expect(FONT * scale).toBeGreaterThanOrEqual(READABLE);
    expect(pageSetup).toMatchObject({
      orientation: "landscape",
      printTitlesRow: "1:1",
      printTitlesColumn: "A:A",
    });
  });

  it("names the client of a sheet: in its title where another one can be chosen, and in the header elsewhere", () => {
    const chooser = sheetOf(REQUEST_SHEET);
    expect(chooser.headerFooter.oddHeader).not.toContain("&A");
    expect(chooser.pageSetup.printTitlesRow).toBe("1:1");
    expect(chooser.getCell("A1").formula).toContain("$F$3");
    for (const name of ["Larch", "Larch letter"])
      expect(sheetOf(name).headerFooter.oddHeader).toContain("&R&A");
    for (const sheet of workbook.worksheets)
      expect(sheet.headerFooter.oddFooter).toContain("Page &P of &N");
  });

  it("has the pane's color for cells that the preparer fills in", () => {
    expect(sheetOf(REQUEST_SHEET).getCell("F3").fill).toMatchObject({
      fgColor: { argb: INPUT_COLOR.replace("#", "FF") },
    });
  });
});
