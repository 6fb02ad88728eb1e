import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { catalog } from "../../src/functions/catalog";
import { functionMap, withMap } from "../../src/upkeep/functionMap";

describe("the map of the worksheet functions", () => {
  it("is in DEVELOPERS.md as the code is today", () => {
    const text = readFileSync("DEVELOPERS.md", "utf8");
    expect(text).toContain(functionMap());
    expect(withMap(text)).toBe(text);
  });

  it("is not put into a text without marks", () => {
    expect(() => withMap("# A text")).toThrow(RangeError);
  });

  it("names every function once", () => {
    const names = functionMap().match(/\b[A-Z]{3,}\b/g) ?? [];
    expect([...names].sort()).toEqual(Object.keys(catalog).sort());
  });
});
