import { extensionParts } from "../../calculation/stateReturn/extensionParts";
import { stateRule } from "../../calculation/stateReturn/stateRule";
import {
  stateRuleReliability,
  type StateRulePart,
} from "../../calculation/stateReturn/stateRuleReliability";
import type { TaxYear } from "../../calculation/taxYear";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { StateExtension } from "../../rules/stateTable";
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

type AskedState = Given<typeof askedState>;
type StateRules = Pick<Rulebook, "stateExtensions">;

function ruleWithoutDoubt(
  { taxYear, state, allowUnverified }: AskedState,
  rules: StateRules,
  partsOf: (taxYear: TaxYear, rule: StateExtension) => readonly StateRulePart[]
): StateExtension {
  const rule = stateRule(taxYear, state, rules);
  const doubt = partsOf(taxYear, rule)
    .map((part) => stateRuleReliability(taxYear, part).doubt)
    .find((reason) => reason !== undefined);
  if (doubt === undefined || allowUnverified) return rule;
  throw new NotInTableError(
    rules.stateExtensions,
    `${rule.name} is not shown because ${doubt}. Check the state's current instructions, or set allowUnverified to yes.`
  );
}

/**
 * The rule of a state, for its regular due date.
 *
 * @throws NotInTableError for a state without a rule, or with dates in doubt unless `allowUnverified` is yes.
 */
export function ruleOfDueDate(given: AskedState, rules: StateRules): StateExtension {
  return ruleWithoutDoubt(given, rules, (_taxYear, rule) => [rule]);
}

/**
 * The rule of a state, for its extension.
 *
 * @throws NotInTableError for a state without a rule, or with dates or a term that grants the extension in doubt, unless
 *   `allowUnverified` is yes.
 */
export function ruleOfExtension(given: AskedState, rules: StateRules): StateExtension {
  return ruleWithoutDoubt(given, rules, extensionParts);
}
