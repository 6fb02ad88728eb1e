import { expect, it } from "vitest";
import { unknownFunctionSentence } from "../../src/demo/sheet/unknownFunction";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";

const host = hostOfBuiltAddIn("null");

it.each([
  ["=EXT.DEU(2025)", "EXT.DEU is not a function of the add-in. The closest name is EXT.DUE."],
  [
    "=IF(A1,ext.charge(A1),0)",
    "EXT.CHARGE is not a function of the add-in. The closest name is EXT.CHARGES.",
  ],
  ["=due(2025)", "The functions of the add-in begin with EXT. Enter EXT.DUE."],
])("%s is answered with the closest name", (formula, sentence) => {
  expect(unknownFunctionSentence(formula, host)).toBe(sentence);
});

it.each(["=EXT.DUE(2025)", "=NOSUCH(1)", '="EXT.DEU("', "=A1+B1", ""])(
  "%s has no function that looks like ours",
  (formula) => {
    expect(unknownFunctionSentence(formula, host)).toBeUndefined();
  }
);
