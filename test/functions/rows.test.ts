import { describe, expect, it } from "vitest";
import { cellValue } from "../../src/functions/cells";
import { answerRows, answerTable, single } from "../../src/functions/rows";
import { InputError } from "../../src/inputError";
import { across, answerOf, badInput, down } from "./sheet";

/** Joins the cells of a row; refuses the word "bad" and passes errors through. */
function joined(given: Record<string, unknown>): unknown {
  return answerOf(() =>
    answerRows(given, (cells) => {
      const values = Object.values(cells).map(cellValue);
      if (values.includes("bad")) throw new InputError("word", "is bad");
      return values.map(String).join("+");
    })
  );
}

describe("a row function", () => {
  it.each([
    ["a block of one cell", [["a"]]],
    ["a bare value", "a"],
    ["a bare list of one", ["a"]],
  ])("answers one cell to %s", (_what, cell) => {
    expect(joined({ first: cell, second: [["b"]] })).toEqual([["a+b"]]);
  });

  it.each([[null], [undefined], [[[null]]]])("takes an argument left out as %j", (nothing) => {
    expect(joined({ first: [["a"]], second: nothing })).toEqual([["a+null"]]);
  });

  it("answers nothing but errors with the error of its single row", () => {
    expect(joined({ first: "bad" })).toEqual(badInput("word: is bad"));
    expect(joined({ first: { code: "#DIV/0!" } })).toEqual({ code: "#DIV/0!" });
  });

  it("takes columns of equal length together and repeats single values", () => {
    expect(joined({ one: down("a", "b"), two: [["x"]], three: down(1, 2) })).toEqual([
      ["a+x+1"],
      ["b+x+2"],
    ]);
  });

  it("answers across where its arguments lie across", () => {
    expect(joined({ one: across("a", "b", "c"), two: "x" })).toEqual([["a+x", "b+x", "c+x"]]);
    expect(joined({ one: across("a", "b"), two: down(1, 2) })).toEqual([["a+1", "b+2"]]);
  });

  it("keeps the rest when a row is bad", () => {
    expect(joined({ one: down("a", "bad", { code: "#N/A" }, "b"), two: "x" })).toEqual([
      ["a+x"],
      [badInput("word: is bad")],
      [{ code: "#N/A" }],
      ["b+x"],
    ]);
  });

  it("refuses columns of unequal length, naming both", () => {
    expect(joined({ one: down(1, 2, 3), two: "x", three: down(1, 2) })).toEqual(
      badInput(
        "three: has 2 cells while one has 3; columns that go together must be of equal length"
      )
    );
  });

  it("refuses a block", () => {
    const block = [
      [1, 2],
      [3, 4],
      [5, 6],
    ];
    expect(joined({ one: "a", two: block })).toEqual(
      badInput("two: is a block of 3 rows and 2 columns; give one cell, one column or one row")
    );
  });

  it("refuses an empty range, whatever else is given", () => {
    expect(joined({ one: down(1, 2), two: [] })).toEqual(badInput("two: is an empty range"));
    expect(joined({ one: [], two: "x" })).toEqual(badInput("one: is an empty range"));
  });

  it("throws a bug on, even in the middle of a column", () => {
    const broken = () =>
      answerRows({ one: down(1, 2) }, ({ one }) => {
        if (one === 2) throw new TypeError("a bug");
        return "fine";
      });
    expect(broken).toThrow(new TypeError("a bug"));
  });
});

describe("an empty row of a client list", () => {
  it.each([
    ["null", null],
    ["empty text", ""],
    ["spaces", "  "],
    ["undefined", undefined],
  ])("answers empty text where the host sends %s for an empty cell", (_habit, nothing) => {
    const list = { amount: down("a", nothing, "b"), other: down("x", nothing, nothing) };
    expect(joined(list)).toEqual([["a+x"], [""], [expect.stringMatching(/^b\+/)]]);
  });

  it("answers empty text where the host sends zeros, known by the tax year", () => {
    const list = { taxYear: down(2025, 0), amount: down(100, 0), state: "ME" };
    expect(joined(list)).toEqual([["2025+100+ME"], [""]]);
  });

  it("is not taken for empty where a zero may be meant or something is given", () => {
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

describe("a spilling function", () => {
  it("puts its headings above its rows", () => {
    expect(answerTable(["What", "Day"], () => [["a", 1]])).toEqual([
      ["What", "Day"],
      ["a", 1],
    ]);
  });

  it("answers with an error alone when it is refused", () => {
    const refused = answerOf(() =>
      answerTable(["What"], () => {
        throw new InputError("state", "is none");
      })
    );
    expect(refused).toEqual(badInput("state: is none"));
  });

  it.each([
    ["a", "a"],
    [[["a"]], "a"],
    [["a"], "a"],
    [null, null],
    [undefined, null],
  ])("takes one cell from %j", (argument, cell) => {
    expect(single("state", argument)).toBe(cell);
  });

  it.each([
    [down("a", "b"), "is a range of 2 cells; give one cell"],
    [across("a", "b", "c"), "is a range of 3 cells; give one cell"],
    [[], "is a range of 0 cells; give one cell"],
    [
      [
        [1, 2],
        [3, 4],
      ],
      "is a block of 2 rows and 2 columns; give one cell, one column or one row",
    ],
  ])("does not take one cell from %j", (argument, complaint) => {
    expect(() => single("state", argument)).toThrow(new InputError("state", complaint));
  });
});
