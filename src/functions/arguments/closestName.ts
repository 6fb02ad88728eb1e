import { closest, distance } from "fastest-levenshtein";

/** Longer texts are cut before they are compared, which takes time by the square of their length. */
const LONGEST_COMPARED = 60;

const compared = (text: string): string => text.slice(0, LONGEST_COMPARED);

/** The closest of some names to a text that is none of them, for an error message. */
export function closestName(text: string, names: readonly string[]): string {
  const nearest = closest(compared(text), names.map(compared));
  return names.find((name) => compared(name) === nearest) ?? nearest;
}

/** Letters of a text that may be wrong in a near name: one in three, and always one. */
const LETTERS_A_FAULT = 3;

const inOrder = (text: string): string => Array.from(text).toSorted().join("");

/**
 * The closest of some names to a text that is none of them, if it is a likely slip of the keys.
 *
 * @example
 * nearName("deu", ["due", "payby"]) //=> "due"
 * nearName("zebra", ["due", "payby"]) //=> undefined
 */
export function nearName(text: string, names: readonly string[]): string | undefined {
  const nearest = closestName(text, names);
  const most = Math.max(1, Math.floor(text.length / LETTERS_A_FAULT));
  const isNear =
    distance(compared(text), compared(nearest)) <= most || inOrder(text) === inOrder(nearest);
  return isNear ? nearest : undefined;
}
