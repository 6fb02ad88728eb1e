import type { Rulebook } from "../../rules/rulebook";
import { requireReach } from "../../rules/listTable";
import type { TaxYear } from "../taxYear";

/** The relief for a clean history that applies to a tax year: its name, the years it looks at, and how to get it. */
export type CleanHistoryRule = Rulebook["cleanHistoryRelief"]["rows"][number];

/**
 * The relief for a clean history that applies to the penalties of a tax year.
 *
 * First-time abatement is given on request. From tax year 2025 on the IRS replaces it step by step by an exemption without a request.
 *
 * @param taxYear - The penalized tax year.
 * @param rules - The reliefs by tax year.
 * @returns The relief, with what to confirm first.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see IRM 20.1.1.3.3.2.1
 *
 * @example
 * // tax year 2024: first-time abatement; tax year 2026: automatic exemption from penalty
 */
export function cleanHistoryRule(
  { lastDay }: TaxYear,
  { cleanHistoryRelief: table }: Pick<Rulebook, "cleanHistoryRelief">
): CleanHistoryRule {
  requireReach(table, lastDay);
  const rule = table.rows.findLast(({ from }) => from <= lastDay);
  if (!rule) throw new RangeError(`${table.id}: no relief from the first date on`);
  return rule;
}
