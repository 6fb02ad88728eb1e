import { stateDueDate } from "../../calculation/stateReturn/stateDueDate";
import { stateExtensionGranted } from "../../calculation/stateReturn/stateExtensionGranted";
import { stateTerms } from "../../calculation/stateReturn/stateTerms";
import type { TaxYear } from "../../calculation/taxYear";
import { dateCell, type AnswerCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction, tableFunction } from "../worksheetFunction";
import { askedState, ruleOfDueDate, ruleOfExtension, situation } from "./stateArguments";
import { stateRuleTable } from "./stateRuleTable";

const LAW = [
  "The state's own text, cited by STATERULE",
  "Moving a date from a weekend is common practice, no source",
];

/** A date of a state, or that the state has no return. */
function stateDateCell(taxYear: TaxYear, monthAndDay: string | undefined): AnswerCell {
  return monthAndDay === undefined ? "no return" : dateCell(stateDueDate(taxYear, monthAndDay));
}

const STATEDUE = rowFunction({
  arguments: askedState,
  tables: ["stateExtensions"],
  law: LAW,
  examples: [{ formula: '=EXT.STATEDUE(2025,"VA")', answer: "5/1/2026" }],
  note: "Some states have a separate due date for e-filed returns: see STATERULE.",
  calculate: (given, rules) => stateDateCell(given.taxYear, ruleOfDueDate(given, rules).dueDay),
});

/**
 * Due date of the state individual income tax return, moved off weekends.
 *
 * @customfunction STATEDUE
 * @param taxYear Tax year, such as 2025; calendar years only. One cell or a column.
 * @param state Postal code or name of the state.
 * @param [allowUnverified] Yes to return a rule that is unverified or on which sources disagree; blank returns #N/A for such states.
 * @returns {any[][]} A worksheet date, or no return if the state has no broad income tax.
 */
export function stateDue(
  taxYear: unknown[][],
  state: unknown[][],
  allowUnverified?: unknown[][]
): unknown[][];
export function stateDue(...cells: unknown[]): unknown[][] {
  return STATEDUE.answer(cells);
}

const STATEEXTENDED = rowFunction({
  arguments: situation,
  tables: ["stateExtensions"],
  law: LAW,
  examples: [
    {
      formula: '=EXT.STATEEXTENDED(2025,"NY","yes")',
      answer: "4/15/2026",
      remark: "New York does not accept the federal request",
    },
    { formula: '=EXT.STATEEXTENDED(2025,"MA",,85%)', answer: "10/15/2026" },
  ],
  calculate: (given, rules) => {
    const { taxYear } = given;
    const rule = ruleOfExtension(given, rules);
    const granted = stateExtensionGranted(stateTerms(taxYear, rule), given);
    if (typeof granted === "object")
      throw new InputError(
        "percentPaid",
        `The cell is blank. ${rule.name} grants the extension only if ${granted.percentNeeded.times(100).toString()}% of its tax is paid by the due date. Enter the percent paid.`
      );
    return stateDateCell(taxYear, granted === "granted" ? rule.extendedDay : rule.dueDay);
  },
});

/**
 * Due date of the state return for this client: extended if the state grants it, otherwise the regular due date.
 *
 * @customfunction STATEEXTENDED
 * @param taxYear Tax year, such as 2025; calendar years only. One cell or a column.
 * @param state Postal code or name of the state.
 * @param [federalExtension] Yes if the federal request was made on time; blank is no.
 * @param [percentPaid] Percent of the state tax paid by the due date, such as 90%.
 * @param [stateRequest] Yes if the state's own request was made on time; blank is no.
 * @param [allowUnverified] Yes to return a rule that is unverified or on which sources disagree; blank returns #N/A for such states.
 * @returns {any[][]} A worksheet date, or no return if the state has no broad income tax.
 */
export function stateExtended(
  taxYear: unknown[][],
  state: unknown[][],
  federalExtension?: unknown[][],
  percentPaid?: unknown[][],
  stateRequest?: unknown[][],
  allowUnverified?: unknown[][]
): unknown[][];
export function stateExtended(...cells: unknown[]): unknown[][] {
  return STATEEXTENDED.answer(cells);
}

const STATERULE = tableFunction({
  arguments: situation,
  tables: ["stateExtensions"],
  law: LAW,
  examples: [{ formula: '=EXT.STATERULE(2025,"NY")', answer: "IT-370" }],
  calculate: (given, rules) => {
    const { taxYear } = given;
    const rule = ruleOfExtension(given, rules);
    const terms = stateTerms(taxYear, rule);
    return stateRuleTable(taxYear, rule, terms, stateExtensionGranted(terms, given));
  },
});

/**
 * Table of a state's extension rule: dates, each condition and what it does, forms, and the year and kind of each source.
 *
 * @customfunction STATERULE
 * @param taxYear Tax year, such as 2025; calendar years only.
 * @param state Postal code or name of the state.
 * @param [federalExtension] Yes if the federal request was made on time; blank is no.
 * @param [percentPaid] Percent of the state tax paid by the due date, such as 90%.
 * @param [stateRequest] Yes if the state's own request was made on time; blank is no.
 * @param [allowUnverified] Yes to return a rule that is unverified or on which sources disagree; blank returns #N/A for such states.
 * @returns {any[][]} A row of headings, then one row per date, condition or form. Fills several cells; not for use inside an Excel table.
 */
export function stateRule(
  taxYear: unknown,
  state: unknown,
  federalExtension?: unknown,
  percentPaid?: unknown,
  stateRequest?: unknown,
  allowUnverified?: unknown
): unknown[][];
export function stateRule(...cells: unknown[]): unknown[][] {
  return STATERULE.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const stateFunctions = { STATEDUE, STATEEXTENDED, STATERULE };
