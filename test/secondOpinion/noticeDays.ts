import { allForYear } from "@18f/us-federal-holidays";
import { civil, dayNumber, dayWritten, weekday } from "./civilDays";
import { NoFigure } from "./noFigure";

/**
 * The time to pay a notice and demand, 26 CFR 301.6601-1(f)(3) to (5), without code or tables from src. Federal holidays are those of
 * "@18f/us-federal-holidays"; Emancipation Day, Inauguration Day and Patriots' Day are added by their laws.
 */
const LAST_YEAR = 2028;
const LARGE_CENTS = 10_000_000;

const federal = new Set(
  Array.from({ length: LAST_YEAR + 2 - 2009 }, (_, index) => 2009 + index).flatMap((year) =>
    allForYear(year).map(({ dateString }) => dayWritten(dateString))
  )
);

function isDistrictHoliday(day: number): boolean {
  const { year, month, date } = civil(day);
  if (federal.has(day)) return true;
  // D.C. Code 28-2701: April 16, on Friday if it is a Saturday, on Monday if it is a Sunday.
  if (month === 4 && [16, 15, 17].includes(date)) {
    const april16 = dayNumber(year, 4, 16);
    const move = { 6: -1, 0: 1 }[weekday(april16)] ?? 0;
    if (day === april16 + move) return true;
  }
  // 5 U.S.C. 6103(c)
  return year % 4 === 1 && month === 1 && (date === 20 || (date === 21 && weekday(day) === 1));
}

/** The third Monday of April in Maine and Massachusetts, from 2016 as elsewhere in the project (Rev. Rul. 2015-13). */
function isPatriotsDay(day: number, state: string): boolean {
  const { year, month, date } = civil(day);
  const isThirdMonday = month === 4 && weekday(day) === 1 && date >= 15 && date <= 21;
  return year >= 2016 && isThirdMonday && (state === "ME" || state === "MA");
}

const isWorkday = (day: number): boolean => weekday(day) % 6 !== 0 && !isDistrictHoliday(day);

/**
 * The last day to pay: the 21st calendar day, then the next workday, or the tenth business day where $100,000 or more is demanded.
 *
 * @throws NoFigure where the table of holidays does not cover the notice.
 */
export function payNoticeBy(notice: number, demandedCents: number, state: string): number {
  if (civil(notice).year > LAST_YEAR) throw new NoFigure("no holidays of that year");
  let day = notice;
  if (demandedCents < LARGE_CENTS) {
    day += 21;
    while (!isWorkday(day)) day++;
    return day;
  }
  for (let business = 0; business < 10;) {
    day++;
    if (isWorkday(day) && !isPatriotsDay(day, state)) business++;
  }
  return day;
}
