import { civil, dayNumber, weekday } from "./civilDays";

/**
 * The dates of a return and of the installments of a year, by statute, for tax years that end on December 31, 2009 or later. The law
 * names the 15th day of a month (sections 6072, 6081, 6151, 6654(c)(2), (k); 26 CFR 1.6081-4, 1.6081-5), but no Saturday, Sunday or
 * legal holiday of the District of Columbia (section 7503), nor Patriots' Day for two states (Rev. Rul. 2015-13). The three nationwide
 * postponements and disaster postponements (section 7508A) move it.
 */
export interface ActDate {
  /** The 15th that the law names. Neither a weekend nor a postponement moves it. */
  readonly fifteenth: number;
  /** The date from which delinquency counts. */
  readonly named: number;
  /** The deadline. */
  readonly last: number;
}

export type Who = "resident" | "out of country" | "nonresident";

/** First date of a postponement period and the date to which it postpones. */
export interface Relief {
  readonly begins: number;
  readonly until: number;
}

/** The taxpayer of the dates. */
export interface Whose {
  /** The last day of the tax year. */
  readonly yearEnd: number;
  readonly who: Who;
  readonly state: string;
  readonly postponement?: Relief | undefined;
}

/** Why a deadline moves from the date that the law names. */
export type Obstacle = "weekend" | "federal holiday" | "Emancipation Day" | "Patriots' Day";

/** The n-th Monday of a month. */
function monday(year: number, month: number, count: number): number {
  const first = dayNumber(year, month, 1);
  return first + ((8 - weekday(first)) % 7) + 7 * (count - 1);
}

/** A fixed date that is observed on the nearest weekday. */
function nearestWeekday(day: number): number {
  if (weekday(day) === 6) return day - 1;
  return weekday(day) === 0 ? day + 1 : day;
}

/** January 20 after an election, observed in the District, on Monday if it is a Sunday (5 U.S.C. 6103(c)). */
function inaugurationDay(year: number): number {
  const day = dayNumber(year, 1, 20);
  if (year % 4 !== 1) return Number.NaN;
  return weekday(day) === 0 ? day + 1 : day;
}

/**
 * Why a deadline cannot be on a date. This is used only for the 15th of a month and the dates to which a weekend moves it. Only five
 * holidays can fall on these: Martin Luther King Jr. Day, Inauguration Day, Washington's Birthday, Emancipation Day and Patriots' Day.
 * Juneteenth is observed on the 18th at the earliest.
 */
function obstacleOn(day: number, inNewEngland: boolean): Obstacle | undefined {
  const { year } = civil(day);
  if (weekday(day) === 0 || weekday(day) === 6) return "weekend";
  if ([monday(year, 1, 3), monday(year, 2, 3), inaugurationDay(year)].includes(day))
    return "federal holiday";
  if (day === nearestWeekday(dayNumber(year, 4, 16))) return "Emancipation Day";
  return inNewEngland && year >= 2016 && day === monday(year, 4, 3) ? "Patriots' Day" : undefined;
}

/** The dates skipped from a 15th on, with the reason for each. */
export function obstaclesFrom(named: number, state: string): readonly Obstacle[] {
  const passed: Obstacle[] = [];
  for (;;) {
    const obstacle = obstacleOn(named + passed.length, state === "ME" || state === "MA");
    if (obstacle === undefined) return passed;
    passed.push(obstacle);
  }
}

/** IR-2018-100, Notice 2020-23, and Notice 2021-21, which did not include installments and extended returns. */
function postponed(act: ActDate, isInNotice2021: boolean): ActDate {
  const { last } = act;
  if (last === dayNumber(2018, 4, 17)) return { ...act, last: last + 1 };
  const everyone2020 = dayNumber(2020, 7, 15);
  if (last >= dayNumber(2020, 4, 1) && last < everyone2020)
    return { ...act, named: everyone2020, last: everyone2020 };
  const april2021 = dayNumber(2021, 5, 17);
  if (last === dayNumber(2021, 4, 15) && isInNotice2021)
    return { ...act, named: april2021, last: april2021 };
  return act;
}

