import { smallBalanceException } from "../calculation/estimatedTax/smallBalanceException";
import type { EstimatedTaxInput } from "../calculation/estimatedTax/estimatedTaxPenalty";
import { InputError } from "../inputError";
import { ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { disasterPostponement, optionalDay, taxYear } from "./dayArguments";
import { assumedRate, money, optionalMoney } from "./moneyArguments";
import { payments } from "./paymentArguments";
import { singles, type Argument } from "./rows";
import { yesNo } from "./wordArguments";

/** The arguments that say how a year's estimates were paid. */
export interface EstimateArguments {
  readonly taxYear: Argument;
  readonly requiredAnnualPayment: Argument;
  readonly withholding: Argument;
  readonly payments: Argument;
  readonly paidOn: Argument;
  readonly assumedRate: Argument;
  readonly currentYearTax: Argument;
  readonly farmerOrFisherman: Argument;
  readonly postponementBegins: Argument;
  readonly postponementEnds: Argument;
}

/**
 * Reads how a year's estimates were paid. Where the year's tax is given and less than $1,000 of it is left after withholding,
 * nothing is required (section 6654(e)(1)).
 */
export function estimatesOf({ payments: rows, ...given }: EstimateArguments): EstimatedTaxInput {
  const cells = singles(given);
  const year = taxYear("taxYear", cells.taxYear);
  const withholding = money("withholding", cells.withholding);
  const required = money("requiredAnnualPayment", cells.requiredAnnualPayment);
  const currentYearTax = optionalMoney("currentYearTax", cells.currentYearTax);
  const tooLittle =
    currentYearTax !== undefined &&
    smallBalanceException(year, currentYearTax, withholding, rulebook);
  const paidOn = optionalDay("paidOn", cells.paidOn);
  if (paidOn !== undefined && paidOn < year.firstDay) {
    throw new InputError("paidOn", `${paidOn} is before the tax year begins, ${year.firstDay}`);
  }
  return {
    taxYear: year,
    requiredAnnualPayment: tooLittle ? ZERO : required,
    withholding,
    payments: payments("payments", rows, year),
    paidOn,
    farmerOrFisherman: yesNo("farmerOrFisherman", cells.farmerOrFisherman),
    postponement: disasterPostponement(cells.postponementBegins, cells.postponementEnds),
    assumedRate: assumedRate("assumedRate", cells.assumedRate),
  };
}
