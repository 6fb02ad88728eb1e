import {
  annualizedColumns,
  type AnnualizedColumn,
  type AnnualizedYear,
} from "../../calculation/estimatedTax/annualizedColumns";
import {
  annualizedInstallments,
  type AnnualizedInstallment,
} from "../../calculation/estimatedTax/annualizedInstallments";
import { requiredInstallments } from "../../calculation/estimatedTax/requiredInstallments";
import type { Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";

/** The rule tables that annualized installments depend on. */
export const annualizedTables = [
  "annualizedInstallments",
  "installments",
  "requiredAnnualPayment",
  "incomeTaxRates",
  "taxTable",
  "standardDeduction",
  "dependentStandardDeduction",
  "itemizedLimit",
  "selfEmploymentTax",
] as const;

/** The rules of these tables. */
export type AnnualizedRules = Pick<Rulebook, (typeof annualizedTables)[number]>;

/** The columns of Schedule AI, and the installments where the required annual payment is known. */
export interface AnnualizedAnswer {
  readonly columns: readonly AnnualizedColumn[];
  /** One for each column, or none. */
  readonly installments: readonly AnnualizedInstallment[];
}

/** The columns and the installments of a year. The required annual payment is in dollars. */
export function annualizedYear(
  year: AnnualizedYear,
  requiredAnnualPayment: Decimal | undefined,
  rules: AnnualizedRules
): AnnualizedAnswer {
  const columns = annualizedColumns(year, rules);
  if (requiredAnnualPayment === undefined) return { columns, installments: [] };
  const regular = requiredInstallments(year.taxYear, year.filerType, false, rules);
  const installments = annualizedInstallments(
    columns.map(({ dueThrough }) => dueThrough),
    regular.map(({ share }) => requiredAnnualPayment.times(share))
  );
  return { columns, installments };
}
