import { client, dateTables, datesOf } from "../arguments/client";
import { POSTPONEMENT_IN_WEEKEND } from "../arguments/openQuestions";
import { dateCell } from "../cells/answerCell";
import { rowFunction } from "../worksheetFunction";

const DUE = rowFunction({
  arguments: client,
  tables: dateTables,
  law: [
    "IRC sections 441(f)(2)(A), 6072(a), (c), 7503 and 7508A",
    "Regulations section 1.6081-5(a)",
  ],
  examples: [
    { formula: "=EXT.DUE(2025)", answer: "4/15/2026" },
    {
      formula: '=EXT.DUE(2023,"Maine")',
      answer: "4/17/2024",
      remark: "Patriots' Day and Emancipation Day",
    },
    { formula: '=EXT.DUE(2023,,"out of country")', answer: "6/17/2024" },
    { formula: '=EXT.DUE("12/27/2025")', answer: "4/15/2026", remark: "a 52/53-week year" },
  ],
  note: POSTPONEMENT_IN_WEEKEND,
  calculate: (given) => dateCell(datesOf(given).regular.lastDay),
});

/**
 * Regular due date of the return, after weekends, holidays and postponements; also the deadline to request the extension.
 *
 * @customfunction DUE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A worksheet date.
 */
export function due(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function due(...cells: unknown[]): unknown[][] {
  return DUE.answer(cells);
}

const EXTENDED = rowFunction({
  arguments: client,
  tables: dateTables,
  law: ["IRC sections 6081(a) and 7503", "Regulations section 1.6081-4(a)"],
  examples: [
    { formula: "=EXT.EXTENDED(2025)", answer: "10/15/2026" },
    { formula: "=EXT.EXTENDED(2022)", answer: "10/16/2023" },
  ],
  note: `If it equals DUE, a postponement already reaches the extended due date, and an extension gives no more time. ${POSTPONEMENT_IN_WEEKEND}`,
  calculate: (given) => dateCell(datesOf(given).extended.lastDay),
});

/**
 * Extended due date of the return, after weekends, holidays and disaster postponements.
 *
 * @customfunction EXTENDED
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A worksheet date.
 */
export function extended(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function extended(...cells: unknown[]): unknown[][] {
  return EXTENDED.answer(cells);
}

const PAYBY = rowFunction({
  arguments: client,
  tables: dateTables,
  law: ["IRC sections 6151(a), 6601(b)(1) and 7503"],
  examples: [{ formula: '=EXT.PAYBY(2025,,"out of country")', answer: "4/15/2026" }],
  note: POSTPONEMENT_IN_WEEKEND,
  calculate: (given) => dateCell(datesOf(given).payment.lastDay),
});

/**
 * Payment due date: the last date to pay without interest. Neither the extension nor being out of the country moves it.
 *
 * @customfunction PAYBY
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A worksheet date.
 */
export function payBy(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function payBy(...cells: unknown[]): unknown[][] {
  return PAYBY.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const returnDates = { DUE, EXTENDED, PAYBY };
