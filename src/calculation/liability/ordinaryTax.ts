import { toWholeDollars, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { scheduleTax } from "./scheduleTax";

type TableRows = Rulebook["taxTable"]["entries"][number]["figures"]["rows"];

/** Dollars in the middle of the row of the Tax Table that has an income; `undefined` if the income is above the table. */
function middleOfRow(income: Decimal, rows: TableRows): Decimal | undefined {
  const index = rows.findIndex(({ upTo }) => income.lessThan(upTo));
  const rowsOfWidth = rows[index];
  if (!rowsOfWidth) return undefined;
  const { width } = rowsOfWidth;
  const first = rows[index - 1]?.upTo ?? width.minus(width);
  return first.plus(income.minus(first).div(width).floor().times(width)).plus(width.div(2));
}

/**
 * Tax at ordinary rates for the return: the Tax Table below $100,000, the Tax Computation Worksheet from $100,000.
 *
 * The amount printed in the table is the tax by the schedule on the middle of the row, rounded to the dollar, half up. No text of the
 * Internal Revenue Service says so, but it gives every printed amount that was compared.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxableIncome - Dollars, all at ordinary rates.
 * @param rules - Brackets and rows of the table by year.
 * @returns Dollars: whole from the table, not rounded from the worksheet.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 3; Form 1040 instructions, line 16
 *
 * @example
 * ordinaryTax(2025, "single", 99_999.99) //=> 16909, while 100_000 gives 16914
 */
export function ordinaryTax(
  taxYear: TaxYear,
  status: FilingStatus,
  taxableIncome: Decimal,
  rules: Pick<Rulebook, "incomeTaxRates" | "taxTable">
): Decimal {
  const onSchedule = scheduleTax(taxYear, status, taxableIncome, rules);
  const { rows } = entryOn(rules.taxTable, taxYear.firstDay).figures;
  const middle = middleOfRow(taxableIncome, rows);
  if (middle === undefined) return onSchedule;
  return toWholeDollars(scheduleTax(taxYear, status, middle, rules));
}
