import { weekdayOf } from "../../calendar/calendarDate";
import { seasonCalendar } from "../../calculation/season/seasonCalendar";
import { circumstancesOf, client, dateTables } from "../arguments/client";
import { BLANK, citation, dateCell } from "../cells/answerCell";
import { tableFunction } from "../worksheetFunction";

const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

const CALENDAR = tableFunction({
  arguments: client,
  tables: [...dateTables, "installments", "failureToFile", "companionDates"],
  law: ["IRC sections 6072, 6081, 6151, 6654(c), (j), 7503 and 7508A"],
  examples: [{ formula: "=EXT.CALENDAR(2025)", answer: "Wednesday" }],
  calculate: (given, rules) => {
    const { taxYear, filerType } = given;
    const dates = seasonCalendar(taxYear, filerType, circumstancesOf(given), rules);
    return [
      ["Deadline", "Date", "Weekday", "Original date", "Reason moved", "Source"],
      ...dates.map(({ label, date, moves, source }) => [
        label,
        dateCell(date),
        WEEKDAYS[weekdayOf(date)] ?? BLANK,
        moves[0] ? dateCell(moves[0].from) : BLANK,
        moves.map(({ because }) => because).join("; "),
        [source, ...moves.map((move) => move.source)].map(citation).join("; "),
      ]),
    ];
  },
});

/**
 * Table of every deadline for one client, with the weekday, original date, reason it moved and source.
 *
 * @customfunction CALENDAR
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A row of headings, then one row per deadline. Fills several cells; not for use inside an Excel table.
 */
export function calendar(
  taxYear: unknown,
  state?: unknown,
  filerType?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][];
export function calendar(...cells: unknown[]): unknown[][] {
  return CALENDAR.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const calendarFunctions = { CALENDAR };
