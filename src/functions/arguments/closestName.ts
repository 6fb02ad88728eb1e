import { closest } from "fastest-levenshtein";

/** Longer texts are cut before they are compared, which takes time by the square of their length. */
const LONGEST_COMPARED = 60;

const compared = (text: string): string => text.slice(0, LONGEST_COMPARED);

/** The closest of some names to a text that is none of them, for an error message. */
export function closestName(text: string, names: readonly string[]): string {
  const nearest = closest(compared(text), names.map(compared));
  return names.find((name) => compared(name) === nearest) ?? nearest;
}
