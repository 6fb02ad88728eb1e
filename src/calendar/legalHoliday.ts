import { addDays, calendarDate, weekdayOf, yearOf, type CalendarDate } from "./calendarDate";

/** How a holiday that falls on a weekend is kept. */
export type Observance = "nearest weekday" | "Monday after a Sunday" | "never on a weekend";

/** One legal holiday as its law describes it: a fixed day of a month, or the n-th (or last) weekday of one. */
export interface HolidayRule {
  readonly name: string;
  readonly month: number;
  readonly day?: number;
  /** 0 = Sunday to 6 = Saturday. */
  readonly weekday?: number;
  /** 1 = first …; -1 = last of the month. */
  readonly occurrence?: number;
  readonly observed: Observance;
  /** First and last year in which it is kept. */
  readonly fromYear: number;
  readonly throughYear?: number;
  /** Kept only in every so many years, counted from `fromYear`. */
  readonly everyYears?: number;
  /** Kept only for acts of residents of these states; elsewhere an ordinary day. */
  readonly states?: readonly string[];
}

const twoDigits = (part: number): string => String(part).padStart(2, "0");
const dayOf = (year: number, month: number, day: number): CalendarDate =>
  calendarDate(`${String(year)}-${twoDigits(month)}-${twoDigits(day)}`);

function nthWeekday(
  year: number,
  month: number,
  weekday: number,
  occurrence: number
): CalendarDate {
  if (occurrence < 0) {
    const nextMonth = month === 12 ? dayOf(year + 1, 1, 1) : dayOf(year, month + 1, 1);
    const last = addDays(nextMonth, -1);
    return addDays(last, -((weekdayOf(last) - weekday + 7) % 7));
  }
  const first = dayOf(year, month, 1);
  return addDays(first, ((weekday - weekdayOf(first) + 7) % 7) + 7 * (occurrence - 1));
}

function observedDay(day: CalendarDate, observance: Observance): CalendarDate {
  const weekday = weekdayOf(day);
  if (weekday === 0 && observance !== "never on a weekend") return addDays(day, 1);
  if (weekday === 6 && observance === "nearest weekday") return addDays(day, -1);
  return day;
}

function keptIn(rule: HolidayRule, year: number): boolean {
  if (year < rule.fromYear || year > (rule.throughYear ?? Infinity)) return false;
  return (year - rule.fromYear) % (rule.everyYears ?? 1) === 0;
}

function holidayOf(rule: HolidayRule, year: number): CalendarDate {
  const day =
    rule.day === undefined
      ? nthWeekday(year, rule.month, rule.weekday ?? 0, rule.occurrence ?? 1)
      : dayOf(year, rule.month, rule.day);
  return observedDay(day, rule.observed);
}

type HolidaysByDay = ReadonlyMap<CalendarDate, readonly HolidayRule[]>;
const worked = new WeakMap<readonly HolidayRule[], Map<number, HolidaysByDay>>();

function holidaysIn(year: number, rules: readonly HolidayRule[]): HolidaysByDay {
  const years = worked.get(rules) ?? new Map<number, HolidaysByDay>();
  worked.set(rules, years);
  const known = years.get(year);
  if (known) return known;
  const found = new Map<CalendarDate, HolidayRule[]>();
  // New Year's Day of a year that begins on a Saturday is kept on December 31 of the year before.
  for (const ruleYear of [year, year + 1]) {
    for (const rule of rules) {
      if (!keptIn(rule, ruleYear)) continue;
      const day = holidayOf(rule, ruleYear);
      if (yearOf(day) === year) found.set(day, [...(found.get(day) ?? []), rule]);
    }
  }
  years.set(year, found);
  return found;
}

/**
 * The legal holiday kept on a day, for section 7503.
 *
 * @param day - Any day.
 * @param rules - The holidays of the District of Columbia and of the states that count: rules/legal-holidays.json.
 * @param state - Postal code of the state whose holidays count beside those of the District, if any.
 * @returns The holiday's name, or `undefined` on a day that is none.
 * @see 26 U.S.C. 7503; 26 CFR 301.7503-1(b)
 *
 * @example
 * legalHolidayOn("2017-04-17", rules) //=> "Emancipation Day"
 */
export function legalHolidayOn(
  day: CalendarDate,
  rules: readonly HolidayRule[],
  state?: string
): string | undefined {
  const kept = holidaysIn(yearOf(day), rules).get(day) ?? [];
  const counts = kept.find(
    (rule) => !rule.states || (state !== undefined && rule.states.includes(state))
  );
  return counts?.name;
}
