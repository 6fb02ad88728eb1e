import {
  type PackageParts,
  partText,
  putText,
  type Relation,
  relations,
  relationsPart,
} from "./workbookPackage";
import { attribute, firstElement, xmlElements, withChild } from "./xmlText";

const KIND = "XLDAPR";
const NAMESPACE = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const METADATA_TYPE = `metadataType name="${KIND}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const CONTENT_TYPE =
  "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";

function metadataRelation(parts: PackageParts, workbook: string): Relation | undefined {
  return relations(parts, workbook).find(
    ({ kind, part }) => kind === "sheetMetadata" && part !== undefined && parts.has(part)
  );
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
  const { part } = metadataRelation(parts, workbook) ?? {};
  return part === undefined ? new Set() : marksIn(partText(parts, part));
}

function withMark(text: string): string {
  const root = firstElement(text, "metadata");
  if (root === undefined) return text;
  const { prefix } = root;
  const count = (list: string, item: string): number =>
    [...xmlElements(firstElement(text, list)?.inside ?? "", item)].length;
  let changed = text;
  const add = (list: string, child: string, number: number, before: readonly string[]): void => {
    const present = firstElement(changed, list);
    if (present !== undefined) {
      changed = withChild(changed, present, child, number);
      return;
    }
    const next = before.map((name) => firstElement(changed, name)).find(Boolean);
    const at = next?.start ?? changed.lastIndexOf(`</${prefix}metadata>`);
    const made = `<${prefix}${list} count="${String(number)}">${child}</${prefix}${list}>`;
    changed = `${changed.slice(0, at)}${made}${changed.slice(at)}`;
  };
  const types = count("metadataTypes", "metadataType");
  const found = [...xmlElements(text, "metadataType")].findIndex(
    ({ tag }) => attribute(tag, "name") === KIND
  );
  if (found < 0) {
    add("metadataTypes", `<${prefix}${METADATA_TYPE}`, types + 1, []);
    const at = ["cellMetadata", "valueMetadata"]
      .map((name) => firstElement(changed, name)?.start)
      .find((start) => start !== undefined);
    const end = at ?? changed.lastIndexOf(`</${prefix}metadata>`);
    changed = `${changed.slice(0, end)}<${prefix}futureMetadata name="${KIND}" count="1"><${prefix}bk><${prefix}extLst><${prefix}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="${NAMESPACE}" fDynamic="1" fCollapsed="0"/></${prefix}ext></${prefix}extLst></${prefix}bk></${prefix}futureMetadata>${changed.slice(end)}`;
  }
  const type = found < 0 ? types + 1 : found + 1;
  const mark = `<${prefix}bk><${prefix}rc t="${String(type)}" v="0"/></${prefix}bk>`;
  add("cellMetadata", mark, count("cellMetadata", "bk") + 1, ["valueMetadata"]);
  return changed;
}

/** Adds a child at the end of the root of a part. */
function append(
  parts: PackageParts,
  part: string,
  root: string,
  child: (prefix: string) => string
) {
  const text = partText(parts, part);
  const element = firstElement(text, root);
  if (element === undefined) return;
  const { prefix, tag, inside, start, end } = element;
  const open = tag.replace(/\s*\/>$/, ">");
  const whole = `${open}${inside}${child(prefix)}</${prefix}${root}>`;
  putText(parts, part, `${text.slice(0, start)}${whole}${text.slice(end)}`);
}

/**
 * The value of the attribute `cm` for the cell of a dynamic array. The metadata that it refers to are added if the file has none.
 *
 * @param parts - The parts of the file, which change.
 * @param workbook - The name of the part with the list of sheets.
 */
export function dynamicArrayMark(parts: PackageParts, workbook: string): string {
  const present = metadataRelation(parts, workbook)?.part;
  if (present === undefined) {
    const list = relations(parts, workbook);
    const numbers = list.map(({ id }) => Number(/\d+$/.exec(id)?.[0] ?? 0));
    const id = `rId${String(Math.max(0, ...numbers) + 1)}`;
    const type = (list[0]?.type ?? "").replace(/[^/]*$/, "sheetMetadata");
    let part = "";
    for (let number = 0; part === "" || parts.has(part); number += 1)
      part = workbook.replace(/[^/]*$/, `metadata${number === 0 ? "" : String(number)}.xml`);
    const main =
      /\sxmlns(?::\w+)?="([^"]*\/spreadsheetml\/(?:2006\/)?main)"/.exec(
        partText(parts, workbook)
      )?.[1] ?? "";
    putText(
      parts,
      part,
      withMark(
        `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="${main}"></metadata>`
      )
    );
    append(
      parts,
      relationsPart(workbook),
      "Relationships",
      (prefix) => `<${prefix}Relationship Id="${id}" Type="${type}" Target="/${part}"/>`
    );
    append(
      parts,
      "[Content_Types].xml",
      "Types",
      (prefix) => `<${prefix}Override PartName="/${part}" ContentType="${CONTENT_TYPE}"/>`
    );
    return "1";
  }
  const text = partText(parts, present);
  const [known] = marksIn(text);
  if (known !== undefined) return known;
  putText(parts, present, withMark(text));
  return [...marksIn(partText(parts, present))][0] ?? "1";
}
