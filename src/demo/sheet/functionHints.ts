import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import type { FunctionMetadata } from "../../host/functionMetadata";

/**
 * The description of a function that the grid shows while a formula is typed.
 *
 * @param entry - The function as functions.json describes it.
 * @param namespace - The namespace before the name of the function.
 * @returns The description for the grid.
 */
export function functionHint(entry: FunctionMetadata, namespace: string): IFunctionInfo {
  const description = entry.description ?? "";
  return {
    functionName: `${namespace}.${entry.name}`,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: entry.parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description ?? "",
      example: "",
      require: parameter.optional === true ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: parameter.repeating === true ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    })),
  };
}
