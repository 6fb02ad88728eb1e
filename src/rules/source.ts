import sources from "../../rules/sources.json";
import { parseCalendarDate, type CalendarDate } from "../calendar/calendarDate";
import type { Confidence } from "./schema/parts";

/** Where an entry comes from. */
export interface Source {
  /** Key of the document in rules/sources.json. */
  readonly document: string;
  /** Citation in the style of the IRS instructions: "IRC section 6651(a)(1)". */
  readonly citation: string;
  readonly confidence: Confidence;
}

/** A source as a rules file writes it. */
export interface WrittenSource {
  readonly source: { readonly document: string; readonly at: string };
  readonly confidence: Confidence;
}

const documents: Readonly<Record<string, { readonly cite: string; readonly read: string }>> =
  sources.documents;

/** The date on which the document of a source was read; `undefined` if it is not listed. */
export function readOn({ document }: Source): CalendarDate | undefined {
  return parseCalendarDate(documents[document]?.read ?? "");
}

/** A place that names several sections before it names another document: "219(f)(3) and 223(d)(4)(B)". */
const SEVERAL_SECTIONS = /^[^;]*(?:,| and) \d/;

/** The document and the place in it, joined as a citation. */
function cited(document: string, place: string): string {
  if (document.endsWith(" section") && SEVERAL_SECTIONS.test(place)) return `${document}s ${place}`;
  if (place.startsWith("(")) return `${document}${place}`;
  return /^\d/.test(place) ? `${document} ${place}` : `${document}, ${place}`;
}

/**
 * Reads the source of one entry of a rules file.
 *
 * @param entry - The entry.
 * @returns The source with its citation.
 * @throws RangeError if rules/sources.json does not list the document: a fault in the rules.
 */
export function readSource(entry: WrittenSource): Source {
  const { document, at } = entry.source;
  const listed = documents[document];
  if (!listed) throw new RangeError(`rules/sources.json does not list "${document}"`);
  return { document, citation: cited(listed.cite, at), confidence: entry.confidence };
}
