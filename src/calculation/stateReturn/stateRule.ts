import { yearOf } from "../../calendar/calendarDate";
import { requireReach } from "../../rules/listTable";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { StateExtension } from "../../rules/stateTable";
import type { State } from "../state";
import type { TaxYear } from "../taxYear";

/** How a state's rule stands to the tax year asked for: read for it or a later one, read for an earlier one, or undated. */
export type RuleAge = "current" | "older" | "undated";

/** A state's rule with how far it may be relied on. */
export interface StateRule {
  readonly rule: StateExtension;
  readonly age: RuleAge;
}

/**
 * A state's rule on more time to file.
 *
 * The rules were gathered from texts of many years. One read for an earlier tax year is answered and says so; one that is only
 * remembered, or on which the reports disagree, is refused unless the preparer takes it knowingly.
 *
 * @param taxYear - Calendar tax year.
 * @param state - Postal code.
 * @param allowUnverified - Whether to answer from memory and from reports that disagree.
 * @param rules - The states' rules.
 * @returns The rule and its age.
 * @throws NotInTableError for a tax year or a state that the table does not cover, or a rule that is not shown.
 */
export function stateRule(
  taxYear: TaxYear,
  state: State,
  allowUnverified: boolean,
  rules: Pick<Rulebook, "stateExtensions">
): StateRule {
  const table = rules.stateExtensions;
  requireReach(table, taxYear.lastDay);
  const year = yearOf(taxYear.lastDay);
  const rule = table.rows.find((row) => row.state === state);
  if (!rule)
    throw new NotInTableError(
      table,
      `There is no rule for ${state} (rules/${table.id}.json). Check the state's current instructions.`
    );
  const { name, fromTaxYear, sourceTaxYear, unsettled, source } = rule;
  if (fromTaxYear !== undefined && year < fromTaxYear)
    throw new NotInTableError(
      table,
      `${name} is covered from tax year ${String(fromTaxYear)} (rules/${table.id}.json). Check the state's instructions for that year.`
    );
  const doubt = source.confidence === "memory" ? "the rule is only from memory" : unsettled;
  if (doubt !== undefined && !allowUnverified)
    throw new NotInTableError(
      table,
      `${name} is not shown because ${doubt}. Check the state's current instructions, or set allowUnverified to yes.`
    );
  if (sourceTaxYear === undefined) return { rule, age: "undated" };
  return { rule, age: sourceTaxYear < year ? "older" : "current" };
}
