import { weekdayOf } from "../../calendar/calendarDate";
import { seasonCalendar } from "../../calculation/season/seasonCalendar";
import { circumstancesOf, client, dateTables } from "../arguments/client";
import { calendarSubject } from "../arguments/words";
import { BLANK, citation, dateCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { tableFunction } from "../worksheetFunction";

const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

const HEADINGS = [
  "Deadline",
  "Date",
  "Weekday",
  "Original date",
  "Reason moved",
  "Extension",
  "Without extension",
  "Source",
];

const CALENDAR = tableFunction({
  arguments: { ...client, subject: calendarSubject },
  tables: [...dateTables, "installments", "failureToFile", "companionDates"],
  law: [
    "IRC sections 6072, 6081, 6151, 6654(c), (j), 7503 and 7508A",
    "IRC sections 219(f)(3), 401(b)(2), 404(a)(6), (h)(1)(B), 408(d)(4) and 6075(b)",
    "Regulations sections 1.6081-5, 25.6081-1 and 301.9100-2",
  ],
  examples: [
    { formula: "=EXT.CALENDAR(2025)", answer: "Wednesday" },
    { formula: '=EXT.CALENDAR(2025,,,,,"gift")', answer: "10/15/2026" },
    { formula: '=EXT.CALENDAR(2025,,,,,"retirement")', answer: "5/31/2026" },
  ],
  note: "`Date` is the deadline with a valid extension; `Without extension` is the deadline if there is no extension or it is void. `Extension` says whether an extension of the return moves the deadline; `automatic` means that no request is needed, and `separate request` that the deadline needs its own. `Return filed on time` means by its due date, including extensions; otherwise the deadline is the regular due date. A disaster postponement does not move the reports in subject foreign here: read its announcement. EXCHANGEBY counts the 180 days of a like-kind exchange, and ABROADDATE returns the date for Form 2350.",
  calculate: (given, rules) => {
    const { taxYear, filerType, subject } = given;
    const dates = seasonCalendar(taxYear, filerType, circumstancesOf(given), subject, rules);
    if (dates.length === 0)
      throw new InputError(
        "subject",
        `A fiscal year has no deadlines on the subject ${subject}, which follows the calendar year. Enter a year such as 2025 as taxYear.`
      );
    return [
      HEADINGS,
      ...dates.map(({ label, date, moves, extension, dateWithoutExtension, source }) => [
        label,
        dateCell(date),
        WEEKDAYS[weekdayOf(date)] ?? BLANK,
        moves[0] ? dateCell(moves[0].from) : BLANK,
        moves.map(({ because }) => because).join("; "),
        extension,
        dateCell(dateWithoutExtension),
        [source, ...moves.map((move) => move.source)].map(citation).join("; "),
      ]),
    ];
  },
});

/**
 * Table of deadlines for one client: date, weekday, reason it moved, whether the extension moves it, and source.
 *
 * @customfunction CALENDAR
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @param [subject] return (default), retirement, gift, foreign, elections or all.
 * @returns {any[][]} A row of headings, then one row per deadline. Fills several cells; not for use inside an Excel table.
 */
export function calendar(
  taxYear: unknown,
  state?: unknown,
  filerType?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown,
  subject?: unknown
): unknown[][];
export function calendar(...cells: unknown[]): unknown[][] {
  return CALENDAR.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const calendarFunctions = { CALENDAR };
