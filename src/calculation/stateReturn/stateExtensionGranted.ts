import { InputError } from "../../functions/cells/inputError";
import type { Decimal } from "../../money/dollars";
import type { StateExtension } from "../../rules/stateTable";

/** What a state looks at before it grants more time. */
export interface StateSituation {
  /** The federal extension was asked for in time. */
  readonly federalExtension: boolean;
  /** Share of the state tax paid by the state's due date. */
  readonly percentPaid?: Decimal | undefined;
  /** The state's own request was made in time. */
  readonly stateRequest: boolean;
}

function paidEnough(
  { name, percentPaid: needed }: StateExtension,
  paid: Decimal | undefined
): boolean {
  if (needed === undefined) return true;
  if (paid === undefined) {
    const percent = needed.times(100).toString();
    throw new InputError(
      "percentPaid",
      `is empty; ${name} grants the extension only when ${percent}% of its tax is paid by the due date, give the share paid`
    );
  }
  return paid.greaterThanOrEqualTo(needed);
}

/**
 * Whether a state grants more time to file in a situation.
 *
 * @param rule - The state's rule.
 * @param situation - Federal request, share of the state tax paid, the state's own request.
 * @returns Whether the extended day holds.
 * @throws InputError when the state asks for a share of its tax to be paid and none is given.
 */
export function stateExtensionGranted(rule: StateExtension, situation: StateSituation): boolean {
  const { federalExtension, percentPaid, stateRequest } = situation;
  switch (rule.grant) {
    case "automatic":
      return true;
    case "automatic if paid":
      return paidEnough(rule, percentPaid);
    case "with the federal extension":
      return federalExtension || stateRequest;
    case "with the federal extension if paid":
      return stateRequest || (federalExtension && paidEnough(rule, percentPaid));
    case "own request":
      return stateRequest;
    case "no return":
      return false;
  }
}
