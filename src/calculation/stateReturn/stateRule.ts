import { yearOf } from "../../calendar/calendarDate";
import { requireReach, type Sourced } from "../../rules/listTable";
import { NotHeldError } from "../../rules/notHeldError";
import type { Rulebook } from "../../rules/rulebook";
import type { StateExtension } from "../../rules/stateTable";
import type { State } from "../state";
import type { TaxYear } from "../taxYear";

/** How a state's rule stands to the tax year asked for: read for it or a later one, read for an earlier one, or undated. */
export type RuleAge = "current" | "older" | "undated";

/** A state's rule with how far it may be relied on. */
export interface StateRule {
  readonly rule: Sourced<StateExtension>;
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
 * @throws NotPublishedError for a tax year beyond the table; NotHeldError for a state without a rule, or with one that is refused.
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
  if (!rule) throw new NotHeldError(`${table.title}: no rule is held for ${state}`, table.id);
  const { name, fromTaxYear, sourceTaxYear, unsettled, source } = rule;
  if (fromTaxYear !== undefined && year < fromTaxYear)
    throw new NotHeldError(
      `${table.title}: ${name} is held only from tax year ${String(fromTaxYear)} on`,
      table.id
    );
  const doubt = source.confidence === "memory" ? "the rule is only from memory" : unsettled;
  if (doubt !== undefined && !allowUnverified)
    throw new NotHeldError(
      `${table.title}: ${name} is refused because ${doubt}; check the state's own text, or set acceptOld to yes`,
      table.id
    );
  if (sourceTaxYear === undefined) return { rule, age: "undated" };
  return { rule, age: sourceTaxYear < year ? "older" : "current" };
}
