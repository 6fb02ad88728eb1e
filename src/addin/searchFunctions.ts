import type { FunctionText } from "./functionText";

/**
 * The functions whose name, description or arguments contain every word of a search.
 *
 * @param texts - The functions' texts.
 * @param search - The words; a blank search finds all functions.
 * @returns Their names.
 */
export function searchFunctions(
  texts: ReadonlyMap<string, FunctionText>,
  search: string
): ReadonlySet<string> {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  const found = [...texts.values()].filter(({ name, description, parameters }) => {
    const all = [name, description, ...parameters.flatMap((one) => [one.name, one.description])];
    const text = all.join(" ").toLowerCase();
    return words.every((word) => text.includes(word));
  });
  return new Set(found.map(({ name }) => name));
}
