/**
 * Dates as whole numbers of days from January 1, 1970, without a date library and without code from src. The proleptic Gregorian
 * calendar repeats every 400 years.
 */

const DAYS_OF_ERA = 146_097;
const EPOCH = 719_468;

/** The number of a date. */
export function dayNumber(year: number, month: number, date: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_OF_ERA + dayOfEra - EPOCH;
}

/** Year, month and day of the month for the number of a date. */
export function civil(number: number): { year: number; month: number; date: number } {
  const shifted = number + EPOCH;
  const era = Math.floor(shifted / DAYS_OF_ERA);
  const dayOfEra = shifted - era * DAYS_OF_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1;
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, date };
}

/** 0 = Sunday to 6 = Saturday; January 1, 1970 was a Thursday. */
export function weekday(number: number): number {
  return (((number + 4) % 7) + 7) % 7;
}

/** Whether a year has 366 days. */
export function isLeap(year: number): boolean {
  return dayNumber(year + 1, 1, 1) - dayNumber(year, 1, 1) === 366;
}

/** A date as YYYY-MM-DD. */
export function written(number: number): string {
  const { year, month, date } = civil(number);
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${String(year)}-${two(month)}-${two(date)}`;
}

/** The number of a date in the form YYYY-MM-DD. */
export function dayWritten(text: string): number {
  const [year = 0, month = 0, date = 0] = text.split("-").map(Number);
  return dayNumber(year, month, date);
}

/** Days of a month. Months above 12 continue into the next years. */
export function daysInMonth(year: number, month: number): number {
  const ofYear = (months: number): number =>
    dayNumber(year + Math.floor((months - 1) / 12), ((months - 1) % 12) + 1, 1);
  return ofYear(month + 1) - ofYear(month);
}

/** Whether a date is the last of its month. */
export function endsMonth(number: number): boolean {
  return civil(number + 1).date === 1;
}
