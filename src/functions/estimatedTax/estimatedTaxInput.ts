import { shortDate } from "../../calendar/writtenDate";
import type { EstimatedTaxInput } from "../../calculation/estimatedTax/estimatedTaxPenalty";
import { ZERO, type Decimal } from "../../money/dollars";
import { smallBalanceException } from "../../calculation/estimatedTax/smallBalanceException";
import { optional, type Given } from "../arguments/argumentKind";
import { postponement, postponementOf } from "../arguments/client";
import { date, dateAfterYear } from "../arguments/date";
import { dollars, dollarsUnlessZero } from "../arguments/dollars";
import { assumedRate } from "../arguments/percent";
import { optionalPeriods } from "../arguments/periods";
import { payments } from "../arguments/ranges";
import { taxYear } from "../arguments/taxYear";
import { filerType, filingStatus } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { InputError } from "../cells/inputError";
import { annualizedTables, annualizedYear, type AnnualizedRules } from "./annualizedYear";

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
  filedOn: optional(dateAfterYear),
  filingStatus: optional(filingStatus),
  periods: optionalPeriods,
};

/** The rule tables that the estimated tax penalty depends on. */
export const estimatedTaxTables = [
  ...annualizedTables,
  "legalHolidays",
  "nationwidePostponements",
  "underpaymentRate",
] as const;

/**
 * The installments by the annualized method, if the periods of the year are entered.
 *
 * @throws InputError for farmers and fishermen, and without a filing status.
 */
function installmentsOf(
  given: Given<typeof estimatedTaxPayments>,
  rules: AnnualizedRules
): readonly Decimal[] | undefined {
  const { periods, filingStatus: status, requiredAnnualPayment } = given;
  if (periods === undefined) return undefined;
  if (given.farmerOrFisherman)
    throw new InputError(
      "periods",
      "Farmers and fishermen have one installment, which is not annualized. Leave periods blank, or correct farmerOrFisherman."
    );
  if (status === undefined)
    throw new InputError(
      "filingStatus",
      "The cell is blank, but periods is entered. Enter a filing status such as single or MFJ."
    );
  const year = { ...given, status, periods };
  const { installments } = annualizedYear(year, requiredAnnualPayment, rules);
  return installments.map(({ required }) => required);
}

/**
 * The input of the estimated tax penalty from the arguments.
 *
 * @throws InputError when the tax was paid before the tax year began.
 */
export function estimatedTaxInputOf(
  given: Given<typeof estimatedTaxPayments>,
  rules: AnnualizedRules
): EstimatedTaxInput & { readonly isExcepted: boolean } {
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
    installments: isExcepted ? undefined : installmentsOf(given, rules),
    isExcepted,
    postponement: postponementOf(given),
  };
}
