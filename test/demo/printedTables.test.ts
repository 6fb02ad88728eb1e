import { describe, expect, it } from "vitest";
import { type PrintableSheet, printedTables } from "../../src/demo/sheet/printedTables";

/** A sheet of texts, with columns of 100 pixels. */
function sheetOf(
  texts: readonly (readonly string[])[],
  changes: Partial<PrintableSheet> = {}
): PrintableSheet {
  return {
    rowCount: texts.length,
    columnCount: Math.max(...texts.map((row) => row.length)),
    frozenRows: 0,
    frozenColumns: 0,
    merged: [],
    width: () => 100,
    isRowShown: () => true,
    cell: (row, column) => {
      const text = texts[row]?.[column] ?? "";
      return { text, isNumber: /^\d/.test(text), style: undefined };
    },
    ...changes,
  };
}

const shape = (sheet: PrintableSheet) =>
  printedTables(sheet).map(({ headings, rows }) =>
    [...headings, ...rows].map((cells) =>
      cells.map(({ text, columns, rows: down }) => [text, columns, down].join())
    )
  );

describe("a printed table", () => {
  it("gives a long text the empty cells after it, and no others", () => {
    const long = "x".repeat(40);
    expect(shape(sheetOf([[long, "", "", "end"]]))).toEqual([[[`${long},3,1`, "end,1,1"]]]);
    expect(shape(sheetOf([[long, "next"]]))).toEqual([[[`${long},1,1`, "next,1,1"]]]);
    expect(shape(sheetOf([["short", "", "end"]]))).toEqual([[["short,1,1", ",1,1", "end,1,1"]]]);
    // a number never fills other cells
    expect(shape(sheetOf([["1".repeat(40), ""]]))).toEqual([[[`${"1".repeat(40)},1,1`, ",1,1"]]]);
  });

  it("keeps merged cells, and leaves out hidden rows and columns", () => {
    const merged = [{ startRow: 0, endRow: 2, startColumn: 0, endColumn: 2 }];
    const texts = [
      ["m", "", "", "a"],
      ["", "", "", "b"],
      ["", "", "", "c"],
    ];
    const sheet = sheetOf(texts, {
      merged,
      isRowShown: (row) => row !== 1,
      width: (column) => (column === 1 ? 0 : 100),
    });
    expect(shape(sheet)).toEqual([[["m,2,2", "a,1,1"], ["c,1,1"]]]);
  });

  it("is split where it is too wide, with the frozen rows and columns in each part", () => {
    const texts = ["h", "r"].map((row) =>
      Array.from({ length: 30 }, (_cell, index) => row + String(index))
    );
    const tables = printedTables(sheetOf(texts, { frozenRows: 1, frozenColumns: 1 }));
    expect(tables.map(({ widths }) => widths.length)).toEqual([16, 15]);
    expect(tables.map(({ headings }) => headings[0]?.[0]?.text)).toEqual(["h0", "h0"]);
    expect(tables.map(({ rows }) => rows.length)).toEqual([1, 1]);
    const all = tables.flatMap(({ rows }) => rows[0]?.map(({ text }) => text) ?? []);
    expect(new Set(all)).toEqual(new Set(texts[1]));
  });
});
