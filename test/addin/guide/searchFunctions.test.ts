import { describe, expect, it } from "vitest";
import { functionTexts } from "../../../src/addin/guide/functionText";
import { foundText } from "../../../src/addin/guide/functionList";
import { searchFunctions } from "../../../src/addin/guide/searchFunctions";
import { readSearch, wordsOf } from "../../../src/addin/guide/searchText";
import { SEARCH_WORDS } from "../../../src/addin/guide/searchWords";
import { STATE_NAMES } from "../../../src/calculation/state";
import { catalog, TASKS } from "../../../src/functions/catalog";
import { metadata } from "../../contract/builtAddIn";

const texts = functionTexts(metadata);
const find = searchFunctions(texts);
const stateFunctions = Object.keys(
  TASKS.find(({ folder }) => folder === "stateReturn")?.functions ?? {}
);

describe("the search", () => {
  it("finds all functions if it is blank", () => {
    expect(find("  ")).toEqual({
      names: TASKS.flatMap(({ functions }) => Object.keys(functions)).filter((name) =>
        texts.has(name)
      ),
      isNear: false,
    });
  });

  // What preparers typed or looked for in the trial of the first version.
  it.each([
    ["penalty", "CHARGES"],
    ["late fee", "CHARGES"],
    ["safe harbor", "REQUIREDPAYMENT"],
    ["W-2", "LIABILITY"],
    ["w2", "LIABILITY"],
    ["letter", "MEMO"],
    ["mailing address", "MAILTO"],
    ["how much to pay", "SUGGEST"],
    ["new york", "STATEDUE"],
    ["Pennsylvania extension", "STATEEXTENDED"],
    ["balance due", "SHORTFALL"],
    ["Schedule C profit", "LIABILITY"],
    ["federal income tax withheld", "PAYMENTSTOTAL"],
    ["client list", "ROSTER"],
    ["payment plan", "AGREEMENT"],
    ["1040-ES", "INSTALLMENT"],
    ["private carrier", "ISDESIGNATED"],
    ["what to do next", "NEXTDATE"],
    ["penalty abatement", "FIRSTTIME"],
  ])("for %j finds %s first", (search, name) => {
    expect(find(search)).toMatchObject({ isNear: false });
    expect(find(search).names[0]).toBe(name);
  });

  it.each(["DUE", "due", "EXT.DUE", "=EXT.DUE(2025,", " ext.due "])(
    "for the name %j finds the function first",
    (search) => {
      expect(find(search).names[0]).toBe("DUE");
    }
  );

  it("finds every function by its name", () => {
    for (const name of texts.keys()) expect(find(name).names[0], name).toBe(name);
  });

  it.each([
    ["paper mailing", "MAILTO"],
    ["installment agreement", "LATEPAY"],
    ["interest accrues", "INTEREST"],
    ["  ROW   per client ", "ROSTER"],
    ["penalties", "LATEFILE"],
    ["texas mailing address", "MAILTO"],
  ])("for %j finds the function %s", (search, name) => {
    expect(find(search).names).toContain(name);
  });

  it("finds the state functions first for every state, by name and by postal code", () => {
    for (const [code, name] of Object.entries(STATE_NAMES)) {
      expect(find(name).names.slice(0, stateFunctions.length), name).toEqual(stateFunctions);
      expect(find(code).names.slice(0, stateFunctions.length), code).toEqual(stateFunctions);
    }
    expect(find("ny").names.slice(0, stateFunctions.length)).toEqual(stateFunctions);
  });
});

describe("a search that no function matches", () => {
  it.each([
    ["EXT.DEU", "DUE"],
    ["DEU", "DUE"],
    ["penlty", "CHARGES"],
    ["mailng adress", "MAILTO"],
    ["EXT.EXTENED", "EXTENDED"],
    ["letter zebra", "MEMO"],
  ])("for %j finds near matches, %s first", (search, name) => {
    const found = find(search);
    expect(found.isNear).toBe(true);
    expect(found.names[0]).toBe(name);
    expect(foundText(found, texts.size)).toBe("No function has all of these words. The closest:");
  });

  it("says what to try if nothing is near", () => {
    expect(find("zzqqxx").names).toEqual([]);
    expect(find("()").names).toEqual([]);
    expect(foundText(find("zzqqxx"), texts.size)).toMatch(/^No function found\. Try a word/);
  });
});

describe("the words of the search", () => {
  it("exist for every function", () => {
    expect(Object.keys(catalog).filter((name) => !(name in SEARCH_WORDS))).toEqual([]);
  });

  it("are compared without plurals, points and hyphens", () => {
    expect(wordsOf("W-2 wages, Form 1040-ES; P.O. boxes, penalties")).toEqual(
      "w2 wage form 1040es po box penalty".split(" ")
    );
  });

  it("are those of a search, without small words and states", () => {
    expect(readSearch("the extension of West Virginia")).toEqual({
      phrase: "the extension of west virginia",
      words: ["extension"],
      hasState: true,
    });
    expect(readSearch("how to")).toMatchObject({ words: ["how", "to"], hasState: false });
  });
});
