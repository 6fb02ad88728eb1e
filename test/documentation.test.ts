import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ITEM_LABELS } from "../src/functions/itemLabels";
import { formulaCall } from "../src/addin/formulaCall";
import { inCell, serial } from "./functions/sheet";
import { worksheetFunction } from "./functions/worksheetFunctions";
import { markdownRows } from "./markdownTable";

interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly parameters: readonly { readonly name: string; readonly optional?: boolean }[];
  }[];
}

const read = (path: string): string => readFileSync(path, "utf8");
const metadata = JSON.parse(read("dist/functions.json")) as Metadata;
const map = markdownRows(read("DEVELOPERS.md"), "law");
const unquoted = (cell: string): string => cell.replaceAll("`", "");

/** Files of a folder and the folders in it. */
const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath.replaceAll("\\", "/")}/${entry.name}`);

describe("the map in DEVELOPERS.md", () => {
  it.each(map.map((row) => [row.join(" · "), row]))("%s", (_text, row) => {
    const [, worksheetFunction = "", calculation = "", rules = "", test = ""] = row;
    expect(metadata.functions.map(({ id }) => id)).toContain(unquoted(worksheetFunction));
    for (const path of [calculation, test, ...(rules.startsWith("rules/") ? [rules] : [])]) {
      expect(existsSync(path), path).toBe(true);
    }
    if (!rules.startsWith("rules/")) expect(rules).toMatch(/^none: /);
  });

  it("has a row for every worksheet function", () => {
    const mapped = new Set(map.map((row) => unquoted(row[1] ?? "")));
    expect([...mapped].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
  });

  it("names every rules file and every calculation file, in the map or beneath it", () => {
    const text = read("DEVELOPERS.md");
    const rules = filesUnder("rules").filter((path) => !path.includes("/schema/"));
    const calculations = filesUnder("src/calculation");
    const named = (path: string): boolean => text.includes(path.split("/").at(-1) ?? path);
    const leftOut = [...rules, ...calculations].filter((path) => !named(path));
    expect(leftOut).toEqual([]);
  });
});

describe("the functions in README.md", () => {
  const listed = markdownRows(read("README.md"), "function").map((row) => unquoted(row[0] ?? ""));

  it("are those of the add-in, with their arguments in order", () => {
    const signatures = metadata.functions.map(({ id, parameters }) => {
      const names = parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
      return id === "CHARGELINES" ? "CHARGELINES(the same)" : `${id}(${names.join(", ")})`;
    });
    expect([...listed].sort()).toEqual([...signatures].sort());
  });
});

describe("the files at the top", () => {
  it("are those agreed, and nothing else", () => {
    const agreed = [
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
    const made = [".git", "dist", "node_modules", "coverage"];
    expect(
      readdirSync(".")
        .filter((name) => !made.includes(name))
        .sort()
    ).toEqual(agreed.sort());
  });
});

describe("the example in README.md", () => {
  const rows = markdownRows(read("README.md"), "formula").map(([formula = "", answer = ""]) => ({
    formula: unquoted(formula),
    answer,
  }));

  it.each(rows)("$formula is $answer", ({ formula, answer }) => {
    const { id, values } = formulaCall(formula);
    const found = inCell(worksheetFunction(id), ...values);
    const isDay = /^\d{4}-\d{2}-\d{2}$/.test(answer);
    expect(found).toBe(isDay ? serial(answer) : Number(answer.replaceAll(",", "")));
  });

  it("shows dates, money and charges", () => {
    expect(rows.length).toBeGreaterThan(9);
  });
});

describe("the labels of a return in README.md", () => {
  it("are all there", () => {
    const text = read("README.md").replace(/\s+/g, " ").toLowerCase();
    const first = Object.values(ITEM_LABELS).map(([label = ""]) => label);
    expect(first.filter((label) => !text.includes(label))).toEqual([]);
  });
});
