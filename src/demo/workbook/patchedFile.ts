import { zipSync } from "fflate";
import { dynamicArrayMark } from "./dynamicArrayMark";
import { NumberFormats } from "./numberFormats";
import { patchedSheet, type SheetChanges } from "./patchedSheet";
import {
  listedSheets,
  type PackageParts,
  partText,
  putText,
  relations,
  relationsPart,
  workbookPart,
} from "./workbookPackage";
import { attribute, xmlElements } from "./xmlText";

/** A file with changed cells. */
export interface PatchedFile {
  readonly bytes: Uint8Array;
  /** Whether a digital signature was removed, which is not valid for a changed file. */
  readonly lostSignature: boolean;
}

/** Names of parts that would lie outside the file. */
const OUTSIDE = /^\/|(?:^|\/)\.\.?(?:\/|$)/;
/** A fixed time for every part, so that the same workbook always becomes the same file. */
const TIME_OF_PARTS = "1980-01-02T00:00:00";

function removeElements(
  parts: PackageParts,
  part: string,
  name: string,
  isRemoved: (tag: string) => boolean
): void {
  const text = partText(parts, part);
  const found = [...xmlElements(text, name)].filter(({ tag }) => isRemoved(tag));
  const kept = found.reduceRight(
    (left, { start, end }) => left.slice(0, start) + left.slice(end),
    text
  );
  if (found.length > 0) putText(parts, part, kept);
}

function removePart(parts: PackageParts, source: string, part: string, id: string): void {
  parts.delete(part);
  removeElements(
    parts,
    relationsPart(source),
    "Relationship",
    (tag) => attribute(tag, "Id") === id
  );
  removeElements(
    parts,
    "[Content_Types].xml",
    "Override",
    (tag) => attribute(tag, "PartName")?.toLowerCase() === `/${part.toLowerCase()}`
  );
}

/** A list of all formulas, which the spreadsheet makes again. An array formula is listed in another way than an ordinary one. */
function removeCalculationChain(parts: PackageParts, workbook: string): void {
  const chain = relations(parts, workbook).find(({ kind }) => kind === "calcChain");
  if (chain?.part !== undefined) removePart(parts, workbook, chain.part, chain.id);
}

function removeSignatures(parts: PackageParts): boolean {
  const origins = relations(parts, "").filter(({ type }) =>
    /digital-signature\/origin$/.test(type)
  );
  for (const { part, id } of origins) {
    if (part === undefined || !parts.has(part)) continue;
    for (const signature of relations(parts, part))
      if (signature.part !== undefined) removePart(parts, part, signature.part, signature.id);
    parts.delete(relationsPart(part));
    removePart(parts, "", part, id);
  }
  return origins.length > 0;
}

/** The file of parts. */
export function packedParts(parts: PackageParts): Uint8Array {
  return zipSync(Object.fromEntries(parts), { mtime: TIME_OF_PARTS });
}

/**
 * Puts changed cells into a workbook file. Every part that they do not concern stays byte for byte.
 *
 * @param original - The parts of the file.
 * @param changes - The changed cells by the name of their sheet.
 * @param formulasChange - Whether a cell without a formula gets one, or the other way round.
 * @returns The file.
 */
export function patchedFile(
  original: PackageParts,
  changes: ReadonlyMap<string, SheetChanges>,
  formulasChange = false
): PatchedFile {
  const parts: PackageParts = new Map([...original].filter(([name]) => !OUTSIDE.test(name)));
  const workbook = workbookPart(parts);
  const stylePart = relations(parts, workbook).find(({ kind }) => kind === "styles")?.part ?? "";
  const formats = new NumberFormats(partText(parts, stylePart));
  const dynamicMark = (): string => dynamicArrayMark(parts, workbook);
  let isChanged = false;
  let chainChanges = formulasChange;
  for (const { name, part } of listedSheets(parts, workbook)) {
    const cells = changes.get(name) ?? new Map<number, never>();
    const before = partText(parts, part);
    const after = patchedSheet(before, cells, { formats, dynamicMark });
    if (after === before) continue;
    putText(parts, part, after);
    isChanged = true;
    for (const row of cells.values())
      for (const { dynamicRange } of row.values()) chainChanges ||= dynamicRange !== undefined;
  }
  if (formats.text !== formats.original) putText(parts, stylePart, formats.text);
  if (chainChanges) removeCalculationChain(parts, workbook);
  const lostSignature = isChanged && removeSignatures(parts);
  return { bytes: packedParts(parts), lostSignature };
}
