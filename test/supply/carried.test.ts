import { describe, expect, it } from "vitest";
import { installedLicense, licensesBeside, script } from "./carried";
import { asked, locked, pulledInBy } from "./lockFile";

const OF_THE_PAGE = [
  "@fluentui/tokens",
  "@fluentui/web-components",
  "@microsoft/fast-element",
  "preact",
];
const direct = Object.keys(asked.dependencies);
/** The dependencies that each script contains: those of the pane are in its own script. */
const CARRIED: readonly (readonly [script: string, dependencies: readonly string[]])[] = [
  ["functions", direct.filter((name) => !OF_THE_PAGE.includes(name))],
  ["addin", OF_THE_PAGE],
];

describe.each(CARRIED)("the script %s.js", (name, dependencies) => {
  const carried = licensesBeside(name);

  it("contains its dependencies in package.json, and no package that these do not need", () => {
    const names = carried.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...dependencies]));
    const needed = pulledInBy(Object.fromEntries(dependencies.map((name) => [name, ""])));
    expect(names.filter((name) => !needed.has(`node_modules/${name}`))).toEqual([]);
  });

  it("contains each package in the locked version and under the locked license", () => {
    for (const { name, version, license } of carried)
      expect(locked.get(`node_modules/${name}`)).toMatchObject({ version, license });
  });

  it.each(carried)("comes with the full license of $name", ({ name, text }) => {
    expect(text).toBe(installedLicense(name) ?? text);
    expect(text).toMatch(/Copyright \(c\) \S/);
    expect(text.replace(/\s+/g, " ")).toMatch(
      /copyright notice and this permission notice shall be included in all copies|^Copyright \(c\) Microsoft Corporation\. Permission to use, copy, modify/
    );
  });

  it("names the file with the licenses in its first line", () => {
    const [first] = script(name).split("\n");
    expect(first).toBe(`/*! For license information please see ${name}.js.LICENSE.txt */`);
  });
});
