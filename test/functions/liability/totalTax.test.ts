import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  liability,
  liabilityLines,
  paymentsTotal,
} from "../../../src/functions/liability/totalTax";
import { afterTable, answerOf, badInput } from "../sheet";

const rows = (given: Readonly<Record<string, unknown>>): unknown[][] => Object.entries(given);

/** An invented return. */
const ITEMS: unknown[][] = [
  ["Wages", 60_000],
  ["Schedule C", 100_000],
  ["Interest", 850],
  ["Rental loss", -3_000],
  ["Long-term gain", 10_000],
  ["Children under 17", 1],
  ["Withholding", 6_000.25],
  ["Estimates", 12_000],
  ["", ""],
  ["Credits", ""],
];

describe("LIABILITY", () => {
  it("is the total of the return in whole dollars", () => {
    expect(liability(2025, "single", [["wages", 75_750]])).toBe(8_120);
    const couple = rows({ wages: 120_000, children: 2 });
    expect(liability([[2025]], [["MFJ"]], couple)).toBe(5_746);
  });

  it("does not mind the order of the rows, nor how an amount is split", () => {
    const all = liability(2025, "joint", ITEMS);
    const split = ITEMS.flatMap(([label, amount]) =>
      typeof amount === "number" && Number.isInteger(amount) && amount > 10
        ? [
            [label, amount - 7],
            [String(label).toUpperCase(), 7],
          ]
        : [[label, amount]]
    );
    const shuffled = fc.shuffledSubarray(split, { minLength: split.length });
    fc.assert(
      fc.property(shuffled, (mixed) => {
        expect(liability(2025, "joint", mixed)).toBe(all);
      }),
      { numRuns: 100, seed: 4868 }
    );
  });

  it.each<[unknown, unknown, unknown, string]>([
    [
      2025,
      "single",
      [["wagez", 1]],
      'items row 1: "wagez" is not a recognized label. The closest label is "wages".',
    ],
    [
      2025,
      "single",
      [["wages", "x"]],
      'items row 1: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      2025,
      "single",
      [["wages", 1, 2]],
      "items: The range has 3 columns. Select two columns, label and amount.",
    ],
    [2025, "single", [["", ""]], "items: The range has no item. Enter rows of label and amount."],
    [
      2025,
      "unknown",
      [["wages", 1]],
      'filingStatus: "unknown" is not a filing status. Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.',
    ],
    [
      [[2024], [2025]],
      "single",
      [["wages", 1]],
      "taxYear: The range has 2 cells. Select one cell.",
    ],
    [
      "",
      "single",
      [["wages", 1]],
      "taxYear: The cell is blank. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.",
    ],
  ])("of %j, %j, %j is refused", (taxYear, status, items, sentence) => {
    for (const of of [liability, liabilityLines]) {
      const call = () => of(taxYear, status, items as unknown[][]);
      expect(answerOf(call)).toEqual(badInput(sentence));
    }
  });

  it.each([
    [2021, "The table begins on 1/1/2022"],
    [2027, "The table covers dates through 12/31/2026"],
  ])("of %i names the table and the day", (taxYear, reach) => {
    expect(answerOf(() => liability(taxYear, "single", [["wages", 1]]))).toEqual({
      code: "#N/A",
      message: expect.stringMatching(
        new RegExp(
          `: There is no figure for 1/1/${String(taxYear)}\\. ${reach} \\(rules/[a-z-]+\\.json\\)\\. `
        )
      ) as string,
    });
  });

  it("hands an error cell on", () => {
    const broken = { code: "#DIV/0!" };
    expect(answerOf(() => liability(2025, "single", [["wages", broken]]))).toMatchObject(broken);
  });
});

// Worked by hand from the statute named; no publication has them.
describe("LIABILITY of a return with several limits", () => {
  it.each<[string, number, Readonly<Record<string, number>>, number]>([
    ["461(l)", 2025, { wages: 1_000_000, "business profit": -500_000 }, 212_583],
    [
      "199A(e)(1) and 68",
      2026,
      {
        "business profit": 1_000_000,
        "wages paid by the business": 600_000,
        "itemized deductions": 100_000,
      },
      273_179,
    ],
    [
      "56(b)(1) and 68",
      2026,
      { wages: 1_000_000, "minimum tax items": 500_000, "itemized deductions": 100_000 },
      394_310,
    ],
    [
      "63(b)(4) and 170(p)",
      2026,
      { wages: 100_000, "itemized deductions": 16_500, "cash gifts to charity": 1_000 },
      12_956,
    ],
    [
      "63(e) and 56(b)(1)(D)",
      2025,
      { wages: 200_000, "minimum tax items": 400_000, "itemized deductions": 14_000 },
      134_630,
    ],
  ])("IRC section %s, single %i", (_law, year, items, tax) => {
    expect(liability(year, "single", rows(items))).toBe(tax);
  });

  // 26 U.S.C. 86(c)(1)(C)(ii): no benefits in income below the base; 20,000 less 15,750 is 4,250.
  it("IRC section 86, a separate filer who lived apart", () => {
    const items = rows({ wages: 20_000, "social security benefits": 9_000 });
    expect(liability(2025, "separate", [...items, ["lived apart", "yes"]])).toBe(428);
    expect(liability(2025, "separate", items)).toBe(1_193);
  });

  // 20,000 of the 95,750 are deducted or excluded; the tax on 60,000 is 8,120, less 320.
  it.each<[string, Readonly<Record<string, number>>]>([
    ["172(a)", { wages: 95_750, "net operating loss carryforward": 20_000 }],
    ["408(d)(8)", { wages: 45_750, "IRA distributions": 50_000, QCD: 20_000 }],
    ["1212(b)", { wages: 75_750, "short-term gain": 20_000, "capital loss carryover": 20_000 }],
  ])("IRC section %s and the credits as given", (_law, items) => {
    const credits = rows({
      "foreign tax credit": 200,
      "education credits": 100,
      "credit for the elderly": 20,
    });
    expect(liability(2025, "single", [...rows(items), ...credits])).toBe(7_800);
  });
});

