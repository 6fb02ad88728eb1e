import { plainLabel } from "./plainLabel";

/** Words that say whose document a row is: of the taxpayer, of the spouse, or of both. */
export const OWNER_WORDS: readonly string[] = [
  "taxpayer",
  "spouse",
  "husband",
  "wife",
  "joint",
  "his",
  "her",
  "hers",
  "T",
  "S",
  "J",
  "TP",
  "SP",
];

/** A longer text has no such words. */
const LONGEST_OWNED = 120;

const OWNER = `(?:${OWNER_WORDS.map((word) => word.toLowerCase()).join("|")})`;
const PATTERNS: readonly RegExp[] = [
  new RegExp(`^(?<label>.+?)(?<note>(?: ${OWNER})+(?: (?:no )?\\d{1,2})?)$`),
  new RegExp(`^(?<note>(?:${OWNER} )+)(?<label>.+)$`),
  /^(?<label>.+?)(?<note> (?:no )?\d{1,2})$/,
];

/** A label with words that say whose document it is, or which one of several. */
export interface OwnedLabel {
  readonly label: string;
  /** Such as `husband`, `no 2` or `s 2`. */
  readonly note: string;
  /** The number of a box of a document, if the note can be one: `W-2 2` may be the second W-2 or box 2. */
  readonly box: string | undefined;
}

/**
 * The ways to read a text as a label with the owner of the document before or after it, or its number after it.
 *
 * @example
 * ownedLabels("W-2 husband") //=> [{ label: "w 2", note: "husband", box: undefined }]
 */
export function ownedLabels(text: string): readonly OwnedLabel[] {
  if (text.length > LONGEST_OWNED) return [];
  const plain = plainLabel(text.replaceAll("#", " no "));
  return PATTERNS.flatMap((pattern) => {
    const { label = "", note = "" } = pattern.exec(plain)?.groups ?? {};
    const trimmed = note.trim();
    return label === ""
      ? []
      : [{ label, note: trimmed, box: /^\d+$/.test(trimmed) ? trimmed : undefined }];
  });
}
