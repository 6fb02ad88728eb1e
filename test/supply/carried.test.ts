import { describe, expect, it } from "vitest";
import { installedLicense, licensesBeside, script } from "./carried";
import { asked, locked, pulledInBy } from "./lockFile";

const dependencies = [...pulledInBy(asked.dependencies)].toSorted();

describe.each(["functions", "addin"])("the script %s.js", (name) => {
  const carried = licensesBeside(name);

  it("contains the dependencies in package.json and what they need, and no other package", () => {
    expect(carried.map((one) => `node_modules/${one.name}`)).toEqual(dependencies);
  });

  it("contains each package in the locked version and under the locked license", () => {
    for (const { name, version, license } of carried)
      expect(locked.get(`node_modules/${name}`)).toMatchObject({ version, license });
  });

  it.each(carried)("comes with the full license of $name", ({ name, text }) => {
    expect(text).toBe(installedLicense(name));
    expect(text).toMatch(/Copyright \(c\) \d{4} \S/);
    expect(text.replace(/\s+/g, " ")).toMatch(
      /copyright notice and this permission notice shall be included in all copies/
    );
  });

  it("names the file with the licenses in its first line", () => {
    const [first] = script(name).split("\n");
    expect(first).toBe(`/*! For license information please see ${name}.js.LICENSE.txt */`);
  });
});
