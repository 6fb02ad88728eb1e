import { readAddress } from "../../host/cellAddress";
import type { TablePlace } from "./referenceWorld";
import { type PackageParts, partText, relations } from "./workbookPackage";
import { attribute, decodedText, firstElement, xmlElements } from "./xmlText";

/** The tables of a sheet. */
export function sheetTables(parts: PackageParts, sheetPart: string, sheet: string): TablePlace[] {
  return relations(parts, sheetPart).flatMap(({ kind, part = "" }): TablePlace[] => {
    const table = kind === "table" ? firstElement(partText(parts, part), "table") : undefined;
    const area = readAddress(attribute(table?.tag ?? "", "ref") ?? "");
    if (table === undefined || area === undefined) return [];
    const { tag, inside } = table;
    const name = attribute(tag, "displayName") ?? attribute(tag, "name") ?? "";
    const columns = [...xmlElements(inside, "tableColumn")].map((column) =>
      decodedText(attribute(column.tag, "name") ?? "")
    );
    const hasHeader = attribute(tag, "headerRowCount") !== "0";
    const hasTotals = Number(attribute(tag, "totalsRowCount") ?? 0) > 0;
    return [{ name, sheet, ...area, columns, hasHeader, hasTotals }];
  });
}
