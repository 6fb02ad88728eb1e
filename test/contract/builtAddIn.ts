import { readFileSync } from "node:fs";
import vm from "node:vm";
import { customFunctions, type WorksheetFunction } from "../../src/host/customFunctions";

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

/**
 * Runs the built bundle in a context of its own, which has the language and `CustomFunctions` and nothing else of a page or of Node.
 *
 * @param surroundings - What else that context has.
 * @param script - What runs in it, the built bundle unless another is given.
 * @returns The functions it associates, by id; an id associated twice is an error.
 */
export function runBundle(
  surroundings: object = {},
  script: string = bundle
): ReadonlyMap<string, WorksheetFunction> {
  const functions = new Map<string, WorksheetFunction>();
  const host = customFunctions((id, worksheetFunction) => {
    if (functions.has(id)) throw new RangeError(`${id} is associated twice`);
    functions.set(id, worksheetFunction);
  });
  vm.runInNewContext(script, { ...surroundings, CustomFunctions: host });
  return functions;
}
