import { yearOf } from "../../calendar/calendarDate";
import type { StateExtension } from "../../rules/stateTable";
import type { TaxYear } from "../taxYear";

/** Age of a state's text: for the tax year or a later one, for an earlier tax year, or without a tax year. */
export type RuleAge = "current" | "older" | "undated";

/** How far a state's rule can be relied on. */
export interface RuleReliability {
  readonly age: RuleAge;
  /** Why the rule is in doubt, whatever its age; `undefined` if it is not. */
  readonly doubt: string | undefined;
}

/**
 * How far a state's rule can be relied on for a tax year.
 *
 * The rules come from texts of many years. A rule is in doubt if nobody has read the state's text, or if its sources disagree.
 *
 * @param taxYear - Calendar tax year.
 * @param rule - The state's rule.
 * @returns Its age, and the reason for doubt, if any.
 */
export function stateRuleReliability(taxYear: TaxYear, rule: StateExtension): RuleReliability {
  const { sourceTaxYear, unsettled, source } = rule;
  const doubt = source.confidence === "memory" ? "the rule is unverified" : unsettled;
  if (sourceTaxYear === undefined) return { age: "undated", doubt };
  return { age: sourceTaxYear < yearOf(taxYear.lastDay) ? "older" : "current", doubt };
}
