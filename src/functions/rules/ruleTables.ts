import { version } from "../../rules/version";
import { entryOn } from "../../rules/datedTable";
import { requireReach } from "../../rules/listTable";
import { ruleTables, summarize } from "../../rules/ruleTables";
import { optional } from "../arguments/argumentKind";
import { date } from "../arguments/date";
import { tableName } from "../arguments/tableName";
import { BLANK, citation, dateCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";

const SOURCE = rowFunction({
  arguments: { table: tableName, date: optional(date) },
  tables: [],
  law: [],
  examples: [
    { formula: '=EXT.SOURCE("failure to pay")', answer: "IRC section 6651(a)(2), (b)(2), (h)" },
  ],
  calculate: ({ table, date: asked }) => {
    if ("entries" in table) return citation(entryOn(table, asked ?? table.knownThrough).source);
    if (asked !== undefined) requireReach(table, asked);
    return citation(table.source);
  },
});

/**
 * Citation for a figure in the rule tables, marked if it was not read in the official text.
 *
 * @customfunction SOURCE
 * @param table Name of a rule table, such as underpayment rate; RULETABLES lists them. One cell or a column.
 * @param [date] Date on which the figure applies, in the sense of the table; blank is the last date it covers.
 * @returns {any[][]} Text.
 */
export function source(table: unknown[][], date?: unknown[][]): unknown[][];
export function source(...cells: unknown[]): unknown[][] {
  return SOURCE.answer(cells);
}

const KNOWNTHROUGH = rowFunction({
  arguments: { table: tableName },
  tables: [],
  law: [],
  examples: [{ formula: '=EXT.KNOWNTHROUGH("underpayment rate")', answer: "12/31/2026" }],
  calculate: ({ table }) => dateCell(table.knownThrough),
});

/**
 * Last date a rule table covers; 12/31/9999 for law with no end date.
 *
 * @customfunction KNOWNTHROUGH
 * @param table Name of a rule table, such as underpayment rate; RULETABLES lists them. One cell or a column.
 * @returns {any[][]} A worksheet date.
 */
export function knownThrough(table: unknown[][]): unknown[][];
export function knownThrough(...cells: unknown[]): unknown[][] {
  return KNOWNTHROUGH.answer(cells);
}

const RULETABLES = tableFunction({
  arguments: {},
  tables: [],
  law: [],
  examples: [{ formula: "=EXT.RULETABLES()", answer: "add-in" }],
  calculate: () => [
    [
      "Table",
      "Title",
      "Looked up by",
      "Covers from",
      "Covers through",
      "Entries",
      "Unverified entries",
    ],
    ["add-in", `version ${version}`, BLANK, BLANK, BLANK, BLANK, BLANK],
    ...[...ruleTables().values()]
      .map(summarize)
      .map(({ id, title, keyedBy, knownFrom, knownThrough, entries, fromMemory }) => [
        id,
        title,
        keyedBy,
        dateCell(knownFrom),
        dateCell(knownThrough),
        entries,
        fromMemory,
      ]),
  ],
});

/**
 * Table of the add-in version and all rule tables, with the dates each one covers.
 *
 * @customfunction RULETABLES
 * @returns {any[][]} A row of headings, the version of the add-in, then one row per table. Fills several cells; not for use inside an Excel table.
 */
export function ruleTableList(): unknown[][] {
  return RULETABLES.answer([]);
}

/** The functions of this file by their worksheet names. */
export const ruleTableFunctions = { SOURCE, KNOWNTHROUGH, RULETABLES };
