import type { FormulaPiece } from "../../host/formulaPieces";

const FILE_PREFIX = "_xlpm.";

interface OpenCall {
  readonly name: string;
  position: number;
  /** The words and the other pieces of the argument that is read. */
  argument: FormulaPiece[];
}

function isVariable(call: OpenCall): boolean {
  const [word] = call.argument;
  if (call.argument.length !== 1 || word?.kind !== "word") return false;
  return call.name === "LAMBDA" || (call.name === "LET" && call.position % 2 === 0);
}

/** The names that a formula defines with LET and LAMBDA, in capitals. */
export function formulaVariables(pieces: readonly FormulaPiece[]): ReadonlySet<string> {
  const variables = new Set<string>();
  const open: OpenCall[] = [];
  let called = "";
  for (const piece of pieces) {
    const call = open.at(-1);
    if (piece.kind === "space") continue;
    if (piece.text === "(" || piece.text === "{") {
      call?.argument.push(piece);
      const name = called.toUpperCase().replace("_XLFN.", "");
      open.push({ name, position: 0, argument: [] });
    } else if (piece.text === ")" || piece.text === "}") {
      open.pop();
    } else if (piece.text === "," && call !== undefined) {
      if (isVariable(call)) variables.add((call.argument[0]?.text ?? "").toUpperCase());
      call.position += 1;
      call.argument = [];
    } else {
      call?.argument.push(piece);
    }
    called = piece.kind === "call" ? piece.text : "";
  }
  return variables;
}

/** A variable as a file stores it; any other word does not change. */
export function storedWord(word: string, variables: ReadonlySet<string>): string {
  const isStored = word.toLowerCase().startsWith(FILE_PREFIX);
  return !isStored && variables.has(word.toUpperCase()) ? `${FILE_PREFIX}${word}` : word;
}
