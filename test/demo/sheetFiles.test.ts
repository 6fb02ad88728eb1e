import { Workbook } from "@cj-tech-master/excelts";
import {
  CellValueType,
  type ICellData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { contentWorkbook } from "../../src/demo/sheet/contentWorkbook";
import { gridChanges } from "../../src/demo/sheet/gridChanges";
import { styleOf, valueOf, type GridContent } from "../../src/demo/sheet/gridContent";
import { libraryWorkbook } from "../../src/demo/sheet/libraryWorkbook";
import { lossSentence } from "../../src/demo/sheet/lossSentence";
import { workbookSnapshot } from "../../src/demo/sheet/workbookSnapshot";
import { OwnFunctionNames } from "../../src/demo/workbook/ownFunctionNames";
import { patchedFile } from "../../src/demo/workbook/patchedFile";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { openWorkbookFile } from "../../src/demo/workbook/workbookFile";
import { dynamic, formula } from "./workbookFixture";

const names = new OwnFunctionNames("EXT", ["DUE", "STEPS"]);

async function throughFile(workbook: Workbook): Promise<Workbook> {
  const bytes = await workbook.xlsx.writeBuffer();
  const read = new Workbook();
  await read.xlsx.load(new Uint8Array(bytes));
  return read;
}

type Cells = Record<string, Record<string, ICellData>>;

/** The cells that EXT.STEPS(1) fills in the sample. */
const STEPS = { startRow: 0, startColumn: 3, endRow: 1, endColumn: 4 };

/** What the grid would hold after it has calculated: here the answers are given. */
function content(
  snapshot: IWorkbookData,
  answers: Readonly<Record<string, number | string>> = {}
): GridContent {
  const sheets = snapshot.sheetOrder.map((id) => {
    const data = snapshot.sheets[id] ?? {};
    const cells = Object.entries((data.cellData ?? {}) as Cells).flatMap(([row, line]) =>
      Object.entries(line).map(([column, cell]) => {
        const text = cell.f?.replace(/^=/, "");
        return {
          row: Number(row),
          column: Number(column),
          value: text === undefined ? valueOf(cell, false) : (answers[text] ?? null),
          formula: text,
          style: styleOf(cell, snapshot),
          ...(text === "EXT.STEPS(1)" ? { block: STEPS } : {}),
        };
      })
    );
    return { id, data, cells };
  });
  return { snapshot, sheets };
}

function sample(): Workbook {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Mine", {
    views: [{ state: "frozen", xSplit: 1, ySplit: 2 }],
  });
  sheet.getColumn(1).width = 30;
  sheet.getColumn(3).hidden = true;
  sheet.getRow(2).height = 46;
  const head = sheet.getCell("A1");
  head.value = "Head";
  head.font = { bold: true, italic: true, size: 14, name: "Georgia", color: { argb: "FFFFFFFF" } };
  head.fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FF1F3A4D" } };
  head.alignment = { horizontal: "center", vertical: "middle", wrapText: true };
  head.border = { bottom: { style: "double", color: { argb: "FF102030" } } };
  sheet.getCell("A3").value = new Date(Date.UTC(2026, 3, 15));
  sheet.getCell("A3").numFmt = "yyyy-mm-dd";
  sheet.getCell("B3").value = 1234.5;
  sheet.getCell("B3").numFmt = "#,##0.00";
  sheet.getCell("B4").value = true;
  sheet.getCell("B5").value = formula("_xldudf_EXT_DUE(B3)", 7);
  sheet.getCell("B6").value = formula("B3*2", 3);
  sheet.getCell("D1").value = dynamic("_xldudf_EXT_STEPS(1)", "D1:E2", 9);
  for (const address of ["E1", "D2", "E2"]) sheet.getCell(address).value = 9;
  sheet.mergeCells("A8:B9");
  sheet.getCell("A8").value = "merged";
  workbook.definedNames.add("Mine!$B$3", "Amount");
  return workbook;
}