/** Section 7508A(a): the period is disregarded for a deadline within it, so that delinquency counts from the end of the period. */
function relieved(act: ActDate, postponement: Relief | undefined): ActDate {
  if (!postponement || act.last < postponement.begins || act.last > postponement.until) return act;
  return { ...act, named: postponement.until, last: postponement.until };
}

/** The 15th of a month. Month 0 is the month in which the tax year ends. */
function fifteenth(yearEnd: number, months: number): number {
  const { year, month } = civil(yearEnd);
  const count = year * 12 + month - 1 + months;
  return dayNumber(Math.floor(count / 12), (count % 12) + 1, 15);
}

function dueIn(
  months: number,
  { yearEnd, state, postponement }: Whose,
  isInNotice2021: boolean
): ActDate {
  const named = fifteenth(yearEnd, months);
  const last = named + obstaclesFrom(named, state).length;
  return relieved(postponed({ fifteenth: named, named, last }, isInNotice2021), postponement);
}

/** Return, payment, and return with an extension. */
export interface StatuteDates {
  readonly filing: ActDate;
  readonly paidWithRequest: ActDate;
  readonly extended: ActDate;
}

/** The dates of a return. */
export function statuteDates(whose: Whose): StatuteDates {
  const { who } = whose;
  return {
    filing: dueIn(who === "resident" ? 4 : 6, whose, true),
    paidWithRequest: dueIn(who === "nonresident" ? 6 : 4, whose, true),
    extended: dueIn(who === "nonresident" ? 12 : 10, whose, false),
  };
}

/**
 * The four installments of a year, or the three of a nonresident alien under section 6072(c): June, September and January (section
 * 6654(j)(2)). State holidays do not move them (Rev. Rul. 2015-13).
 */
export function installmentDates(
  yearEnd: number,
  postponement?: Relief,
  isNonresident = false
): readonly ActDate[] {
  const whose: Whose = { yearEnd, who: "resident", state: "", postponement };
  const months = isNonresident ? [-6, -3, 1] : [-8, -6, -3, 1];
  return months.map((month) => dueIn(month, whose, false));
}

/** The 15th day of the fourth month after a tax year, on any day of the week: section 6654(b)(2)(A). */
export const fifteenthOfFourthMonth = (yearEnd: number): number => fifteenth(yearEnd, 4);

/** The last Monday of May and the first of September, and January 1: the holidays near the beginning and the end of a month. */
function isHolidayNearMonthEnd(day: number): boolean {
  const { year } = civil(day);
  const mondaysOfMay = [4, 5].map((count) => monday(year, 5, count));
  const memorialDay = mondaysOfMay.filter((one) => civil(one).month === 5).at(-1);
  const newYears = [year, year + 1].map((one) => nearestWeekday(dayNumber(one, 1, 1)));
  return [memorialDay, monday(year, 9, 1), ...newYears].includes(day);
}

/**
 * The deadline of an early return that ends the penalty on the last installment: the last day of the first month after the year, or
 * for farmers and fishermen the first day of the third month (section 6654(h), (i)(1)(D), (k)(1)).
 */
export function earlyReturnDeadline(
  yearEnd: number,
  isFarmer: boolean,
  postponement?: Relief
): number {
  const { year, month } = civil(yearEnd);
  const months = year * 12 + month - 1 + (isFarmer ? 3 : 2);
  const firstOfMonth = dayNumber(Math.floor(months / 12), (months % 12) + 1, 1);
  const named = isFarmer ? firstOfMonth : firstOfMonth - 1;
  let last = named;
  while ([0, 6].includes(weekday(last)) || isHolidayNearMonthEnd(last)) last++;
  return relieved(postponed({ fifteenth: named, named, last }, true), postponement).last;
}

/** The last day of a calendar tax year. */
export const calendarYearEnd = (year: number): number => dayNumber(year, 12, 31);
