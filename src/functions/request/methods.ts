import { requestMethods, type MethodForClient } from "../../calculation/request/requestMethods";
import type { ResendRules } from "../../calculation/request/resendDeadline";
import { optional, type Given } from "../arguments/argumentKind";
import { dateTables, datesOf, postponement, residence } from "../arguments/client";
import { date, dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { taxYear } from "../arguments/taxYear";
import { citation, dateCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";
import { bestMethod } from "./bestMethod";

const NOTE =
  "Under the client's own disaster postponement, electronic payment and e-file close on the regular due date without the postponement. Paper requests stay open through its end. For e-file this follows reports of IR-2025-41. Whether it also closes electronic payment is less certain. Nationwide postponements move every method. If the postponement moves the regular due date to the extended due date, a request gives no more time and no method is needed.";

/** What METHOD and METHODLINES have in common. */
const methodArguments = {
  arguments: {
    taxYear,
    paidWithRequest: dollars,
    asOf: date,
    rejectedOn: optional(dateAfterYear),
    ...residence,
    ...postponement,
  },
  tables: [...dateTables, "requestMethods", "perfectionPeriod"] as const,
  law: [
    "Form 4868 instructions, how to request",
    "Regulations section 1.6081-4(b)",
    "Pub. 1345, rejected returns",
    "IR-2025-41",
  ],
};

function methodsFor(
  given: Given<typeof methodArguments.arguments>,
  rules: ResendRules
): readonly MethodForClient[] {
  return requestMethods({ ...given, dates: datesOf(given) }, rules);
}

const METHOD = rowFunction({
  ...methodArguments,
  examples: [
    { formula: '=EXT.METHOD(2025,1500,"4/10/2026")', answer: "electronic payment" },
    { formula: '=EXT.METHOD(2025,0,"4/10/2026")', answer: "e-file" },
    { formula: '=EXT.METHOD(2025,0,"4/16/2026")', answer: "too late" },
    {
      formula: '=EXT.METHOD(2024,0,"4/16/2025",,"GA",,"9/24/2024","5/1/2025")',
      answer: "paper",
      remark: "a disaster postponement extends only paper requests",
    },
  ],
  note: NOTE,
  calculate: (given, rules) => bestMethod(methodsFor(given, rules)),
});

/**
 * Best method to request the extension on a date: electronic payment, e-file or paper; "too late" after the deadline.
 *
 * @customfunction METHOD
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param paidWithRequest Amount paid with the request, line 7, in dollars; 0 if none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [rejectedOn] Date a timely e-filed request was rejected; starts the perfection period.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; it extends paper requests only, not electronic payment or e-file.
 * @returns {any[][]} One of: electronic payment, e-file, paper, not needed, too late.
 */
export function method(
  taxYear: unknown[][],
  paidWithRequest: unknown[][],
  asOf: unknown[][],
  rejectedOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function method(...cells: unknown[]): unknown[][] {
  return METHOD.answer(cells);
}

const METHODLINES = tableFunction({
  ...methodArguments,
  examples: [{ formula: '=EXT.METHODLINES(2025,1500,"4/10/2026")', answer: "electronic payment" }],
  note: NOTE,
  calculate: (given, rules) => [
    ["Method", "Available", "Deadline", "How", "Proof to keep", "Source"],
    ...methodsFor(given, rules).map(({ method, closedBecause, deadline, how, proof, source }) => [
      method,
      closedBecause === undefined ? "yes" : `no: ${closedBecause}`,
      dateCell(deadline),
      how,
      proof,
      citation(source),
    ]),
  ],
});

/**
 * Table of all methods to request the extension: available or not, deadline, how to do it and proof to keep.
 *
 * @customfunction METHODLINES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param paidWithRequest Amount paid with the request, line 7, in dollars; 0 if none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [rejectedOn] Date a timely e-filed request was rejected; starts the perfection period.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; it extends paper requests only, not electronic payment or e-file.
 * @returns {any[][]} A row of headings, then one row per method, available ones first. Fills several cells; not for use inside an Excel table.
 */
export function methodLines(
  taxYear: unknown,
  paidWithRequest: unknown,
  asOf: unknown,
  rejectedOn?: unknown,
  state?: unknown,
  filerType?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][];
export function methodLines(...cells: unknown[]): unknown[][] {
  return METHODLINES.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const methodFunctions = { METHOD, METHODLINES };
