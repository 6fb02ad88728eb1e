import { correctedPieces } from "./formulaCorrections";
import type { FormulaPiece } from "./formulaPieces";
import type { OwnFunctionNames } from "./ownFunctionNames";

/** The mark for an omitted argument of one of our functions. */
export const OMITTED_MARK = "\u0001omitted";

/**
 * The text that the calculating library receives. Each call of our functions is in the typed spelling. Its extra first argument is
 * the number of the calling cell, by which the message and the number format of the result are found again. A mark replaces each
 * omitted argument, because the library does not distinguish it from a blank cell.
 */
export function calculationText(formula: string, site: number, names: OwnFunctionNames): string {
  const nesting: boolean[] = [];
  let text = "";
  let previous: FormulaPiece | undefined;
  let opening: string | undefined;
  const pieces = correctedPieces(names.pieces(formula));
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
