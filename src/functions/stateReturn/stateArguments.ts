import { stateExtensionGranted } from "../../calculation/stateReturn/stateExtensionGranted";
import { stateRule, type StateRule } from "../../calculation/stateReturn/stateRule";
import type { TaxYear } from "../../calculation/taxYear";
import type { Rulebook } from "../../rules/rulebook";
import type { Given } from "../arguments/argumentKind";
import { percentPaid } from "../arguments/percent";
import { stateOfReturn } from "../arguments/state";
import { calendarYear } from "../arguments/taxYear";
import { yesNo } from "../arguments/yesNo";

/** Which state rule is asked for. */
export const askedState = { taxYear: calendarYear, state: stateOfReturn, allowUnverified: yesNo };

/** What decides whether a state grants the extension. */
export const situation = {
  taxYear: calendarYear,
  state: stateOfReturn,
  federalExtension: yesNo,
  percentPaid,
  stateRequest: yesNo,
  allowUnverified: yesNo,
};

/** A state rule with the year it was asked for. */
export type AskedState = StateRule & { readonly taxYear: TaxYear };

/**
 * The rule of a state.
 *
 * @throws NotInTableError for a state without a rule, or with an unverified rule unless `allowUnverified` is yes.
 */
export function stateRuleFor(
  { taxYear, state, allowUnverified }: Given<typeof askedState>,
  rules: Pick<Rulebook, "stateExtensions">
): AskedState {
  return { taxYear, ...stateRule(taxYear, state, allowUnverified, rules) };
}

/** Whether the state grants the extension in this situation. */
export function isGranted(given: Given<typeof situation>, { rule }: StateRule): boolean {
  return stateExtensionGranted(rule, given);
}

/** Whether the answer depends on the percent of the state tax that was paid. */
export function needsPercentPaid(
  { federalExtension, stateRequest }: Given<typeof situation>,
  { rule }: StateRule
): boolean {
  return (
    rule.grant === "automatic if paid" ||
    (rule.grant === "with the federal extension if paid" && federalExtension && !stateRequest)
  );
}
