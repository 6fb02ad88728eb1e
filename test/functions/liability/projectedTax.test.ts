import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  MAY_BE_NEGATIVE,
  RETURN_ITEMS,
  YES_OR_NO,
  type ReturnItem,
} from "../../../src/calculation/liability/returnItems";
import { ITEM_LABELS } from "../../../src/functions/arguments/itemLabels";
import { liability, projectedTax } from "../../../src/functions/liability/totalTax";
import { HELD } from "../../calculation/liability/givenTax";
import { afterTable, answerOf, badInput } from "../sheet";

type Rows = [string, string | number][];

describe("PROJECTEDTAX", () => {
  // Calculated from the rates and the Tax Table of 2025 (Rev. Proc. 2024-40; 26 U.S.C. 1(h), 24, 63(c), 1401, 1411, 3101(b)(2)).
  it.each<[string, string, Rows, Rows, number]>([
    // 64,600 - 15,750 = 48,850: 5,578.50 + 22% of (48,875 - 48,475)
    [
      "without last year's gain",
      "single",
      [
        ["wages", 64_600],
        ["long-term gain", 100_000],
      ],
      [["long-term gain", -100_000]],
      5_667,
    ],
    // 129,200 - 31,500 = 97,700: 11,157 + 22% of (97,725 - 96,950)
    [
      "without last year's gain",
      "joint",
      [
        ["wages", 129_200],
        ["long-term gain", 200_000],
      ],
      [["long-term gain", "-100%"]],
      11_328,
    ],
    // 64,250 at ordinary rates: 5,578.50 + 22% of (64,275 - 48,475) = 9,054.50, and 15% of 10,000
    [
      "with dividends, all of them qualified",
      "single",
      [["wages", 80_000]],
      [
        ["ordinary dividends", 10_000],
        ["qualified dividends", 10_000],
      ],
      10_555,
    ],
    // 88,850: 14,466.50; 15% of 444,550 and 20% of 55,450 of the gain; 3.8% of 404,600
    [
      "with a gain that meets the net investment income tax",
      "single",
      [["wages", 104_600]],
      [["long-term gain", 500_000]],
      107_615,
    ],
    // 284,250: 57,231 + 35% of 33,725 = 69,034.75; 0.9% of 100,000
    [
      "with wages that meet the Additional Medicare Tax",
      "single",
      [["wages", 200_000]],
      [["wages", 100_000]],
      69_935,
    ],
    // 200,000: 11,157 + 22% of 103,050 = 33,828; 0.9% of 10,000
    [
      "with deductions itemized in both years",
      "joint",
      [
        ["wages", 260_000],
        ["itemized deductions", 60_000],
      ],
      [],
      33_918,
    ],
    // 15.3% of 92.35% of 100,300 is 14,172; 93,214 - 15,750 - 15,493 = 61,971: 8,549. Of 100,000: 14,130 and 8,494, 97 less.
    [
      "with less than $400 of additional profit",
      "single",
      [["business profit", 100_000]],
      [["business profit", 300]],
      22_721,
    ],
    // 15.3% of 92.35% of 40,000, which no credit for children reduces
    [
      "with children whose credit is limited to income tax",
      "head",
      [["business profit", 40_000]],
      [["children under 17", 3]],
      5_652,
    ],
    // 468,500: 80,398 + 32% of 73,900 = 104,046; 0.9% of 250,000; 4,400 less 5% of 100,000 is no credit
    [
      "with children whose credit is phased out",
      "joint",
      [["wages", 500_000]],
      [["children under 17", 2]],
      106_296,
    ],
  ])("%s, %s", (_what, status, priorYearItems, changes, tax) => {
    expect(projectedTax(2025, status, priorYearItems, changes)).toBe(tax);
  });

  it("takes cells as the host passes them, and blank changes as none", () => {
    const items = [["wages", 75_000]];
    expect(projectedTax([[2025]], [["S"]], items, [["Salary", " +1 % "]])).toBe(8_120);
    for (const none of [undefined, [["", ""]], [["wages", ""]]])
      expect(projectedTax(2025, "single", [["wages", 75_750]], none)).toBe(8_120);
  });

  it("takes all rows of a client, payments included, which do not change total tax", () => {
    const items = [
      ["wages", 75_000],
      ["withholding", 9_000],
    ];
    const changes = [
      ["wages", 750],
      ["withholding", -9_000],
      ["estimated payments", 4_000],
    ];
    expect(projectedTax(2025, "single", items, changes)).toBe(8_120);
  });

  it("needs the figures of the new year only", () => {
    const items = [["wages", 50_000]];
    expect(projectedTax(2022, "single", items)).toBe(liability(2022, "single", items));
    expect(answerOf(() => projectedTax(2027, "single", items))).toEqual(
      afterTable("income-tax-rates", "1/1/2027", "12/31/2026")
    );
  });
});

