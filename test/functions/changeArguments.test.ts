import { describe, expect, it } from "vitest";
import { RETURN_ITEMS } from "../../src/calculation/liability/returnItems";
import { changes } from "../../src/functions/changeArguments";
import { ITEM_LABELS } from "../../src/functions/itemLabels";
import { InputError } from "../../src/inputError";

function read(block: unknown) {
  const { children, ...amounts } = changes("changes", block);
  const read = Object.entries(amounts).map(([kind, amount]) => [kind, amount.toNumber()] as const);
  return { ...(Object.fromEntries(read) as Record<keyof typeof amounts, number>), children };
}
function refusal(block: unknown): string {
  try {
    changes("changes", block);
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.message;
    throw thrown;
  }
  throw new Error("nothing was refused");
}
const NOTHING = { ordinary: 0, businessProfit: 0, gain: 0, deductions: 0, children: 0 };

/** Which kind of difference each item is; all others a projection does not know. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  ordinary: [
    ...["wages", "interest", "ordinaryDividends", "pensions", "retirementDistributions"],
    ...["unemployment", "rentalIncome", "partnershipIncome", "shortTermGain"],
    ...["taxableSocialSecurity", "otherIncome"],
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
      ...{ ordinary: 6_000, businessProfit: -2_500, gain: 1_000, deductions: 1_000, children: -1 },
    });
  });

  it.each([...RETURN_ITEMS])("%s is one kind or refused by name", (item) => {
    const label = ITEM_LABELS[item][0] ?? "";
    const kind = kindOf(item);
    if (kind !== undefined) expect(read([[label, 2]])).toEqual({ ...NOTHING, [kind]: 2 });
    else {
      expect(refusal([[label, 2]])).toBe(
        `changes row 1: "${label}" is nothing a projection knows; give the whole return to EXT.LIABILITY`
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
      'changes row 2: "withholding" is nothing a projection knows; give the whole return to EXT.LIABILITY',
    ],
    [[["wags", 1]], 'changes row 1: "wags" is no label of a return; the nearest is "wages"'],
    [[["wages", "more"]], 'changes row 1: "more" is not an amount in dollars'],
    [[["", 5]], "changes row 1: 5 stands without a label"],
    [[["wages", 1, 2]], "changes: must be two columns wide, label and amount; this is 3"],
  ])("%j", (block, sentence) => {
    expect(refusal(block)).toBe(sentence);
  });

  it("part of a child is no number of persons, and not a label that nobody knows", () => {
    expect(refusal([["children", 0.5]])).toBe("changes row 1: 0.5 is no number of persons");
  });
});
