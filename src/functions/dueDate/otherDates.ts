import { shortDate } from "../../calendar/writtenDate";
import { combatZoneDueDate } from "../../calculation/dueDate/combatZoneDueDate";
import { postponedDate } from "../../calculation/dueDate/disasterPostponement";
import { installmentDueDate } from "../../calculation/dueDate/installmentDueDate";
import { installmentNumbers } from "../../calculation/dueDate/installmentNumbers";
import { returnDueDate } from "../../calculation/dueDate/returnDueDate";
import { dateTables, postponement, postponementOf } from "../arguments/client";
import { date } from "../arguments/date";
import { installmentNumber } from "../arguments/number";
import { POSTPONEMENT_IN_WEEKEND } from "../arguments/openQuestions";
import { taxYear } from "../arguments/taxYear";
import { filerType } from "../arguments/words";
import { dateCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";

const INSTALLMENT = rowFunction({
  arguments: { taxYear, installmentNumber, ...postponement, filerType },
  tables: ["installments", "legalHolidays", "nationwidePostponements"],
  law: ["IRC sections 6654(c)(2), (j)(2), (k) and 7503"],
  examples: [
    { formula: "=EXT.INSTALLMENT(2026,1)", answer: "4/15/2026" },
    { formula: "=EXT.INSTALLMENT(2021,4)", answer: "1/18/2022" },
    {
      formula: '=EXT.INSTALLMENT(2026,1,,,"nonresident")',
      answer: "6/15/2026",
      remark: "the first of three",
    },
  ],
  calculate: (given, rules) => {
    const { taxYear: year, installmentNumber: number, filerType: type } = given;
    if (!installmentNumbers(type).includes(number))
      throw new InputError(
        "installmentNumber",
        `A nonresident has no installment ${String(number)}. Enter 1, 2 or 3, or correct the filer type.`
      );
    return dateCell(installmentDueDate(year, type, number, postponementOf(given), rules).lastDay);
  },
});

/**
 * Due date of one estimated tax installment, after weekends and holidays other than Patriots' Day.
 *
 * @customfunction INSTALLMENT
 * @param taxYear Year the estimated tax is for, such as 2026, or the last date of a fiscal year. One cell or a column.
 * @param installmentNumber Number of the installment, 1 to 4; 1 to 3 for a nonresident.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @returns {any[][]} A worksheet date.
 */
export function installment(
  taxYear: unknown[][],
  installmentNumber: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][],
  filerType?: unknown[][]
): unknown[][];
export function installment(...cells: unknown[]): unknown[][] {
  return INSTALLMENT.answer(cells);
}

const DISASTERDATE = rowFunction({
  arguments: { date, postponementBegins: date, postponementEnds: date },
  tables: [],
  law: ["IRC section 7508A(a)"],
  examples: [
    { formula: '=EXT.DISASTERDATE("4/15/2026","1/22/2026","6/8/2026")', answer: "6/8/2026" },
  ],
  note: POSTPONEMENT_IN_WEEKEND,
  calculate: (given) => {
    const period = postponementOf(given);
    return dateCell(period ? postponedDate(given.date, period) : given.date);
  },
});

/**
 * Date a deadline moves to under a disaster postponement; the same date if it falls outside the postponement period.
 *
 * @customfunction DISASTERDATE
 * @param date Deadline to move, after weekends and holidays. One cell or a column.
 * @param postponementBegins First date of the disaster postponement period announced for the client's address.
 * @param postponementEnds Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A worksheet date.
 */
export function disasterDate(
  date: unknown[][],
  postponementBegins: unknown[][],
  postponementEnds: unknown[][]
): unknown[][];
export function disasterDate(...cells: unknown[]): unknown[][] {
  return DISASTERDATE.answer(cells);
}

const COMBATZONE = rowFunction({
  arguments: { taxYear, enteredZoneOn: date, leftZoneOn: date },
  tables: [...dateTables, "combatZone"],
  law: ["IRC section 7508(a)", "Pub. 3, extension of deadlines"],
  examples: [
    {
      formula: '=EXT.COMBATZONE(2025,"3/1/2026","9/30/2026")',
      answer: "5/14/2027",
      remark: "180 days and the 46 days of the filing season that were left on entry",
    },
  ],
  note: "Weekends and an extension already in effect are not taken into account.",
  calculate: ({ taxYear: year, enteredZoneOn, leftZoneOn }, rules) => {
    const { lastDay } = returnDueDate(year, "resident", {}, rules);
    if (leftZoneOn < enteredZoneOn)
      throw new InputError(
        "leftZoneOn",
        `${shortDate(leftZoneOn)} is before enteredZoneOn, ${shortDate(enteredZoneOn)}. Correct one of the two dates.`
      );
    if (enteredZoneOn > lastDay)
      throw new InputError(
        "enteredZoneOn",
        `${shortDate(enteredZoneOn)} is after the regular due date, ${shortDate(lastDay)}, so service does not move it. Check the date and the year.`
      );
    return dateCell(combatZoneDueDate(year, enteredZoneOn, leftZoneOn, rules));
  },
});

/**
 * Deadline to file and pay after combat zone service: 180 days after leaving, plus filing-season days left on entry.
 *
 * @customfunction COMBATZONE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param enteredZoneOn First date of service in the combat zone.
 * @param leftZoneOn Last date of service in the combat zone, or of hospitalization that followed.
 * @returns {any[][]} A worksheet date. Weekends and holidays do not move it, and it is never before the regular due date.
 */
export function combatZone(
  taxYear: unknown[][],
  enteredZoneOn: unknown[][],
  leftZoneOn: unknown[][]
): unknown[][];
export function combatZone(...cells: unknown[]): unknown[][] {
  return COMBATZONE.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const otherDates = { INSTALLMENT, DISASTERDATE, COMBATZONE };
