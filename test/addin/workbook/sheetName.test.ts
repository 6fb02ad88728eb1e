import { describe, expect, it } from "vitest";
import { freeSheetName, sheetName } from "../../../src/addin/workbook/sheetName";

// Excel's limits, from its specifications: at most 31 characters, none of [ ] : * ? / \, no apostrophe at either end.
describe("the name of a sheet", () => {
  it("has no character that Excel refuses", () => {
    expect(sheetName("Letter [A:B]/C?*\\")).toBe("Letter  A B  C");
    expect(sheetName("'Ann's'")).toBe("Ann's");
  });

  it("leaves room for a number", () => {
    const long = sheetName("Calculation of somebody with a long name");
    const sheets = [long, ...Array.from({ length: 97 }, (_n, index) => `${long} ${index + 2}`)];
    expect(freeSheetName(long, sheets)).toHaveLength(31);
    expect(() => freeSheetName(long, [...sheets, `${long} 99`])).toThrow(/too many sheets named/);
  });

  it("gets the first number that is free, in upper or lower case", () => {
    expect(freeSheetName("Clients", ["Sheet1"])).toBe("Clients");
    expect(freeSheetName("Clients", ["clients", "Clients 3"])).toBe("Clients 2");
    expect(freeSheetName("Clients", ["CLIENTS", "Clients 2"])).toBe("Clients 3");
  });
});
