import { sealedHost } from "../../src/host/sealedHost";
import { type StandInHost } from "../../src/host/standInHost";
import type { BlankHabit } from "../../src/host/argumentMarshalling";

/** A small add-in that shows what arrives and answers in every way a function can. */
export const FIXTURE_BUNDLE = `
function refuse(code, text) { throw new CustomFunctions.Error(code, text); }
function isError(cell) { return typeof cell === "object" && cell !== null; }
function double(cell) {
  if (isError(cell)) return new CustomFunctions.Error(cell.basicValue);
  if (typeof cell !== "number") {
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, "amount: " + JSON.stringify(cell) + " is not a number. Enter a number such as 4.");
  }
  return cell * 2;
}
CustomFunctions.associate("DOUBLE", (amounts) => amounts.map((row) => row.map(double)));
CustomFunctions.associate("ECHO", (...all) => [[JSON.stringify(all.slice(0, -1))]]);
CustomFunctions.associate("STEPS", (count) => {
  const rows = [["Step", "Value"]];
  for (let step = 1; step <= count[0][0]; step += 1) rows.push([step, step * step]);
  return rows;
});
CustomFunctions.associate("DAY", (days) => days.map((row) => row.map((day) => ({ type: "Double", basicValue: day + 1, numberFormat: "yyyy-mm-dd" }))));
CustomFunctions.associate("REFUSE", () => refuse(CustomFunctions.ErrorCode.notAvailable, "The table has no figure for that date."));
CustomFunctions.associate("DIVIDE", () => refuse(CustomFunctions.ErrorCode.divisionByZero, "never shown"));
CustomFunctions.associate("BREAK", () => undefined.nothing);
CustomFunctions.associate("ENDLESS", () => [[Number.POSITIVE_INFINITY, Number.NaN]]);
CustomFunctions.associate("NOTHING", () => [[null, ""]]);
CustomFunctions.associate("RAGGED", () => [[1, 2], [3]]);
CustomFunctions.associate("ADD", (first, second) => first + (second === null ? 100 : second));
CustomFunctions.associate("COUNT", (blocks) => blocks.length);
CustomFunctions.associate("SURROUNDINGS", () => [[[typeof process, typeof require, typeof CustomFunctions, (() => { try { return typeof CustomFunctions.associate.constructor("return process")(); } catch { return "sealed"; } })()].join(" ")]]);
console.log("loaded");
`;

type Parameter = Record<string, string | boolean>;

function matrix(name: string, optional = false): Parameter {
  return {
    name,
    dimensionality: "matrix",
    type: "any",
    ...(optional ? { optional } : {}),
  };
}

function entry(id: string, parameters: Parameter[], dimensionality = "matrix"): object {
  return { id, name: id, parameters, result: { dimensionality, type: "any" } };
}

const FUNCTIONS = [
  entry("DOUBLE", [matrix("amount")]),
  entry("ECHO", [matrix("first"), matrix("second", true), matrix("third", true)]),
  entry("STEPS", [matrix("count")]),
  entry("DAY", [matrix("day")]),
  entry("REFUSE", []),
  entry("DIVIDE", []),
  entry("BREAK", []),
  entry("ENDLESS", []),
  entry("NOTHING", []),
  entry("RAGGED", []),
  entry(
    "ADD",
    [
      { name: "first", type: "number", dimensionality: "scalar" },
      {
        name: "second",
        type: "number",
        dimensionality: "scalar",
        optional: true,
      },
    ],
    "scalar"
  ),
  entry("COUNT", [{ ...matrix("block"), repeating: true }], "scalar"),
  entry("SURROUNDINGS", []),
];

/** The metadata of the fixture add-in. */
export function fixtureMetadata(allowErrorForDataTypeAny = true): string {
  return JSON.stringify({ allowErrorForDataTypeAny, functions: FUNCTIONS });
}

/** A stand-in host with the fixture add-in loaded. */
export function fixtureHost(blankHabit: BlankHabit = "null", allowErrors = true): StandInHost {
  const metadata = fixtureMetadata(allowErrors);
  return sealedHost({ bundle: FIXTURE_BUNDLE, metadata, blankHabit });
}
