import { describe, expect, it } from "vitest";
import { changes } from "../../../src/functions/arguments/changes";
import { ITEM_LABELS } from "../../../src/functions/arguments/itemLabels";
import { reading, sentenceOf } from "./reading";
import { RETURN_ITEMS, YES_OR_NO } from "../../../src/calculation/liability/returnItems";

const changesOf = reading(changes, "changes");
const read = (range: unknown) =>
  changesOf(range).map(({ item, kind, value }) => [item, kind, value.toNumber()]);
const refusal = (range: unknown): string => sentenceOf(() => changesOf(range));

describe("changes from last year", () => {
  it("may be none", () => {
    for (const none of [null, undefined, [["", ""]], [["wages", ""]]]) {
      expect(read(none)).toEqual([]);
    }
  });

  it("are dollars, negative for a decrease, and keep their row", () => {
    const range = [
      ["Wages", 10_000],
      ["", ""],
      ["pension", "(4,000)"],
    ];
    expect(read(range)).toEqual([
      ["wages", "difference", 10_000],
      ["pensions", "difference", -4_000],
    ]);
    expect(changesOf(range).map(({ place }) => place)).toEqual(["changes row 1", "changes row 3"]);
  });

  it.each<[string, number]>([
    ["5%", 0.05],
    ["-10%", -0.1],
    ["+2.5 %", 0.025],
    [" .5% ", 0.005],
    ["9999%", 99.99],
  ])("are a percent of last year's amount as the text %j", (text, fraction) => {
    expect(read([["wages", text]])).toEqual([["wages", "fraction", fraction]]);
  });

  it("are dollars where a cell is formatted as a percent, because only its number arrives", () => {
    const formatted = { type: "FormattedNumber", basicValue: 0.05, numberFormat: "0%" };
    for (const cell of [0.05, formatted])
      expect(read([["wages", cell]])).toEqual([["wages", "difference", 0.05]]);
  });

  it("are a new answer for a yes or no", () => {
    expect(read([["sstb", "no"]])).toEqual([["specifiedService", "newAmount", 0]]);
    expect(read([["sstb", true]])).toEqual([["specifiedService", "newAmount", 1]]);
    expect(read([["lived apart", "yes"]])).toEqual([["livedApart", "newAmount", 1]]);
  });

  it.each(RETURN_ITEMS.filter((item) => !YES_OR_NO.includes(item)))("may be of %s", (item) => {
    expect(read([[ITEM_LABELS[item][0], -2]])).toEqual([[item, "difference", -2]]);
  });
});

describe("a row that cannot be read is refused", () => {
  it.each<[unknown, string]>([
    [
      [
        ["wages", 1],
        ["wags", 1],
      ],
      'changes row 2: "wags" is not a recognized label. The closest label is "wages".',
    ],
    [
      [["wages", "more"]],
      'changes row 1: "more" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    ...["10000%", "5%%", "%", "--5%", "1e2%", "5,5%"].map((text): [unknown, string] => [
      [["wages", text]],
      `changes row 1: "${text}" is not a percent. Enter a percent below 10,000%, such as 5% or -10%, or dollars.`,
    ]),
    [
      [["sstb", "5%"]],
      'changes row 1: "5%" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.',
    ],
    [[["", 5]], "changes row 1: 5 has no label. Enter a label such as wages."],
    [[["wages", 1, 2]], "changes: The range has 3 columns. Select two columns, label and amount."],
  ])("%j", (block, sentence) => {
    expect(refusal(block)).toBe(sentence);
  });

  it.each(["children", "other dependents", "aged", "blind"])("part of a person: %s", (label) => {
    expect(refusal([[label, 0.5]])).toBe(
      "changes row 1: 0.5 is not a number of persons. Enter a whole number such as 1 or -1."
    );
    expect(refusal([[label, "50%"]])).toBe(
      'changes row 1: "50%" is not a number of persons. Enter a whole number such as 1 or -1.'
    );
  });
});
