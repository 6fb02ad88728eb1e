import { describe, expect, it } from "vitest";
import { installmentNumber } from "../../../src/functions/arguments/number";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const numberOf = reading(installmentNumber, "word");
const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("the number of an installment", () => {
  it.each([
    [1, 1],
    [2, 2],
    ["3", 3],
    [" 4 ", 4],
  ])("%j is %i", (cell, number) => {
    expect(numberOf(cell)).toBe(number);
  });

  it.each([
    [0, "0"],
    [5, "5"],
    [1.5, "1.5"],
    [-1, "-1"],
    ["first", '"first"'],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => numberOf(cell)).toThrow(
      refused(`${quoted} is not an installment number. Enter 1, 2, 3 or 4.`)
    );
  });

  it.each([[null], [""]])("%j is blank, so the four numbers are named", (cell) => {
    expect(() => numberOf(cell)).toThrow(refused("The cell is blank. Enter 1, 2, 3 or 4."));
  });
});
