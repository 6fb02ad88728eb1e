import { calendarDate, yearOf } from "../../calendar/calendarDate";
import { requireReach, type ListTable } from "../../rules/listTable";
import type { TaxYear } from "../taxYear";

/**
 * The edition of Form 4868 that a tax year uses. A fiscal year takes the form of the year in which it begins: common practice,
 * without a source.
 *
 * @param taxYear - Tax year of the return.
 * @param table - What is looked up in that edition.
 * @returns The tax year printed on the form.
 * @throws NotInTableError for an edition that the table does not cover.
 * @see Form 4868
 *
 * @example
 * // The fiscal year that ends on 6/30/2026: the form of 2025
 */
export function formEdition<Row>(taxYear: TaxYear, table: ListTable<Row>): number {
  const edition = yearOf(taxYear.firstDay);
  requireReach(table, calendarDate(`${String(edition)}-12-31`));
  return edition;
}
