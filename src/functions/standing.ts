import { nextDate as nextDateFrom, type NextDate } from "../calculation/season/nextDate";
import { requestStage } from "../calculation/season/requestStage";
import { rulebook } from "../rules/rulebook";
import { client, datesOf, type ClientCells } from "./client";
import { day as readDay } from "./dayArguments";
import { nextDateText } from "./nextDateText";
import { requestRecord, type RecordCells } from "./recordArguments";
import { EMPTY } from "./results";
import { answerRows } from "./rows";

interface StandingCells extends ClientCells, RecordCells {
  readonly asOf: unknown;
}

function nextDateOf(cells: StandingCells): NextDate | undefined {
  const who = client(cells);
  const record = requestRecord(cells, who.taxYear);
  return nextDateFrom(datesOf(who), record, readDay("asOf", cells.asOf), rulebook);
}

/**
 * Where a client stands on a day: not asked, waiting, rejected, extended, filed or missed. What happened later than the day does not count.
 *
 * @customfunction STAGE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param asOf The day looked at.
 * @param [requestedOn] First day the request was made; an electronic payment marked for it is one.
 * @param [confirmedOn] Day its proof came in: acknowledgment, confirmation number, mailing receipt; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} not asked; waiting (asked, no proof yet); rejected (to be sent again); extended; filed; missed (a last day has passed).
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4; Pub. 1345
 * @example =EXT.STAGE(2025,"2026-05-01","2026-04-10","2026-04-10") is extended; =EXT.STAGE(2025,"2026-04-17","2026-04-14",,"2026-04-15") is rejected; =EXT.STAGE(2025,"2026-04-16") is missed
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
): unknown[][] {
  const given = {
    ...{ taxYear, asOf, requestedOn, confirmedOn, rejectedOn, filedOn },
    ...{ state, filerType, postponementBegins, postponementEnds },
  };
  return answerRows(given, (cells) => {
    const who = client(cells);
    const record = requestRecord(cells, who.taxYear);
    return requestStage(datesOf(who), record, readDay("asOf", cells.asOf), rulebook).stage;
  });
}

/**
 * Days from a day to the next date that binds a client; below zero when that date was let pass, empty once the return is filed. NEXTDATE says which date.
 *
 * @customfunction DAYSLEFT
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param asOf The day looked at.
 * @param [requestedOn] First day the request was made; an electronic payment marked for it is one.
 * @param [confirmedOn] Day its proof came in: acknowledgment, confirmation number, mailing receipt; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed.
 * @param [paidOn] Day the tax was paid in full, or any day once nothing is owed; until then the day to pay counts.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A whole number of days, or empty.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4; 26 U.S.C. 6151(a)
 * @example =EXT.DAYSLEFT(2025,"2026-04-01") is 14; =EXT.DAYSLEFT(2025,"2026-10-01","2026-04-10","2026-04-10") is 14; =EXT.DAYSLEFT(2025,"2026-04-20") is -5
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
): unknown[][] {
  const given = {
    ...{ taxYear, asOf, requestedOn, confirmedOn, rejectedOn, filedOn, paidOn },
    ...{ state, filerType, postponementBegins, postponementEnds },
  };
  return answerRows(given, (cells) => nextDateOf(cells)?.daysLeft ?? EMPTY);
}

/**
 * The next date that binds a client and what is due on it: pay, ask or file, send a rejected request again, file.
 *
 * @customfunction NEXTDATE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param asOf The day looked at.
 * @param [requestedOn] First day the request was made; an electronic payment marked for it is one.
 * @param [confirmedOn] Day its proof came in: acknowledgment, confirmation number, mailing receipt; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed.
 * @param [paidOn] Day the tax was paid in full, or any day once nothing is owed; until then the day to pay counts.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Text with the day as 2026-04-15, or empty once the return is filed.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4; 26 U.S.C. 6151(a)
 * @example =EXT.NEXTDATE(2025,"2026-04-01") is ask or file, and pay, by 2026-04-15; =EXT.NEXTDATE(2025,"2026-10-01","2026-04-10","2026-04-10") is file by 2026-10-15
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
): unknown[][] {
  const given = {
    ...{ taxYear, asOf, requestedOn, confirmedOn, rejectedOn, filedOn, paidOn },
    ...{ state, filerType, postponementBegins, postponementEnds },
  };
  return answerRows(given, (cells) => {
    const next = nextDateOf(cells);
    return next ? nextDateText(next) : EMPTY;
  });
}
