import type { Decimal } from "../../money/dollars";
import type { StateExtension } from "../../rules/stateTable";

/** What a state considers before it extends the time to file. */
export interface StateSituation {
  /** Whether the federal request was made on time. */
  readonly federalExtension: boolean;
  /** Fraction of the state tax paid by the state's due date; `undefined` if not known. */
  readonly percentPaid?: Decimal | undefined;
  /** Whether the state's own request was made on time. */
  readonly stateRequest: boolean;
}

/** Whether a state grants its extension, or that the percent of its tax paid by the due date must be known first. */
export type StateExtensionGranted = "granted" | "not granted" | "percent paid unknown";

const grantedIf = (condition: boolean): StateExtensionGranted =>
  condition ? "granted" : "not granted";

function grantedIfPaid(
  { percentPaid: needed }: StateExtension,
  paid: Decimal | undefined
): StateExtensionGranted {
  if (needed === undefined) return "granted";
  return paid === undefined ? "percent paid unknown" : grantedIf(paid.greaterThanOrEqualTo(needed));
}

/**
 * Whether a state extends the time to file in a situation.
 *
 * @param rule - The state's rule.
 * @param situation - Federal request, percent of the state tax paid, the state's own request.
 * @returns Whether the extended due date applies. `percent paid unknown` if the state needs a percent of its tax to be paid by the
 *   due date and `percentPaid` is not given.
 * @see The state's own text, named in rules/state-extensions.json
 */
export function stateExtensionGranted(
  rule: StateExtension,
  situation: StateSituation
): StateExtensionGranted {
  const { federalExtension, percentPaid, stateRequest } = situation;
  switch (rule.grant) {
    case "automatic":
      return "granted";
    case "automatic if paid":
      return grantedIfPaid(rule, percentPaid);
    case "with the federal extension":
      return grantedIf(federalExtension || stateRequest);
    case "with the federal extension if paid":
      if (stateRequest) return "granted";
      return federalExtension ? grantedIfPaid(rule, percentPaid) : "not granted";
    case "own request":
      return grantedIf(stateRequest);
    case "no return":
      return "not granted";
  }
}
