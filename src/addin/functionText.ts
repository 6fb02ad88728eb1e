/** One argument of a worksheet function, as the metadata explains it. */
export interface ArgumentText {
  readonly name: string;
  readonly description: string;
  /** May be left out. */
  readonly optional?: boolean;
}

/** One worksheet function, as the metadata explains it. */
export interface FunctionText {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly ArgumentText[];
}

/** As much of functions.json as explains the functions. */
export interface Metadata {
  readonly functions: readonly FunctionText[];
}

/**
 * Reads how the functions are explained from the metadata that the host reads too, so that both say the same.
 *
 * @param metadata - Content of functions.json.
 * @returns The functions by name.
 */
export function functionTexts(metadata: Metadata): ReadonlyMap<string, FunctionText> {
  return new Map(metadata.functions.map((entry) => [entry.name, entry]));
}
