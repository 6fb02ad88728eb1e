import { yearOf } from "../../calendar/calendarDate";
import { requireReach } from "../../rules/listTable";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { StateExtension } from "../../rules/stateTable";
import type { State } from "../state";
import type { TaxYear } from "../taxYear";

/**
 * A state's rule on extensions of time to file.
 *
 * A rule for an earlier tax year, or one that is in doubt, is returned like any other: `stateRuleReliability` tells them apart.
 *
 * @param taxYear - Calendar tax year.
 * @param state - Postal code.
 * @param rules - The state rules.
 * @returns The rule.
 * @throws NotInTableError for a tax year or a state that the table does not cover.
 */
export function stateRule(
  taxYear: TaxYear,
  state: State,
  rules: Pick<Rulebook, "stateExtensions">
): StateExtension {
  const table = rules.stateExtensions;
  requireReach(table, taxYear.lastDay);
  const rule = table.rows.find((row) => row.state === state);
  if (!rule)
    throw new NotInTableError(
      table,
      `There is no rule for ${state} (rules/${table.id}.json). Check the state's current instructions.`
    );
  const { name, fromTaxYear } = rule;
  if (fromTaxYear !== undefined && yearOf(taxYear.lastDay) < fromTaxYear)
    throw new NotInTableError(
      table,
      `${name} is covered from tax year ${String(fromTaxYear)} (rules/${table.id}.json). Check the state's instructions for that year.`
    );
  return rule;
}
