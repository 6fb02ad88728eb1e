import { XMLValidator } from "fast-xml-parser";
import { type PackageParts, partText, relations } from "../../src/demo/workbook/workbookPackage";
import { attribute, xmlElements } from "../../src/demo/workbook/xmlText";

const isXml = (name: string): boolean => /\.(xml|rels|vml)$/i.test(name);
const NO_VALUE = /\bNaN\b|\bundefined\b|\[object Object\]/;

function partFaults(parts: PackageParts, name: string): string[] {
  const text = partText(parts, name);
  const faults: string[] = [];
  if (!name.endsWith(".vml") && XMLValidator.validate(text) !== true)
    faults.push(`${name} is not well-formed`);
  if (NO_VALUE.test(text)) faults.push(`${name} contains ${NO_VALUE.exec(text)?.[0] ?? ""}`);
  return faults;
}

/**
 * What a spreadsheet would want to repair in a file: a part that is not well-formed or contains a value of the program, and a
 * relationship or content type of a part that is not there.
 *
 * @param parts - The parts of the file.
 * @returns One line for each fault.
 */
export function packageFaults(parts: PackageParts): string[] {
  const lower = new Set([...parts.keys()].map((name) => name.toLowerCase()));
  const faults = [...parts.keys()].filter(isXml).flatMap((name) => partFaults(parts, name));
  for (const name of parts.keys()) {
    const match = /^(.*?)_rels\/([^/]*)\.rels$/.exec(name);
    if (match === null) continue;
    const [, folder = "", file = ""] = match;
    for (const { part, kind } of relations(parts, `${folder}${file}`))
      if (part !== undefined && !part.startsWith("#") && !lower.has(part.toLowerCase()))
        faults.push(`${name}: the ${kind} ${part} is missing`);
  }
  for (const { tag } of xmlElements(partText(parts, "[Content_Types].xml"), "Override")) {
    const part = (attribute(tag, "PartName") ?? "").slice(1);
    if (!lower.has(part.toLowerCase())) faults.push(`the content type of ${part} has no part`);
  }
  return faults;
}

/** The names of the parts of a file that are not the same in another, byte for byte. */
export function changedParts(before: PackageParts, after: PackageParts): string[] {
  const names = [...new Set([...before.keys(), ...after.keys()])];
  return names.filter(
    (name) => !Buffer.from(before.get(name) ?? []).equals(Buffer.from(after.get(name) ?? []))
  );
}
