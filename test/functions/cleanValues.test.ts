import { describe, expect, it } from "vitest";
import { answerCells } from "../../src/addin/answers/liveAnswer";
import { STATES } from "../../src/calculation/state";
import { catalog } from "../../src/functions/catalog";
import {
  DATE_FORMAT,
  MONEY_FORMAT,
  PERCENT_FORMAT,
  WHOLE_DOLLAR_FORMAT,
} from "../../src/functions/cells/answerCell";

/** How well a figure is known belongs beside the value: in a source column, or in an answer that is a citation. */
const MARK = /secondary source|unverified|from memory|not published/i;
const FORMATS = [DATE_FORMAT, MONEY_FORMAT, WHOLE_DOLLAR_FORMAT, PERCENT_FORMAT];

const asked = [
  ...Object.entries(catalog)
    .filter(([name]) => name !== "SOURCE" && name !== "RULETABLES")
    .flatMap(([, { examples }]) => examples.map(({ formula }) => formula)),
  ...STATES.flatMap((state) => [
    `=EXT.STATEDUE(2025,"${state}","yes")`,
    `=EXT.STATEEXTENDED(2025,"${state}","yes",,,"yes")`,
    `=EXT.MAILTO(2025,"${state}",500,,,,"yes")`,
  ]),
];

describe("a value", () => {
  it("has no mark of its confidence in its text or its number format", () => {
    const marked = asked.flatMap((formula) => {
      const [headings = [], ...rows] = answerCells(formula);
      const cells = [headings, ...rows].flatMap((row) =>
        row.filter((_cell, column) => rows.length === 0 || headings[column] !== "Source")
      );
      return cells
        .filter((cell) => {
          if (typeof cell === "string") return MARK.test(cell);
          const format = (cell as { numberFormat?: unknown } | null)?.numberFormat;
          return typeof format === "string" && !FORMATS.includes(format);
        })
        .map((cell) => `${formula}: ${JSON.stringify(cell)}`);
    });
    expect(marked).toEqual([]);
  });
});
