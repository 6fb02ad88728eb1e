import type { NextDate } from "../calculation/season/nextDate";

const WORDS = {
  ask: "ask or file",
  resend: "send the request again",
  file: "file",
  pay: "pay",
} satisfies Record<NextDate["acts"][number], string>;

/** The next date as a cell shows it: what is due and by when, or that its day has passed. */
export function nextDateText({ acts, day, daysLeft }: NextDate): string {
  const [first, ...others] = acts.map((act) => WORDS[act]);
  const what = others.length > 0 ? `${first ?? ""}, and ${others.join(", and ")},` : (first ?? "");
  return daysLeft < 0 ? `${what} now: ${day} has passed` : `${what} by ${day}`;
}
