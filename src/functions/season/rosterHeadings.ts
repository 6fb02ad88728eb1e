import { yearOf } from "../../calendar/calendarDate";
import { optional } from "../arguments/argumentKind";
import { clientList, type ClientList } from "../arguments/clientList";
import { CLIENT_LIST_HEADINGS } from "../arguments/clientListHeadings";
import { NOT_USED, readHeadings, type HeadingReading } from "../arguments/readHeadings";
import { readDate } from "../arguments/date";
import { readDollars } from "../arguments/dollars";
import { ownHeadings } from "../arguments/ownHeadings";
import { taxYear } from "../arguments/taxYear";
import type { AnswerCell } from "../cells/answerCell";
import { cellValue, isBlank, isBlankOrZero, type CellValue } from "../cells/cellValue";
import { ErrorCell } from "../cells/hostError";
import { namesNumber } from "../arguments/headingWords";
import { tableFunction } from "../worksheetFunction";

/** The value of a cell, or a blank for an error. */
function valueOf(cell: unknown): CellValue {
  try {
    return cellValue(cell);
  } catch (thrown) {
    if (thrown instanceof ErrorCell) return null;
    throw thrown;
  }
}

/** What the filled cells of a column look like; `undefined` if they are neither money nor dates. */
function looksLike({ rows }: ClientList, index: number): "money" | "dates" | undefined {
  const values = rows.map((row) => valueOf(row[index])).filter((value) => !isBlank(value));
  if (values.length === 0) return undefined;
  if (values.every((value) => typeof value === "string" && readDate(value) !== undefined))
    return "dates";
  return values.every((value) => readDollars(value) !== undefined) ? "money" : undefined;
}

/**
 * How a heading is read, in words.
 *
 * @param list - The list.
 * @param reading - The reading of the heading.
 * @returns The heading, what it is read as, and a remark or a blank.
 */
export function headingInWords(
  list: ClientList,
  { heading, field, isPart, index }: HeadingReading
): readonly [heading: string, readAs: string, remark: string] {
  if (field !== undefined)
    return [heading, CLIENT_LIST_HEADINGS[field][0], isPart ? "added to the others" : ""];
  const looks = namesNumber(heading) ? undefined : looksLike(list, index);
  return [heading, NOT_USED, looks === undefined ? "" : `Check: it looks like ${looks}`];
}

/** Columns with values below a blank heading, as under a heading that is merged over several columns. */
function withoutHeading({ headings, rows }: ClientList): readonly HeadingReading[] {
  return headings.flatMap((heading, index) =>
    isBlankOrZero(valueOf(heading)) && rows.some((row) => !isBlankOrZero(valueOf(row[index])))
      ? [{ index, heading: `(blank heading in column ${String(index + 1)})`, isPart: false }]
      : []
  );
}

const ROSTERHEADINGS = tableFunction({
  arguments: { clientList, taxYear: optional(taxYear), headings: ownHeadings },
  tables: [],
  law: [],
  examples: [
    {
      formula:
        '=EXT.ROSTERHEADINGS({"Name","Est. total tax","W/H","ES paid","Fee";"Alder",20000,9000,6000,450})',
      answer: "Check: it looks like money",
      remark: "the fee is not used",
    },
  ],
  note: "Headings are read as words, whatever their order, capitals, punctuation, units and usual shortenings. A heading that is not read as you mean it can be given a meaning in ROSTER's headings argument.",
  calculate: ({ clientList: list, taxYear: year, headings }) => {
    const listYear = year === undefined ? undefined : yearOf(year.lastDay);
    const reading = readHeadings("clientList", list.headings, listYear, headings);
    const all = [...reading, ...withoutHeading(list)].toSorted(
      (one, other) => one.index - other.index
    );
    return [
      ["Your heading", "Read as", "Remark"],
      ...all.map((one): AnswerCell[] => [...headingInWords(list, one)]),
    ];
  },
});

/**
 * Table of the headings of your client list: what ROSTER reads each one as, and which are not used.
 *
 * @customfunction ROSTERHEADINGS
 * @param clientList Your list: a row of headings, then one row per client. It needs total tax and payments, or parts of the payments.
 * @param [taxYear] Tax year of the list, such as 2025, for headings with a year; blank is the latest year in the headings.
 * @param [headings] Two columns: a heading of your list, and the heading that it means or "not used".
 * @returns {any[][]} A row of headings, then one row per heading of your list. Fills several cells; not for use inside an Excel table.
 */
export function rosterHeadings(
  clientList: unknown[][],
  taxYear?: unknown,
  headings?: unknown[][]
): unknown[][];
export function rosterHeadings(...cells: unknown[]): unknown[][] {
  return ROSTERHEADINGS.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const rosterHeadingFunctions = { ROSTERHEADINGS };
