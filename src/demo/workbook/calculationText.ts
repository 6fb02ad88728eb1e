import type { FormulaPiece } from "./formulaPieces";
import type { OwnFunctionNames } from "./ownFunctionNames";

/** What stands in the calculated text for an argument of ours that was left out. */
export const OMITTED_MARK = "\u0001omitted";

/**
 * The text handed to the calculating library: every call of ours in the typed spelling, with the
 * number of the calling cell as an extra first argument, so that an answer's sentence and number
 * format find their way back to the cell, and with a mark for every argument left out, which the
 * library could not tell from a blank cell.
 */
export function calculationText(formula: string, site: number, names: OwnFunctionNames): string {
  const nesting: boolean[] = [];
  let text = "";
  let previous: FormulaPiece | undefined;
  let opening: string | undefined;
  const pieces = names.pieces(formula);
  for (const [index, piece] of pieces.entries()) {
    if (piece.kind === "call") {
      const own = names.find(piece.text);
      opening = own === undefined ? undefined : names.typedName(own.name);
      text += opening ?? piece.text;
    } else if (piece.text === "(" || piece.text === "{") {
      const isOwn = opening !== undefined && previous?.kind === "call";
      nesting.push(isOwn);
      text += piece.text;
      if (isOwn) text += nextIsClosing(pieces, index) ? String(site) : `${site},`;
    } else if (piece.text === ")" || piece.text === "}" || piece.text === ",") {
      const isOwn = nesting.at(-1) === true;
      const isEmptyCall = piece.text === ")" && previous?.text === "(";
      const leftOut = previous?.text === "," || previous?.text === "(";
      if (isOwn && leftOut && !isEmptyCall) text += `"${OMITTED_MARK}"`;
      if (piece.text !== ",") nesting.pop();
      text += piece.text;
    } else {
      text += piece.text;
    }
    if (piece.kind !== "space") previous = piece;
  }
  return text;
}

function nextIsClosing(pieces: readonly FormulaPiece[], index: number): boolean {
  return pieces.slice(index + 1).find((piece) => piece.kind !== "space")?.text === ")";
}
