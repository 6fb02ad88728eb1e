import { entryOn } from "../rules/datedTable";
import { version } from "../rules/version";
import { requireReach } from "../rules/listTable";
import { ruleTables, summarize } from "../rules/ruleTables";
import { optionalDay } from "./dayArguments";
import { citation, dayCell, EMPTY, type AnswerTable } from "./results";
import { answerRows, answerTable } from "./rows";
import { figure as readFigure } from "./wordArguments";

/**
 * Where a figure of the rules comes from, and whether it was read in the official text.
 *
 * @customfunction SOURCE
 * @param figure Name of the table, such as underpayment rate; RULETABLES lists them. One cell or a column.
 * @param [day] Day whose figure is asked for, in the sense the table is kept by; the newest figure if left out.
 * @returns {any[][]} The citation.
 * @throws `#VALUE!` for an unknown figure, naming the nearest; `#N/A` for a day without a figure.
 * @example =EXT.SOURCE("failure to pay") is 26 U.S.C. 6651(a)(2), (b)(2), (h)
 */
export function source(figure: unknown[][], day?: unknown[][]): unknown[][] {
  return answerRows({ figure, day }, (cells) => {
    const table = readFigure("figure", cells.figure);
    const asked = optionalDay("day", cells.day);
    if ("entries" in table) return citation(entryOn(table, asked ?? table.knownThrough).source);
    if (asked !== undefined) requireReach(table, asked);
    return citation(table.source);
  });
}

/**
 * Last day for which a table of the rules is known; 9999-12-31 for standing law.
 *
 * @customfunction KNOWNTHROUGH
 * @param figure Name of the table, such as underpayment rate; RULETABLES lists them. One cell or a column.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an unknown figure, naming the nearest.
 * @example =EXT.KNOWNTHROUGH("underpayment rate") is 2026-12-31 in this edition
 */
export function knownThrough(figure: unknown[][]): unknown[][] {
  return answerRows({ figure }, (cells) =>
    dayCell(readFigure("figure", cells.figure).knownThrough)
  );
}

/**
 * Version of the add-in and every table of its rules: what it is, what its day means, from when through when it is known. Spills; put it outside tables.
 *
 * @customfunction RULETABLES
 * @returns {any[][]} A header row, the version, then a row a table.
 * @example =EXT.RULETABLES() begins with the version of the add-in
 */
export function edition(): unknown[][] {
  const header = [
    "Table",
    "Title",
    "Kept by",
    "Known from",
    "Known through",
    "Entries",
    "From memory",
  ];
  return answerTable(header, (): AnswerTable => {
    const rows = [...ruleTables.values()]
      .map(summarize)
      .map((table) => [
        table.id,
        table.title,
        table.keyedBy,
        dayCell(table.knownFrom),
        dayCell(table.knownThrough),
        table.entries,
        table.fromMemory,
      ]);
    return [["add-in", `version ${version}`, EMPTY, EMPTY, EMPTY, EMPTY, EMPTY], ...rows];
  });
}
