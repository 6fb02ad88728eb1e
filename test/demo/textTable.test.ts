import { expect, it } from "vitest";
import { printable, textTable } from "../../src/demo/terminal/textTable";

const COLUMNS = [
  { heading: "Name", align: "left" },
  { heading: "Amount", align: "right" },
  { heading: "Word", align: "left" },
] as const;

it("aligns columns", () => {
  expect(
    textTable(
      COLUMNS,
      [
        ["a", "1.00", "x"],
        ["longer", "1,234.50", "y"],
      ],
      40
    )
  ).toEqual([
    "Name      Amount  Word",
    "------  --------  ----",
    "a           1.00  x",
    "longer  1,234.50  y",
  ]);
});

it("goes on in a further block, with the first column again, where the width ends", () => {
  expect(textTable(COLUMNS, [["a", "1.00", "x"]], 14)).toEqual([
    "Name  Amount",
    "----  ------",
    "a       1.00",
    "",
    "Name  Word",
    "----  ----",
    "a     x",
  ]);
});

it("passes nothing on that steers a terminal", () => {
  expect(printable("a\u001b[31mb\u202ec\n")).toBe("a?[31mb?c?");
});
