import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { built } from "./builtAddIn";

const template = readFileSync(new URL("../../manifest.xml", import.meta.url), "utf8");

describe.each([
  ["the manifest", template],
  ["the manifest as built", built("manifest.xml")],
])("%s", (_name, manifest) => {
  const text = manifest.replace(/<!--.*?-->/gs, "");
  const elements = new Set([...text.matchAll(/<(?:\w+:)?(\w+)[\s>/]/g)].map(([, name]) => name));
  const valuesOf = (pattern: RegExp) => [...text.matchAll(pattern)].map(([, value]) => value);

  it("requests the one level of permission that functions and guide need", () => {
    expect(valuesOf(/<Permissions>(\w+)</g)).toEqual(["ReadWriteDocument"]);
  });

  it("requests no access to the account of the user, other addresses or the computer", () => {
    const more = [
      "WebApplicationInfo",
      "Scopes",
      "AuthorizationScopes",
      "Authorizations",
      "Resource",
      "AppDomains",
      "AppDomain",
      "EquivalentAddins",
      "ExtendedPermissions",
    ];
    expect(more.filter((name) => elements.has(name))).toEqual([]);
  });

  it("adds functions and one button to Excel and to no other host", () => {
    expect(valuesOf(/<Host (?:Name|xsi:type)="(\w+)"/g)).toEqual(["Workbook", "Workbook"]);
    expect(valuesOf(/<ExtensionPoint xsi:type="(\w+)"/g)).toEqual([
      "CustomFunctions",
      "PrimaryCommandSurface",
    ]);
    expect(valuesOf(/<Control xsi:type="(\w+)"/g)).toEqual(["Button"]);
    expect(valuesOf(/<Action xsi:type="(\w+)"/g)).toEqual(["ShowTaskpane"]);
  });

  it("contains no address but its own", () => {
    const addresses = valuesOf(/DefaultValue="(https?:\/\/[^/"]+)\//g);
    expect(new Set(addresses)).toEqual(new Set(["https://localhost:3000"]));
  });
});
