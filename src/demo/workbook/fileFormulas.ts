import { strFromU8, unzipSync } from "fflate";
import { XMLParser } from "fast-xml-parser";

/** A sheet by its name and the id of its part. */
export interface Named {
  readonly name: string;
  readonly id: string;
}

const parser = new XMLParser({
  ignoreAttributes: false,
  attributeNamePrefix: "",
  removeNSPrefix: true,
  // Without these options, numeric character references are not read.
  htmlEntities: true,
});

function list(value: unknown): Record<string, string>[] {
  if (value === undefined) return [];
  return (Array.isArray(value) ? value : [value]) as Record<string, string>[];
}

/** The sheets that the text of `xl/workbook.xml` lists. */
export function sheetNames(workbookText: string): Named[] {
  const parsed = parser.parse(workbookText) as {
    workbook?: { sheets?: { sheet?: unknown } };
  };
  // No other attribute of a sheet has the same local name as the id of the relationship.
  return list(parsed.workbook?.sheets?.sheet).map((sheet) => ({
    name: String(sheet["name"]),
    id: String(sheet["id"]),
  }));
}

function sheetParts(relationsText: string): Map<string, string> {
  const parsed = parser.parse(relationsText) as {
    Relationships?: { Relationship?: unknown };
  };
  return new Map(
    list(parsed.Relationships?.Relationship).map((relation) => {
      const target = String(relation["Target"]);
      const part = target.startsWith("/") ? target.slice(1) : `xl/${target}`;
      return [String(relation["Id"]), part] as const;
    })
  );
}

function formulaCells(sheetText: string): string[] {
  const cells: string[] = [];
  const end = sheetText.indexOf("</sheetData>");
  const data = end < 0 ? sheetText : sheetText.slice(0, end);
  let address = "";
  for (const match of data.matchAll(/<c\s[^>]*?\br="([A-Z]+\d+)"|<f[\s>/]/g)) {
    if (match[1] !== undefined) address = match[1];
    else cells.push(address);
  }
  return cells;
}

/**
 * Every cell that has a formula in the file, by sheet. What the workbook library reads is checked against this list, so that no formula
 * is lost without a message.
 */
export function fileFormulas(file: Uint8Array): Map<string, string[]> {
  const wanted = /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/;
  const parts = unzipSync(file, { filter: ({ name }) => wanted.test(name) });
  const text = (part: string) => {
    const bytes = parts[part];
    return bytes === undefined ? "" : strFromU8(bytes);
  };
  const byId = sheetParts(text("xl/_rels/workbook.xml.rels"));
  const sheets = sheetNames(text("xl/workbook.xml"));
  return new Map(
    sheets.map(({ name, id }) => [name, formulaCells(text(byId.get(id) ?? ""))] as const)
  );
}
