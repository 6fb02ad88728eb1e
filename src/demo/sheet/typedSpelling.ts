import type { OwnFunctionNames } from "../workbook/ownFunctionNames";

const STORED_PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/**
 * A formula of a file as a person types it: our functions with their dots, and newer built-in functions without their prefixes.
 *
 * @param formula - The formula without its equals sign.
 * @param names - The names of our functions.
 * @returns The formula as typed, without an equals sign.
 */
export function typedSpelling(formula: string, names: OwnFunctionNames): string {
  return names
    .pieces(formula)
    .map(({ kind, text }) => {
      if (kind !== "call" && kind !== "word") return text;
      const own = kind === "call" ? names.find(text) : undefined;
      return own ? names.typedName(own.name) : text.replace(STORED_PREFIX, "");
    })
    .join("");
}
