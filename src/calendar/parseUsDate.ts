import { parseCalendarDate, type CalendarDate } from "./calendarDate";
import { MONTHS } from "./writtenDate";

const NUMBERS = /^(\d{1,2})[/-](\d{1,2})[/-](\d{2}|\d{4})$/;
const WORDS = /^([a-z]{3,9})\.?\s+(\d{1,2}),?\s+(\d{4})$/;
/** Two-digit years up to this one are in the 2000s, as current versions of Excel read them by default. */
const LAST_SHORT_YEAR = 49;

function yearOf(text: string): string {
  if (text.length === 4) return text;
  return (Number(text) > LAST_SHORT_YEAR ? "19" : "20") + text;
}

function monthOf(word: string): number {
  const isAbbreviation = word.length === 3 || word === "sept";
  return (
    MONTHS.findIndex((month) => {
      const name = month.toLowerCase();
      return name === word || (isAbbreviation && name.startsWith(word));
    }) + 1
  );
}

/**
 * Reads a date as Americans write it, always month first, or an ISO date.
 *
 * @param text - Such as `4/15/2026`, `04/15/26`, `April 15, 2026`, `Apr 15, 2026` or `2026-04-15`.
 * @returns The date, or `undefined` when the text has no such reading: `15/4/2026` has none.
 *
 * @example
 * parseUsDate("Apr. 15, 2026") //=> "2026-04-15"
 */
export function parseUsDate(text: string): CalendarDate | undefined {
  const trimmed = text.trim().toLowerCase();
  const [, month = "", day = "", year = ""] = NUMBERS.exec(trimmed) ?? [];
  const [, word = "", dayOfMonth = "", fullYear = ""] = WORDS.exec(trimmed) ?? [];
  const iso = (parts: readonly string[]): string =>
    parts.map((part) => part.padStart(2, "0")).join("-");
  if (month !== "") return parseCalendarDate(iso([yearOf(year), month, day]));
  if (word !== "") return parseCalendarDate(iso([fullYear, String(monthOf(word)), dayOfMonth]));
  return parseCalendarDate(trimmed);
}
