import { calendarDate } from "../../src/calendar/calendarDate";
import { Decimal } from "../../src/money/dollars";
import { rulebook, type Rulebook } from "../../src/rules/rulebook";

/** A date before every case that the tests take from opinions and rulings. */
const LONG_AGO = calendarDate("1990-01-01");

/**
 * The rules with the dates of the return reaching back to 1990, for published cases of years that the tables do not cover. The law of
 * those dates was the same; what differed is an argument.
 *
 * @param differing - Months of the automatic extension, and the month in which the return was due.
 */
export function earlierRules(
  differing: { readonly extensionMonths?: number; readonly regularMonth?: number } = {}
): Rulebook {
  const { returnDueDate, extensionOfTime, legalHolidays, nationwidePostponements } = rulebook;
  const { companionDates, refundClaims } = rulebook;
  const { extensionMonths = 6, regularMonth = 4 } = differing;
  return {
    ...rulebook,
    returnDueDate: {
      ...returnDueDate,
      knownFrom: LONG_AGO,
      entries: returnDueDate.entries.map(({ figures, source }) => ({
        from: LONG_AGO,
        figures: { ...figures, regularMonth: new Decimal(regularMonth) },
        source,
      })),
    },
    extensionOfTime: {
      ...extensionOfTime,
      knownFrom: LONG_AGO,
      entries: extensionOfTime.entries.map(({ source }) => ({
        from: LONG_AGO,
        figures: { months: new Decimal(extensionMonths) },
        source,
      })),
    },
    legalHolidays: { ...legalHolidays, knownFrom: LONG_AGO },
    nationwidePostponements: { ...nationwidePostponements, knownFrom: LONG_AGO },
    companionDates: { ...companionDates, knownFrom: LONG_AGO },
    refundClaims: {
      ...refundClaims,
      rows: refundClaims.rows.map((row, index) =>
        index === 0 ? { ...row, claimedFrom: LONG_AGO } : row
      ),
    },
  };
}
