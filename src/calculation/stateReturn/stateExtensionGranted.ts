import { Decimal } from "../../money/dollars";
import type { StateTerm } from "../../rules/stateTable";

/** What a state considers before it extends the time to file. */
export interface StateSituation {
  /** Whether the federal request was made on time. */
  readonly federalExtension: boolean;
  /** Fraction of the state tax paid by the state's due date; `undefined` if not known. */
  readonly percentPaid?: Decimal | undefined;
  /** Whether the state's own request was made on time. */
  readonly stateRequest: boolean;
}

/** Whether a state grants its extension, or the fraction of its tax that would be enough while the fraction paid is not known. */
export type StateExtensionGranted = "granted" | "not granted" | { readonly percentNeeded: Decimal };

/** What a term that grants the extension starts from; `undefined` for any other term. */
type GrantedBy = StateTerm["by"];

function isMade(by: GrantedBy, { federalExtension, stateRequest }: StateSituation): boolean {
  switch (by) {
    case "automatic":
      return true;
    case "federal extension":
      return federalExtension;
    case "state request":
      return stateRequest;
    case undefined:
      return false;
  }
}

/**
 * Whether a state extends the time to file in a situation. One term that grants the extension is enough. Terms that only avoid a
 * penalty do not count.
 *
 * @param terms - The terms of the state's rule for the tax year.
 * @param situation - Federal request, fraction of the state tax paid, the state's own request.
 * @returns Whether the extended due date applies. The lowest fraction that is enough, if it depends on a fraction paid that is not
 *   given.
 * @see The state's own text, named in rules/state-extensions.json
 *
 * @example
 * // Rhode Island grants it with a federal extension if all is paid, or with its own form if 80% is paid
 */
export function stateExtensionGranted(
  terms: readonly Pick<StateTerm, "by" | "percentPaid">[],
  situation: StateSituation
): StateExtensionGranted {
  const { percentPaid: paid } = situation;
  const needed = terms
    .filter(({ by }) => isMade(by, situation))
    .map(({ percentPaid }) => percentPaid ?? new Decimal(0));
  if (needed.length === 0) return "not granted";
  const percentNeeded = Decimal.min(...needed);
  if (percentNeeded.isZero()) return "granted";
  if (paid === undefined) return { percentNeeded };
  return paid.greaterThanOrEqualTo(percentNeeded) ? "granted" : "not granted";
}
