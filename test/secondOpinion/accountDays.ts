/**
 * Dates and rates for the day-by-day calculations, without code or tables from src.
 *
 * A date is the number of days from January 1, 1970. Rates are whole percents by quarter, copied by hand from secondary copies of
 * the cumulative table in Rev. Rul. 2024-18 and of the later rulings.
 */
const PERCENTS: Readonly<Record<string, string>> = {
  2016: "3 4 4 4",
  2017: "4 4 4 4",
  2018: "4 5 5 5",
  2019: "6 6 5 5",
  2020: "5 5 3 3",
  2021: "3 3 3 3",
  2022: "3 4 5 6",
  2023: "7 7 7 8",
  2024: "8 8 8 8",
  2025: "7 7 7 7",
  2026: "7 6 7 7",
};

/** Days from January 1, 1970. */
export const dayOf = (written: string): number => Date.parse(written) / 86_400_000;

const instant = (day: number): Date => new Date(day * 86_400_000);

/** A date as YYYY-MM-DD. */
export const written = (day: number): string => instant(day).toISOString().slice(0, 10);

export const yearOf = (day: number): number => instant(day).getUTCFullYear();
export const monthOf = (day: number): number => instant(day).getUTCMonth() + 1;
export const dateOf = (day: number): number => instant(day).getUTCDate();
export const weekdayOf = (day: number): number => instant(day).getUTCDay();

/** Days of a year: the daily rate is the annual rate divided by 365, or by 366 in a leap year. */
export const daysInYear = (year: number): number =>
  dayOf(`${String(year + 1)}-01-01`) - dayOf(`${String(year)}-01-01`);

/** The underpayment rate on a date, such as 0.07. */
export function rateOn(day: number): number {
  const percent = PERCENTS[String(yearOf(day))]?.split(" ")[Math.floor((monthOf(day) - 1) / 3)];
  if (percent === undefined) throw new RangeError(`There is no rate on ${written(day)}.`);
  return Number(percent) / 100;
}

/** The date from which delinquency counts, and the deadline. */
export interface Due {
  readonly counted: number;
  readonly last: number;
}

const due = (counted: string, last = counted): Due => ({
  counted: dayOf(counted),
  last: dayOf(last),
});

/** Deadlines of a calendar year: payment, and the return of a resident, of a taxpayer out of the country, and with an extension. */
export interface ReturnDates {
  readonly payment: Due;
  readonly resident: Due;
  readonly "out of country": Due;
  readonly extended: Due;
}

/**
 * Deadlines as the IRS announced them each year (Forms 1040 and 4868, from secondary sources). Emancipation Day and weekends moved
 * 2022 and 2023. Notice 2020-23 and Notice 2021-21 disregard the postponed time. Weekends moved June 15 and October 15.
 */
export const RETURN_DATES: Readonly<Record<number, ReturnDates>> = {
  2019: {
    payment: due("2020-07-15"),
    resident: due("2020-07-15"),
    "out of country": due("2020-07-15"),
    extended: due("2020-10-15"),
  },
  2020: {
    payment: due("2021-05-17"),
    resident: due("2021-05-17"),
    "out of country": due("2021-06-15"),
    extended: due("2021-10-15"),
  },
  2021: {
    payment: due("2022-04-15", "2022-04-18"),
    resident: due("2022-04-15", "2022-04-18"),
    "out of country": due("2022-06-15"),
    extended: due("2022-10-15", "2022-10-17"),
  },
  2022: {
    payment: due("2023-04-15", "2023-04-18"),
    resident: due("2023-04-15", "2023-04-18"),
    "out of country": due("2023-06-15"),
    extended: due("2023-10-15", "2023-10-16"),
  },
  2023: {
    payment: due("2024-04-15"),
    resident: due("2024-04-15"),
    "out of country": due("2024-06-15", "2024-06-17"),
    extended: due("2024-10-15"),
  },
  2024: {
    payment: due("2025-04-15"),
    resident: due("2025-04-15"),
    "out of country": due("2025-06-15", "2025-06-16"),
    extended: due("2025-10-15"),
  },
  2025: {
    payment: due("2026-04-15"),
    resident: due("2026-04-15"),
    "out of country": due("2026-06-15"),
    extended: due("2026-10-15"),
  },
};

/** Minimum failure-to-file penalty in dollars by the year of the due date (from secondary sources, except 2020). */
export const MINIMUM: Readonly<Record<number, number>> = {
  2020: 435,
  2021: 435,
  2022: 435,
  2023: 450,
  2024: 485,
  2025: 510,
  2026: 525,
};
