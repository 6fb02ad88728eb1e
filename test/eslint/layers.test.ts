import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { faultsOf } from "./faultsOf";

const PATHS = "import-x/no-restricted-paths";
const PACKAGES = "@typescript-eslint/no-restricted-imports";
const GLOBALS = "no-restricted-globals";
const SYNTAX = "no-restricted-syntax";

/** A file of each folder of src, none of which need exist. */
const file = (folder: string): string => `src/${folder}/sample.ts`;

/** An existing module of a folder of src, as a file in another folder of src names it. */
function moduleIn(folder: string): string {
  const place = fileURLToPath(new URL(`../../src/${folder}`, import.meta.url));
  const files = readdirSync(place, { recursive: true, encoding: "utf8" });
  // Of the rules, the calculation may import look-ups only.
  const isAny = (name: string): boolean =>
    folder === "rules" ? name === "datedTable.ts" : name.endsWith(".ts");
  const found = files.find(isAny);
  if (found === undefined) throw new RangeError(`${folder} has no module`);
  return `../${folder}/${found.replaceAll("\\", "/").replace(/\.ts$/, "")}`;
}

/** What each folder of src may import of the others. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  calendar: [],
  money: [],
  rules: ["calendar", "money"],
  calculation: ["calendar", "money", "rules"],
  functions: ["calendar", "money", "rules", "calculation"],
  host: [],
  addin: ["calendar", "rules", "calculation", "functions"],
  help: ["rules", "functions", "host", "addin"],
  demo: ["calendar", "money", "rules", "calculation", "functions", "host", "addin"],
  upkeep: ["calendar", "rules", "functions"],
};
const FOLDERS = Object.keys(ALLOWED);
const pairs = FOLDERS.flatMap((from) =>
  FOLDERS.filter((to) => to !== from).map((to) => ({
    from,
    to,
    faults: ALLOWED[from]?.includes(to) === true ? [] : [PATHS],
  }))
);

describe("an import between the folders of src", () => {
  it.each(pairs)("of $to in $from breaks $faults", async ({ from, to, faults }) => {
    expect(await faultsOf(file(from), `import "${moduleIn(to)}";\n`)).toEqual(faults);
  });

  it.each([
    ["a type", `import type { A } from "${moduleIn("functions")}";\nlet a: A;\n`],
    ["an export", `export { A } from "${moduleIn("functions")}";\n`],
    ["a dynamic import", `await import("${moduleIn("functions")}");\n`],
  ])("is seen in %s", async (_kind, text) => {
    expect(await faultsOf(file("calculation"), text)).toContain(PATHS);
  });

  it.each(["cellAddress", "customFunctions"])("of %s of the host passes in addin", async (name) => {
    expect(await faultsOf(file("addin"), `import "../host/${name}";\n`)).toEqual([]);
  });

  it("is seen from a folder within a folder", async () => {
    const text = `import "../${moduleIn("functions")}";\n`;
    expect(await faultsOf("src/calculation/penalty/sample.ts", text)).toEqual([PATHS]);
  });

  it("is seen when it closes a circle", async () => {
    const text = 'export { nextWorkday } from "./nextWorkday";\n';
    expect(await faultsOf("src/calendar/calendarDate.ts", text)).toEqual(["import-x/no-cycle"]);
  });
});

describe("an import from outside src", () => {
  it.each(FOLDERS)("of a rule table or package.json is for src/rules, not for %s", async (from) => {
    for (const specifier of ["../../rules/sources.json", "../../package.json"]) {
      const faults = await faultsOf(file(from), `import "${specifier}";\n`);
      expect(faults.includes(PATHS)).toBe(from !== "rules");
    }
  });

  it.each(FOLDERS)("of a test fails in %s", async (from) => {
    expect(await faultsOf(file(from), 'import "../../test/projectCopy";\n')).toEqual([PATHS]);
  });
});

describe("the import of a package", () => {
  const OWNERS: readonly (readonly [name: string, owner: string])[] = [
    ["date-fns", "calendar"],
    ["@date-fns/utc", "calendar"],
    ["decimal.js", "money"],
    ["fastest-levenshtein", "functions"],
    ["zod", "rules/schema"],
    ["node:fs", "none"],
    ["fflate", "none"],
  ];
  const bundled = [
    "calendar",
    "money",
    "rules",
    "rules/schema",
    "calculation",
    "functions",
    "addin",
  ];
  const cases = OWNERS.flatMap(([name, owner]) =>
    bundled.map((from) => ({ name, from, faults: from === owner ? [] : [PACKAGES] }))
  );

  it.each(cases)("$name in $from breaks $faults", async ({ name, from, faults }) => {
    expect(await faultsOf(file(from), `import "${name}";\n`)).toEqual(faults);
  });

  it("fails when it is dynamic", async () => {
    expect(await faultsOf(file("calculation"), 'await import("node:fs");\n')).toEqual([SYNTAX]);
  });

  it.each(["host", "help", "demo", "upkeep"])("is free in %s", async (from) => {
    expect(await faultsOf(file(from), 'import "node:fs";\n')).toEqual([]);
  });
});

describe("a schema", () => {
  it.each(FOLDERS)("may be imported in %s for its types only", async (from) => {
    const schemas = from === "rules" ? "./schema/schemas" : "../rules/schema/schemas";
    const imported = (what: string) =>
      faultsOf(file(from), `import ${what} from "${schemas}";\nlet a: A;\n`);
    expect(await imported("type { A }")).not.toContain(PACKAGES);
    expect(await imported("{ A }")).toContain(PACKAGES);
  });
});

describe("the calculation", () => {
  it("imports look-ups from src/rules, and types, but no table", async () => {
    const imported = async (what: string, module: string) =>
      faultsOf(file("calculation"), `import ${what} from "../rules/${module}";\nlet a: A;\n`);
    expect(await imported("type { A }", "rulebook")).not.toContain(PACKAGES);
    expect(await imported("{ A }", "rulebook")).toContain(PACKAGES);
    expect(await imported("{ A }", "datedTable")).not.toContain(PACKAGES);
  });

  it.each(["Office", "window", "fetch", "process", "Date", "performance", "console"])(
    "does not use %s",
    async (name) => {
      for (const folder of ["calculation", "money"]) {
        expect(await faultsOf(file(folder), `${name}.a();\n`)).toContain(GLOBALS);
        expect(await faultsOf(file(folder), `globalThis.${name}.a();\n`)).toContain(GLOBALS);
      }
    }
  );

  it("does not use chance", async () => {
    const faults = await faultsOf(file("calculation"), "Math.random();\n");
    expect(faults).toEqual(["no-restricted-properties"]);
  });
});

describe("a global name", () => {
  it.each([
    ["Date", "src/functions/sample.ts", "src/calendar/sample.ts"],
    ["Date", "src/rules/sample.ts", "src/addin/addin.tsx"],
    ["CustomFunctions", "src/functions/cells/results.ts", "src/functions/cells/hostError.ts"],
    ["CustomFunctions", "src/addin/addin.tsx", "src/host/sample.ts"],
    ["Excel", "src/addin/addin.tsx", "src/addin/excel/excelWorkbook.ts"],
    ["Excel", "src/functions/sample.ts", "src/addin/excel/excelWorkbook.ts"],
  ])("%s fails in %s and passes in %s", async (name, bad, good) => {
    expect(await faultsOf(bad, `${name}.parse("");\n`)).toContain(GLOBALS);
    expect(await faultsOf(good, `${name}.parse("");\n`)).not.toContain(GLOBALS);
  });
});

describe("the clock", () => {
  it.each(["Date.now();\n", "void new Date();\n", "Date();\n"])("fails: %s", async (text) => {
    for (const place of ["src/calendar/sample.ts", "src/demo/season/sheetStyle.ts"])
      expect(await faultsOf(place, text)).toContain(SYNTAX);
    for (const place of ["test/rules/sample.ts", "test/secondOpinion/sample.ts"])
      expect(await faultsOf(place, text)).toEqual([SYNTAX]);
  });

  it("may not be worked around with a Date of a given date, but for the workbook library", async () => {
    const text = "void new Date(0);\n";
    expect(await faultsOf("src/demo/season/sample.ts", text)).toEqual([SYNTAX]);
    expect(await faultsOf("src/demo/season/sheetStyle.ts", text)).toEqual([]);
    expect(await faultsOf("test/rules/sample.ts", text)).toEqual([SYNTAX]);
  });
});

describe("a second implementation", () => {
  it.each([
    ["../../src/money/dollars", [PATHS]],
    ["../../rules/sources.json", [PATHS]],
    ["../projectCopy", [PATHS]],
    ["./answerOfCall", [PACKAGES]],
    ["decimal.js", [PACKAGES]],
    ["node:fs", [PACKAGES]],
    ["./civilDays", []],
    ["fast-check", []],
    ["@cj-tech-master/excelts/formula", []],
  ])("that imports %s breaks %j", async (specifier, faults) => {
    const text = `import "${specifier}";\n`;
    expect(await faultsOf("test/secondOpinion/sample.ts", text)).toEqual(faults);
    expect(await faultsOf("test/secondOpinion/sample.test.ts", text)).toEqual([]);
  });
});
