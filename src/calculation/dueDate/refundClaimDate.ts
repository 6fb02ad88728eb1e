import {
  addMonths,
  compareDates,
  earlierDate,
  laterDate,
  type CalendarDate,
} from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { clientDates, type ClientDates } from "./clientDates";
import type { Circumstances } from "./dueDate";
import type { ReturnDateRules } from "./returnDueDate";

/** The rules that the date of a refund claim needs. */
export type RefundClaimRules = ReturnDateRules & Pick<Rulebook, "refundClaims">;

type ClaimRule = Rulebook["refundClaims"]["rows"][number];

const MONTHS_OF_A_YEAR = 12;

/** The end of the extension, or of a postponement period that counts as one. Where both overlap the later end counts once. */
function endOfExtension(
  { postponementsCounted }: ClaimRule,
  validExtension: boolean,
  dates: ClientDates,
  datesWithoutDisaster: ClientDates
): CalendarDate {
  const end = ({ regular, extended }: ClientDates, from: "statutory" | "countedFrom") =>
    validExtension ? laterDate(regular[from], extended[from]) : regular[from];
  switch (postponementsCounted) {
    case "none":
      return end(dates, "statutory");
    case "nationwide":
      return end(datesWithoutDisaster, "countedFrom");
    case "all":
      return end(dates, "countedFrom");
  }
}

/**
 * Last day to claim a refund of tax that was withheld or paid as estimated tax.
 *
 * A claim must come within three years after the return was filed, and refunds only tax paid within three years and the period of any
 * extension before the claim. Withholding and estimated tax count as paid on the date the law names for the return, April 15, and a
 * return filed earlier counts as filed then. So the date is the earlier of three years after filing and three years after the end of
 * the extension. A disaster postponement counts as an extension for claims made after December 26, 2025.
 *
 * The weekend before a later due date is not part of the extension, but a return filed on the workday after it keeps three years from
 * that day. The result is not moved for weekends and holidays, because the earlier date is safe. Two years from a later payment, which
 * can save that payment alone, are not calculated.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param filedOn - Date the return was filed; `undefined` if it is not filed, so that the return itself is the claim.
 * @param validExtension - Whether a valid request was made on time.
 * @param rules - Refund claims, due dates, holidays, postponements.
 * @returns The last day.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see 26 U.S.C. 6511(a), (b)(2)(A), 6513(a), (b), 7508A(f); Rev. Rul. 2003-41; Notice 2023-21
 *
 * @example
 * refundClaimDate(calendarTaxYear(2024), "resident", {}, undefined, true, rulebook) //=> "2028-10-15"
 */
export function refundClaimDate(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  filedOn: CalendarDate | undefined,
  validExtension: boolean,
  rules: RefundClaimRules
): CalendarDate {
  const { state } = circumstances;
  const dates = clientDates(taxYear, filerType, circumstances, rules);
  const datesWithoutDisaster = clientDates(taxYear, filerType, { state }, rules);
  const deemedPaidOn = dates.payment.statutory;
  const workdayAfter = nextWorkday(deemedPaidOn, rules.legalHolidays.rows, state).date;

  const lastDayUnder = (rule: ClaimRule): CalendarDate => {
    const yearsAfter = (date: CalendarDate) => addMonths(date, rule.years * MONTHS_OF_A_YEAR);
    const lookBack = yearsAfter(endOfExtension(rule, validExtension, dates, datesWithoutDisaster));
    if (filedOn === undefined) return lookBack;
    const afterFiling = yearsAfter(laterDate(filedOn, deemedPaidOn));
    return filedOn === workdayAfter ? afterFiling : earlierDate(afterFiling, lookBack);
  };
  const possible = rules.refundClaims.rows.flatMap((rule) => {
    const lastDay = lastDayUnder(rule);
    return lastDay >= rule.claimedFrom ? [lastDay] : [];
  });
  return possible.sort(compareDates).at(-1) ?? deemedPaidOn;
}
