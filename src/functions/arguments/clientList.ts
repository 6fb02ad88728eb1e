import { isEmptyCell } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { RangeKind } from "./argumentKind";
import { clientListColumns, type ClientListField } from "./clientListHeadings";

/** A row of a client list: its cell of a column, blank where the list has no such column. */
export type ClientListRow = (field: ClientListField) => unknown;

function rowsOf(range: unknown): readonly (readonly unknown[])[] {
  const rows = Array.isArray(range) ? (range as readonly unknown[]) : [range];
  return rows.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
}

/** A client list: a row of headings, then one row per client; `undefined` stands for a blank row. */
export const clientList: RangeKind<readonly (ClientListRow | undefined)[]> = {
  id: "client-list",
  title: "Client list",
  description:
    "A range of cells: a row of headings, then one row per client. Columns can be in any order, and columns with unknown headings are ignored. The list must have the estimated total tax and the total payments.",
  accepted: ['{"Client","Total tax","Payments";"Alder",20000,15000}'],
  notAccepted: ['{"Client","Total tax"}'],
  takes: "range",
  whenBlank: { enter: "Select the whole client list with its headings." },
  read: (range, name) => {
    const [first, ...rows] = rowsOf(range);
    if (!first || rows.length === 0)
      throw new InputError(
        name,
        "The range has no row below its headings. Select the whole client list."
      );
    const columns = clientListColumns(name, first);
    return rows.map((row) => {
      const isBlank = [...columns.values()].every(
        (index) => isEmptyCell(row[index]) || row[index] === 0
      );
      if (isBlank) return undefined;
      return (field) => {
        const index = columns.get(field);
        return index === undefined ? null : row[index];
      };
    });
  },
};
