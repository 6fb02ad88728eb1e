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
  ["with an optional argument not in brackets", "[date]", "date", "worksheet/bracketed-options"],
  [
    "with a required argument in brackets",
    "@param amount",
    "@param [amount]",
    "worksheet/bracketed-options",
  ],
  ["without a result", " * @returns {any[][]} Dollars and cents.\n", "", "jsdoc/require-returns"],
  [
    "with a result without a description",
    " Dollars and cents.",
    "",
    "jsdoc/require-returns-description",
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
});
