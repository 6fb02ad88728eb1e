import type { NextDate } from "../calculation/season/nextDate";

/** The next date as a cell shows it: what is due and by when, or that its day has passed. */
export function nextDateText({ acts, date: day, daysLeft }: NextDate): string {
  const [first, ...others] = acts;
  const what = others.length > 0 ? `${first ?? ""}, and ${others.join(", and ")},` : (first ?? "");
  return daysLeft < 0 ? `${what} now: ${day} has passed` : `${what} by ${day}`;
}
