import { shortDate } from "../../calendar/writtenDate";
import { cellValue, isBlank, shown, type CellValue } from "../cells/cellValue";
import { ErrorCell } from "../cells/hostError";
import { InputError } from "../cells/inputError";
import { readArgument, type ArgumentKind } from "../arguments/argumentKind";
import type { HeadingReading } from "../arguments/readHeadings";
import { date, readDate } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { FIRST_SERIAL_READ_AS_DATE, taxYear } from "../arguments/taxYear";
import { clientPlan, type RosterClient } from "./rosterClient";

/** A cell of a client's row that cannot be read. */
export interface UnreadableCell {
  readonly reading: HeadingReading;
  /** What the cell contains in quotes, or the code of its error. */
  readonly content: string;
  /** What is wrong, and what is accepted, without the argument; empty for a cell with an error. */
  readonly sentence: string;
}

const KINDS_OF_DATES = [date.id, taxYear.id];

/** A value as a message shows it: a worksheet date as a date, anything else as it is entered. */
function shownAs({ id }: ArgumentKind<unknown>, value: CellValue): string {
  const isDate = KINDS_OF_DATES.includes(id) && Number(value) >= FIRST_SERIAL_READ_AS_DATE;
  const day = isDate ? readDate(value) : undefined;
  return day === undefined ? shown(value) : shortDate(day);
}

/**
 * What a cell contains and what is wrong with it; `undefined` if nothing is, or if only another cell that it depends on cannot be read.
 *
 * @param cell - The cell.
 * @param name - The argument.
 * @param kind - Its kind.
 * @param read - Reads it.
 */
function faultOf(
  cell: unknown,
  name: string,
  kind: ArgumentKind<unknown>,
  read: () => unknown
): Omit<UnreadableCell, "reading"> | undefined {
  let value: CellValue;
  try {
    value = cellValue(cell);
  } catch (thrown) {
    if (thrown instanceof ErrorCell) return { content: thrown.code, sentence: "" };
    throw thrown;
  }
  if (isBlank(value)) return undefined;
  try {
    read();
    return undefined;
  } catch (thrown) {
    if (thrown instanceof InputError)
      return thrown.argument === name
        ? { content: shownAs(kind, value), sentence: thrown.sentences }
        : undefined;
    if (thrown instanceof ErrorCell) return undefined;
    throw thrown;
  }
}

/**
 * The cells of a client's row that cannot be read. A blank cell is none.
 *
 * @param client - The client.
 * @param reading - How the headings are read.
 * @param row - The cells of the row.
 */
export function unreadableInRow(
  { given }: RosterClient,
  reading: readonly HeadingReading[],
  row: (index: number) => unknown
): readonly UnreadableCell[] {
  return reading.flatMap((one) => {
    const { field, isPart, index } = one;
    if (field === undefined || !(field in clientPlan)) return [];
    const cell = row(index);
    const name = field as keyof typeof clientPlan;
    const fault = isPart
      ? faultOf(cell, "payments", dollars, () => readArgument(dollars, "payments", cell))
      : faultOf(cell, name, clientPlan[name], () => given(name));
    return fault ? [{ reading: one, ...fault }] : [];
  });
}

/** The cells that {@link unreadableInRow} finds, in one text such as `State: "Texass"; W/H: "n/a"`; empty if there is none. */
export function unreadableCells(
  client: RosterClient,
  reading: readonly HeadingReading[],
  row: (index: number) => unknown
): string {
  return unreadableInRow(client, reading, row)
    .map(({ reading: { heading }, content }) => `${heading.trim()}: ${content}`)
    .join("; ");
}
