import { shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord } from "./argumentKind";
import { nearName } from "./closestName";

/** A word as it is compared: without spaces and without the punctuation of abbreviations and compounds. */
function bareWord(value: CellValue): string | undefined {
  const word = plainWord(value);
  return typeof word === "string" ? word.replace(/[\s.\-/()',]+/g, "") : undefined;
}

/** The words that an argument takes, and what it says of any other. */
export interface Words<Meaning extends string> {
  /** The meanings, each with the other words for it. The meaning itself is always one of its words. */
  readonly words: Readonly<Record<Meaning, readonly string[]>>;
  /** What the argument is, such as `a filing status`. */
  readonly what: string;
  /** What to enter, in a sentence. */
  readonly enter: string;
}

/**
 * A reader of words, in any case, spacing and hyphenation.
 *
 * @param known - The words and the sentences.
 * @returns A function of a cell and the argument that returns the meaning, and throws an InputError for another word, with the closest
 * word where one is close.
 */
export function wordReader<Meaning extends string>({
  words,
  what,
  enter,
}: Words<Meaning>): (value: CellValue, name: string) => Meaning {
  const meanings = new Map<string, Meaning>();
  for (const [meaning, others] of Object.entries<readonly string[]>(words))
    for (const word of [meaning, ...others]) meanings.set(bareWord(word) ?? "", meaning as Meaning);
  return (value, name) => {
    const word = bareWord(value);
    const known = word === undefined ? undefined : meanings.get(word);
    if (known !== undefined) return known;
    const near = meanings.get(nearName(word ?? "", [...meanings.keys()]) ?? "");
    const closest = near === undefined ? "" : ` The closest is ${near}.`;
    throw new InputError(name, `${shown(value)} is not ${what}.${closest} ${enter}`);
  };
}

/** Words that have no other words for them. */
export function wordsAlone<Meaning extends string>(
  meanings: readonly Meaning[]
): Readonly<Record<Meaning, readonly string[]>> {
  return Object.fromEntries(meanings.map((meaning) => [meaning, []])) as unknown as Readonly<
    Record<Meaning, readonly string[]>
  >;
}
