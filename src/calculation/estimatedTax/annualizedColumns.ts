import { toWholeDollars, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilerType } from "../filerType";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { annualizationPeriods, type AnnualizationPeriod } from "./annualizationPeriods";
import { annualizedTax, type AnnualizedTax } from "./annualizedTax";
import type { PeriodAmounts } from "./periodAmounts";

/** A column of Schedule AI through line 21. */
export interface AnnualizedColumn {
  readonly period: AnnualizationPeriod;
  readonly amounts: PeriodAmounts;
  readonly tax: AnnualizedTax;
  /** The part of the annualized tax that is due through this installment. */
  readonly share: Decimal;
  /** The same part in whole dollars. */
  readonly dueThrough: Decimal;
}

/** The year and the amounts of its periods. */
export interface AnnualizedYear {
  readonly taxYear: TaxYear;
  readonly status: FilingStatus;
  readonly filerType: FilerType;
  /** The four periods in order. A nonresident alien with three installments uses the last three. */
  readonly periods: readonly PeriodAmounts[];
}

/**
 * The columns of Schedule AI: for each installment the tax on the annualized income of its period, and the part of it due so far.
 *
 * 22.5%, 45%, 67.5% and 90%. The three installments of a nonresident alien have the last three of these, as the form's instructions
 * say; the table in section 6654(j)(3)(B) is printed for four installments.
 *
 * @param year - The year and the amounts of its periods.
 * @param rules - Rates, deductions, months of the installments and parts of the tax.
 * @returns One column for each installment of the filer.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @throws RangeError for fewer periods than installments.
 * @see 26 U.S.C. 6654(d)(2)(B), (C)(ii), (j); Form 2210, Schedule AI, lines 1 to 21, and its instructions for Form 1040-NR
 */
export function annualizedColumns(
  { taxYear, status, filerType, periods }: AnnualizedYear,
  rules: Parameters<typeof annualizedTax>[5] &
    Pick<Rulebook, "installments" | "annualizedInstallments">
): readonly AnnualizedColumn[] {
  // A tax year without rates is refused with this table, whichever table a column needs first.
  entryOn(rules.incomeTaxRates, taxYear.firstDay);
  const columns = annualizationPeriods(taxYear, filerType, rules);
  const { figures } = entryOn(rules.annualizedInstallments, taxYear.lastDay);
  const shares: readonly Decimal[] =
    filerType === "nonresident" ? figures.nonresidentShares : figures.shares;
  return columns.map((period, index) => {
    const amounts = periods.at(index - columns.length);
    if (amounts === undefined)
      throw new RangeError(`There are ${String(periods.length)} periods, too few to annualize`);
    const share = shares[index] ?? ZERO;
    const tax = annualizedTax(taxYear, status, filerType, amounts, period, rules);
    return { period, amounts, tax, share, dueThrough: toWholeDollars(tax.tax.times(share)) };
  });
}
