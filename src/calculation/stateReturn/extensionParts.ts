import type { StateExtension } from "../../rules/stateTable";
import type { TaxYear } from "../taxYear";
import type { StateRulePart } from "./stateRuleReliability";
import { stateTerms } from "./stateTerms";

/**
 * The parts of a state's rule that decide the extended due date: its dates and the terms that grant the extension.
 *
 * Forms, penalties and terms that only avoid a penalty are left out: a doubt about them does not change the date.
 *
 * @param taxYear - Calendar tax year.
 * @param rule - The state's rule.
 * @returns The dates first, then the terms in the order of the rule.
 */
export function extensionParts(taxYear: TaxYear, rule: StateExtension): readonly StateRulePart[] {
  return [rule, ...stateTerms(taxYear, rule).filter(({ by }) => by !== undefined)];
}
