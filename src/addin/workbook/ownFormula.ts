/** A call of one of the functions: as typed, and as a file keeps it or Excel shows it before it knows the add-in. */
const OWN_CALL = /(?<![\w.])(?:_xldudf_)?EXT[._]([A-Z]+)\(/gi;
/** What a cell shows whose formula was calculated before the add-in was loaded. */
const NOT_LOADED = ["#NAME?", "#BUSY!"];

/**
 * Whether a formula must be entered again, because it calls one of the functions and Excel calculated it before it knew them. Excel
 * does not calculate such a cell again when the add-in is loaded (OfficeDev/office-js, issue 6611).
 *
 * @param formula - The content of the cell.
 * @param shown - What the cell shows.
 */
export function mustBeEnteredAgain(formula: unknown, shown: unknown): formula is string {
  return (
    typeof formula === "string" &&
    formula.startsWith("=") &&
    NOT_LOADED.includes(String(shown)) &&
    formula.search(OWN_CALL) >= 0
  );
}

/**
 * A formula as a preparer types it.
 *
 * @example
 * typedFormula("=_xldudf_EXT_DUE(2025)") //=> "=EXT.DUE(2025)"
 */
export function typedFormula(formula: string): string {
  return formula.replace(OWN_CALL, (_call, name: string) => `EXT.${name.toUpperCase()}(`);
}

/** Whether a formula calls one of the functions. */
export function callsOwnFunction(formula: string): boolean {
  return formula.startsWith("=") && formula.search(OWN_CALL) >= 0;
}