describe("LIABILITYLINES", () => {
  const table = liabilityLines(2025, "joint", ITEMS);

  it("goes from income to total tax", () => {
    expect(table[0]).toEqual(["Item", "Amount", "Source"]);
    expect(table.slice(1, -1).map(([what, dollars]) => [what, dollars])).toEqual([
      ["Wages", 60_000],
      ["Taxable interest", 850],
      ["Business profit or loss", 100_000],
      ["Rental income or loss", -3_000],
      ["Capital gain or loss", 10_000],
      ["Total income", 167_850],
      ["Less deductible part of self-employment tax", -7_065],
      ["Adjusted gross income", 160_785],
      ["Less standard deduction", -31_500],
      ["Less business income deduction", -18_587],
      ["Taxable income", 110_698],
      // 100,698 beside 10,000 at 15%: 11,157 + 22% of 3,748 = 11,981.56, and 1,500
      ["Income tax", 13_482],
      ["Less child tax credit and credit for other dependents", -2_200],
      ["Self-employment tax", 14_130],
      ["Total tax", 25_412],
    ]);
  });

  it("ends with what LIABILITY answers, and with what is left out", () => {
    expect(table.at(-2)?.[1]).toBe(liability(2025, "joint", ITEMS));
    const [leftOut, ...empty] = table.at(-1) ?? [];
    expect(empty).toEqual(["", ""]);
    expect(leftOut).toMatch(/^An estimate, not a return\. Left out: /);
    for (const omission of [
      "25% and 28%",
      "loss limits",
      "80% of taxable income",
      "spouse itemizes",
      "credit for the elderly",
      "foreign",
      "refundable child tax credit",
    ]) {
      expect(leftOut).toContain(omission);
    }
  });

  it("has a line for an excess business loss, and says where the smaller deductions are taken", () => {
    const loss = liabilityLines(2025, "single", [
      ["wages", 1_000_000],
      ["business profit", -500_000],
    ]);
    expect(loss).toContainEqual([
      "Excess business loss, not deductible this year",
      187_000,
      "Rev. Proc. 2024-40, section 2.32 (secondary source)",
    ]);
    const smaller = liabilityLines(2025, "single", [
      ["wages", 200_000],
      ["minimum tax items", 400_000],
      ["itemized deductions", 14_000],
    ]);
    expect(smaller.map(([what]) => what)).toContain(
      "Less itemized deductions (smaller than the deductions without itemizing, but total tax is lower)"
    );
  });

  it("names the law behind each line that rests on figures of the year", () => {
    const source = new Map(table.map(([what, , cited]) => [what, cited]));
    for (const what of ["Income tax", "Self-employment tax", "Less standard deduction"]) {
      expect(source.get(what)).toMatch(/\d/);
    }
    expect(source.get("Wages")).toBe("");
    // 26 U.S.C. 1211(b) stands on memory
    expect(source.get("Capital gain or loss")).toMatch(/\(unverified: check the official text\)$/);
  });
});

describe("PAYMENTSTOTAL", () => {
  it("adds up payments and passes over everything else", () => {
    expect(paymentsTotal(ITEMS)).toBe(18_000.25);
    expect(paymentsTotal(rows({ withholding: 0.105, "tax withheld": 0.1 }))).toBe(0.21);
    expect(paymentsTotal(rows({ wages: 60_000, credits: 500 }))).toBe(0);
  });

  it.each<[unknown[][], string]>([
    [
      [["witholding", 1]],
      'items row 1: "witholding" is not a recognized label. The closest label is "withholding".',
    ],
    [[["withholding", -1]], "items row 1: -1 is negative. Enter zero or a positive dollar amount."],
    [
      [["wages", "x"]],
      'items row 1: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
  ])("%j is refused", (items, sentence) => {
    expect(answerOf(() => paymentsTotal(items))).toEqual(badInput(sentence));
  });
});

describe("a year that the tables do not cover", () => {
  it("is refused by the table of rates, whatever the items", () => {
    const call = () => liability(2027, "single", [["long-term gain", -5_000]]);
    expect(answerOf(call)).toEqual(afterTable("income-tax-rates", "1/1/2027", "12/31/2026"));
  });
});
