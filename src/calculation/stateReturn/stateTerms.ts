import { yearOf } from "../../calendar/calendarDate";
import type { StateExtension, StateTerm } from "../../rules/stateTable";
import type { TaxYear } from "../taxYear";

/**
 * The terms of a state's rule for a tax year.
 *
 * @param taxYear - Calendar tax year.
 * @param rule - The state's rule.
 * @returns The terms in the order of the rule, without those of later tax years.
 * @see The state's own text, named in rules/state-extensions.json
 *
 * @example
 * // South Carolina's electronic due date was read for tax year 2025: not among the terms for 2024
 */
export function stateTerms(
  taxYear: TaxYear,
  rule: Pick<StateExtension, "terms">
): readonly StateTerm[] {
  const year = yearOf(taxYear.lastDay);
  return rule.terms.filter(({ fromTaxYear = year }) => fromTaxYear <= year);
}
