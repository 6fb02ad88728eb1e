import { cellAddress, columnLetters } from "../../host/cellAddress";
import { hasNoEntry } from "./entryCell";
import { callsOwnFunction } from "./ownFormula";
import { NotDone, type FormulaColumn, type SelectedList } from "./workbookHost";

/** Says that a list is not as it was read. */
export const LIST_CHANGED =
  "The list has changed meanwhile. Select a cell of it and read it again.";

/** A column to be written, and where. */
export interface PlannedColumn extends FormulaColumn {
  /** Counted from 1. */
  readonly column: number;
  /** Whether the list does not have it yet. */
  readonly isNew: boolean;
}

/** Added to a heading that another column of the list already has. */
const SECOND = " (calculated)";

const plain = (heading: unknown): string => String(heading).trim().toLowerCase();
/** A heading without what is in parentheses behind it, such as a reason that changes with the list. */
const named = (heading: unknown): string => plain(heading).replace(/ \([^)]*\)$/, "");

/** The positions of columns that are filled by the functions of this add-in. */
export function ownColumns({ headings, formulas }: SelectedList): readonly number[] {
  return headings.flatMap((_heading, index) =>
    formulas.some((line) => callsOwnFunction(line[index] ?? "")) ? [index] : []
  );
}

/** Refuses a column of ours in which the user has entered something. */
function refuseEntries(list: SelectedList, index: number): void {
  const entered = list.rows.findIndex(
    (line, row) => !hasNoEntry(line[index]) && (list.formulas[row]?.[index] ?? "") === ""
  );
  if (entered < 0) return;
  const address = cellAddress(list.headingRow + 1 + entered, list.firstColumn + index);
  throw new NotDone(
    `Cell ${address} has an entry of your own in the column ${String(list.headings[index])}. Delete the entry, or change the heading of the column.`
  );
}

/**
 * Where columns of formulas are written: in the columns of the same headings that this tool wrote before, the others to the right of
 * the list.
 *
 * @param list - The list.
 * @param columns - The columns.
 * @throws NotDone when the user has entered something in a column that would be written again.
 */
export function fillPlan(
  list: SelectedList,
  columns: readonly FormulaColumn[]
): readonly PlannedColumn[] {
  const own = ownColumns(list);
  let next = list.firstColumn + list.headings.length;
  return columns.map((column): PlannedColumn => {
    const present =
      own.find((index) => plain(list.headings[index]) === plain(column.heading)) ??
      own.find((index) => named(list.headings[index]) === named(column.heading));
    if (present !== undefined) {
      refuseEntries(list, present);
      const before = String(list.headings[present]);
      const isKept = before.endsWith(SECOND) || plain(before) === plain(column.heading);
      const heading = isKept ? before : column.heading;
      return { ...column, heading, column: list.firstColumn + present, isNew: false };
    }
    const isTaken = list.headings.some((heading) => plain(heading) === plain(column.heading));
    const heading = isTaken ? column.heading + SECOND : column.heading;
    return { ...column, heading, column: next++, isNew: true };
  });
}

/** The cells that a plan fills, such as H1:K12; several areas with commas between them. */
export function filledAddress(
  { headingRow, rows }: SelectedList,
  planned: readonly PlannedColumn[]
): string {
  const sorted = planned.map(({ column }) => column).toSorted((one, other) => one - other);
  const areas: [from: number, to: number][] = [];
  for (const column of sorted) {
    const last = areas.at(-1);
    if (last && last[1] === column - 1) last[1] = column;
    else areas.push([column, column]);
  }
  const bottom = headingRow + rows.length;
  return areas
    .map(([from, to]) => `${columnLetters(from)}${headingRow}:${columnLetters(to)}${bottom}`)
    .join(", ");
}

/** Refuses to write where a cell is not empty. */
export function refuseFilled(
  { headingRow, firstColumn, headings, table }: SelectedList,
  cells: readonly (readonly unknown[])[]
): void {
  for (const [row, line] of cells.entries()) {
    const index = line.findIndex((cell) => !hasNoEntry(cell));
    if (index < 0) continue;
    const address = cellAddress(headingRow + row, firstColumn + headings.length + index);
    const place = table === undefined ? "list" : "table";
    throw new NotDone(
      `Cell ${address} to the right of the ${place} is not empty. Insert columns beside the ${place}, then try again.`
    );
  }
}
