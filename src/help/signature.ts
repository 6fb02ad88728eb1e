import type { FunctionHelp } from "./helpModel";

/** How a function is written in a cell, with optional arguments in square brackets. */
export function signature({ name, arguments: given }: FunctionHelp): string {
  const names = given.map((argument) => (argument.optional ? `[${argument.name}]` : argument.name));
  return `=EXT.${name}(${names.join(", ")})`;
}

const FIRST_ROW = 2;
const LAST_ROW = 41;

/** A call on a client list, with the required arguments in the columns from B on. */
export function calledOnList(
  { name, arguments: given }: FunctionHelp,
  reach: "first row" | "whole list"
): string {
  const cells = given
    .filter(({ optional }) => !optional)
    .map((_argument, index) => String.fromCharCode("B".charCodeAt(0) + index))
    .map((column) => {
      const first = `${column}${String(FIRST_ROW)}`;
      return reach === "first row" ? first : `${first}:${column}${String(LAST_ROW)}`;
    });
  return `=EXT.${name}(${cells.join(",")})`;
}
