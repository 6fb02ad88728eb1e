import { describe, expect, it } from "vitest";
import {
  listAround,
  listInTable,
  MOST_LIST_ROWS,
  refuseTooManyRows,
} from "../../../src/addin/workbook/listArea";
import { NotDone } from "../../../src/addin/workbook/workbookHost";

/** A sheet whose first cell is B3. */
const list = (values: readonly (readonly unknown[])[], row: number, column = 2) =>
  listAround({ sheet: "Mine", top: 3, left: 2, values, formulas: values }, row, column);

const HEADINGS = ["Client", "Total tax", "Payments"];
const ALDER = ["Alder", 20000, 15000];
const BIRCH = ["Birch", 9000, "$9,000"];

describe("the list around the selected cell", () => {
  it("begins below a title, at the row with two headings of a client list", () => {
    const found = list([["Extensions 2025", "", ""], HEADINGS, ALDER, BIRCH], 6);
    expect(found).toEqual({
      sheet: "Mine",
      headingRow: 4,
      firstColumn: 2,
      headings: HEADINGS,
      rows: [ALDER, BIRCH],
      formulas: [
        ["", "", ""],
        ["", "", ""],
      ],
      selectedRow: 1,
    });
  });

  it("is found from its headings and from the title above them", () => {
    for (const row of [3, 4])
      expect(list([["Extensions 2025", "", ""], HEADINGS, ALDER], row)).toMatchObject({
        headingRow: 4,
        selectedRow: undefined,
      });
  });

  it("has rows on both sides of a blank row, from wherever it is selected", () => {
    const values = [HEADINGS, ALDER, ["", "", ""], BIRCH];
    for (const row of [4, 5, 6])
      expect(list(values, row)).toMatchObject({
        headingRow: 3,
        rows: [ALDER, ["", "", ""], BIRCH],
      });
  });

  it("leaves out a remark below a blank row, and the settings above the headings", () => {
    const values = [
      ["As of", "4/1/2026", ""],
      HEADINGS,
      ALDER,
      ["", "", ""],
      ["Checked by RT", "", ""],
    ];
    expect(list(values, 5)).toMatchObject({ headingRow: 4, rows: [ALDER] });
  });

  it("ends where the headings of another list begin", () => {
    const values = [HEADINGS, ALDER, ["", "", ""], HEADINGS, BIRCH];
    expect(list(values, 4)).toMatchObject({ headingRow: 3, rows: [ALDER] });
    expect(list(values, 7)).toMatchObject({ headingRow: 6, rows: [BIRCH] });
  });

  it("has the columns from the first heading to the last, with a gap that has cells", () => {
    const values = [
      ["", "Client", "", "Total tax", ""],
      [1, "Alder", "x", 20000, ""],
    ];
    expect(list(values, 4, 3)).toMatchObject({
      firstColumn: 3,
      headings: ["Client", "", "Total tax"],
      rows: [["Alder", "x", 20000]],
    });
  });

  it("takes the first row with two texts where no heading is known", () => {
    const values = [
      ["", "2025", ""],
      ["Fed liab", "Paid in", "Memo"],
      [100, 90, "late"],
    ];
    expect(list(values, 5).headingRow).toBe(4);
  });

  it("keeps formulas, and only formulas", () => {
    const values = [HEADINGS, ["Alder", 20000, 15000]];
    const formulas = [HEADINGS, ["Alder", "=E1", 15000]];
    const found = listAround({ sheet: "Mine", top: 1, left: 1, values, formulas }, 2, 1);
    expect(found.formulas).toEqual([["", "=E1", ""]]);
  });

  it.each([
    [
      "an empty cell",
      [HEADINGS, ALDER],
      9,
      "The selected cell is not in a list. Select a cell of your client list.",
    ],
    [
      "a list without headings",
      [
        [1, 20000, 15000],
        [2, 9000, 9000],
      ],
      3,
      /^The list has no headings\. Enter headings such as Client,/,
    ],
    [
      "headings alone",
      [HEADINGS],
      3,
      "The list has no row below its headings. Enter your first client.",
    ],
  ])("refuses %s", (_what, values, row, sentence) => {
    expect(() => list(values, row)).toThrow(NotDone);
    expect(() => list(values, row)).toThrow(sentence);
  });

  it("refuses more than 50,000 rows, and says how to split them", () => {
    expect(() => {
      refuseTooManyRows(MOST_LIST_ROWS);
    }).not.toThrow();
    expect(() => {
      refuseTooManyRows(50_001);
    }).toThrow(
      "The list has 50,001 rows. Put it on several sheets with 50,000 rows or fewer, each with the headings, and select one of them."
    );
  });
});

describe("the list in a table", () => {
  it("is the whole table, blank rows included", () => {
    const values = [HEADINGS, ALDER, ["", "", ""]];
    const found = listInTable(
      "Table1",
      { sheet: "Mine", top: 3, left: 1, values, formulas: values },
      4
    );
    expect(found).toMatchObject({
      table: "Table1",
      headingRow: 3,
      selectedRow: 0,
      rows: values.slice(1),
    });
    expect(
      listInTable("Table1", { sheet: "Mine", top: 3, left: 1, values, formulas: values }, 3)
        .selectedRow
    ).toBeUndefined();
  });
});