describe("PROJECTEDTAX refuses", () => {
  it.each<[Rows, Rows, string]>([
    [
      [["wages", 5_000]],
      [
        ["interest", 5],
        ["Salary", -5_001],
      ],
      'changes row 2: "wages" would be -1. Enter a decrease of no more than last year\'s amount.',
    ],
    [
      [["wages", 5_000]],
      [["wages", "-101%"]],
      'changes row 1: "wages" would be -50. Enter a decrease of no more than last year\'s amount.',
    ],
    [
      [["children", 2]],
      [["children", -3]],
      'changes row 1: "children under 17" would be -1. Enter a change that leaves a whole number from 0 to 30.',
    ],
    [
      [["blind", 1]],
      [["blind", 2]],
      'changes row 1: "blind" would be 3. Enter a change that leaves a whole number from 0 to 2.',
    ],
    [
      [["wages", 5_000]],
      [["interest", "5%"]],
      'changes row 1: "interest" has no amount in priorYearItems, so a percent of it cannot be calculated. Enter dollars.',
    ],
    [
      [["wagez", 5_000]],
      [],
      'priorYearItems row 1: "wagez" is not a recognized label. The closest label is "wages".',
    ],
  ])("%j with %j", (priorYearItems, changes, sentence) => {
    const call = () => projectedTax(2025, "single", priorYearItems, changes);
    expect(answerOf(call)).toEqual(badInput(sentence));
  });

  it.each<[Rows, Rows]>([
    [[["wages", 5_000]], [["wages", -5_000]]],
    [[["wages", 5_000]], [["wages", "-100%"]]],
    [[["blind", 1]], [["blind", 1]]],
    [[["business profit", 5_000]], [["business profit", -9_000]]],
    [[["interest", 0]], [["interest", "5%"]]],
  ])("nothing of %j with %j", (priorYearItems, changes) => {
    expect(projectedTax(2025, "single", priorYearItems, changes)).toEqual(expect.any(Number));
  });
});

/** The largest number of persons of an item. */
const PERSONS: Readonly<Partial<Record<ReturnItem, number>>> = {
  childrenUnder17: 6,
  otherDependents: 4,
  aged: 2,
  blind: 2,
};
/** Hundreds of dollars, so that a whole percent is whole dollars; or a number of persons. */
function amounts(name: ReturnItem): fc.Arbitrary<number> {
  const most = PERSONS[name];
  if (most !== undefined) return fc.nat({ max: most });
  const min = MAY_BE_NEGATIVE.includes(name) ? -600 : 0;
  return fc
    .oneof(fc.integer({ min, max: 900 }), fc.integer({ min, max: 9_000 }))
    .map((n) => n * 100);
}

/** One item of a person: in both years, and the cell that says how it changed. */
interface Item {
  readonly label: string;
  readonly last: number;
  readonly next: number;
  readonly change: string | number;
}
const changing = RETURN_ITEMS.filter((name) => !YES_OR_NO.includes(name));
const itemOf = (name: ReturnItem): fc.Arbitrary<Item> =>
  fc
    .tuple(amounts(name), amounts(name), fc.integer({ min: -100, max: 300 }), fc.boolean())
    .map(([last, other, percent, isPercent]) => {
      const label = ITEM_LABELS[name][0] ?? "";
      return isPercent && PERSONS[name] === undefined
        ? { label, last, next: last + (last / 100) * percent, change: `${String(percent)}%` }
        : { label, last, next: other, change: other - last };
    });
/** Items that include another one: given together, they are at least as much last year. */
const INCLUDES: Readonly<Record<string, string>> = {
  "ordinary dividends": "qualified dividends",
  "retirement distributions": "early distributions",
};
/** Up to ten items. */
const people: fc.Arbitrary<readonly Item[]> = fc
  .uniqueArray(fc.constantFrom(...changing), { minLength: 1, maxLength: 10 })
  .chain((names) => fc.tuple(...names.map(itemOf)))
  .map((items) =>
    items.map((item) => {
      const part = items.find(({ label }) => label === INCLUDES[item.label])?.last ?? 0;
      return part > item.last ? { ...item, last: part, next: part, change: 0 } : item;
    })
  );
const years = fc.constantFrom(...HELD);
const statuses = fc.constantFrom("single", "joint", "separate", "head", "survivor");
const RUNS = { numRuns: 400, seed: 4868 };
const rowsOf = (items: readonly Item[], which: "last" | "next" | "change"): Rows =>
  items.map((item) => [item.label, item[which]]);

describe("PROJECTEDTAX of any person", () => {
  it("equals LIABILITY of the same items in the new year if nothing changed", () => {
    fc.assert(
      fc.property(years, statuses, people, (year, status, items) => {
        const rows = rowsOf(items, "last");
        expect(projectedTax(year, status, rows)).toBe(liability(year, status, rows));
      }),
      RUNS
    );
  });

  it("equals LIABILITY of the changed items in the new year", () => {
    fc.assert(
      fc.property(years, statuses, people, (year, status, items) => {
        const projected = projectedTax(
          year,
          status,
          rowsOf(items, "last"),
          rowsOf(items, "change")
        );
        expect(projected).toBe(liability(year, status, rowsOf(items, "next")));
      }),
      RUNS
    );
  });
});
