import { shortDate } from "../../calendar/writtenDate";
import type { NextDate } from "../../calculation/season/nextDate";

const WORDS = {
  ask: "request or file",
  resend: "resend the request",
  file: "file",
  pay: "pay",
} satisfies Record<NextDate["acts"][number], string>;

/** The next deadline as a cell shows it: what is due and by when, or that the date has passed. */
export function nextDateText({ acts, day, daysLeft }: NextDate): string {
  const [first = "", ...others] = acts.map((act) => WORDS[act]);
  const what = others.length > 0 ? `${first}, and ${others.join(", and ")},` : first;
  const date = shortDate(day);
  return daysLeft < 0 ? `${what} now (was due ${date})` : `${what} by ${date}`;
}
