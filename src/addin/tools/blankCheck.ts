/** How Excel passes a blank cell to a function; `undefined` if the check could not tell. */
export type BlankHabit = "blank" | "0" | undefined;

/**
 * A formula with known values, and the same with a blank cell: the balance due of a total tax of 3. The formulas are in A1 and B1, so
 * that C1 is blank. SHORTFALL refuses blank payments and takes payments of 0.
 */
export const BLANK_CHECK: readonly string[] = ["=EXT.SHORTFALL(3,1)", "=EXT.SHORTFALL(3,C1)"];

/**
 * Reads the answers to {@link BLANK_CHECK}.
 *
 * @param shown - What the two cells show.
 */
export function blankHabit([known, withBlank]: readonly unknown[]): BlankHabit {
  if (known !== 2) return undefined;
  if (withBlank === 3) return "0";
  return withBlank === "#VALUE!" ? "blank" : undefined;
}

/** What to say of each finding. */
export function blankSentence(habit: BlankHabit): string {
  switch (habit) {
    case "blank":
      return "This Excel sends a blank cell as blank. The functions ask for the figures that are missing.";
    case "0":
      return "This Excel sends a blank cell as 0, so a missing amount is calculated as 0 and no message asks for it. Fill every amount, or update Excel.";
    case undefined:
      return "The check did not get an answer from the functions. Recalculate this workbook, then try again.";
  }
}
