import { nextDate as nextDateFrom, type NextDate } from "../../calculation/season/nextDate";
import { requestStage } from "../../calculation/season/requestStage";
import type { ResendRules } from "../../calculation/request/resendDeadline";
import { optional, type Given } from "../arguments/argumentKind";
import { dateTables, datesOf, postponement, residence } from "../arguments/client";
import { date } from "../arguments/date";
import { record, recordOf } from "../arguments/record";
import { taxYear } from "../arguments/taxYear";
import { BLANK } from "../cells/answerCell";
import { rowFunction } from "../worksheetFunction";
import { nextDateText } from "./nextDateText";

/** What DAYSLEFT and NEXTDATE have in common. */
const nextDateArguments = {
  arguments: {
    taxYear,
    asOf: date,
    ...record,
    paidOn: optional(date),
    ...residence,
    ...postponement,
  },
  tables: [...dateTables, "perfectionPeriod", "requestMethods"] as const,
  law: ["Regulations section 1.6081-4", "IRC section 6151(a)"],
  note: "If a disaster postponement moves the regular due date to the extended due date, a request gives no more time, and the next deadline is to file.",
};

function nextDateOf(
  given: Given<typeof nextDateArguments.arguments>,
  rules: ResendRules
): NextDate | undefined {
  return nextDateFrom(datesOf(given), recordOf(given), given.asOf, rules);
}

const STAGE = rowFunction({
  arguments: { taxYear, asOf: date, ...record, ...residence, ...postponement },
  tables: [...dateTables, "perfectionPeriod", "requestMethods"],
  law: ["Regulations section 1.6081-4", "Pub. 1345, rejected returns", "IR-2025-41"],
  examples: [
    { formula: '=EXT.STAGE(2025,"5/1/2026","4/10/2026","4/10/2026")', answer: "extended" },
    { formula: '=EXT.STAGE(2025,"4/17/2026","4/14/2026",,"4/15/2026")', answer: "rejected" },
    { formula: '=EXT.STAGE(2025,"4/16/2026")', answer: "past due" },
  ],
  note: "`unconfirmed`: requested, but no proof received yet. `rejected`: the request must be resent. `past due`: a deadline has passed. If a disaster postponement moves the regular due date to the extended due date, a request gives no more time, so the status is past due only after that date.",
  calculate: (given, rules) =>
    requestStage(datesOf(given), recordOf(given), given.asOf, rules).stage,
});

/**
 * Status of the request on a date: not requested, unconfirmed, rejected, extended, filed or past due.
 *
 * @customfunction STAGE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made; an electronic extension payment is a request.
 * @param [confirmedOn] Date you received proof: acceptance, payment confirmation or mailing receipt; if rejected, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} One of: not requested, unconfirmed, rejected, extended, filed, past due.
 */
export function stage(
  taxYear: unknown[][],
  asOf: unknown[][],
  requestedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function stage(...cells: unknown[]): unknown[][] {
  return STAGE.answer(cells);
}

const DAYSLEFT = rowFunction({
  ...nextDateArguments,
  examples: [
    { formula: '=EXT.DAYSLEFT(2025,"4/1/2026")', answer: "14" },
    { formula: '=EXT.DAYSLEFT(2025,"10/1/2026","4/10/2026","4/10/2026")', answer: "14" },
    { formula: '=EXT.DAYSLEFT(2025,"4/20/2026")', answer: "-5" },
  ],
  calculate: (given, rules) => nextDateOf(given, rules)?.daysLeft ?? BLANK,
});

/**
 * Days to the client's next deadline; negative if it has passed, blank once the return is filed.
 *
 * @customfunction DAYSLEFT
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made; an electronic extension payment is a request.
 * @param [confirmedOn] Date you received proof: acceptance, payment confirmation or mailing receipt; if rejected, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed.
 * @param [paidOn] Date the tax was paid in full, or any date if nothing is owed. Until then the payment due date is a deadline.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A whole number of days, or blank once the return is filed.
 */
export function daysLeft(
  taxYear: unknown[][],
  asOf: unknown[][],
  requestedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  paidOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function daysLeft(...cells: unknown[]): unknown[][] {
  return DAYSLEFT.answer(cells);
}

const NEXTDATE = rowFunction({
  ...nextDateArguments,
  examples: [
    {
      formula: '=EXT.NEXTDATE(2025,"4/1/2026")',
      answer: "request or file, and pay, by 4/15/2026",
    },
    {
      formula: '=EXT.NEXTDATE(2025,"10/1/2026","4/10/2026","4/10/2026")',
      answer: "file by 10/15/2026",
    },
  ],
  calculate: (given, rules) => {
    const next = nextDateOf(given, rules);
    return next ? nextDateText(next) : BLANK;
  },
});

/**
 * Client's next deadline and what is due: pay, request or file, resend a rejected request, or file.
 *
 * @customfunction NEXTDATE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made; an electronic extension payment is a request.
 * @param [confirmedOn] Date you received proof: acceptance, payment confirmation or mailing receipt; if rejected, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed.
 * @param [paidOn] Date the tax was paid in full, or any date if nothing is owed. Until then the payment due date is a deadline.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Text with a date such as 4/15/2026, or blank once the return is filed.
 */
export function nextDate(
  taxYear: unknown[][],
  asOf: unknown[][],
  requestedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  paidOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function nextDate(...cells: unknown[]): unknown[][] {
  return NEXTDATE.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const statusFunctions = { STAGE, DAYSLEFT, NEXTDATE };
