import { describe, expect, it } from "vitest";
import {
  exportedFunctions,
  filesUnder,
  importsOf,
  namesUsedIn,
  sourceFile,
  type Import,
  type SourceFile,
} from "./contract/sourceFiles";

const sources = [...filesUnder("src", ".ts")].map(sourceFile);
const partOf = (path: string): string => {
  const [, part = ""] = path.split("/");
  return path.startsWith("src/") ? part : path;
};
const within = (part: string): SourceFile[] => sources.filter(({ path }) => partOf(path) === part);

/** What each part of src may import, itself aside: downwards only. */
const BELOW: Readonly<Record<string, readonly string[]>> = {
  "inputError.ts": [],
  calendar: ["inputError.ts"],
  money: ["inputError.ts"],
  rules: ["inputError.ts", "calendar", "money"],
  calculation: ["inputError.ts", "calendar", "money", "rules"],
  functions: ["inputError.ts", "calendar", "money", "rules", "calculation"],
  addin: ["inputError.ts", "calendar", "money", "rules", "calculation", "functions"],
  tryout: ["inputError.ts", "calendar", "money", "rules", "calculation", "functions", "addin"],
  help: [
    ...["inputError.ts", "calendar", "money", "rules", "calculation", "functions", "addin"],
    "tryout",
  ],
  upkeep: ["inputError.ts", "calendar", "money", "rules"],
};

/** The only packages in what is built, each with the one part that knows it. */
const PACKAGES: Readonly<Record<string, string>> = {
  "@date-fns/utc": "calendar",
  "date-fns": "calendar",
  "decimal.js": "money",
  "fastest-levenshtein": "functions",
  // in src/rules/schema alone, from which the others take nothing but types
  zod: "rules",
};
/** Run in Node beside the add-in; whatever they need does not reach the host. */
const BESIDE = ["tryout", "help", "upkeep"];

/** What would tie an answer to a host, a page, a clock or chance. */
const SURROUNDINGS = [
  ...["Office", "Excel", "CustomFunctions", "window", "document", "navigator", "localStorage"],
  ...["fetch", "process", "globalThis", "Date", "performance", "setTimeout", "crypto", "console"],
];

/** Calculation files that do not export the one function they are named for, and why. */
const NAMED_OTHERWISE: Readonly<Record<string, readonly string[]>> = {
  // named for a type, with what makes or knows one
  "src/calculation/filer.ts": [],
  "src/calculation/state.ts": ["isState"],
  "src/calculation/taxYear.ts": [
    ...["calendarTaxYear", "fiscalTaxYear", "yearBefore", "yearAfter", "isFiscalYear"],
  ],
  "src/calculation/season/requestRecord.ts": [],
  "src/calculation/request/requestToCheck.ts": [],
  "src/calculation/filingStatus.ts": [],
  "src/calculation/liability/liabilityLine.ts": [],
  "src/calculation/liability/returnItems.ts": ["item"],
  "src/calculation/dueDate/disasterRelief.ts": ["postponedDate"],
  // the period beyond the last published one is cut the same way
  "src/calculation/interest/publishedPeriods.ts": ["wholePeriod", "publishedPeriods"],
};

const named = (list: readonly SourceFile[]) => list.map((file) => [file.path, file] as const);
const offending = (file: SourceFile, offends: (found: Import) => boolean): string[] =>
  importsOf(file)
    .filter(offends)
    .map(({ target }) => target);

describe("the parts of src", () => {
  it("are the known ones", () => {
    const parts = new Set(sources.map(({ path }) => partOf(path)));
    expect([...parts].toSorted()).toEqual(Object.keys(BELOW).toSorted());
  });

  it.each(named(sources))("import downwards only: %s", (path, file) => {
    const mine = partOf(path);
    const may = [mine, ...(BELOW[mine] ?? [])];
    const isOutside = ({ isPackage, target }: Import) =>
      !isPackage && target.startsWith("src/") && !may.includes(partOf(target));
    expect(offending(file, isOutside)).toEqual([]);
  });

  it.each(named(sources))("reach outside src only where they should: %s", (path, file) => {
    const allowed = partOf(path) === "rules" ? /^(rules\/[^/]+\.json|package\.json)$/ : /^$/;
    const isOutside = ({ isPackage, target }: Import) =>
      !isPackage && !target.startsWith("src/") && !allowed.test(target);
    expect(offending(file, isOutside)).toEqual([]);
  });

  it.each(named(sources.filter(({ path }) => !BESIDE.includes(partOf(path)))))(
    "use a package only where it belongs: %s",
    (path, file) => {
      const isForeign = ({ isPackage, target }: Import) =>
        isPackage && PACKAGES[target] !== partOf(path);
      expect(offending(file, isForeign)).toEqual([]);
    }
  );
});

