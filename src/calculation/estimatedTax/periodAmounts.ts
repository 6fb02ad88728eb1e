import type { Decimal } from "../../money/dollars";

/** Amounts from the first day of the tax year through the end of an annualization period, in dollars. */
export interface PeriodAmounts {
  /** Negative for a loss. */
  readonly adjustedGrossIncome: Decimal;
  readonly itemizedDeductions: Decimal;
  /** Net earnings from self-employment of one person. */
  readonly netEarnings: Decimal;
  /** Wages of the same person that were subject to Social Security tax. */
  readonly wages: Decimal;
  /** The deductions after the standard or itemized deductions, already on the annualized income. */
  readonly businessIncomeDeduction: Decimal;
  /** Already on the annualized income, as are the credits. */
  readonly otherTaxes: Decimal;
  readonly credits: Decimal;
  /** The whole standard deduction of the year; `undefined` for the regular amount of the filing status. */
  readonly standardDeduction: Decimal | undefined;
  /** Tax on the annualized income, taken as given; `undefined` if it is to be calculated. */
  readonly tax: Decimal | undefined;
}