describe("a file in the grid", () => {
  it("shows cells, formulas as typed, styles, sizes, panes, merged cells and names", async () => {
    const snapshot = workbookSnapshot(await throughFile(sample()), "book", names);
    const [sheet] = Object.values(snapshot.sheets);
    const cells = (sheet?.cellData ?? {}) as Cells;
    expect(sheet?.name).toBe("Mine");
    expect(sheet?.freeze).toEqual({ xSplit: 1, ySplit: 2, startRow: 2, startColumn: 1 });
    expect(sheet?.columnData?.[0]).toEqual({ w: 215 });
    expect(sheet?.columnData?.[2]).toMatchObject({ hd: 1 });
    expect(sheet?.rowData?.[1]).toEqual({ h: 61 });
    expect(sheet?.mergeData).toEqual([{ startRow: 7, startColumn: 0, endRow: 8, endColumn: 1 }]);
    expect(cells[0]?.[0]).toEqual({
      v: "Head",
      t: CellValueType.STRING,
      s: {
        bl: 1,
        it: 1,
        fs: 14,
        ff: "Georgia, Arial",
        cl: { rgb: "#ffffff" },
        bg: { rgb: "#1f3a4d" },
        ht: 2,
        vt: 2,
        tb: 3,
        bd: { b: { s: 7, cl: { rgb: "#102030" } } },
      },
    });
    // 46127 is 2026-04-15 in the 1900 system
    expect(cells[2]?.[0]).toMatchObject({ v: 46127, s: { n: { pattern: "yyyy-mm-dd" } } });
    expect(cells[3]?.[1]).toMatchObject({ v: 1, t: CellValueType.BOOLEAN });
    expect(cells[4]?.[1]).toEqual({ f: "=EXT.DUE(B3)" });
    expect(snapshot.resources?.[0]?.data).toContain('"formulaOrRefString":"Mine!$B$3"');
  });

  it("does not write the cells that the formula of another cell fills", async () => {
    const snapshot = workbookSnapshot(await throughFile(sample()), "book", names);
    const cells = (Object.values(snapshot.sheets)[0]?.cellData ?? {}) as Cells;
    expect(cells[0]?.[3]).toEqual({ f: "=EXT.STEPS(1)" });
    expect([cells[0]?.[4]?.v, cells[1]?.[3]?.v, cells[1]?.[4]?.v]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("reads a sheet without panes", async () => {
    const workbook = new Workbook();
    workbook.addWorksheet("Plain").getCell("A1").value = 1;
    const snapshot = workbookSnapshot(await throughFile(workbook), "book", names);
    expect(Object.values(snapshot.sheets)[0]?.freeze).toMatchObject({ xSplit: 0, ySplit: 0 });
  });
});

describe("a new file made from the grid", () => {
  it("has what the grid shows, as files spell it", async () => {
    const snapshot = workbookSnapshot(await throughFile(sample()), "book", names);
    const answers = { "EXT.DUE(B3)": 46127, "B3*2": 2469 };
    const made = await throughFile(contentWorkbook(content(snapshot, answers), names));
    const sheet = made.getWorksheet("Mine");
    const head = sheet?.getCell("A1");
    expect(head?.font).toMatchObject({ bold: true, italic: true, size: 14, name: "Georgia" });
    expect(head?.fill).toMatchObject({ fgColor: { argb: "FF1F3A4D" } });
    expect(head?.alignment).toMatchObject({ horizontal: "center", wrapText: true });
    expect(head?.border).toMatchObject({ bottom: { style: "double" } });
    expect(sheet?.getCell("A3").value).toEqual(new Date(Date.UTC(2026, 3, 15)));
    expect(sheet?.getCell("B3").numFmt).toBe("#,##0.00");
    expect(sheet?.getCell("B4").value).toBe(true);
    expect(sheet?.getCell("B5").formula).toBe("_xldudf_EXT_DUE(B3)");
    expect(sheet?.getCell("B5").result).toBe(46127);
    expect(sheet?.getCell("B6").result).toBe(2469);
    expect(sheet?.getColumn(1).width).toBeCloseTo(30, 5);
    expect(sheet?.getColumn(3).hidden).toBe(true);
    expect(sheet?.getRow(2).height).toBeCloseTo(45.75, 5);
    expect(sheet?.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: 2 });
    expect(sheet?.getCell("B9").master.address).toBe("A8");
    expect(made.definedNames.getRanges("Amount").ranges).toEqual(["Mine!$B$3"]);
  });

  it("marks one of our formulas as one that may fill several cells, and an ordinary one not", () => {
    const snapshot = workbookSnapshot(sample(), "book", names);
    const sheet = contentWorkbook(content(snapshot), names).getWorksheet("Mine");
    expect(sheet?.getCell("B5").model).toMatchObject({ isDynamicArray: true, ref: "B5" });
    expect(sheet?.getCell("B6").model).not.toMatchObject({ isDynamicArray: true });
  });
});

describe("a copy of the file that was opened", () => {
  async function opened() {
    const workbook = await throughFile(sample());
    const sheet = workbook.getWorksheet("Mine");
    if (!sheet) throw new Error("the sample has its sheet");
    sheet.getCell("A5").value = {
      richText: [{ text: "two " }, { font: { bold: true }, text: "fonts" }],
    };
    sheet.getCell("C5").dataValidation = { type: "list", allowBlank: true, formulae: ['"yes,no"'] };
    return { workbook, snapshot: workbookSnapshot(workbook, "book", names) };
  }

  it("keeps what the grid does not show, with the changes made in the grid", async () => {
    const { workbook, snapshot } = await opened();
    const changed = structuredClone(snapshot);
    const cells = (Object.values(changed.sheets)[0]?.cellData ?? {}) as Cells;
    Object.assign(cells[2]?.[1] ?? {}, { v: 99 });
    const saved = contentWorkbook(content(changed), names, { workbook, snapshot });
    const sheet = (await throughFile(saved)).getWorksheet("Mine");
    expect(sheet?.getCell("B3").value).toBe(99);
    expect(sheet?.getCell("B3").numFmt).toBe("#,##0.00");
    expect(sheet?.getCell("C5").dataValidation).toMatchObject({ formulae: ['"yes,no"'] });
    expect(sheet?.getCell("A5").value).toMatchObject({ richText: [{}, { text: "fonts" }] });
  });

  it("clears a cell that was cleared", async () => {
    const { workbook, snapshot } = await opened();
    const changed = structuredClone(snapshot);
    const cells = (Object.values(changed.sheets)[0]?.cellData ?? {}) as Cells;
    delete cells[2]?.[1];
    const saved = contentWorkbook(content(changed), names, { workbook, snapshot });
    expect(saved.getWorksheet("Mine")?.getCell("B3").value).toBeNull();
  });

  it("is a new file when a sheet was renamed", async () => {
    const { workbook, snapshot } = await opened();
    const changed = structuredClone(snapshot);
    for (const sheet of Object.values(changed.sheets)) sheet.name = "Yours";
    const saved = contentWorkbook(content(changed), names, { workbook, snapshot });
    expect(saved).not.toBe(workbook);
    expect(saved.worksheets.map(({ name }) => name)).toEqual(["Yours"]);
  });
});

describe("a saved file", () => {
  const answers = { "EXT.DUE(B3)": 7, "B3*2": 3, "EXT.STEPS(1)": 9 };

  async function openedSample() {
    const bytes = new Uint8Array(await sample().xlsx.writeBuffer());
    const { parts, loaded } = openWorkbookFile("sample.xlsx", bytes, names);
    const workbook = await libraryWorkbook("sample.xlsx", parts);
    return { parts, loaded, snapshot: workbookSnapshot(workbook, "book", names) };
  }

  it("is the file that was opened, byte for byte, if nothing was changed", async () => {
    const { parts, loaded, snapshot } = await openedSample();
    const found = gridChanges(content(snapshot, answers), snapshot, loaded, names);
    expect(found?.formulasChange).toBe(false);
    const after = unpackedParts(patchedFile(parts, found?.changes ?? new Map()).bytes);
    for (const [name, part] of parts) expect([name, after.get(name)]).toEqual([name, part]);
  });

  it("has the values, formulas and number formats that were typed", async () => {
    const { parts, loaded, snapshot } = await openedSample();
    const typed = structuredClone(snapshot);
    const cells = (Object.values(typed.sheets)[0]?.cellData ?? {}) as Cells;
    const row = cells[2] ?? {};
    row[1] = { ...row[1], v: 99, s: { n: { pattern: "0.0" } } };
    row[4] = { f: "=EXT.DUE(B3)+1" };
    delete cells[3]?.[1];
    const given = content(typed, { ...answers, "EXT.DUE(B3)+1": 8 });
    const found = gridChanges(given, snapshot, loaded, names);
    expect(found?.formulasChange).toBe(true);
    const { bytes } = patchedFile(parts, found?.changes ?? new Map(), true);
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    const sheet = workbook.getWorksheet("Mine");
    expect([sheet?.getCell("B3").value, sheet?.getCell("B3").numFmt]).toEqual([99, "0.0"]);
    expect(sheet?.getCell("E3").formula).toBe("_xldudf_EXT_DUE(B3)+1");
    expect(sheet?.getCell("E3").result).toBe(8);
    expect(sheet?.getCell("B4").value).toBeNull();
    expect(sheet?.getCell("A1").font?.bold).toBe(true);
  });

  it("is made anew after a change of style, size or sheet", async () => {
    const { loaded, snapshot } = await openedSample();
    const changed = (change: (sheet: Partial<IWorksheetData>, cells: Cells) => void) => {
      const typed = structuredClone(snapshot);
      const [sheet = {}] = Object.values(typed.sheets);
      change(sheet, (sheet.cellData ?? {}) as Cells);
      return gridChanges(content(typed, answers), snapshot, loaded, names);
    };
    const bold = changed((_sheet, cells) => {
      Object.assign(cells[3]?.[1] ?? {}, { s: { bl: 1 } });
    });
    const wide = changed((sheet) => {
      Object.assign(sheet, { columnData: { 0: { w: 400 } } });
    });
    const renamed = changed((sheet) => {
      sheet.name = "Other";
    });
    expect([bold, wide, renamed]).toEqual([undefined, undefined, undefined]);
  });

  it("is made anew when a defined name was changed, but not when names are in another order", async () => {
    const { loaded, snapshot } = await openedSample();
    const withNames = (change: (text: string) => string) => {
      const typed = structuredClone(snapshot);
      for (const resource of typed.resources ?? []) resource.data = change(resource.data);
      return gridChanges(content(typed, answers), snapshot, loaded, names);
    };
    expect(withNames((text) => text.replace("$B$3", "$B$4"))).toBeUndefined();
    expect(withNames((text) => text.replace("Mine!", "=Mine!"))).toBeDefined();
  });

  it("has a number without a format where the format was removed", async () => {
    const { parts, loaded, snapshot } = await openedSample();
    const typed = structuredClone(snapshot);
    const cells = (Object.values(typed.sheets)[0]?.cellData ?? {}) as Cells;
    Object.assign(cells[2]?.[1] ?? {}, { s: { n: { pattern: "" } } });
    const found = gridChanges(content(typed, answers), snapshot, loaded, names);
    const workbook = new Workbook();
    await workbook.xlsx.load(patchedFile(parts, found?.changes ?? new Map()).bytes);
    const format = workbook.getWorksheet("Mine")?.getCell("B3").numFmt;
    expect([undefined, "General"]).toContain(format);
  });

  it("names what it may lose when it is made anew", async () => {
    const { parts } = await openedSample();
    expect(lossSentence(parts)).not.toContain("macros");
    const more = new Map([...parts, ["xl/vbaProject.bin", new Uint8Array()]]);
    expect(lossSentence(more)).toMatch(/It may lose .*: macros/);
  });
});
