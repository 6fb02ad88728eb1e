import { Decimal, toWholeDollars, ZERO } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { scheduleTax } from "./scheduleTax";

/** From here on the worksheet, which is the schedule itself, replaces the table. */
const TABLE_ENDS = new Decimal(100_000);
const FIRST_BANDS = [0, 5, 15, 25].map((edge) => new Decimal(edge));
const NARROW_BANDS_END = new Decimal(3_000);
const NARROW = new Decimal(25);
const WIDE = new Decimal(50);

/** The middle of the band of the Tax Table in which an income lies; the first band's tax is nothing. */
function middleOfBand(income: Decimal): Decimal {
  const [, five, fifteen, twentyFive] = FIRST_BANDS;
  if (!five || !fifteen || !twentyFive || income.lessThan(five)) return ZERO;
  if (income.lessThan(fifteen)) return five.plus(fifteen).div(2);
  if (income.lessThan(twentyFive)) return fifteen.plus(twentyFive).div(2);
  const width = income.lessThan(NARROW_BANDS_END) ? NARROW : WIDE;
  return income.div(width).floor().times(width).plus(width.div(2));
}

/**
 * Tax at ordinary rates as the return wants it: the Tax Table below 100,000, the Tax Computation Worksheet from there on.
 *
 * The printed table is the schedule's tax on the middle of each band, rounded to the dollar, half up. No paper of the Internal
 * Revenue Service says so; it gives every printed amount that was held against it.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxableIncome - Dollars, all at ordinary rates.
 * @param rules - Rates and the income up to which each runs.
 * @returns Dollars: whole from the table, not rounded from the worksheet.
 * @throws NotInTableError for a year whose rates are not held.
 * @see 26 U.S.C. 3; Instructions for Form 1040, line 16
 *
 * @example
 * ordinaryTax(2025, "single", 99_999.99) //=> 16909, while 100_000 gives 16914
 */
export function ordinaryTax(
  taxYear: TaxYear,
  status: FilingStatus,
  taxableIncome: Decimal,
  rules: Pick<Rulebook, "incomeTaxRates">
): Decimal {
  if (taxableIncome.greaterThanOrEqualTo(TABLE_ENDS)) {
    return scheduleTax(taxYear, status, taxableIncome, rules);
  }
  return toWholeDollars(scheduleTax(taxYear, status, middleOfBand(taxableIncome), rules));
}
