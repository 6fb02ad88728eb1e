import { dayNumber, weekday } from "./civilDays";

/**
 * The dates of a calendar-year return of 2015 to 2025, from the words of the law: the 15th of April, June, October or December
 * (sections 6072, 6081; 26 CFR 1.6081-4, 1.6081-5), not on a Saturday, Sunday or legal holiday of the District (section 7503),
 * Patriots' Day for two states (Rev. Rul. 2015-13), and the three postponements for everyone.
 */
export interface ActDate {
  /** The day from which lateness counts. */
  readonly named: number;
  /** The last timely day. */
  readonly last: number;
}

export type Who = "resident" | "abroad" | "nonresident";

/** Emancipation Day, April 16, on the nearest weekday. */
function emancipationDay(year: number): number {
  const day = dayNumber(year, 4, 16);
  if (weekday(day) === 6) return day - 1;
  return weekday(day) === 0 ? day + 1 : day;
}

/** The third Monday of April. */
function patriotsDay(year: number): number {
  const first = dayNumber(year, 4, 1);
  return first + ((8 - weekday(first)) % 7) + 14;
}

/** No other holiday can follow a 15th of April, June, October or December through a weekend; Juneteenth is the 18th at the earliest. */
function nextWorkday(day: number, year: number, inNewEngland: boolean): number {
  let last = day;
  while (
    weekday(last) === 0 ||
    weekday(last) === 6 ||
    last === emancipationDay(year) ||
    (inNewEngland && last === patriotsDay(year))
  )
    last++;
  return last;
}

function postponed(act: ActDate, isExtended: boolean): ActDate {
  const { last } = act;
  if (last === dayNumber(2018, 4, 17)) return { ...act, last: last + 1 };
  const everyone2020 = dayNumber(2020, 7, 15);
  if (last >= dayNumber(2020, 4, 1) && last < everyone2020)
    return { named: everyone2020, last: everyone2020 };
  const april2021 = dayNumber(2021, 5, 17);
  if (last === dayNumber(2021, 4, 15) && !isExtended) return { named: april2021, last: april2021 };
  return act;
}

function due(year: number, month: number, state: string, isExtended = false): ActDate {
  const named = dayNumber(year, month, 15);
  const inNewEngland = state === "ME" || state === "MA";
  return postponed({ named, last: nextWorkday(named, year, inNewEngland) }, isExtended);
}

/** Return, payment without interest, and return with the extension. */
export function statuteDates(
  taxYear: number,
  who: Who,
  state: string
): { readonly filing: ActDate; readonly paying: ActDate; readonly extended: ActDate } {
  const year = taxYear + 1;
  return {
    filing: due(year, who === "resident" ? 4 : 6, state),
    paying: due(year, who === "nonresident" ? 6 : 4, state),
    extended: due(year, who === "nonresident" ? 12 : 10, state, true),
  };
}
