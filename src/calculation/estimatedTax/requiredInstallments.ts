import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { installmentNumbers, type InstallmentNumber } from "../dueDate/installmentNumbers";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";

/** An installment and its part of the required annual payment. */
export interface RequiredInstallment {
  readonly number: InstallmentNumber;
  /** 1 for the whole amount. */
  readonly share: Decimal;
}

/**
 * The installments of a year, each with its part of the required annual payment.
 *
 * A quarter each. A nonresident alien without wages subject to withholding has three: half, and a quarter each. Farmers and fishermen,
 * nonresident or not, have only the last one, of the whole amount.
 *
 * @param taxYear - The year whose tax is estimated.
 * @param filerType - Filer type in that year.
 * @param farmerOrFisherman - At least 66⅔% of gross income is from farming or fishing.
 * @param rules - The shares.
 * @returns The installments in order. Their shares add up to 1.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see 26 U.S.C. 6654(d)(1)(A), (i)(1), (j)(2), (3)(A)
 */
export function requiredInstallments(
  taxYear: TaxYear,
  filerType: FilerType,
  farmerOrFisherman: boolean,
  rules: Pick<Rulebook, "requiredAnnualPayment">
): readonly RequiredInstallment[] {
  const { figures } = entryOn(rules.requiredAnnualPayment, taxYear.lastDay);
  const { installmentShare, nonresidentFirstInstallmentShare, farmerInstallmentShare } = figures;
  const numbers = installmentNumbers(filerType);
  if (farmerOrFisherman)
    return numbers.slice(-1).map((number) => ({ number, share: farmerInstallmentShare }));
  return numbers.map((number) => {
    const isHalf = filerType === "nonresident" && number === 1;
    return { number, share: isHalf ? nonresidentFirstInstallmentShare : installmentShare };
  });
}
