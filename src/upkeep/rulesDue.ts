import { parseArgs } from "node:util";
import { logErrorMessage } from "office-addin-cli";
import {
  compareDates,
  parseCalendarDate,
  written,
  type CalendarDate,
} from "../calendar/calendarDate";
import { ruleTables, summarize, type RuleTableSummary } from "../rules/ruleTables";

/** Tables that do not cover a date, in the order in which they ran out. */
function runOutBy(date: CalendarDate): readonly RuleTableSummary[] {
  return [...ruleTables().values()]
    .map(summarize)
    .filter(({ knownThrough }) => knownThrough < date)
    .sort((one, other) => compareDates(one.knownThrough, other.knownThrough));
}

/** Prints the rule tables that run out before the date in `--on`. These need new figures. */
function main(): void {
  const { values } = parseArgs({ options: { on: { type: "string" } } });
  const date = parseCalendarDate(values.on ?? "");
  if (date === undefined)
    throw new Error("Enter a date, such as: npm run rules:due -- --on 2027-01-01");
  const due = runOutBy(date);
  if (due.length === 0)
    console.log(`Every rule table covers dates through ${written(date)} or later.`);
  for (const { id, title, keyedBy, knownThrough } of due) {
    console.log(
      `rules/${id}.json  covers dates through ${written(knownThrough)}  ${title} (looked up by ${keyedBy})`
    );
  }
}

try {
  main();
} catch (error) {
  logErrorMessage(error);
  process.exitCode = 1;
}
