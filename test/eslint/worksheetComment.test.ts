import { describe, expect, it } from "vitest";
import { faultsOf } from "./faultsOf";

const FILE = "src/functions/penalty/interest.ts";
const COMMENT = `/**
 * Double of an amount.
 *
 * @customfunction TWICE
 * @param amount Dollars; one cell or a column.
 * @param [date] Date of the rate.
 * @returns {any[][]} Dollars and cents.
 * @throws \`#VALUE!\` An argument cannot be read.
 * @throws \`#N/A\` The rate is not published.
 * @see 26 U.S.C. 6622
 * @example =EXT.TWICE(2) is 4.00
 * @example =EXT.TWICE(2, "4/15/2026") gives 4.00
 */
`;
/** The comment above a function, and above a declaration that a function with rest parameters answers. */
const FORMS: readonly (readonly [form: string, text: string])[] = [
  [
    "a function",
    `${COMMENT}export function twice(amount: unknown[][], date?: unknown[][]): unknown[][] {
  return [amount, date ?? []];
}
`,
  ],
  [
    "a declaration",
    `${COMMENT}export function twice(amount: unknown[][], date?: unknown[][]): unknown[][];
export function twice(...cells: unknown[]): unknown[][] {
  return [cells];
}
`,
  ],
];
const NO_ARGUMENTS = COMMENT.split("\n")
  .filter((line) => !/@(param|throws)/.test(line))
  .join("\n");

type Slip = readonly [slip: string, find: string, put: string, rule: string];
const SLIPS: readonly Slip[] = [
  ["without a purpose", " * Double of an amount.\n *\n", "", "jsdoc/require-description"],
  ["with a purpose in two lines", "of an amount.", "of\n * an amount.", "jsdoc/match-description"],
  ["with a purpose without a period", "amount.\n", "amount\n", "jsdoc/match-description"],
  [
    "without an argument",
    " * @param amount Dollars; one cell or a column.\n",
    "",
    "jsdoc/require-param",
  ],
  [
    "with an argument without a description",
    " Dollars; one cell or a column.",
    "",
    "jsdoc/require-param-description",
  ],
  ["with an argument without a period", "a column.", "a column", "jsdoc/match-description"],
  ["with an argument of another name", "@param amount", "@param sum", "jsdoc/check-param-names"],
  ["with an optional argument not in brackets", "[date]", "date", "worksheet/own-example"],
  [
    "with a required argument in brackets",
    "@param amount",
    "@param [amount]",
    "worksheet/own-example",
  ],
  ["without a result", " * @returns {any[][]} Dollars and cents.\n", "", "jsdoc/require-returns"],
  [
    "with a result without a description",
    " Dollars and cents.",
    "",
    "jsdoc/require-returns-description",
  ],
  [
    "without errors",
    / \* @throws.*\n.*\n/.exec(COMMENT)?.[0] ?? "",
    "",
    "jsdoc/no-restricted-syntax",
  ],
  ["with an error without its code", "`#VALUE!` An", "An", "jsdoc/match-description"],
  ["with a second error without its code", "`#N/A` The", "The", "jsdoc/match-description"],
  [
    "with two errors in one tag",
    "cannot be read.",
    "cannot be read; `#N/A` without a rate.",
    "jsdoc/match-description",
  ],
  ["without a law", " * @see 26 U.S.C. 6622\n", "", "jsdoc/no-restricted-syntax"],
  [
    "without an example",
    / \* @example.*\n.*\n/.exec(COMMENT)?.[0] ?? "",
    "",
    "jsdoc/require-example",
  ],
  ["with an example without its result", " is 4.00", "", "jsdoc/match-description"],
  ["with a second example without its result", " gives 4.00", "", "jsdoc/match-description"],
  [
    "with two formulas in one example",
    "is 4.00",
    "is 4.00; =EXT.TWICE(3) is 6.00",
    "jsdoc/match-description",
  ],
  [
    "with a second example of another function",
    '=EXT.TWICE(2, "',
    '=EXT.DUE(2, "',
    "worksheet/own-example",
  ],
  ["without any comment", COMMENT, "", "jsdoc/require-jsdoc"],
];

describe.each(FORMS)("the comment of a worksheet function above %s", (_form, good) => {
  it("passes when it is complete", async () => {
    expect(await faultsOf(FILE, good)).toEqual([]);
  });

  it.each(SLIPS)("fails %s", async (_slip, find, put, rule) => {
    const text = good.replace(find, () => put);
    expect(text).not.toBe(good);
    expect(await faultsOf(FILE, text)).toContain(rule);
  });

  it("may leave out the law only in src/functions/rules", async () => {
    const file = "src/functions/rules/ruleTables.ts";
    const lawless = good.replace(" * @see 26 U.S.C. 6622\n", "");
    expect(await faultsOf(file, lawless)).toEqual([]);
    const without = lawless.replace(/ \* @throws.*\n.*\n/, "");
    expect(await faultsOf(file, without)).toEqual(["jsdoc/no-restricted-syntax"]);
  });
});

describe("the comment of a worksheet function without arguments", () => {
  it.each([
    ["a function", "export function twice(): unknown[][] {\n  return [];\n}\n"],
    [
      "a declaration",
      "export function twice(): unknown[][];\nexport function twice(...cells: unknown[]): unknown[][] {\n  return [cells];\n}\n",
    ],
  ])("needs no errors above %s", async (_form, code) => {
    expect(await faultsOf(FILE, `${NO_ARGUMENTS}${code}`)).toEqual([]);
  });
});

describe("an export of src", () => {
  it.each([
    ["a function", "export function one(): number {\n  return 1;\n}\n"],
    ["a value", "export const ONE = 1;\n"],
    ["a function in a value", "export const one = (): number => 1;\n"],
    ["a type", "export type One = 1;\n"],
    ["an interface", "export interface One {\n  readonly one: 1;\n}\n"],
    ["a class", "export class One {\n  readonly one = 1;\n}\n"],
  ])("needs a comment: %s", async (_kind, text) => {
    expect(await faultsOf("src/money/dollars.ts", text)).toEqual(["jsdoc/require-jsdoc"]);
    expect(await faultsOf("src/money/dollars.ts", `/** One. */\n${text}`)).toEqual([]);
  });
});
