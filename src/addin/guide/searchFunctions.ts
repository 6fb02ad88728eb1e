import { slippedName } from "../../functions/arguments/closestName";
import { TASKS } from "../../functions/catalog";
import type { FunctionText } from "./functionText";
import { readSearch, wordsOf, type Asked } from "./searchText";
import { SEARCH_WORDS } from "./searchWords";

/** What a search found. */
export interface Found {
  /** Names of functions, the best match first; in the order of the tasks if they match alike. */
  readonly names: readonly string[];
  /** Whether these are near matches, because no function has all the words. */
  readonly isNear: boolean;
}

/** Words in one place of a function's texts, and what a match there is worth. */
interface Place {
  readonly words: ReadonlySet<string>;
  readonly worth: number;
}

interface Entry {
  readonly name: string;
  readonly phrases: ReadonlySet<string>;
  readonly places: readonly Place[];
  /** What the name of a state is worth; 0 if the function takes no state. */
  readonly stateWorth: number;
}

const WORTH = { name: 1000, phrase: 60, ownState: 50, search: 20, description: 12, argument: 3 };
/** Near matches that are shown. */
const MOST_NEAR = 8;
const STATE_TASK = "stateReturn";

function entryOf({ name, description, parameters }: FunctionText, folder: string): Entry {
  const search = SEARCH_WORDS[name] ?? "";
  const argumentTexts = parameters.map(
    (one) => `${one.name.replaceAll(/[A-Z]/g, " $&")} ${one.description}`
  );
  const takesState = parameters.some((one) => one.name === "state");
  return {
    name,
    phrases: new Set(search.split(",").map((phrase) => wordsOf(phrase).join(" "))),
    places: [
      { words: new Set(wordsOf(search)), worth: WORTH.search },
      { words: new Set(wordsOf(description)), worth: WORTH.description },
      { words: new Set(wordsOf(argumentTexts.join(" "))), worth: WORTH.argument },
    ],
    stateWorth: takesState ? (folder === STATE_TASK ? WORTH.ownState : WORTH.argument) : 0,
  };
}

function worthOf({ name, places }: Entry, word: string): number {
  if (wordsOf(name)[0] === word) return WORTH.name;
  if (word.length > 1 && name.toLowerCase().startsWith(word)) return WORTH.search;
  const isIn = ({ words }: Place): boolean =>
    words.has(word) || (word.length > 1 && [...words].some((one) => one.startsWith(word)));
  return places.find(isIn)?.worth ?? 0;
}

/** What a function is worth for a search; 0 if one of the words is missing, unless some of them are enough. */
function worth(entry: Entry, asked: Asked, areSomeEnough: boolean): number {
  const parts = asked.words.map((word) => worthOf(entry, word));
  if (asked.hasState) parts.push(entry.stateWorth);
  if (!areSomeEnough && parts.includes(0)) return 0;
  const phrase = entry.phrases.has(asked.phrase) ? WORTH.phrase : 0;
  return parts.reduce((sum, part) => sum + part, phrase);
}

function ranked(entries: readonly Entry[], asked: Asked, areSomeEnough: boolean): string[] {
  return entries
    .map((entry) => ({ name: entry.name, worth: worth(entry, asked, areSomeEnough) }))
    .filter((one) => one.worth > 0)
    .toSorted((one, other) => other.worth - one.worth)
    .map(({ name }) => name);
}

/** The same search with each word that no function has replaced by a near one, or left out. */
function corrected(entries: readonly Entry[], asked: Asked): Asked {
  const names = entries.map(({ name }) => name.toLowerCase());
  const known = [
    ...new Set(entries.flatMap(({ places }) => places.flatMap((one) => [...one.words]))),
  ];
  const words = asked.words.flatMap((word) => {
    if (entries.some((entry) => worthOf(entry, word) > 0)) return [word];
    return slippedName(word, names) ?? slippedName(word, known) ?? [];
  });
  return { ...asked, words };
}

/**
 * Prepares the search of the functions.
 *
 * @param texts - The functions' texts.
 * @returns Finds functions by words: by name first, then by the words of the trade, the description and the arguments. If no function has
 * all the words, those that have the most of them or near ones. A blank search finds all.
 */
export function searchFunctions(
  texts: ReadonlyMap<string, FunctionText>
): (search: string) => Found {
  const entries = TASKS.flatMap(({ folder, functions }) =>
    Object.keys(functions).flatMap((name) => {
      const text = texts.get(name);
      return text ? [entryOf(text, folder)] : [];
    })
  );
  return (search) => {
    const asked = readSearch(search);
    if (asked.words.length === 0 && !asked.hasState) {
      const isBlank = search.trim() === "";
      return { names: isBlank ? entries.map(({ name }) => name) : [], isNear: false };
    }
    const exact = ranked(entries, asked, false);
    if (exact.length > 0) return { names: exact, isNear: false };
    // A postal code in small letters, such as ny: most others begin a word that is still being typed.
    const inCapitals = readSearch(search.toUpperCase());
    if (inCapitals.hasState && inCapitals.words.length === 0)
      return { names: ranked(entries, inCapitals, false), isNear: false };
    const near = corrected(entries, asked);
    const all = ranked(entries, near, false);
    const names = all.length > 0 ? all : ranked(entries, near, true);
    return { names: names.slice(0, MOST_NEAR), isNear: true };
  };
}
