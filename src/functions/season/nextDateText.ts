import { shortDate } from "../../calendar/writtenDate";
import type { NextDate } from "../../calculation/season/nextDate";

/** The next deadline as a cell shows it: what is due and by when, or that the date has passed. */
export function nextDateText({ acts, date, daysLeft }: NextDate): string {
  const [first = "", ...others] = acts;
  const what = others.length > 0 ? `${first}, and ${others.join(", and ")},` : first;
  return daysLeft < 0
    ? `${what} now (was due ${shortDate(date)})`
    : `${what} by ${shortDate(date)}`;
}
