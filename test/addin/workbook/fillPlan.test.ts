import { describe, expect, it } from "vitest";
import {
  filledAddress,
  fillPlan,
  ownColumns,
  refuseFilled,
} from "../../../src/addin/workbook/fillPlan";
import type { FormulaColumn, SelectedList } from "../../../src/addin/workbook/workbookHost";

const column = (heading: string, row = "=EXT.DUE(2025)"): FormulaColumn => ({
  heading,
  formulas: [row, row],
  format: "",
  width: 12,
});
const list = (headings: readonly string[], ...formulas: string[][]): SelectedList => ({
  sheet: "Mine",
  headingRow: 3,
  firstColumn: 2,
  headings,
  rows: formulas.map((line) => line.map((formula) => (formula === "" ? "typed" : 1))),
  formulas,
  selectedRow: 0,
});

describe("where columns of formulas are written", () => {
  it("is to the right of the list, one beside the other", () => {
    const mine = list(["Client", "Total tax"], ["", ""], ["", ""]);
    const planned = fillPlan(mine, [column("Status"), column("Balance due")]);
    expect(planned.map(({ column: at, isNew }) => [at, isNew])).toEqual([
      [4, true],
      [5, true],
    ]);
    expect(filledAddress(mine, planned)).toBe("D3:E5");
  });

  it("is the column of the same heading that has our formulas", () => {
    const ours = "=_xldudf_EXT_DUE(2025)";
    const mine = list(
      ["Client", "STATUS ", "Balance due"],
      ["", ours, "=B4-C4"],
      ["", ours, "=B5-C5"]
    );
    expect(ownColumns(mine)).toEqual([1]);
    const planned = fillPlan(mine, [column("Status"), column("Balance due"), column("Issues")]);
    expect(planned.map(({ column: at, isNew, heading }) => [at, isNew, heading])).toEqual([
      [3, false, "STATUS "],
      [5, true, "Balance due (calculated)"],
      [6, true, "Issues"],
    ]);
    expect(filledAddress(mine, planned)).toBe("C3:C5, E3:F5");
    const again = list(["Balance due", "Balance due (calculated)"], ["", ours]);
    expect(fillPlan(again, [column("Balance due")])[0]).toMatchObject({ column: 3, isNew: false });
  });

  it("is never a cell with an entry of the user", () => {
    const mine = list(["Client", "Status"], ["", "=EXT.DUE(2025)"], ["", ""]);
    expect(() => fillPlan(mine, [column("Status")])).toThrow(
      "Cell C5 has an entry of your own in the column Status. Delete the entry, or change the heading of the column."
    );
    expect(() => {
      refuseFilled(mine, [
        ["", ""],
        ["", 0],
      ]);
    }).toThrow(
      "Cell E4 to the right of the list is not empty. Insert columns beside the list, then try again."
    );
    expect(() => {
      refuseFilled(mine, [["", null]]);
    }).not.toThrow();
  });
});
