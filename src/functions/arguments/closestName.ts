import { closest, distance } from "fastest-levenshtein";

/** Longer texts are cut before they are compared, which takes time by the square of their length. */
const LONGEST_COMPARED = 60;
/** Shorter texts are not compared: most short words are a few letters from each other. */
const SHORTEST_COMPARED = 4;
/** The largest part of the letters that may differ in a misspelled word. */
const MOST_CHANGED = 0.45;

const compared = (text: string): string => text.slice(0, LONGEST_COMPARED);

/** The closest of some names to a text that is none of them, for an error message. */
export function closestName(text: string, names: readonly string[]): string {
  const nearest = closest(compared(text), names.map(compared));
  return names.find((name) => compared(name) === nearest) ?? nearest;
}

/** A sentence with the word that a misspelled cell probably means, for an error message; empty if there is none. */
export function closestSentence(cell: unknown, words: readonly string[]): string {
  const near = typeof cell === "string" ? nearName(cell, words) : undefined;
  return near === undefined ? "" : ` The closest is ${near}.`;
}

/**
 * The name that a misspelled text probably means.
 *
 * @param text - A text that is none of the names.
 * @param names - The names.
 * @returns `undefined` for a short text, and for one that is not close to any name.
 *
 * @example
 * nearName("wagse", ["wages", "interest"]) //=> "wages"
 * nearName("n/a", ["wages", "interest"]) //=> undefined
 */
export function nearName(text: string, names: readonly string[]): string | undefined {
  if (text.length < SHORTEST_COMPARED) return undefined;
  const nearest = closestName(text, names);
  const changed = distance(compared(text), compared(nearest));
  return changed <= MOST_CHANGED * Math.max(compared(text).length, compared(nearest).length)
    ? nearest
    : undefined;
}

const inOrder = (text: string): string => Array.from(text).toSorted().join("");

/**
 * The name that a text with a slip of the keys probably means: a near one, or one whose letters are in another order.
 *
 * @example
 * slippedName("deu", ["due", "payby"]) //=> "due"
 */
export function slippedName(text: string, names: readonly string[]): string | undefined {
  return nearName(text, names) ?? names.find((name) => inOrder(name) === inOrder(text));
}
