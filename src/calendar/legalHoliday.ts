import { addDays, calendarDate, weekdayOf, yearOf, type CalendarDate } from "./calendarDate";
import { remembered } from "./remembered";

/** How a holiday that falls on a weekend is observed. */
export type Observance = "nearest weekday" | "Monday after a Sunday" | "never on a weekend";

/** One legal holiday as its law describes it: a fixed date in a month, or the n-th (or last) weekday of a month. */
export interface HolidayRule {
  readonly name: string;
  readonly month: number;
  readonly day?: number;
  /** 0 = Sunday to 6 = Saturday. */
  readonly weekday?: number;
  /** 1 = first …; -1 = last of the month. */
  readonly occurrence?: number;
  readonly observed: Observance;
  /** First and last year in which it is observed. */
  readonly fromYear: number;
  readonly throughYear?: number;
  /** Observed only once in this many years, counted from `fromYear`. */
  readonly everyYears?: number;
  /** Counts only for residents of these states. */
  readonly states?: readonly string[];
}

const twoDigits = (part: number): string => String(part).padStart(2, "0");
const dateOf = (year: number, month: number, day: number): CalendarDate =>
  calendarDate(`${String(year)}-${twoDigits(month)}-${twoDigits(day)}`);

function nthWeekday(
  year: number,
  month: number,
  weekday: number,
  occurrence: number
): CalendarDate {
  if (occurrence < 0) {
    const nextMonth = month === 12 ? dateOf(year + 1, 1, 1) : dateOf(year, month + 1, 1);
    const last = addDays(nextMonth, -1);
    return addDays(last, -((weekdayOf(last) - weekday + 7) % 7));
  }
  const first = dateOf(year, month, 1);
  return addDays(first, ((weekday - weekdayOf(first) + 7) % 7) + 7 * (occurrence - 1));
}

function observedDate(date: CalendarDate, observance: Observance): CalendarDate {
  const weekday = weekdayOf(date);
  if (weekday === 0 && observance !== "never on a weekend") return addDays(date, 1);
  if (weekday === 6 && observance === "nearest weekday") return addDays(date, -1);
  return date;
}

function isObservedIn(rule: HolidayRule, year: number): boolean {
  if (year < rule.fromYear || year > (rule.throughYear ?? Infinity)) return false;
  return (year - rule.fromYear) % (rule.everyYears ?? 1) === 0;
}

function holidayOf(rule: HolidayRule, year: number): CalendarDate {
  const date =
    rule.day === undefined
      ? nthWeekday(year, rule.month, rule.weekday ?? 0, rule.occurrence ?? 1)
      : dateOf(year, rule.month, rule.day);
  return observedDate(date, rule.observed);
}

function holidaysIn(
  year: number,
  rules: readonly HolidayRule[]
): ReadonlyMap<CalendarDate, readonly HolidayRule[]> {
  const found = new Map<CalendarDate, HolidayRule[]>();
  // New Year's Day of a year that begins on a Saturday is observed on December 31 of the year before.
  for (const ruleYear of [year, year + 1]) {
    for (const rule of rules) {
      if (!isObservedIn(rule, ruleYear)) continue;
      const date = holidayOf(rule, ruleYear);
      if (yearOf(date) === year) found.set(date, [...(found.get(date) ?? []), rule]);
    }
  }
  return found;
}

const holidaysByYear = remembered(
  (rules: readonly HolidayRule[]) =>
    remembered(
      (year: number) => holidaysIn(year, rules),
      (year) => year,
      1_000
    ),
  (rules) => rules,
  10
);

/**
 * The legal holiday observed on a date, for section 7503.
 *
 * @param date - Any date.
 * @param rules - The holidays of the District of Columbia and of the states that count: rules/legal-holidays.json.
 * @param state - Postal code of the state whose holidays count in addition to those of the District, if any.
 * @returns The holiday's name, or `undefined` if the date is not a holiday.
 * @see 26 U.S.C. 7503; 26 CFR 301.7503-1(b)
 *
 * @example
 * legalHolidayOn("2017-04-17", rules) //=> "Emancipation Day"
 */
export function legalHolidayOn(
  date: CalendarDate,
  rules: readonly HolidayRule[],
  state?: string
): string | undefined {
  const observed = holidaysByYear(rules)(yearOf(date)).get(date) ?? [];
  return observed.find(
    (rule) => !rule.states || (state !== undefined && rule.states.includes(state))
  )?.name;
}
