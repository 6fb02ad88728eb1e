import { parseArgs } from "node:util";
import { logErrorMessage } from "office-addin-cli";
import { compareDates, parseCalendarDate, type CalendarDate } from "../calendar/calendarDate";
import { ruleTables, summarize, type RuleTableSummary } from "../rules/ruleTables";

/** Tables that hold nothing for a day, those that ran out first ahead. */
function runOutBy(day: CalendarDate): readonly RuleTableSummary[] {
  return [...ruleTables.values()]
    .map(summarize)
    .filter(({ knownThrough }) => knownThrough < day)
    .sort((one, other) => compareDates(one.knownThrough, other.knownThrough));
}

/** Prints the tables that run out before the day given with `--on`: what next year's figures must be added to. */
function main(): void {
  const { values } = parseArgs({ options: { on: { type: "string" } } });
  const day = parseCalendarDate(values.on ?? "");
  if (day === undefined)
    throw new Error("give the day, such as: npm run rules:due -- --on 2027-01-01");
  const due = runOutBy(day);
  if (due.length === 0) console.log(`Every table of the rules is known through ${day} or later.`);
  for (const { id, title, keyedBy, knownThrough } of due) {
    console.log(`rules/${id}.json  known through ${knownThrough}  ${title} (kept by ${keyedBy})`);
  }
}

try {
  main();
} catch (error) {
  logErrorMessage(error);
  process.exitCode = 1;
}
