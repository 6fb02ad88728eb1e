import { STATE_NAMES } from "../../calculation/state";

/** Words that say nothing of what is looked for, unless there is no other. */
const SMALL_WORDS = new Set(
  "a an and are as at by can client do does for from how i if in is it me my of on or the their to what when where which who will with".split(
    " "
  )
);

/** A word without the ending of a plural. */
function singular(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (/(?:x|ch|sh|ss)es$/.test(word)) return word.slice(0, -2);
  return /[^su]s$/.test(word) ? word.slice(0, -1) : word;
}

/**
 * The words of a text for a search: small letters, no plurals, and the names of forms as one word.
 *
 * @example
 * wordsOf("W-2 wages, Form 1040-ES") //=> ["w2", "wage", "form", "1040es"]
 */
export function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/\b([a-z])-(?=[a-z0-9])/g, "$1")
    .replace(/(\d)-(?=[a-z])/g, "$1")
    .replaceAll(/[.'’](?=\w)/g, "")
    .split(/[^a-z0-9%]+/)
    .filter(Boolean)
    .map(singular);
}

/** What a search asks for. */
export interface Asked {
  /** All words, for a comparison with a phrase. */
  readonly phrase: string;
  /** The words that each function must have, without those of a state. */
  readonly words: readonly string[];
  readonly hasState: boolean;
}

/** Postal code and name of each state; West Virginia is looked for before Virginia. */
const STATE_PHRASES = Object.entries(STATE_NAMES)
  .map(([code, name]) => [code, wordsOf(name).join(" ")] as const)
  .toSorted((one, other) => other[1].length - one[1].length);

/**
 * Reads a search: a function as it is written in a cell, or words, among them the name of a state or its postal code in capitals.
 *
 * @param search - What was typed.
 */
export function readSearch(search: string): Asked {
  const text = search.replace(/^\s*=?\s*ext\./i, "").replace(/\(.*$/s, "");
  const phrase = wordsOf(text).join(" ");
  let rest = ` ${phrase} `;
  let hasState = false;
  for (const [code, name] of STATE_PHRASES) {
    const isCode = new RegExp(`\\b${code}\\b`).test(text);
    const found = rest.includes(` ${name} `) ? name : isCode ? code.toLowerCase() : undefined;
    if (found === undefined) continue;
    hasState = true;
    rest = rest.replace(` ${found} `, " ");
  }
  const all = rest.split(" ").filter(Boolean);
  const large = all.filter((word) => !SMALL_WORDS.has(word));
  return { phrase, words: large.length > 0 || hasState ? large : all, hasState };
}
