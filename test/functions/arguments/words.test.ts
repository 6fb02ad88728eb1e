import { describe, expect, it } from "vitest";
import { FILER_TYPES } from "../../../src/calculation/filerType";
import { filerType } from "../../../src/functions/arguments/words";
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
    [null, "resident"],
    [undefined, "resident"],
    ["", "resident"],
    [0, "resident"],
  ])("%j is %s", (cell, read) => {
    expect(filerTypeOf(cell)).toBe(read);
  });

  it.each([
    ["overseas", '"overseas"'],
    ["non resident", '"non resident"'],
    [1, "1"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => filerTypeOf(cell)).toThrow(
      refused(
        `${quoted} is not a filer type. Enter resident, out of country or nonresident, or leave it blank.`
      )
    );
  });
});
