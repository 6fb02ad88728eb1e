import { readFileSync } from "node:fs";
import vm from "node:vm";

/** A parameter as the host reads it. */
export interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
}

/** A function as the host reads it. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl?: string;
  readonly parameters: readonly Parameter[];
  readonly result: { readonly dimensionality?: string };
}

/** The content of functions.json, which describes the functions to the host. */
export interface Metadata {
  readonly functions: readonly FunctionMetadata[];
  readonly allowCustomDataForDataTypeAny?: boolean;
  readonly allowErrorForDataTypeAny?: boolean;
}

/** The text of a built file. */
export const built = (name: string): string =>
  readFileSync(new URL(`../../dist/${name}`, import.meta.url), "utf8");

/** The built bundle of the worksheet functions. */
export const bundle: string = built("functions.js");

/** The built functions.json. */
export const metadata = JSON.parse(built("functions.json")) as Metadata;

/** An error as the built functions throw or return it. */
export class BuiltError {
  constructor(
    readonly code: string,
    readonly message?: string
  ) {}
}

/** Runs one built function. */
export type BuiltFunction = (...cells: unknown[]) => unknown;

/**
 * Runs the built bundle in a context of its own with `CustomFunctions`, but without anything else of a page or of Node.
 *
 * @param surroundings - Further global names of that context.
 * @param script - What runs in it, by default the built bundle.
 * @returns The functions it associates, by id.
 * @throws RangeError where an id is associated twice.
 */
export function runBundle(
  surroundings: object = {},
  script: string = bundle
): ReadonlyMap<string, BuiltFunction> {
  const functions = new Map<string, BuiltFunction>();
  const associate = (id: string, worksheetFunction: BuiltFunction): void => {
    if (functions.has(id)) throw new RangeError(`${id} is associated twice`);
    functions.set(id, worksheetFunction);
  };
  const { ErrorCode } = CustomFunctions;
  const host = { associate, Error: BuiltError, ErrorCode };
  vm.runInNewContext(script, { ...surroundings, CustomFunctions: host });
  return functions;
}
