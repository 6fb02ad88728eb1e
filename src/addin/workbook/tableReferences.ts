import { columnLetters } from "../../host/cellAddress";
import { NotDone, type TablePlace } from "./workbookHost";

/** A reference to columns of a table: the name of the table, if given, and what is in brackets. */
const REFERENCE = /("(?:[^"]|"")*")|([A-Za-z_\\][\w.]*)?(\[(?:'.|[^[\]']|\[(?:'.|[^[\]'])*\])*\])/g;
const THIS_ROW =
  /^\[(?:@(?!\[)(?<bare>[^[\]]+)|@\[(?<one>.+)\]|\[#This Row\],\s*\[(?<long>.+)\])\]$/i;
const WHOLE_COLUMN = /^\[(?:(?<bare>[^[\]#@]+)|\[(?<one>[^[\]#]+)\])\]$/;

/** The name of a column without the apostrophes that Excel puts before brackets, number signs and apostrophes. */
const plainName = (name: string): string => name.replace(/'(.)/g, "$1");

function columnIn(inside: string, pattern: RegExp): string | undefined {
  const { bare, one, long } = pattern.exec(inside)?.groups ?? {};
  const name = bare ?? one ?? long;
  return name === undefined || /\]\s*:\s*\[/.test(name) ? undefined : plainName(name);
}

/**
 * A formula with cell addresses in the place of its references to table columns, so that it can be used on another sheet.
 *
 * @param formula - The formula, such as `=EXT.DUE([@[Tax year]],Clients[@State])`.
 * @param sheet - The sheet of the cell with the formula.
 * @param row - The row of that cell, counted from 1.
 * @param tables - The tables of the workbook.
 * @returns The formula; each reference names its sheet.
 * @throws NotDone when a table or a column is not found, or the reference is to more than one column.
 */
export function withCellAddresses(
  formula: string,
  sheet: string,
  row: number,
  tables: readonly TablePlace[]
): string {
  const isHere = (table: TablePlace): boolean =>
    table.sheet === sheet && row > table.headingRow && row <= table.headingRow + table.rows;
  return formula.replace(
    REFERENCE,
    (whole: string, text?: string, name?: string, inside: string = "") => {
      if (text !== undefined) return whole;
      const table = tables.find((one) =>
        name === undefined ? isHere(one) : one.name.toLowerCase() === name.toLowerCase()
      );
      const ofThisRow = columnIn(inside, THIS_ROW);
      const heading = ofThisRow ?? columnIn(inside, WHOLE_COLUMN);
      const index = table?.headings.findIndex(
        (one) => one.toLowerCase() === heading?.toLowerCase()
      );
      if (table === undefined || index === undefined || index < 0)
        throw new NotDone(
          `The reference ${whole} in the formula cannot be read. Use a single column, or cell addresses such as B2.`
        );
      const column = columnLetters(table.firstColumn + index);
      const place = `'${table.sheet.replaceAll("'", "''")}'!`;
      if (ofThisRow !== undefined) return `${place}${column}${String(row)}`;
      const first = table.headingRow + 1;
      return `${place}${column}${String(first)}:${column}${String(table.headingRow + table.rows)}`;
    }
  );
}
