import { type FormulaPiece, formulaPieces } from "../../host/formulaPieces";

const FILE_PREFIX = "_xldudf_";

/** The names of the functions of the add-in in both spellings: as typed, and as a file stores them. */
export class OwnFunctionNames {
  readonly #byTypedName = new Map<string, string>();
  readonly #byFileName = new Map<string, string>();

  constructor(
    readonly namespace: string,
    names: Iterable<string>
  ) {
    for (const name of names) {
      this.#byTypedName.set(`${namespace}.${name}`.toUpperCase(), name);
      this.#byFileName.set(this.fileName(name).toUpperCase(), name);
    }
  }

  /** The spelling in a file: `_xldudf_`, namespace and name, with underscores instead of dots. */
  fileName(name: string): string {
    return `${FILE_PREFIX}${this.namespace}_${name}`.replaceAll(".", "_");
  }

  /** The spelling that a person types. */
  typedName(name: string): string {
    return `${this.namespace}.${name}`;
  }

  /** The name of the called function, or undefined when it is not one of ours. */
  find(word: string): { name: string; typed: boolean } | undefined {
    const upper = word.toUpperCase();
    const typed = this.#byTypedName.get(upper);
    if (typed !== undefined) return { name: typed, typed: true };
    const stored = this.#byFileName.get(upper);
    return stored === undefined ? undefined : { name: stored, typed: false };
  }

  /**
   * The pieces of a formula without the qualifier that some files have before a stored name, such as `[2]!_xldudf_…`. It refers to no
   * workbook, and appears only after the name was damaged.
   */
  pieces(formula: string): FormulaPiece[] {
    const pieces = formulaPieces(formula);
    if (!formula.includes(`!${FILE_PREFIX}`)) return pieces;
    return pieces.filter((piece, index) => {
      const mark = pieces[index + 1];
      const isMark = piece.text === "!" && this.#isStored(mark);
      const isQualifier = mark?.text === "!" && this.#isStored(pieces[index + 2]);
      return !isMark && !isQualifier;
    });
  }

  #isStored(piece: FormulaPiece | undefined): boolean {
    return piece?.kind === "call" && this.find(piece.text)?.typed === false;
  }
}
