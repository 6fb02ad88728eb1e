import { describe, expect, it } from "vitest";
import { functionTexts } from "../../src/addin/functionText";
import { searchFunctions } from "../../src/addin/searchFunctions";
import { metadata } from "../contract/builtAddIn";

const texts = functionTexts(metadata);

describe("the search", () => {
  it("finds all functions if it is blank", () => {
    expect(searchFunctions(texts, "  ").size).toBe(metadata.functions.length);
  });

  it.each([
    ["due", "DUE"],
    ["paper mailing", "MAILTO"],
    ["installment agreement", "LATEPAY"],
    ["interest accrues", "INTEREST"],
    ["  ROW   per client ", "ROSTER"],
  ])("for %j finds the function %s", (search, name) => {
    expect(searchFunctions(texts, search)).toContain(name);
  });

  it("finds only functions with every word", () => {
    expect(searchFunctions(texts, "row client zebra").size).toBe(0);
  });
});
