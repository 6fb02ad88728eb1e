import type { StateExtension } from "../../../src/rules/stateTable";
import { rulebook } from "../../../src/rules/rulebook";

/** The rule of a state that the rules have. */
export function ruleOf(state: string): StateExtension {
  const rule = rulebook.stateExtensions.rows.find((row) => row.state === state);
  if (!rule) throw new RangeError(`no rule of ${state}`);
  return rule;
}
