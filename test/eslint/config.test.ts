import { describe, expect, it } from "vitest";
import { faultsOf, faultsWithTypes } from "./faultsOf";

const TEST = "test/money/sample.test.ts";

describe("the lint", () => {
  it("fails a forgotten promise, an unneeded fallback and a switch without one of the cases", async () => {
    const text = `void ["a"].map(async (text) => {
  Promise.resolve(text ?? "");
});
export function one(of: "a" | "b"): number {
  switch (of) {
    case "a":
      return 1;
  }
  return 2;
}
`;
    const faults = await faultsWithTypes("test/projectCopy.ts", text);
    expect(faults).toEqual([
      "@typescript-eslint/require-await",
      "@typescript-eslint/no-floating-promises",
      "@typescript-eslint/no-unnecessary-condition",
      "@typescript-eslint/switch-exhaustiveness-check",
    ]);
  });

  it("fails a date in a text that is not written as one", async () => {
    const text = (
      date: string
    ): string => `import { written, type CalendarDate } from "./calendarDate";
/** A sentence. */
export const sentence = (date: CalendarDate): string => \`From \${written(date)} to \${${date}}\`;
`;
    const file = "src/calendar/dateSerial.ts";
    expect(await faultsWithTypes(file, text("written(date)"))).toEqual([]);
    expect(await faultsWithTypes(file, text("date"))).toEqual([
      "@typescript-eslint/restrict-template-expressions",
    ]);
  });

  it.each([
    ["a list", "export const all = (rest: string[]) => [...['a', 'b'], ...rest];\n"],
    ["an object", "export const all = (rest: object) => ({ ...{ a: 1, b: 2 }, ...rest });\n"],
  ])("fails the spread of %s written in place", async (_what, text) => {
    expect(await faultsOf(TEST, text)).toEqual(["no-restricted-syntax"]);
    expect(await faultsOf("test/sample.js", text.replace(/: (string\[\]|object)/, ""))).toEqual([
      "no-restricted-syntax",
    ]);
  });

  it.each(["it.skip", "describe.only", "test.todo", "it.skipIf(true)", "bench.only"])(
    "fails a test that does not always run: %s",
    async (call) => {
      expect(await faultsOf(TEST, `${call}("a", () => undefined);\n`)).toContain(
        "no-restricted-syntax"
      );
    }
  );
});
