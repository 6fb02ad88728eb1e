import { describe, expect, it, vi } from "vitest";
import {
  unread,
  type ArgumentList,
  type RangeKind,
} from "../../src/functions/arguments/argumentKind";
import { date } from "../../src/functions/arguments/date";
import { yesNo } from "../../src/functions/arguments/yesNo";
import { InputError } from "../../src/functions/cells/inputError";
import { cellFunction, rowFunction, tableFunction } from "../../src/functions/worksheetFunction";
import { across, answerOf, badInput, down } from "./sheet";

/** Reads any cell as it is. */
const any = unread(date);
const range: RangeKind<unknown> = {
  ...yesNo,
  takes: "range",
  whenBlank: { means: "none" },
  read: (cells) => cells,
};
/** What a definition says for the help. */
const told = { tables: [], law: [], examples: [] };

/** Joins the cells of a row; refuses the word "bad". */
function joined(given: Record<string, unknown>): unknown {
  const list: ArgumentList = Object.fromEntries(Object.keys(given).map((name) => [name, any]));
  const { answer } = rowFunction({
    ...told,
    arguments: list,
    calculate: (cells) => {
      const values = Object.values(cells);
      if (values.includes("bad")) throw new InputError("word", "It is bad.");
      return values.map(String).join("+");
    },
  });
  return answerOf(() => answer(Object.values(given)));
}

describe("a row function", () => {
  it.each([
    ["a range of one cell", [["a"]]],
    ["a bare value", "a"],
    ["a bare list of one", ["a"]],
  ])("answers one cell to %s", (_what, cell) => {
    expect(joined({ first: cell, second: [["b"]] })).toEqual([["a+b"]]);
  });

  it.each([[null], [undefined], [[[null]]]])("takes an argument left out as %j", (nothing) => {
    expect(joined({ first: [["a"]], second: nothing })).toEqual([["a+null"]]);
  });

  it("answers nothing but errors with the error of its single row", () => {
    expect(joined({ first: "bad" })).toEqual(badInput("word: It is bad."));
    expect(joined({ first: { code: "#DIV/0!" } })).toEqual({ code: "#DIV/0!" });
  });

  it("uses columns of equal length row by row and repeats single values", () => {
    expect(joined({ one: down("a", "b"), two: [["x"]], three: down(1, 2) })).toEqual([
      ["a+x+1"],
      ["b+x+2"],
    ]);
  });

  it("answers across where its arguments run across", () => {
    expect(joined({ one: across("a", "b", "c"), two: "x" })).toEqual([["a+x", "b+x", "c+x"]]);
    expect(joined({ one: across("a", "b"), two: down(1, 2) })).toEqual([["a+1", "b+2"]]);
  });

  it("answers the other rows when a row is bad", () => {
    expect(joined({ one: down("a", "bad", { code: "#N/A" }, "b"), two: "x" })).toEqual([
      ["a+x"],
      [badInput("word: It is bad.")],
      [{ code: "#N/A" }],
      ["b+x"],
    ]);
  });

  it("refuses columns of unequal length, naming both", () => {
    expect(joined({ one: down(1, 2, 3), two: "x", three: down(1, 2) })).toEqual(
      badInput(
        "three: The range has 2 cells, but one has 3. Ranges used together must have the same number of cells."
      )
    );
  });

  it("refuses a range of several rows and columns", () => {
    const block = [
      [1, 2],
      [3, 4],
      [5, 6],
    ];
    expect(joined({ one: "a", two: block })).toEqual(
      badInput("two: The range has 3 rows and 2 columns. Select one cell, one column or one row.")
    );
  });

  it("refuses an empty range, whatever else is given", () => {
    expect(joined({ one: down(1, 2), two: [] })).toEqual(
      badInput("two: The range is empty. Select at least one cell.")
    );
    expect(joined({ one: [], two: "x" })).toEqual(
      badInput("one: The range is empty. Select at least one cell.")
    );
  });

  it("throws a bug on, even in the middle of a column", () => {
    const { answer } = rowFunction({
      ...told,
      arguments: { one: any },
      calculate: ({ one }) => {
        if (one === 2) throw new TypeError("a bug");
        return "fine";
      },
    });
    expect(() => answer([down(1, 2)])).toThrow(new TypeError("a bug"));
  });

  it("reads every argument before it calculates, and names the first that is not accepted", () => {
    const { answer } = rowFunction({
      ...told,
      arguments: { first: yesNo, second: date },
      calculate: () => "calculated",
    });
    const refused = (...cells: unknown[]): unknown => answerOf(() => answer(cells));
    expect(refused("maybe", "soon")).toMatchObject({
      message: expect.stringMatching(/^first: /) as string,
    });
    expect(refused("yes", "soon")).toMatchObject({
      message: expect.stringMatching(/^second: /) as string,
    });
    expect(refused("yes", "4/15/2026")).toEqual([["calculated"]]);
  });

  it("reads a cell that repeats the one above only once in a call, but again after another tax year", () => {
    const read = vi.fn((value: unknown) => value);
    const counted = { ...any, read };
    const { answer } = rowFunction({
      ...told,
      arguments: { taxYear: any, cell: counted },
      calculate: ({ cell }) => String(cell),
    });
    expect(answer([[[2025]], down("a", "a", "b", "a")])).toEqual(down("a", "a", "b", "a"));
    expect(read).toHaveBeenCalledTimes(3);
    read.mockClear();
    answer([down(2025, 2024), [["a"]]]);
    expect(read).toHaveBeenCalledTimes(2);
    answer([[[2024]], [["a"]]]);
    expect(read).toHaveBeenCalledTimes(3);
  });
});

