import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { brokenElements } from "./brokenElements";
import { brokenReferences } from "./brokenReferences";
import { manifestProblems } from "./manifestProblems";

const root = fileURLToPath(new URL("../..", import.meta.url));
const textOf = (...parts: string[]) => readFileSync(path.join(root, ...parts), "utf8");
const template = textOf("manifest.xml");

/** Files that the build makes, besides the page, its style sheet and the icons. */
const built = ["functions.js", "functions.json", "addin.js", "help/index.html"];
const servedFromSources = (file: string) =>
  built.includes(file) || existsSync(path.join(root, "src", "addin", file));

describe("the manifest", () => {
  it("has no problem as a template", () => {
    expect(manifestProblems(template, servedFromSources)).toEqual([]);
  });

  it("has no problem as built, and every file it names is there", () => {
    const served = (file: string) => existsSync(path.join(root, "dist", file));
    expect(manifestProblems(textOf("dist", "manifest.xml"), served)).toEqual([]);
  });

  it("has the version of the package", () => {
    const { version } = JSON.parse(textOf("package.json")) as { version: string };
    expect(template).toContain(`<Version>${version}.0</Version>`);
  });

  it("requires only the two requirement sets that the add-in cannot work without", () => {
    const sets = [...template.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)];
    expect(sets.map(([, name, least]) => `${name} ${least}`)).toEqual([
      "SharedRuntime 1.1",
      "CustomFunctionsRuntime 1.2",
    ]);
  });

  it.each([16, 32, 64, 80, 128])("has an icon of %i pixels a side", (size) => {
    const icon = readFileSync(path.join(root, "src", "addin", "icons", `icon-${size}.png`));
    expect(icon.toString("latin1", 1, 4)).toBe("PNG");
    expect([icon.readUInt32BE(16), icon.readUInt32BE(20)]).toEqual([size, size]);
  });

  // Microsoft's pages "IconUrl element" and "HighResolutionIconUrl element": 32 and 64 pixels for a task pane add-in.
  it("names icons of the required sizes", () => {
    expect(template).toMatch(/<IconUrl DefaultValue="[^"]+\/icon-32\.png"/);
    expect(template).toMatch(/<HighResolutionIconUrl DefaultValue="[^"]+\/icon-64\.png"/);
    for (const size of [16, 32, 64, 80]) {
      expect(template).toContain(
        `<bt:Image id="Icon.${size}" DefaultValue="https://localhost:3000/icons/icon-${size}.png"`
      );
    }
  });
});

describe("the manifest checker", () => {
  it.each([...brokenElements, ...brokenReferences])("finds $slip", ({ find, put, found }) => {
    const edited = template.replace(find, put);
    expect(edited).not.toBe(template);
    expect(manifestProblems(edited, servedFromSources)).toEqual(found);
  });

  it("accepts texts, addresses and ids of the maximum length", () => {
    const longest = template
      .replace(/(<DisplayName DefaultValue=")[^"]*/, `$1${"x".repeat(125)}`)
      .replace(/(<Description DefaultValue=")[^"]*/, `$1${"x".repeat(250)}`)
      .replace(/(<SupportUrl DefaultValue=")[^"]*/, `$1https://${"x".repeat(2040)}`)
      .replace(/(id="Guide.Label" DefaultValue=")[^"]*/, `$1${"x".repeat(125)}`)
      .replace(/(id="Guide.Description" DefaultValue=")[^"]*/, `$1${"x".repeat(250)}`)
      .replaceAll("Guide.Description", "x".repeat(32));
    expect(longest.length).toBeGreaterThan(template.length + 2000);
    expect(manifestProblems(longest, servedFromSources)).toEqual([]);
  });

  it.each([
    ["an unclosed element", template.replace("</Hosts>", "")],
    ["an empty file", ""],
  ])("reports that the text is not XML for %s", (_slip, text) => {
    const problems = manifestProblems(text, servedFromSources);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^The manifest is not well-formed XML: .+/);
  });
});
