import path from "node:path";
import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: path.join(root, "test", "eslint.config.js"),
});

/** The rules that find fault with a file of the project, as `npm run lint` would. */
async function faultsOf(file: string, text: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(text, { filePath: path.join(root, file) });
  return result?.messages.map(({ ruleId }) => ruleId) ?? [];
}

const GOOD = `/**
 * Double of an amount.
 *
 * @customfunction TWICE
 * @param amount Dollars; one cell or a column.
 * @param [day] Day of the rate.
 * @returns {any[][]} Dollars and cents.
 * @throws \`#VALUE!\` for an argument that cannot be read.
 * @see 26 U.S.C. 6622
 * @example =EXT.TWICE(2) is 4.00
 */
export function twice(amount: unknown[][], day?: unknown[][]): unknown[][] {
  return [amount, day ?? []];
}
`;
const WITHOUT = {
  argument: `${GOOD.slice(0, GOOD.indexOf(" * @param"))}${GOOD.slice(GOOD.indexOf(" * @returns"))}`
    .replace(" * @throws `#VALUE!` for an argument that cannot be read.\n", "")
    .replace("amount: unknown[][], day?: unknown[][]", "")
    .replace("[amount, day ?? []]", "[]"),
};

const BROKEN: readonly (readonly [slip: string, find: string, put: string, rule: string])[] = [
  ["no purpose", " * Double of an amount.\n *\n", "", "jsdoc/require-description"],
  ["a purpose in two lines", "of an amount.", "of\n * an amount.", "jsdoc/match-description"],
  ["a purpose without a full stop", "amount.\n", "amount\n", "jsdoc/match-description"],
  [
    "no word of an argument",
    " * @param amount Dollars; one cell or a column.\n",
    "",
    "jsdoc/require-param",
  ],
  [
    "an argument without a description",
    " Dollars; one cell or a column.",
    "",
    "jsdoc/require-param-description",
  ],
  ["an argument without a full stop", "a column.", "a column", "jsdoc/match-description"],
  ["an argument of another name", "@param amount", "@param sum", "jsdoc/check-param-names"],
  ["what may be left out unmarked", "[day] Day", "day Day", "worksheet/own-example"],
  ["what is needed marked as if not", "@param amount", "@param [amount]", "worksheet/own-example"],
  ["no answer", " * @returns {any[][]} Dollars and cents.\n", "", "jsdoc/require-returns"],
  [
    "an answer without a description",
    " Dollars and cents.",
    "",
    "jsdoc/require-returns-description",
  ],
  ["no errors", / \* @throws.*\n/.exec(GOOD)?.[0] ?? "", "", "jsdoc/no-restricted-syntax"],
  ["errors without their code", "`#VALUE!` for", "For", "jsdoc/match-description"],
  ["no law", " * @see 26 U.S.C. 6622\n", "", "jsdoc/no-restricted-syntax"],
  ["no example", " * @example =EXT.TWICE(2) is 4.00\n", "", "jsdoc/require-example"],
  ["an example without its answer", " is 4.00", "", "jsdoc/match-description"],
  ["an example of another function", "=EXT.TWICE(", "=EXT.DUE(", "worksheet/own-example"],
  ["no comment at all", GOOD.slice(0, GOOD.indexOf("export")), "", "jsdoc/require-jsdoc"],
];

describe("the comment above a worksheet function", () => {
  it("is taken when it is complete", async () => {
    expect(await faultsOf("src/functions/interest.ts", GOOD)).toEqual([]);
  });

  it.each(BROKEN)("is not taken with %s", async (_slip, find, put, rule) => {
    const text = GOOD.replace(find, () => put);
    expect(text).not.toBe(GOOD);
    expect(await faultsOf("src/functions/interest.ts", text)).toContain(rule);
  });

  it("may leave out the errors where there is no argument", async () => {
    expect(await faultsOf("src/functions/interest.ts", WITHOUT.argument)).toEqual([]);
  });

  it("may leave out the law only where a function tells of the tables", async () => {
    const lawless = GOOD.replace(" * @see 26 U.S.C. 6622\n", "");
    expect(await faultsOf("src/functions/rulesInForce.ts", lawless)).toEqual([]);
    const refusing = lawless.replace(/ \* @throws.*\n/, "");
    expect(await faultsOf("src/functions/rulesInForce.ts", refusing)).toEqual([
      "jsdoc/no-restricted-syntax",
    ]);
  });
});

describe("what src exports", () => {
  it.each([
    ["a function", "export function one(): number {\n  return 1;\n}\n"],
    ["a value", "export const ONE = 1;\n"],
    ["a function kept in a value", "export const one = (): number => 1;\n"],
    ["a type", "export type One = 1;\n"],
    ["an interface", "export interface One {\n  readonly one: 1;\n}\n"],
    ["a class", "export class One {\n  readonly one = 1;\n}\n"],
  ])("has a comment above it: %s", async (_kind, text) => {
    expect(await faultsOf("src/money/dollars.ts", text)).toEqual(["jsdoc/require-jsdoc"]);
    expect(await faultsOf("src/money/dollars.ts", `/** One. */\n${text}`)).toEqual([]);
  });

  it("stays within 200 lines a file", async () => {
    const lines = (count: number) => "/** One. */\nexport const ONE = 1;\n" + "//\n".repeat(count);
    expect(await faultsOf("src/money/dollars.ts", lines(198))).toEqual([]);
    expect(await faultsOf("src/money/dollars.ts", lines(199))).toEqual(["max-lines"]);
  });
});
