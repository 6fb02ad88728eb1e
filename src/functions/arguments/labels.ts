import { shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { nearName } from "./closestName";
import { ownedLabels, type OwnedLabel } from "./labelOwner";
import { plainLabel } from "./plainLabel";

/** Words of a note that may change what any label means. */
const MEANINGFUL: readonly string[] = [
  "state",
  "local",
  "foreign",
  "gross",
  "nontaxable",
  "rollover",
];
/** Words of labels that say nothing by themselves. */
const FILLERS: readonly string[] = [
  "a",
  "all",
  "and",
  "by",
  "for",
  "from",
  "of",
  "or",
  "the",
  "to",
];
/** A longer text has no note. */
const LONGEST_NOTED = 120;
/** `wages (Ana)` and `wages - Ana`. The dash has spaces around it, so that `W-2` is whole. */
const NOTES: readonly RegExp[] = [/^([^()]+)\(([^()]*)\)$/, /^(\S+(?: \S+)*?) [-–—] (.+)$/];

/** The label of a text and the note after it. */
interface Noted {
  readonly label: string;
  readonly note: string;
}

/** The ways to read a text as a label with a note. */
function withNotes(text: string): readonly Noted[] {
  if (text.length > LONGEST_NOTED) return [];
  const plain = text.trim().replace(/\s+/g, " ");
  return NOTES.flatMap((pattern) => {
    const [, label = "", note = ""] = pattern.exec(plain) ?? [];
    return label === "" ? [] : [{ label: label.trim(), note: note.trim() }];
  });
}

/** Several labels in a sentence: `"interest", "pensions" or "wages"`. */
function inWords(labels: readonly string[]): string {
  const quoted = labels.map((label) => `"${label}"`);
  const last = quoted.pop() ?? "";
  return quoted.length === 0 ? last : `${quoted.join(", ")} or ${last}`;
}

/** The labels of each name, the first of them as messages show it. */
export interface Labels<Name extends string> {
  readonly of: Readonly<Record<Name, readonly string[]>>;
  /** Labels that can mean several names. */
  readonly unclear?: readonly (readonly [written: readonly string[], names: readonly Name[]])[];
  /** Whether a note changes what the label of a name means, beyond what the words of the labels tell. */
  readonly noteMatters?: (note: string, name: Name) => boolean;
}

interface KnownLabel<Name> {
  readonly name: Name;
  readonly words: readonly string[];
}

/** Whether a note makes a label mean something else: it has a word of another label that the two labels share words with. */
function changesMeaning<Name>(
  { label, note }: Noted,
  name: Name,
  known: Iterable<KnownLabel<Name>>
): boolean {
  const wordsOf = (text: string): readonly string[] =>
    plainLabel(text)
      .split(" ")
      .filter((word) => !FILLERS.includes(word));
  const [ofLabel, ofNote] = [wordsOf(label), wordsOf(note)];
  if (ofNote.some((word) => MEANINGFUL.includes(word))) return true;
  return [...known].some(
    (other) =>
      other.name !== name &&
      other.words.some((word) => ofLabel.includes(word)) &&
      other.words.some((word) => ofNote.includes(word) && !ofLabel.includes(word))
  );
}

/** The longest label that a text begins with, such as that of `w 2 husband`. */
function beginning(text: string, known: ReadonlyMap<string, unknown>): string | undefined {
  const words = text.split(" ");
  const parts = words.map((_word, index) => words.slice(0, words.length - index).join(" "));
  return parts.find((part) => known.has(part));
}

/**
 * A reader of the labels that a preparer can enter, in any case and with any spacing or punctuation, and with a note of the preparer's
 * own after the label, in parentheses or after a dash: `W-2 (Ana)`, `wages - Ana`. Words that say whose document it is need neither:
 * `W-2 husband`, `spouse W-2`, `W-2 #2`.
 *
 * @param labels - The labels of each name.
 * @returns A function of the place and the text of a label that returns its name. It throws an InputError with the closest label where
 * none is recognized, with all labels where the text may mean several, and for a note that may change what the label means:
 * `withholding (state)` is not federal withholding.
 */
export function labelReader<Name extends string>({
  of,
  unclear = [],
  noteMatters = () => false,
}: Labels<Name>): (place: string, text: string) => Name {
  const known = new Map<string, KnownLabel<Name>>();
  for (const [name, all] of Object.entries<readonly string[]>(of))
    for (const label of all.map(plainLabel))
      known.set(label, { name: name as Name, words: label.split(" ") });
  const several = new Map(
    unclear.flatMap(([written, meant]) => written.map((one) => [plainLabel(one), meant] as const))
  );
  const first = (name: Name): string => of[name][0] ?? name;

  const meansSeveral = (place: string, text: string, names: readonly Name[]): InputError =>
    new InputError(
      place,
      `${shown(text)} can mean several items. Enter ${inWords(names.map(first))}.`
    );
  const mattersTo = (place: string, text: string, name: Name): InputError =>
    new InputError(
      place,
      `The note in ${shown(text)} may change the meaning of "${first(name)}". Enter the label for what it is, or another note.`
    );
  const nameOf = (place: string, label: string, text: string): Name | undefined => {
    const meant = several.get(plainLabel(label));
    if (meant === undefined) return known.get(plainLabel(label))?.name;
    throw meansSeveral(place, text, meant);
  };
  const nameOfNoted = (place: string, text: string, noted: Noted): Name | undefined => {
    const together = known.get(plainLabel(`${noted.note} ${noted.label}`));
    if (together !== undefined) return together.name;
    const name = nameOf(place, noted.label, text);
    if (name === undefined) return undefined;
    if (!noteMatters(noted.note, name) && !changesMeaning(noted, name, known.values())) return name;
    throw mattersTo(place, text, name);
  };
  const nameOfOwned = (
    place: string,
    text: string,
    { label, note, box }: OwnedLabel
  ): Name | undefined => {
    const name = nameOf(place, label, text);
    if (name === undefined) return undefined;
    const ofBox = [...known].filter(([one]) => box && one.startsWith(`${label} box ${box}`));
    const names = [...new Set([name, ...ofBox.map(([, { name: other }]) => other)])];
    if (names.length > 1) throw meansSeveral(place, text, names);
    if (noteMatters(note, name)) throw mattersTo(place, text, name);
    return name;
  };

  return (place, text) => {
    const whole = nameOf(place, text, text);
    if (whole !== undefined) return whole;
    for (const noted of withNotes(text)) {
      const name = nameOfNoted(place, text, noted);
      if (name !== undefined) return name;
    }
    for (const owned of ownedLabels(text)) {
      const name = nameOfOwned(place, text, owned);
      if (name !== undefined) return name;
    }
    const label = plainLabel(text.slice(0, LONGEST_NOTED));
    const near = nearName(label, [...known.keys()]);
    const begun = beginning(label, known);
    const named = known.get(near ?? begun ?? "")?.name;
    const enter =
      named === undefined
        ? `Enter a label such as "${first(Object.keys(of)[0] as Name)}".`
        : near === undefined || near === begun
          ? `Enter "${first(named)}", with a note of your own in parentheses.`
          : `The closest label is "${first(named)}".`;
    throw new InputError(place, `${shown(text)} is not a recognized label. ${enter}`);
  };
}
