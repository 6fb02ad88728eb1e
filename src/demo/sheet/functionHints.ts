import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import type { FunctionMetadata } from "../../host/functionMetadata";

/**
 * What the grid shows of a function while its formula is typed: in the list of names, and argument by argument.
 *
 * @param entry - The function as functions.json describes it.
 * @param namespace - Stands before its name, with a dot.
 * @returns The grid's description of it.
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
