import { describe, expect, it } from "vitest";
import { labeledRows, returnItems } from "../../../src/functions/arguments/returnItems";
import { ITEM_LABELS } from "../../../src/functions/arguments/itemLabels";
import { reading, sentenceOf } from "./reading";
import { RETURN_ITEMS } from "../../../src/calculation/liability/returnItems";

const itemsOf = reading(returnItems, "items");
const read = (...rows: unknown[][]) =>
  Object.fromEntries(
    Object.entries(itemsOf(rows)).map(([name, amount]) => [name, amount.toString()])
  );
const refusal = (range: unknown): string => sentenceOf(() => itemsOf(range));
const labels = Object.entries(ITEM_LABELS).flatMap(([item, written]) =>
  written.map((label) => ({ item, label }))
);

describe("the labels", () => {
  it("are there for every item of a return", () => {
    expect(Object.keys(ITEM_LABELS).sort()).toEqual([...RETURN_ITEMS].sort());
    for (const written of Object.values(ITEM_LABELS)) expect(written.length).toBeGreaterThan(0);
  });

  it.each(labels)("$label means $item", ({ item, label }) => {
    expect(read([label, 1])).toEqual({ [item]: "1" });
    expect(read([` ${label.toUpperCase().replaceAll(" ", "  ")}: `, 1])).toEqual({ [item]: "1" });
  });

  it("are claimed by one item each, however they are spaced or punctuated", () => {
    const bare = labels.map(({ label }) => label.toLowerCase().replace(/[^a-z0-9]/g, ""));
    expect(bare.filter((label, index) => bare.indexOf(label) !== index)).toEqual([]);
  });

  it("do not shadow each other: interest, exempt or not, and the three kinds of wages", () => {
    expect(
      read(
        ["Tax-exempt interest", 1] as unknown[],
        ["Taxable interest", 2],
        ["Interest", 4],
        ["W-2", 8],
        ["wages of the business owner", 16],
        ["Wages paid by the business", 32]
      )
    ).toEqual({
      taxExemptInterest: "1",
      interest: "6",
      wages: "8",
      ownerWages: "16",
      businessWages: "32",
    });
  });
});

describe("rows of label and amount", () => {
  it("repeated labels add up, in any order, whatever they are called", () => {
    expect(read(["wages", 50_000], ["interest", 10], ["W-2", "25,000.50"])).toEqual({
      wages: "75000.5",
      interest: "10",
    });
  });

  it("blank rows and labels without an amount are ignored", () => {
    const rows = [
      ["", ""],
      [null, null],
      ["", 0],
      [0, 0],
      ["interest", ""],
      ["pensions", null],
    ];
    expect(read(["wages", 1], ...rows)).toEqual({ wages: "1" });
  });

  it("a zero is an amount: a dependent without earned income", () => {
    expect(read(["earned income of a dependent", 0])).toEqual({ earnedIfDependent: "0" });
  });

  it("losses are read where the law has them", () => {
    expect(read(["rental loss", "(5,000)"], ["long-term loss", -3_000])).toEqual({
      rentalIncome: "-5000",
      longTermGain: "-3000",
    });
  });

  it("a specified service is a yes or no", () => {
    expect(read(["sstb", "yes"])).toEqual({ specifiedService: "1" });
    expect(read(["sstb", true])).toEqual({ specifiedService: "1" });
    expect(read(["sstb", "no"])).toEqual({ specifiedService: "0" });
  });

  it("living apart is a yes or no", () => {
    expect(read(["lived apart", "yes"])).toEqual({ livedApart: "1" });
    expect(read(["Lived apart all year", "no"])).toEqual({ livedApart: "0" });
    expect(refusal([["lived apart", 12]])).toBe(
      "items row 1: 12 is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0."
    );
  });

  // Schedule D, lines 6 and 14: carryovers are entered as positive amounts in this list; 26 U.S.C. 1212(b)(1): each keeps its character.
  it("a capital loss carryover is long-term unless it is entered as short-term", () => {
    expect(
      read(["Capital loss carryover", 1] as unknown[], ["short-term capital loss carryover", 2])
    ).toEqual({ longTermCarryover: "1", shortTermCarryover: "2" });
    expect(refusal([["capital loss carryover", -5]])).toBe(
      "items row 1: -5 is negative. Enter zero or a positive dollar amount."
    );
  });

  it("keeps place, item and cell for the next reader", () => {
    expect(
      labeledRows(
        "changes",
        [
          ["", ""],
          [" Salary (Ana)", -5],
        ],
        (row) => row
      )
    ).toEqual([{ place: "changes row 2", label: "Salary (Ana)", item: "wages", cell: -5 }]);
  });
});

describe("a row that cannot be read is refused", () => {
  it.each<[unknown, string]>([
    [
      [
        ["wages", 1],
        ["intrest", 5],
      ],
      'items row 2: "intrest" is not a recognized label. The closest label is "interest".',
    ],
    [
      [["Witholding", 5]],
      'items row 1: "Witholding" is not a recognized label. The closest label is "withholding".',
    ],
    [
      [["children undr 17", 2]],
      'items row 1: "children undr 17" is not a recognized label. The closest label is "children under 17".',
    ],
    [
      [["wages", "lots"]],
      'items row 1: "lots" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      [["wages", true]],
      "items row 1: TRUE is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.",
    ],
    [
      [
        ["wages", 1],
        ["", 500],
      ],
      "items row 2: 500 has no label. Enter a label such as wages.",
    ],
    [[[null, "x"]], 'items row 1: "x" has no label. Enter a label such as wages.'],
    [[["wages", -5]], "items row 1: -5 is negative. Enter zero or a positive dollar amount."],
    [
      [["withholding", "(5)"]],
      'items row 1: "(5)" is negative. Enter zero or a positive dollar amount.',
    ],
    [
      [["children", 1.5]],
      "items row 1: 1.5 is not a number of persons. Enter a whole number from 0 to 30.",
    ],
    [
      [["aged", "0.5"]],
      'items row 1: "0.5" is not a number of persons. Enter a whole number from 0 to 2.',
    ],
    [
      [["children", 31]],
      "items row 1: 31 is not a number of persons. Enter a whole number from 0 to 30.",
    ],
    [[["children", -1]], "items row 1: -1 is negative. Enter zero or a positive dollar amount."],
    [
      [["sstb", "perhaps"]],
      'items row 1: "perhaps" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.',
    ],
    [[["wages", 1, 2]], "items: The range has 3 columns. Select two columns, label and amount."],
    [
      [
        ["", ""],
        ["wages", ""],
      ],
      "items: The range has no item. Enter rows of label and amount.",
    ],
  ])("%j", (block, sentence) => {
    expect(refusal(block)).toBe(sentence);
  });

  it("a single cell is one column wide", () => {
    expect(refusal("wages")).toBe(
      "items: The range has 1 column. Select two columns, label and amount."
    );
    expect(refusal([["wages"]])).toBe(
      "items: The range has 1 column. Select two columns, label and amount."
    );
  });

  // 26 U.S.C. 63(f), 151(d)(5)(C): the taxpayer and the spouse, no one else.
  it.each(["65 or older", "blind"])("more than two persons are not %s", (label) => {
    expect(read([label, 2])).not.toEqual({});
    expect(refusal([[label, 3]])).toBe(
      "items row 1: 3 is not a number of persons. Enter a whole number from 0 to 2."
    );
  });

  it("a very long label is quoted in part", () => {
    expect(refusal([["x".repeat(5_000), 1]]).length).toBeLessThan(200);
  });
});
