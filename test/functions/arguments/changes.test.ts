import { describe, expect, it } from "vitest";
import { changes } from "../../../src/functions/arguments/changes";
import { ITEM_LABELS } from "../../../src/functions/arguments/itemLabels";
import { reading, sentenceOf } from "./reading";
import { RETURN_ITEMS } from "../../../src/calculation/liability/returnItems";

const changesOf = reading(changes, "changes");
function read(range: unknown) {
  const { children, ...amounts } = changesOf(range);
  const read = Object.entries(amounts).map(([kind, amount]) => [kind, amount.toNumber()] as const);
  return { ...(Object.fromEntries(read) as Record<keyof typeof amounts, number>), children };
}
const refusal = (range: unknown): string => sentenceOf(() => changesOf(range));
const NOTHING = { ordinary: 0, businessProfit: 0, gain: 0, deductions: 0, children: 0 };

/** The kind of difference of each item; all other items cannot be used in a projection. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  ordinary: [
    "wages",
    "interest",
    "ordinaryDividends",
    "pensions",
    "retirementDistributions",
    "unemployment",
    "rentalIncome",
    "partnershipIncome",
    "shortTermGain",
    "taxableSocialSecurity",
    "otherIncome",
  ],
  businessProfit: ["businessProfit"],
  gain: ["qualifiedDividends", "longTermGain"],
  deductions: ["adjustments", "itemizedDeductions"],
  children: ["childrenUnder17"],
};
const kindOf = (item: string): string | undefined =>
  Object.keys(KINDS).find((kind) => KINDS[kind]?.includes(item));

describe("differences from last year", () => {
  it("may be none", () => {
    for (const none of [null, undefined, [["", ""]], [["wages", ""]]]) {
      expect(read(none)).toEqual(NOTHING);
    }
  });

  it("add up by kind, falls negative", () => {
    expect(
      read([
        ["Wages", 10_000],
        ["pension", "(4,000)"],
        ["Schedule C", -2_500],
        ["long-term gain", 700],
        ["qualified dividends", 300],
        ["itemized", 1_000],
        ["children", -1],
      ])
    ).toEqual({
      ordinary: 6_000,
      businessProfit: -2_500,
      gain: 1_000,
      deductions: 1_000,
      children: -1,
    });
  });

  it.each([...RETURN_ITEMS])("%s is one kind, or is refused by name", (item) => {
    const label = ITEM_LABELS[item][0] ?? "";
    const kind = kindOf(item);
    if (kind !== undefined) expect(read([[label, 2]])).toEqual({ ...NOTHING, [kind]: 2 });
    else {
      expect(refusal([[label, 2]])).toBe(
        `changes row 1: "${label}" cannot be used in a projection. Use EXT.LIABILITY with all items of the return.`
      );
    }
  });
});

describe("a row that cannot be read is refused", () => {
  it.each<[unknown, string]>([
    [
      [
        ["wages", 1],
        ["withholding", 5],
      ],
      'changes row 2: "withholding" cannot be used in a projection. Use EXT.LIABILITY with all items of the return.',
    ],
    [
      [["wags", 1]],
      'changes row 1: "wags" is not a recognized label. The closest label is "wages".',
    ],
    [
      [["wages", "more"]],
      'changes row 1: "more" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [[["", 5]], "changes row 1: 5 has no label. Enter a label such as wages."],
    [[["wages", 1, 2]], "changes: The range has 3 columns. Select two columns, label and amount."],
  ])("%j", (block, sentence) => {
    expect(refusal(block)).toBe(sentence);
  });

  it("part of a child is not a number of persons, and its label is known", () => {
    expect(refusal([["children", 0.5]])).toBe(
      "changes row 1: 0.5 is not a number of persons. Enter a whole number such as 1."
    );
  });
});
