import { laterDate } from "../../calendar/calendarDate";
import type { ChargesInput } from "../../calculation/penalty/charges";
import { isMoreThanZero } from "../../money/dollars";
import { optional, type Given } from "./argumentKind";
import { dateTables, datesOf, postponement, residence } from "./client";
import { date, dateAfterYear } from "./date";
import { dollars } from "./dollars";
import { assumedRate } from "./percent";
import { taxYear } from "./taxYear";
import { yesNo } from "./yesNo";

/** What decides the cost of filing or paying late, apart from the amounts. */
export const lateness = {
  validExtension: yesNo,
  ...residence,
  assumedRate,
  agreementOn: optional(date),
  ...postponement,
};

/** The note of a function that charges a balance paid on one date. */
export const BEFORE_NOTICE =
  "Only LEDGER takes the dates of notices: it adds interest on the failure-to-pay penalty after the first notice, and the rate of 1% per month after a levy notice.";

/** The rule tables that penalties and interest depend on. */
export const chargesTables = [
  ...dateTables,
  "underpaymentRate",
  "reasonableCauseTest",
  "failureToPay",
  "failureToFile",
  "failureToFileMinimum",
] as const;

/** A return filed on one date whose remaining balance is paid on one date. Either may come first: the law charges both. */
export const chargesInput = {
  taxYear,
  totalTax: dollars,
  paidOnTime: dollars,
  paidOn: dateAfterYear,
  filedOn: dateAfterYear,
  ...lateness,
};

/** The input of the charges for a balance that is paid on one date. */
export function chargesInputOf(given: Given<typeof chargesInput>): ChargesInput {
  const { totalTax, paidOnTime, paidOn, filedOn, validExtension, agreementOn } = given;
  const balance = totalTax.minus(paidOnTime);
  return {
    dates: datesOf(given),
    totalTax,
    paidOnTime,
    payments: isMoreThanZero(balance) ? [{ date: paidOn, amount: balance }] : [],
    filedOn,
    validExtension,
    through: laterDate(paidOn, filedOn),
    agreementOn,
    assumedRate: given.assumedRate,
  };
}
