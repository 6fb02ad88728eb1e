import { describe, expect, it } from "vitest";
import { functionTexts } from "../../src/addin/functionText";
import { searchFunctions } from "../../src/addin/searchFunctions";
import { metadata } from "../contract/builtAddIn";

const texts = functionTexts(metadata);

describe("the search", () => {
  it("finds all when nothing is asked", () => {
    expect(searchFunctions(texts, "  ").size).toBe(metadata.functions.length);
  });

  it.each([
    ["due", "DUE"],
    ["post office box", "MAILTO"],
    ["installment agreement", "LATEPAY"],
    ["interest compounded", "INTEREST"],
    ["  WHOLE   client list ", "ROSTER"],
  ])("finds by %j the function %s", (search, name) => {
    expect(searchFunctions(texts, search)).toContain(name);
  });

  it("wants every word", () => {
    expect(searchFunctions(texts, "whole client zebra").size).toBe(0);
  });
});
