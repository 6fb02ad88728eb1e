import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { metadata } from "./contract/builtAddIn";
import { answerToFormula } from "./functions/fromCatalog";
import { serial } from "./functions/sheet";

const read = (path: string): string => readFileSync(path, "utf8");
const readme = read("README.md");
const { scripts } = JSON.parse(read("package.json")) as {
  readonly scripts: Readonly<Record<string, string>>;
};

const TOP_LEVEL = [
  ".ci",
  ".gitignore",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "manifest.xml",
  "package-lock.json",
  "package.json",
  "rules",
  "src",
  "test",
  "tsconfig.json",
  "webpack.config.js",
];

const found = (text: string, pattern: RegExp): string[] =>
  [...text.matchAll(pattern)].map(([, part = ""]) => part);

/** Whether a word in code quotes is a path in the project. A pattern, such as one with a star, is not. */
const isPath = (word: string): boolean =>
  TOP_LEVEL.includes(word.split("/")[0] ?? "") && /^[\w./-]+$/.test(word);

describe.each([
  { document: "README.md", lines: 150 },
  { document: "DEVELOPERS.md", lines: 220 },
])("$document", ({ document, lines }) => {
  const text = read(document);

  it(`has at most ${String(lines)} lines`, () => {
    expect(text.trimEnd().split("\n").length).toBeLessThanOrEqual(lines);
  });

  it("names worksheet functions that exist", () => {
    const ids = metadata.functions.map(({ id }) => id);
    expect(found(text, /\bEXT\.([A-Z]+)/g).filter((id) => !ids.includes(id))).toEqual([]);
  });

  it("names files and folders that exist", () => {
    const quoted = found(text, /`([^`\n]+)`/g).filter(isPath);
    const linked = found(text, /\]\(([^)#]+)[^)]*\)/g).filter((target) => !/^\w+:/.test(target));
    expect([...quoted, ...linked].filter((path) => !existsSync(path))).toEqual([]);
  });

  it("names commands that exist", () => {
    const run = [...found(text, /npm run ([\w:-]+)/g), ...found(text, /npm (start|test)\b/g)];
    expect(run.filter((name) => !(name in scripts))).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  it("has no line over 130 characters", () => {
    const lines = read("DEVELOPERS.md").split("\n");
    expect(lines.filter((line) => line.length > 130)).toEqual([]);
  });
});

/** A number as a person writes it: `$1,234.50`, `(200)`, `7%`. */
function numberOf(written: string): number | undefined {
  const [, minus, digits, percent] = /^([(-]?)\$?(\d[\d,]*(?:\.\d+)?)(%?)\)?$/.exec(written) ?? [];
  if (digits === undefined) return undefined;
  const size = Number(digits.replaceAll(",", "")) / (percent === "%" ? 100 : 1);
  return minus === "" ? size : -size;
}

function valueOf(written: string): unknown {
  const [, month, date, year] = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(written) ?? [];
  if (month !== undefined && date !== undefined && year !== undefined)
    return serial(`${year}-${month.padStart(2, "0")}-${date.padStart(2, "0")}`);
  if (written === "TRUE" || written === "FALSE") return written === "TRUE";
  return numberOf(written) ?? written;
}

describe("the formulas in README.md", () => {
  const examples = readme
    .split("\n")
    .map((line) => /^\|\s*`(=EXT\.[^`]+)`\s*\|\s*([^|]*?)\s*\|/.exec(line))
    .filter((match) => match !== null)
    .map(([, formula = "", result = ""]) => ({ formula, result }));

  it.each(examples)("$formula gives $result", ({ formula, result }) => {
    expect(answerToFormula(formula)).toBe(valueOf(result));
  });

  it("are shown with their results", () => {
    expect(examples.length).toBeGreaterThan(4);
  });
});

describe("the top level of the project", () => {
  it("has the agreed files and folders", () => {
    const made = [".git", "dist", "node_modules", "coverage"];
    const names = readdirSync(".").filter((name) => !made.includes(name));
    expect(names.sort()).toEqual(TOP_LEVEL.toSorted());
  });
});
