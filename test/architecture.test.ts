import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";

/** Paths of the files in a folder of the project and in its folders. */
const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name).replaceAll("\\", "/"));

const functionsOf = (file: string): string[] =>
  [...readFileSync(file, "utf8").matchAll(/^export function (\w+)/gm)].map(([, name = ""]) => name);

const calculations = filesUnder("src/calculation");

describe("the files of the calculation", () => {
  it("export one function of their name, or the type of their name", () => {
    const others = calculations.filter((file) => {
      const own = path.basename(file, ".ts");
      const type = new RegExp(`^export (?:interface|type) ${own}\\b`, "im");
      const names = functionsOf(file);
      return !(names.length === 1 && names[0] === own) && !type.test(readFileSync(file, "utf8"));
    });
    expect(others).toEqual([]);
  });

  it("have their tests at the same place in test", () => {
    const tests = filesUnder("test/calculation");
    const untested = calculations
      .filter((file) => functionsOf(file).length > 0)
      .map((file) => file.replace(/^src\/(.*)\.ts$/, "test/$1.test.ts"))
      .filter((test) => !tests.includes(test));
    expect(untested).toEqual([]);
  });
});

describe("the names of files and folders", () => {
  it("say what is in them", () => {
    const vague = /(^|\/)(index|utils?|common|helpers?|shared|misc)(\.[^/]*)?(\/|$)/i;
    const paths = [...filesUnder("src"), ...filesUnder("test")];
    expect(paths.filter((file) => vague.test(file))).toEqual([]);
  });
});

describe("the folders of the add-in's page", () => {
  const imports = new Map<string, Set<string>>();
  for (const file of filesUnder("src/addin")) {
    const folder = path.dirname(file);
    const imported = imports.get(folder) ?? new Set();
    for (const [, from = ""] of readFileSync(file, "utf8").matchAll(/ from "(\.[^"]+)";$/gm)) {
      const other = path.posix.dirname(path.posix.join(folder, from));
      if (other !== folder && other.startsWith("src/addin")) imported.add(other);
    }
    imports.set(folder, imported);
  }

  it("are more than one", () => {
    expect(imports.size).toBeGreaterThan(5);
  });

  it("do not import each other in a circle, but for the page's own files", () => {
    const left = new Map([...imports].filter(([folder]) => folder !== "src/addin"));
    const isFree = ([, others]: readonly [string, ReadonlySet<string>]): boolean =>
      ![...others].some((other) => left.has(other));
    for (let free = [...left].filter(isFree); free.length > 0; free = [...left].filter(isFree))
      for (const [folder] of free) left.delete(folder);
    expect([...left.keys()]).toEqual([]);
  });
});
