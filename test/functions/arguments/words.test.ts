import { describe, expect, it } from "vitest";
import { FILER_TYPES } from "../../../src/calculation/filerType";
import { filerType, filingStatus, method } from "../../../src/functions/arguments/words";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const filerTypeOf = reading(filerType, "word");
const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("who files", () => {
  it.each([...FILER_TYPES])("%s is read as written", (word) => {
    expect(filerTypeOf(word)).toBe(word);
  });

  it.each([
    ["ABROAD", "out of country"],
    [" Nonresident ", "nonresident"],
    ["non resident", "nonresident"],
    ["Non-Resident Alien", "nonresident"],
    ["out-of-country", "out of country"],
    [null, "resident"],
    [undefined, "resident"],
    ["", "resident"],
    [0, "resident"],
  ])("%j is %s", (cell, read) => {
    expect(filerTypeOf(cell)).toBe(read);
  });

  it.each([
    ["overseas", '"overseas"'],
    [1, "1"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => filerTypeOf(cell)).toThrow(
      refused(
        `${quoted} is not a filer type. Enter resident, out of country or nonresident, or leave it blank.`
      )
    );
  });

  it("is refused with the closest word where one is close", () => {
    expect(() => filerTypeOf("nonresidant")).toThrow(
      refused(
        '"nonresidant" is not a filer type. The closest is nonresident. Enter resident, out of country or nonresident, or leave it blank.'
      )
    );
  });
});

describe("a filing status", () => {
  const statusOf = reading(filingStatus, "word");

  it.each([
    ["MFJ", "joint"],
    ["Married filing joint", "joint"],
    ["M.F.S.", "separate"],
    ["Qualifying widow(er)", "survivor"],
    ["head-of-household", "head"],
  ])("%s is %s", (cell, status) => {
    expect(statusOf(cell)).toBe(status);
  });

  it.each(["married", "M", " MARRIED  filing "])("%j can mean two statuses", (cell) => {
    expect(() => statusOf(cell)).toThrow(
      refused(`"${cell}" can mean two filing statuses. Enter joint (MFJ) or separate (MFS).`)
    );
  });
});

// Form 4868 instructions: pay electronically, e-file or file a paper form.
describe("a method", () => {
  const methodOf = reading(method, "word");

  it.each([
    ["efile", "e-file"],
    ["E File", "e-file"],
    ["Direct Pay", "electronic payment"],
    ["paper form", "paper"],
    ["", undefined],
  ])("%j is %s", (cell, read) => {
    expect(methodOf(cell)).toBe(read);
  });
});
