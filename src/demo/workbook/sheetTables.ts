import { readAddress } from "../../host/cellAddress";
import type { TablePlace } from "./referenceWorld";
import { type PackageParts, partText, relations } from "./workbookPackage";
import { attribute, decodedText, firstElement, xmlElements } from "./xmlText";

/** The tables of a sheet. */
export function sheetTables(parts: PackageParts, sheetPart: string, sheet: string): TablePlace[] {
  return relations(parts, sheetPart).flatMap(({ kind, part = "" }) => {
    const table = kind === "table" ? firstElement(partText(parts, part), "table") : undefined;
    const area = readAddress(attribute(table?.tag ?? "", "ref") ?? "");
    if (table === undefined || area === undefined) return [];
    const hasHeader = attribute(table.tag, "headerRowCount") !== "0";
    const hasTotals = Number(attribute(table.tag, "totalsRowCount") ?? 0) > 0;
    const columns = [...xmlElements(table.inside, "tableColumn")];
    const place: TablePlace = {
      name: attribute(table.tag, "displayName") ?? attribute(table.tag, "name") ?? "",
      sheet,
      top: area.top,
      left: area.left,
      columns: columns.map(({ tag }) => decodedText(attribute(tag, "name") ?? "")),
      dataRows: area.bottom - area.top + 1 - Number(hasHeader) - Number(hasTotals),
      hasHeader,
      hasTotals,
    };
    return [place];
  });
}
