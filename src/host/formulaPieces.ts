/** A piece of a formula text: the name of a call, quoted text, punctuation that nests, or other text. */
export interface FormulaPiece {
  readonly kind: "call" | "word" | "quoted" | "bracket" | "punctuation" | "space" | "other";
  readonly text: string;
}

const WORD = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/uy;
const SPACE = /\s+/y;
const REFERENCE = /\$?[A-Za-z]{1,3}\$?\d+(?![\p{L}\p{N}_.(])/uy;

function quotedEnd(text: string, start: number): number {
  const quote = text[start];
  let at = start + 1;
  while (at < text.length) {
    if (text[at] === quote) {
      if (text[at + 1] !== quote) return at + 1;
      at += 1;
    }
    at += 1;
  }
  return text.length;
}

function bracketEnd(text: string, start: number): number {
  let depth = 0;
  for (let at = start; at < text.length; at += 1) {
    if (text[at] === "'") at += 1;
    else if (text[at] === "[") depth += 1;
    else if (text[at] === "]") {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return text.length;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}

function pieceAt(text: string, at: number): FormulaPiece {
  const character = text.charAt(at);
  if (character === '"' || character === "'") {
    return { kind: "quoted", text: text.slice(at, quotedEnd(text, at)) };
  }
  if (character === "[") return { kind: "bracket", text: text.slice(at, bracketEnd(text, at)) };
  if ("(){},;".includes(character)) return { kind: "punctuation", text: character };
  const space = matchAt(SPACE, text, at);
  if (space !== undefined) return { kind: "space", text: space };
  const reference = matchAt(REFERENCE, text, at);
  if (reference !== undefined) return { kind: "other", text: reference };
  const word = matchAt(WORD, text, at);
  if (word !== undefined) {
    return {
      kind: text.charAt(at + word.length) === "(" ? "call" : "word",
      text: word,
    };
  }
  return { kind: "other", text: character };
}

/** Splits a formula into pieces, whose joined texts are the formula. */
export function formulaPieces(formula: string): FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  for (let at = 0; at < formula.length;) {
    const piece = pieceAt(formula, at);
    pieces.push(piece);
    at += piece.text.length;
  }
  return pieces;
}

/** The formula that pieces are. */
export function joined(pieces: readonly FormulaPiece[]): string {
  return pieces.map(({ text }) => text).join("");
}
