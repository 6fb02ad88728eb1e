import { type PackageParts, partText, putText, relations, relationsPart } from "./workbookPackage";
import { attribute, firstElement, withChild, withElement, xmlElements } from "./xmlText";

const KIND = "XLDAPR";
const NAMESPACE = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const METADATA_TYPE = `metadataType name="${KIND}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const CONTENT_TYPE =
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";

/** What follows the future metadata in a metadata part. */
const AFTER_FUTURE = ["cellMetadata", "valueMetadata"];

function metadataPart(parts: PackageParts, workbook: string): string | undefined {
  const { part = "" } =
    relations(parts, workbook).find(({ kind }) => kind === "sheetMetadata") ?? {};
  return parts.has(part) ? part : undefined;
}

/** The numbers, as cells refer to them, of the metadata that mark a dynamic array. */
function marksIn(text: string): Set<string> {
  const types = [...xmlElements(firstElement(text, "metadataTypes")?.inside ?? "", "metadataType")];
  const type = types.findIndex(({ tag }) => attribute(tag, "name") === KIND) + 1;
  const marks = [...xmlElements(firstElement(text, "cellMetadata")?.inside ?? "", "bk")];
  return new Set(
    marks.flatMap(({ inside }, index) => {
      const isMark = [...xmlElements(inside, "rc")].some(
        ({ tag }) => attribute(tag, "t") === String(type)
      );
      return type > 0 && isMark ? [String(index + 1)] : [];
    })
  );
}

/** The values of the attribute `cm` that mark the cell of a dynamic array. */
export function dynamicArrayMarks(parts: PackageParts, workbook: string): ReadonlySet<string> {
  const part = metadataPart(parts, workbook);
  return part === undefined ? new Set() : marksIn(partText(parts, part));
}

/** The text of a metadata part with the mark of a dynamic array. */
function withMark(text: string): string {
  const prefix = firstElement(text, "metadata")?.prefix ?? "";
  const types = (): string[] =>
    [...xmlElements(changed, "metadataType")].map(({ tag }) => attribute(tag, "name") ?? "");
  let changed = text;
  const needList = (list: string, before: readonly string[]): void => {
    const empty = `<${prefix}${list} count="0"></${prefix}${list}>`;
    if (firstElement(changed, list) === undefined) changed = withElement(changed, empty, before);
  };
  if (!types().includes(KIND)) {
    needList("metadataTypes", [
      "metadataStrings",
      "mdxMetadata",
      "futureMetadata",
      ...AFTER_FUTURE,
    ]);
    changed = withChild(changed, "metadataTypes", () => `<${prefix}${METADATA_TYPE}`);
    const properties = `<xda:dynamicArrayProperties xmlns:xda="${NAMESPACE}" fDynamic="1" fCollapsed="0"/>`;
    const future = `<futureMetadata name="${KIND}" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">${properties}</ext></extLst></bk></futureMetadata>`;
    changed = withElement(changed, future.replace(/<(\/?)(?!xda)/g, `<$1${prefix}`), AFTER_FUTURE);
  }
  needList("cellMetadata", AFTER_FUTURE.slice(1));
  const type = types().indexOf(KIND) + 1;
  const mark = `<${prefix}bk><${prefix}rc t="${String(type)}" v="0"/></${prefix}bk>`;
  return withChild(changed, "cellMetadata", () => mark);
}

/** Adds an empty metadata part to a file, and gives its name. */
function addMetadata(parts: PackageParts, workbook: string): string {
  const list = relations(parts, workbook);
  const numbers = list.map(({ id }) => Number(/\d+$/.exec(id)?.[0] ?? 0));
  const id = `rId${String(Math.max(0, ...numbers) + 1)}`;
  const type = (list[0]?.type ?? "").replace(/[^/]*$/, "sheetMetadata");
  let part = workbook.replace(/[^/]*$/, "metadata.xml");
  while (parts.has(part)) part = part.replace(/\.xml$/, "1.xml");
  const main =
    /\sxmlns(?::\w+)?="([^"]*\/spreadsheetml\/(?:2006\/)?main)"/.exec(
      partText(parts, workbook)
    )?.[1] ?? "";
  const change = (name: string, parent: string, child: string): void => {
    const made = (prefix: string): string => `<${prefix}${child}/>`;
    if (parts.has(name)) putText(parts, name, withChild(partText(parts, name), parent, made));
  };
  putText(
    parts,
    part,
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${main}"></metadata>`
  );
  change(
    relationsPart(workbook),
    "Relationships",
    `Relationship Id="${id}" Type="${type}" Target="/${part}"`
  );
  change(
    "[Content_Types].xml",
    "Types",
    `Override PartName="/${part}" ContentType="${CONTENT_TYPE}"`
  );
  return part;
}

/**
 * The value of the attribute `cm` for the cell of a dynamic array. The metadata that it refers to are added if the file has none.
 *
 * @param parts - The parts of the file, which change.
 * @param workbook - The name of the part with the list of sheets.
 */
export function dynamicArrayMark(parts: PackageParts, workbook: string): string {
  const part = metadataPart(parts, workbook) ?? addMetadata(parts, workbook);
  const [known] = marksIn(partText(parts, part));
  if (known !== undefined) return known;
  putText(parts, part, withMark(partText(parts, part)));
  return [...marksIn(partText(parts, part))][0] ?? "1";
}