describe("a blank row of a client list", () => {
  it.each([
    ["null", null],
    ["empty text", ""],
    ["spaces", "  "],
    ["undefined", undefined],
  ])("answers empty text where the host sends %s for a blank cell", (_habit, nothing) => {
    const list = { amount: down("a", nothing, "b"), other: down("x", nothing, nothing) };
    expect(joined(list)).toEqual([["a+x"], [""], [expect.stringMatching(/^b\+/)]]);
  });

  it("answers empty text where the host sends zeros, known by the tax year", () => {
    const list = { taxYear: down(2025, 0), amount: down(100, 0), state: "ME" };
    expect(joined(list)).toEqual([["2025+100+ME"], [""]]);
  });

  it("is not blank where a zero is a possible value or something is entered", () => {
    expect(joined({ amount: down(0, 1), paid: down(0, 1) })).toEqual([["0+0"], ["1+1"]]);
    expect(joined({ taxYear: down(2025, 0), amount: down(100, 5) })).toEqual([
      ["2025+100"],
      ["0+5"],
    ]);
    expect(joined({ taxYear: down(2025, 2024), amount: down(0, 0) })).toEqual([
      ["2025+0"],
      ["2024+0"],
    ]);
  });

  it("counts only what is given row by row: a single value beside it does not fill it", () => {
    expect(joined({ taxYear: 2025, amount: down("a", "") })).toEqual([["2025+a"], [""]]);
  });
});

describe("a function that fills several cells", () => {
  const table = tableFunction({
    ...told,
    arguments: { state: any, rows: range },
    calculate: ({ state, rows }) => [["Item"], [String(state)], [JSON.stringify(rows)]],
  });

  it("returns its headings above its rows", () => {
    expect(table.answer([[["a"]], [[1, 2]]])).toEqual([["Item"], ["a"], ["[[1,2]]"]]);
  });

  it("takes a range left out as what its kind says", () => {
    for (const nothing of [null, undefined])
      expect(table.answer(["a", nothing])[2]).toEqual(['"none"']);
  });

  it("returns an error alone when an argument is not accepted", () => {
    const { answer } = tableFunction({
      ...told,
      arguments: { state: yesNo },
      calculate: () => [["Item"]],
    });
    expect(answerOf(() => answer(["maybe"]))).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^state: "maybe" is not yes or no/) as string,
    });
  });

  it.each([
    ["a", "a"],
    [[["a"]], "a"],
    [["a"], "a"],
    [null, null],
    [undefined, null],
  ])("takes one cell from %j", (argument, cell) => {
    expect(table.answer([argument])[1]).toEqual([String(cell)]);
  });

  it.each([
    [down("a", "b"), "The range has 2 cells. Select one cell."],
    [across("a", "b", "c"), "The range has 3 cells. Select one cell."],
    [[], "The range has 0 cells. Select one cell."],
    [
      [
        [1, 2],
        [3, 4],
      ],
      "The range has 2 rows and 2 columns. Select one cell, one column or one row.",
    ],
  ])("does not take one cell from %j", (argument, complaint) => {
    expect(answerOf(() => table.answer([argument]))).toEqual(badInput(`state: ${complaint}`));
  });
});

describe("a function of one cell", () => {
  it("returns its cell bare", () => {
    const { answer } = cellFunction({
      ...told,
      arguments: { state: any },
      calculate: ({ state }) => String(state),
    });
    expect(answer([[["a"]]])).toBe("a");
    expect(answerOf(() => answer([down("a", "b")]))).toEqual(
      badInput("state: The range has 2 cells. Select one cell.")
    );
  });
});
