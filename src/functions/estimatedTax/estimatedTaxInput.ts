import { shortDate } from "../../calendar/writtenDate";
import type { EstimatedTaxInput } from "../../calculation/estimatedTax/estimatedTaxPenalty";
import { ZERO } from "../../money/dollars";
import { smallBalanceException } from "../../calculation/estimatedTax/smallBalanceException";
import type { Rulebook } from "../../rules/rulebook";
import { optional, type Given } from "../arguments/argumentKind";
import { postponement, postponementOf } from "../arguments/client";
import { date } from "../arguments/date";
import { dollars, dollarsUnlessZero } from "../arguments/dollars";
import { assumedRate } from "../arguments/percent";
import { payments } from "../arguments/ranges";
import { taxYear } from "../arguments/taxYear";
import { filerType } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { InputError } from "../cells/inputError";

/** How the estimated tax of a year was paid. */
export const estimatedTaxPayments = {
  taxYear,
  requiredAnnualPayment: dollars,
  withholding: dollars,
  payments,
  paidOn: optional(date),
  assumedRate,
  currentYearTax: dollarsUnlessZero,
  farmerOrFisherman: yesNo,
  ...postponement,
  filerType,
};

/** The rule tables that the estimated tax penalty depends on. */
export const estimatedTaxTables = [
  "requiredAnnualPayment",
  "installments",
  "legalHolidays",
  "nationwidePostponements",
  "underpaymentRate",
] as const;

/**
 * The input of the estimated tax penalty from the arguments.
 *
 * @throws InputError when the tax was paid before the tax year began.
 */
export function estimatedTaxInputOf(
  given: Given<typeof estimatedTaxPayments>,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): EstimatedTaxInput {
  const { taxYear: year, withholding, currentYearTax, paidOn } = given;
  const isExcepted =
    currentYearTax !== undefined && smallBalanceException(year, currentYearTax, withholding, rules);
  if (paidOn !== undefined && paidOn < year.firstDay)
    throw new InputError(
      "paidOn",
      `${shortDate(paidOn)} is before the tax year begins on ${shortDate(year.firstDay)}. Check the date and the year.`
    );
  return {
    ...given,
    requiredAnnualPayment: isExcepted ? ZERO : given.requiredAnnualPayment,
    postponement: postponementOf(given),
  };
}
