import sources from "../../rules/sources.json";

/** How well a figure is known: read in the official text, in another's report of it, or only remembered. */
export const CONFIDENCES = ["official", "secondary", "memory"] as const;

/** How well a figure is known. */
export type Confidence = (typeof CONFIDENCES)[number];

/** Where a figure comes from. */
export interface Source {
  /** Key of the document in rules/sources.json. */
  readonly document: string;
  /** Citation with the place in the document: "26 U.S.C. 6651(a)(1)". */
  readonly citation: string;
  readonly confidence: Confidence;
}

/** A source as a rules file writes it. */
export interface WrittenSource {
  readonly source: { readonly document: string; readonly at: string };
  readonly confidence: string;
}

const documents: Readonly<Record<string, { readonly cite: string }>> = sources.documents;

/**
 * Reads the source of one entry of a rules file.
 *
 * @param entry - The entry.
 * @returns The source with its full citation.
 * @throws RangeError when the document is not listed in rules/sources.json or the confidence is no known word: a fault in the rules.
 */
export function readSource(entry: WrittenSource): Source {
  const { document, at } = entry.source;
  const listed = documents[document];
  const confidence = CONFIDENCES.find((word) => word === entry.confidence);
  if (!listed) throw new RangeError(`rules/sources.json does not list "${document}"`);
  if (!confidence) throw new RangeError(`"${entry.confidence}" is no confidence`);
  const joint = at.startsWith("(") ? "" : /^\d/.test(at) ? " " : ", ";
  return { document, citation: `${listed.cite}${joint}${at}`, confidence };
}
