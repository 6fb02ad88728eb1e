import { attribute, firstElement, plainText, xmlElements } from "./xmlText";

/** A relationship of a part to another. */
export interface Relation {
  readonly id: string;
  /** The last word of its type, such as `worksheet`. */
  readonly kind: string;
  readonly type: string;
  /** The other part; undefined if it is outside the file. */
  readonly part: string | undefined;
}

/** A sheet that the workbook lists. */
export interface ListedSheet {
  readonly name: string;
  readonly part: string;
  /** Whether it has cells; a chart sheet has none. */
  readonly hasCells: boolean;
}

/** Thrown for parts that cannot be read. The message is the end of a sentence that begins with the name of the file. */
export class UnreadablePart extends Error {}

/** The parts of a workbook file by name, as they are in it. */
export type PackageParts = Map<string, Uint8Array>;

const USUAL_WORKBOOK = "xl/workbook.xml";
const ENCODING = /^<\?xml[^>]*?\sencoding\s*=\s*["']([^"']*)["']/;
const READABLE = /^(utf-?8|utf-?16|us-ascii)$/i;
const START_OF_LITTLE_ENDIAN = 0xfeff;

/** The text of a part; empty if there is no such part. */
export function partText(parts: PackageParts, name: string): string {
  const bytes = parts.get(name) ?? new Uint8Array();
  const [first = 0, second = 0] = bytes;
  const mark = (second << 8) | first;
  const isWide = mark === START_OF_LITTLE_ENDIAN || mark === 0xfffe;
  const encoding = mark === 0xfffe ? "utf-16be" : isWide ? "utf-16le" : "utf-8";
  const text = new TextDecoder(encoding).decode(bytes);
  const declared = ENCODING.exec(text)?.[1] ?? "utf-8";
  if (!READABLE.test(declared))
    throw new UnreadablePart(`could not be read as a workbook: ${name} is encoded as ${declared}`);
  return text;
}

/** Puts a changed text into a part, in UTF-8. */
export function putText(parts: PackageParts, name: string, text: string): void {
  const declared = text.replace(/^(<\?xml[^>]*?\sencoding\s*=\s*["'])utf-?16(?=["'])/i, "$1UTF-8");
  parts.set(name, new TextEncoder().encode(declared));
}

function partAt(target: string, folder: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith("/") ? target : `${folder}/${target}`).split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  }
  return steps.join("/");
}

/** The part with the relationships of a part; those of the whole file for an empty name. */
export function relationsPart(part: string): string {
  return part.replace(/[^/]*$/, (name) => `_rels/${name}.rels`);
}

/** The relationships of a part. */
export function relations(parts: PackageParts, part: string): Relation[] {
  const folder = part.replace(/\/?[^/]*$/, "");
  return [...xmlElements(partText(parts, relationsPart(part)), "Relationship")].map(({ tag }) => {
    const type = attribute(tag, "Type") ?? "";
    const isOutside = attribute(tag, "TargetMode") === "External";
    return {
      id: attribute(tag, "Id") ?? "",
      type,
      kind: type.replace(/^.*\//, ""),
      part: isOutside ? undefined : partAt(attribute(tag, "Target") ?? "", folder),
    };
  });
}

/** The name of the part with the list of sheets, which is not `xl/workbook.xml` in every file. */
export function workbookPart(parts: PackageParts): string {
  const found = relations(parts, "").find(({ kind }) => kind === "officeDocument")?.part;
  return found !== undefined && parts.has(found) ? found : USUAL_WORKBOOK;
}

/** The sheets that the workbook lists, in its order. */
export function listedSheets(parts: PackageParts, workbook = workbookPart(parts)): ListedSheet[] {
  const byId = new Map(relations(parts, workbook).map((relation) => [relation.id, relation]));
  const list = firstElement(partText(parts, workbook), "sheets");
  return [...xmlElements(list?.inside ?? "", "sheet")].map(({ tag }) => {
    const { part, kind } = byId.get(attribute(tag, "id") ?? "") ?? {};
    if (part === undefined || !parts.has(part))
      throw new UnreadablePart("lists a sheet that is missing or cannot be read");
    return { name: attribute(tag, "name") ?? "", part, hasCells: kind === "worksheet" };
  });
}

/** The texts that several cells share, by number. Readings of Asian characters are not part of them. */
export function sharedTexts(parts: PackageParts, workbook: string): string[] {
  const part = relations(parts, workbook).find(({ kind }) => kind === "sharedStrings")?.part;
  const items = xmlElements(part === undefined ? "" : partText(parts, part), "si");
  return [...items].map(({ inside }) => textOfRuns(inside));
}

/** The text of all runs of a formatted text. */
export function textOfRuns(inside: string): string {
  let text = "";
  for (const { name, inside: words } of xmlElements(inside, "t", "rPh", "r")) {
    if (name === "t") text += plainText(words);
    else if (name === "r") text += textOfRuns(words);
  }
  return text;
}
