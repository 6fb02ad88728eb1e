import { closestName } from "../../functions/arguments/closestName";
import type { StandInHost } from "../../host/standInHost";
import { formulaPieces } from "../../host/formulaPieces";

/**
 * Names a function in a formula that does not exist but is almost one of ours.
 *
 * @param formula - The formula of a cell that shows #NAME?.
 * @param host - The host of our functions.
 * @returns One or two sentences; undefined if no function in the formula looks like ours.
 */
export function unknownFunctionSentence(formula: string, host: StandInHost): string | undefined {
  const names = [...host.functions.keys()];
  const prefix = `${host.namespace}.`;
  for (const { kind, text } of formulaPieces(formula)) {
    if (kind !== "call") continue;
    const called = text.toUpperCase();
    if (names.includes(called))
      return `The functions of the add-in begin with ${prefix} Enter ${prefix}${called}.`;
    const name = called.startsWith(prefix) ? called.slice(prefix.length) : undefined;
    if (name !== undefined && !names.includes(name))
      return `${called} is not a function of the add-in. The closest name is ${prefix}${closestName(name, names)}.`;
  }
  return undefined;
}
