import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
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
