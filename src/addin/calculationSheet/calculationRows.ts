import { catalog } from "../../functions/catalog";
import {
  DATE_FORMAT,
  MONEY_FORMAT,
  PERCENT_FORMAT,
  WHOLE_DOLLAR_FORMAT,
} from "../../functions/cells/answerCell";
import { callOf, type Calculation } from "./calculationFormula";

/** A row of a calculation: what it is, its formula or text, and its number format. */
export interface CalculationRow {
  readonly label: string;
  readonly content: string;
  readonly format: string;
}

const GENERAL = "General";
/** The number format of an argument, by the id of its kind. */
const FORMATS: Readonly<Record<string, string>> = {
  date: DATE_FORMAT,
  dollars: MONEY_FORMAT,
  "signed-dollars": MONEY_FORMAT,
  "dollars-or-yes-no": MONEY_FORMAT,
  "assumed-rate": PERCENT_FORMAT,
  "percent-paid": PERCENT_FORMAT,
  target: PERCENT_FORMAT,
  // A cushion is a percent below 100%, or dollars from 1 up.
  cushion: `[<1]${PERCENT_FORMAT};${MONEY_FORMAT}`,
  // A year, or the last date of a fiscal year.
  "tax-year": `[<3000]0;${DATE_FORMAT}`,
};

/** What each function with a calculation answers. */
const RESULTS: Readonly<Record<string, readonly [label: string, format: string]>> = {
  CHARGES: ["Penalties and interest", MONEY_FORMAT],
  EFFECTIVERATE: ["Effective annual rate", PERCENT_FORMAT],
  LIABILITY: ["Estimated total tax (line 4)", WHOLE_DOLLAR_FORMAT],
  PROJECTEDTAX: ["Estimated total tax of the new year", WHOLE_DOLLAR_FORMAT],
  ESTPENALTY: ["Estimated tax penalty", MONEY_FORMAT],
  METHOD: ["Method", GENERAL],
  ISSUECOUNT: ["Issues", GENERAL],
  DUE: ["Regular due date", DATE_FORMAT],
  EXTENDED: ["Extended due date", DATE_FORMAT],
  PAYBY: ["Payment due date", DATE_FORMAT],
  STATEDUE: ["State due date", DATE_FORMAT],
  STATEEXTENDED: ["State due date for this client", DATE_FORMAT],
  SHORTFALL: ["Balance due (line 6)", MONEY_FORMAT],
  SUGGEST: ["Suggested payment", MONEY_FORMAT],
};

const SINGLE_CELL = /^(?:'(?:[^']|'')+'|[\w.]+)!\$?[A-Z]{1,3}\$?\d+$/;
const RANGE = /^(?:(?:'(?:[^']|'')+'|[\w.]+)!)?\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+$/;

/**
 * The name of an argument as a label.
 *
 * @example
 * inWords("postponementBegins") //=> "Postponement begins"
 */
function inWords(name: string): string {
  const words = name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return (words.charAt(0).toUpperCase() + words.slice(1)).replace(/\bagi\b/i, "AGI");
}

/** What a cell shows of an argument. A range stands for many cells, which the label of its address names. */
function contentOf(argument: string): string {
  if (RANGE.test(argument)) return `cells ${argument.replaceAll(/^'((?:[^']|'')+)'!/g, "$1!")}`;
  if (argument.startsWith("{")) return argument;
  return SINGLE_CELL.test(argument) ? `=IF(${argument}="","",${argument})` : `=${argument}`;
}

/** The arguments that are given: one row each. */
export function enteredRows({ name, given }: Calculation): readonly CalculationRow[] {
  const list = Object.entries(catalog[name]?.arguments ?? {});
  return list.flatMap(([argument, { id }], index) => {
    const written = given[index] ?? "";
    if (written === "") return [];
    return [
      {
        label: inWords(argument),
        content: contentOf(written),
        format: FORMATS[id] ?? GENERAL,
      },
    ];
  });
}

/** The steps of a calculation that no table function shows; their amounts add up to the result. */
export function stepRows({ name, given }: Calculation): readonly CalculationRow[] {
  const [first = "", second = "", third = "", fourth = "", fifth = ""] = given;
  switch (name) {
    case "SUGGEST": {
      const forTarget = callOf(name, [first, second, third]);
      const withCushion = callOf(name, [first, second, third, fourth]);
      const rows = [{ label: "To reach the target", content: `=${forTarget}` }];
      if (fourth !== "") rows.push({ label: "Cushion", content: `=${withCushion}-${forTarget}` });
      if (fifth !== "")
        rows.push({
          label: "First estimated tax installment",
          content: `=${callOf(name, given)}-${withCushion}`,
        });
      return rows.map((row) => ({ ...row, format: MONEY_FORMAT }));
    }
    case "PROJECTEDTAX": {
      const unchanged = callOf("LIABILITY", [first, second, third]);
      return [
        { label: "Total tax on last year's items", content: `=${unchanged}` },
        { label: "Effect of the changes", content: `=${callOf(name, given)}-${unchanged}` },
      ].map((row) => ({ ...row, format: WHOLE_DOLLAR_FORMAT }));
    }
    default:
      return [];
  }
}

/** What the function answers. */
export function resultRow({ name, given }: Calculation): CalculationRow {
  const [label = name, format = GENERAL] = RESULTS[name] ?? [];
  return { label, content: `=${callOf(name, given)}`, format };
}
