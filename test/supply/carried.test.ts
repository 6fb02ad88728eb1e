import { describe, expect, it } from "vitest";
import { markdownRows } from "../markdownTable";
import { developers, installedLicense, licensesBeside, script } from "./carried";
import { asked, locked, pulledInBy } from "./lockFile";

const SCRIPTS = ["functions", "addin"];
const listed = markdownRows(developers, "package").map(([name = "", version, license]) => ({
  name: name.replaceAll("`", ""),
  version,
  license,
}));

describe.each(SCRIPTS)("what %s.js carries", (name) => {
  const carried = licensesBeside(name);

  it("is told in DEVELOPERS.md, package by package", () => {
    expect(carried.length).toBeGreaterThan(0);
    expect(carried.map(({ name, version, license }) => ({ name, version, license }))).toEqual(
      listed
    );
  });

  it("is asked for by package.json and locked, in this version and under this license", () => {
    const folders = pulledInBy(asked.dependencies);
    for (const { name, version, license } of carried) {
      expect(folders).toContain(`node_modules/${name}`);
      expect(locked.get(`node_modules/${name}`)).toMatchObject({ version, license });
    }
  });

  it.each(carried)("comes with the license of $name, word for word", ({ name, text }) => {
    expect(text).toBe(installedLicense(name));
    expect(text).toMatch(/Copyright \(c\) \d{4} \S/);
    expect(text.replace(/\s+/g, " ")).toMatch(
      /copyright notice and this permission notice shall be included in all copies/
    );
  });

  it("is pointed out in its first line", () => {
    const [first] = script(name).split("\n");
    expect(first).toBe(`/*! For license information please see ${name}.js.LICENSE.txt */`);
  });
});

describe("what the add-in asks for", () => {
  it("is all in the scripts: nothing is asked for in vain", () => {
    const folders = [...pulledInBy(asked.dependencies)].toSorted();
    expect(folders).toEqual(listed.map(({ name }) => `node_modules/${name}`));
  });
});
