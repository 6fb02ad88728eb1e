import { describe, expect, it } from "vitest";
import { yesNo } from "../../../src/functions/arguments/yesNo";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const answerOf = reading(yesNo, "word");
const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("yes or no", () => {
  it.each([
    ["4/10/2026", '"4/10/2026"'],
    ["2026-04-10", '"2026-04-10"'],
    ["April 10, 2026", '"April 10, 2026"'],
    [46122, "46122"],
  ])("%j is a date, and the message says where the date belongs", (cell, quoted) => {
    expect(() => answerOf(cell)).toThrow(
      refused(
        `${quoted} is a date, not yes or no. Enter yes or no here; STAGE, ISSUES and ROSTER take the date of the request.`
      )
    );
  });

  it.each([[true], [1], ["yes"], ["Y"], ["x"], [" X "], ["TRUE"], ["1"]])("%j is yes", (cell) => {
    expect(answerOf(cell)).toBe(true);
  });

  it.each([[false], [0], ["no"], ["N"], ["false"], ["0"], [null], [undefined], [""], [" "]])(
    "%j is no",
    (cell) => {
      expect(answerOf(cell)).toBe(false);
    }
  );

  it.each([
    ["maybe", '"maybe"'],
    ["yes.", '"yes."'],
    [2, "2"],
    [-1, "-1"],
    [Number.NaN, "NaN"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => answerOf(cell)).toThrow(
      refused(`${quoted} is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.`)
    );
  });
});