describe("the calculation", () => {
  it.each(named(within("calculation")))("looks up rules and knows no others: %s", (_path, file) => {
    const lookUps = ["datedTable", "listTable", "notHeldError"].map(
      (name) => `src/rules/${name}.ts`
    );
    const isOther = ({ target, atRunTime }: Import) =>
      atRunTime && target.startsWith("src/rules/") && !lookUps.includes(target);
    expect(offending(file, isOther)).toEqual([]);
  });

  it.each(named([...within("calculation"), ...within("money"), ...within("inputError.ts")]))(
    "knows no host, page, clock or chance: %s",
    (_path, file) => {
      const used = namesUsedIn(file);
      expect(SURROUNDINGS.filter((name) => used.has(name))).toEqual([]);
      expect(file.text).not.toMatch(/Math\.random/);
    }
  );

  it.each(named(within("calculation")))(
    "has one function a file, of its name: %s",
    (path, file) => {
      const own = /([^/]+)\.ts$/.exec(path)?.[1] ?? "";
      expect(exportedFunctions(file)).toEqual(NAMED_OTHERWISE[path] ?? [own]);
    }
  );

  it("has no exception that is not needed", () => {
    const paths = within("calculation").map(({ path }) => path);
    expect(Object.keys(NAMED_OTHERWISE).filter((path) => !paths.includes(path))).toEqual([]);
  });

  const tests = filesUnder("test/calculation", ".test.ts");
  const worked = within("calculation").filter((file) => exportedFunctions(file).length > 0);
  it.each(named(worked))("is tested where it lies: %s", (path) => {
    expect(tests).toContain(path.replace(/^src\/(.*)\.ts$/, "test/$1.test.ts"));
  });
});

describe("the host's errors", () => {
  it("are made in one place", () => {
    const users = sources.filter((file) => namesUsedIn(file).has("CustomFunctions"));
    const outside = users.map(({ path }) => path).filter((path) => partOf(path) !== "tryout");
    expect(outside).toEqual(["src/functions/errors.ts"]);
  });
});

describe("the clock", () => {
  it("is a matter of the calendar, and of the page when a reader begins a list today", () => {
    const users = sources.filter((file) => namesUsedIn(file).has("Date"));
    const places = users.map(({ path }) => (partOf(path) === "calendar" ? "calendar" : path));
    expect(
      [...new Set(places.filter((place) => !BESIDE.includes(partOf(place))))].toSorted()
    ).toEqual(["calendar", "src/addin/addin.ts"]);
  });
});

describe("files and folders", () => {
  const paths = [...filesUnder("src", ""), ...filesUnder("test", "")];

  it("are named for what they hold", () => {
    const vague = /(^|\/)(index|utils?|common|helpers?|shared|misc)(\.[^/]*)?(\/|$)/i;
    expect(paths.filter((path) => vague.test(path))).toEqual([]);
    expect(
      ["src/utils/a.ts", "src/a/index.ts", "src/a/helpers.ts"].every((path) => vague.test(path))
    ).toBe(true);
  });

  it.each(named(sources))("stay short: %s", (_path, { text }) => {
    expect(text.split("\n").length - 1).toBeLessThanOrEqual(200);
  });

  it.each(filesUnder("test", ".test.ts"))("leave no test out: %s", (path) => {
    const left = /\b(it|test|describe|suite|bench)\s*\.\s*(skip|only|todo|fails|skipIf|runIf)\b/;
    expect(sourceFile(path).text).not.toMatch(left);
  });
});
