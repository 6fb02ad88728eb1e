import { describe, expect, it } from "vitest";
import { clientGrid } from "../../src/addin/clientGrid";

const { cells, widths, formats, choices, headingRow } = clientGrid("2026-04-01");
const headings = cells[headingRow - 1] ?? [];

describe("a new client list", () => {
  it("has a width, a format, choices and an example for each heading", () => {
    expect(new Set(headings).size).toBe(headings.length);
    for (const list of [widths, formats, choices, cells[headingRow] ?? []])
      expect(list).toHaveLength(headings.length);
  });

  it("offers the states and the filer types as choices", () => {
    expect(choices[headings.indexOf("State")]).toContain("ME");
    expect(choices[headings.indexOf("Filer type")]).toEqual([
      "resident",
      "out of country",
      "nonresident",
    ]);
  });

  it("has formulas that refer to its cells, and no heading in braces", () => {
    const formulas = (cells[headingRow] ?? []).filter((cell) => String(cell).startsWith("="));
    expect(formulas).toContain("=EXT.SHORTFALL(E4,F4)");
    expect(formulas.join("")).not.toMatch(/[{}]/);
  });
});
