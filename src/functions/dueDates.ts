import { combatZoneDueDate } from "../calculation/dueDate/combatZoneDueDate";
import { postponedDate } from "../calculation/dueDate/disasterPostponement";
import { installmentDueDate } from "../calculation/dueDate/installmentDueDate";
import { returnDueDate } from "../calculation/dueDate/returnDueDate";
import { InputError } from "../inputError";
import { rulebook } from "../rules/rulebook";
import { client, datesOf } from "./client";
import { day as readDay, disasterPostponement, taxYear as readTaxYear } from "./dayArguments";
import { dayCell } from "./results";
import { answerRows } from "./rows";
import { installmentNumber } from "./wordArguments";

/**
 * Regular due date of an individual return, moved for weekends, holidays and disaster relief: also the last day to ask for the extension.
 *
 * @customfunction DUE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param [state] Postal code of the state of residence, or foreign; Maine and Massachusetts have a holiday of their own.
 * @param [filerType] Blank or resident; abroad (living and working outside the country, line 8); nonresident (1040-NR without wages, line 9).
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6072(a), (c), 7503, 7508A; 26 CFR 1.6081-5(a)
 * @example =EXT.DUE(2025) is 2026-04-15; =EXT.DUE(2023,"ME") is 2024-04-17; =EXT.DUE(2023,,"abroad") is 2024-06-17
 */
export function due(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, state, filerType, postponementBegins, postponementEnds }, (cells) =>
    dayCell(datesOf(client(cells)).regular.lastDay)
  );
}

/**
 * Due date of an individual return with the automatic extension: six months from the regular due date, moved for weekends, holidays and disaster relief.
 *
 * @customfunction EXTENDED
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident (six months from June 15: treat with care, the publications differ).
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6081(a), 7503; 26 CFR 1.6081-4(a)
 * @example =EXT.EXTENDED(2025) is 2026-10-15; =EXT.EXTENDED(2022) is 2023-10-16
 */
export function extended(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, state, filerType, postponementBegins, postponementEnds }, (cells) =>
    dayCell(datesOf(client(cells)).extended.lastDay)
  );
}

/**
 * Last day to pay the tax without interest. Neither the extension nor living abroad moves it.
 *
 * @customfunction PAYBY
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident (pays with the return in June).
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6151(a), 6601(b)(1), 7503
 * @example =EXT.PAYBY(2025,,"abroad") is 2026-04-15
 */
export function payBy(
  taxYear: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, state, filerType, postponementBegins, postponementEnds }, (cells) =>
    dayCell(datesOf(client(cells)).payment.lastDay)
  );
}

/**
 * Due date of an installment of estimated tax, moved for weekends and holidays but not for a state's Patriots' Day.
 *
 * @customfunction INSTALLMENT
 * @param taxYear Year whose tax is estimated, such as 2026, or the last day of a fiscal year; one cell or a column.
 * @param number Which installment, 1 to 4.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6654(c)(2), (k), 7503
 * @example =EXT.INSTALLMENT(2026,1) is 2026-04-15; =EXT.INSTALLMENT(2021,4) is 2022-01-18
 */
export function installment(
  taxYear: unknown[][],
  number: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, number, postponementBegins, postponementEnds }, (cells) => {
    const postponement = disasterPostponement(cells.postponementBegins, cells.postponementEnds);
    const year = readTaxYear("taxYear", cells.taxYear);
    const which = installmentNumber("number", cells.number);
    return dayCell(installmentDueDate(year, which, postponement, rulebook).lastDay);
  });
}

/**
 * A last day as disaster relief moves it: to the end of the relief when it falls inside, unchanged when it does not.
 *
 * @customfunction DISASTERDATE
 * @param day The last day for any act, such as a due date; one cell or a column.
 * @param postponementBegins First day of the relief period as announced.
 * @param postponementEnds Day to which acts are postponed, as announced; not moved for weekends.
 * @returns {any[][]} The day, as a worksheet date.
 * @throws `#VALUE!` for an argument that cannot be read or a relief that ends before it begins.
 * @see 26 U.S.C. 7508A(a)
 * @example =EXT.DISASTERDATE("2026-04-15","2026-01-22","2026-06-08") is 2026-06-08
 */
export function postponement(
  day: unknown[][],
  postponementBegins: unknown[][],
  postponementEnds: unknown[][]
): unknown[][] {
  return answerRows({ day, postponementBegins, postponementEnds }, (cells) => {
    const lastDay = readDay("day", cells.day);
    const period = disasterPostponement(cells.postponementBegins, cells.postponementEnds);
    if (!period)
      throw new InputError("postponementBegins", "is empty; give the first day of the relief");
    return dayCell(postponedDate(lastDay, period));
  });
}

/**
 * Last day to file and pay after service in a combat zone: 180 days after leaving plus the days of the filing season that were left on entering.
 *
 * @customfunction COMBATZONE
 * @param taxYear Tax year of the return, such as 2025; one cell or a column.
 * @param entered Day of entering the zone or beginning the contingency operation.
 * @param left Last day there, or of qualified hospitalization.
 * @returns {any[][]} The day, as a worksheet date; not moved for weekends, and never before the regular due date.
 * @throws `#VALUE!` for an argument that cannot be read, or service that began after the return was due; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 7508(a); Pub. 3, extension of deadlines
 * @example =EXT.COMBATZONE(2025,"2026-03-01","2026-09-30") is 2027-05-14: 180 days and 46
 */
export function combatZone(
  taxYear: unknown[][],
  entered: unknown[][],
  left: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, entered, left }, (cells) => {
    const year = readTaxYear("taxYear", cells.taxYear);
    const from = readDay("entered", cells.entered);
    const until = readDay("left", cells.left);
    if (until < from)
      throw new InputError("left", `${until} is before the day of entering, ${from}`);
    const { lastDay } = returnDueDate(year, "resident", {}, rulebook);
    if (from > lastDay)
      throw new InputError(
        "entered",
        `${from} is after the return was due, ${lastDay}; no day of the filing season was left, work an extended return by hand`
      );
    return dayCell(combatZoneDueDate(year, from, until, rulebook));
  });
}
