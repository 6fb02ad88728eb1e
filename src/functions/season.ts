import { seasonCalendar } from "../calculation/season/seasonCalendar";
import { weekdayOf, type CalendarDate } from "../calendar/calendarDate";
import { rulebook } from "../rules/rulebook";
import { client } from "./client";
import { citation, dayCell, EMPTY, type AnswerCell, type AnswerTable } from "./results";
import { answerTable, singles } from "./rows";

const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

const weekdayCell = (of: CalendarDate): AnswerCell => WEEKDAYS[weekdayOf(of)] ?? EMPTY;

/**
 * Every date of a client's season in order: what, day, weekday, the day it moved from and why, the law. Spills; put it outside tables.
 *
 * @customfunction CALENDAR
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row a date.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6072, 6081, 6151, 6654(c), 7503, 7508A
 * @example =EXT.CALENDAR(2025) begins with paying the tax on Wednesday, 2026-04-15
 */
export function calendar(
  taxYear: unknown,
  state?: unknown,
  filerType?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  const header = ["What", "Day", "Weekday", "Moved from", "Why", "Source"];
  return answerTable(header, (): AnswerTable => {
    const given = client(
      singles({ taxYear, state, filerType, postponementBegins, postponementEnds })
    );
    const dates = seasonCalendar(given.taxYear, given.filerType, given.circumstances, rulebook);
    return dates.map(({ label: what, date: of, moves, source }) => [
      what,
      dayCell(of),
      weekdayCell(of),
      moves[0] ? dayCell(moves[0].from) : EMPTY,
      moves.map(({ because }) => because).join("; "),
      [source, ...moves.map((move) => move.source)].map(citation).join("; "),
    ]);
  });
}
