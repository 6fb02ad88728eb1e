/** One argument of a worksheet function, as the metadata explains it. */
export interface ArgumentText {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
}

/** One worksheet function, as the metadata explains it. */
export interface FunctionText {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly ArgumentText[];
}

/** The part of functions.json that describes the functions. */
export interface Metadata {
  readonly functions: readonly FunctionText[];
}

/**
 * The descriptions of the functions, from the same file that the host reads.
 *
 * @param metadata - Content of functions.json.
 * @returns The functions by name.
 */
export function functionTexts(metadata: Metadata): ReadonlyMap<string, FunctionText> {
  return new Map(metadata.functions.map((entry) => [entry.name, entry]));
}
