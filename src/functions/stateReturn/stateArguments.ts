import { stateRule, type StateRule } from "../../calculation/stateReturn/stateRule";
import type { TaxYear } from "../../calculation/taxYear";
import { NotInTableError } from "../../rules/notInTableError";
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
 * @throws NotInTableError for a state without a rule, or with a rule in doubt unless `allowUnverified` is yes.
 */
export function stateRuleFor(
  { taxYear, state, allowUnverified }: Given<typeof askedState>,
  rules: Pick<Rulebook, "stateExtensions">
): AskedState {
  const asked = stateRule(taxYear, state, rules);
  if (asked.doubt !== undefined && !allowUnverified)
    throw new NotInTableError(
      rules.stateExtensions,
      `${asked.rule.name} is not shown because ${asked.doubt}. Check the state's current instructions, or set allowUnverified to yes.`
    );
  return { taxYear, ...asked };
}
