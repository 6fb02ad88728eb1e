import { InputError } from "../inputError";
import { isEmptyCell } from "./cells";
import { hostError } from "./errors";
import { EMPTY, type AnswerCell, type AnswerTable } from "./results";

/** What the host passes for one argument: a block of cells, a bare value, or nothing. */
export type Argument = unknown;

/** One row's cell of each argument, by the argument's name. */
export type RowCells<Name extends string> = Readonly<Record<Name, unknown>>;

interface Column {
  readonly name: string;
  readonly cells: readonly unknown[];
  readonly lies: "down" | "across";
}

function column(name: string, argument: Argument): Column {
  if (!Array.isArray(argument)) return { name, cells: [argument ?? null], lies: "down" };
  const block = argument as readonly unknown[];
  const rows = block.map((row) => (Array.isArray(row) ? (row as readonly unknown[]) : [row]));
  const width = rows[0]?.length ?? 0;
  if (width <= 1) return { name, cells: rows.map((row) => row[0] ?? null), lies: "down" };
  if (rows.length === 1) return { name, cells: rows[0] ?? [], lies: "across" };
  throw new InputError(
    name,
    `is a block of ${String(rows.length)} rows and ${String(width)} columns; give one cell, one column or one row`
  );
}

function lengthOf(columns: readonly Column[]): number {
  const long = columns.filter(({ cells }) => cells.length > 1);
  const first = long[0];
  const other = long.find(({ cells }) => cells.length !== first?.cells.length);
  if (first && other) {
    throw new InputError(
      other.name,
      `has ${String(other.cells.length)} cells while ${first.name} has ${String(first.cells.length)}; columns that go together must be of equal length`
    );
  }
  const none = columns.find(({ cells }) => cells.length === 0);
  if (none) throw new InputError(none.name, "is an empty range");
  return first?.cells.length ?? 1;
}

/** Whether a row of a client list is left empty; a zero is taken for empty only beside the tax year, which cannot be zero. */
function isEmptyRow(columns: readonly Column[], row: number): boolean {
  const long = columns.filter(({ cells }) => cells.length > 1);
  const zeroIsEmpty = long.some(
    ({ name, cells }) => name === "taxYear" && (cells[row] === 0 || isEmptyCell(cells[row]))
  );
  return long.every(({ cells }) => isEmptyCell(cells[row]) || (zeroIsEmpty && cells[row] === 0));
}

/**
 * Answers a row function: one answer for each row of its arguments.
 *
 * An argument is one cell, a column or a row of cells. Those of equal length go together, single ones repeat. One row in, one
 * answer or one error out; a column in, a column out in which a bad row answers with its own error and an empty row with empty text.
 *
 * @param given - The arguments by name, as the host passed them.
 * @param answer - Works out one row.
 * @returns A column, or a row where the arguments lie across.
 * @throws CustomFunctions.Error when the arguments do not fit together, or the single row is refused.
 */
export function answerRows<Name extends string>(
  given: Readonly<Record<Name, Argument>>,
  answer: (cells: RowCells<Name>) => AnswerCell
): AnswerTable {
  let columns: Column[];
  let length: number;
  try {
    columns = Object.entries(given).map(([name, argument]) => column(name, argument));
    length = lengthOf(columns);
  } catch (thrown) {
    throw hostError(thrown);
  }
  const answers: AnswerCell[] = [];
  for (let row = 0; row < length; row++) {
    const cells = {} as Record<string, unknown>;
    for (const { name, cells: values } of columns)
      cells[name] = values.length === 1 ? values[0] : values[row];
    try {
      answers.push(
        length > 1 && isEmptyRow(columns, row) ? EMPTY : answer(cells as RowCells<Name>)
      );
    } catch (thrown) {
      const error = hostError(thrown);
      if (length === 1) throw error;
      answers.push(error);
    }
  }
  const across = columns.some(({ cells, lies }) => cells.length > 1 && lies === "across");
  return across ? [answers] : answers.map((cell) => [cell]);
}

/**
 * Answers a function whose arguments have shapes of their own.
 *
 * @param work - Reads the arguments and works out the answer.
 * @returns The answer.
 * @throws CustomFunctions.Error when the input is refused or a figure is not published.
 */
export function answered<Answer>(work: () => Answer): Answer {
  try {
    return work();
  } catch (thrown) {
    throw hostError(thrown);
  }
}

/**
 * Answers a spilling function: a header row and the rows under it.
 *
 * @param header - Column headings.
 * @param work - Works out the rows.
 * @returns The table.
 * @throws CustomFunctions.Error when the input is refused or a figure is not published.
 */
export function answerTable(header: readonly string[], work: () => AnswerTable): AnswerTable {
  return answered(() => [[...header], ...work()]);
}

/** The one cell of an argument that a spilling function takes singly. */
export function single(name: string, argument: Argument): unknown {
  const { cells } = column(name, argument);
  if (cells.length !== 1)
    throw new InputError(name, `is a range of ${String(cells.length)} cells; give one cell`);
  return cells[0];
}

/**
 * The one cell of each argument that a spilling function takes singly.
 *
 * @param given - The arguments by name.
 * @returns Their cells by name.
 * @throws InputError where one is a range of several cells.
 */
export function singles<Name extends string>(
  given: Readonly<Record<Name, Argument>>
): RowCells<Name> {
  const cells = {} as Record<string, unknown>;
  for (const [name, argument] of Object.entries(given)) cells[name] = single(name, argument);
  return cells as RowCells<Name>;
}

/**
 * Every cell of a range that is not empty, row by row.
 *
 * @param name - The argument, for the message.
 * @param argument - One cell or a range.
 * @returns Its cells.
 * @throws InputError when there is none.
 */
export function allCells(name: string, argument: Argument): readonly unknown[] {
  const cells = [argument].flat(2).filter((cell) => !isEmptyCell(cell));
  if (cells.length === 0) throw new InputError(name, "is an empty range");
  return cells;
}
