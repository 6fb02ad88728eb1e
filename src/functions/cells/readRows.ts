import { InputError } from "./inputError";

/** A message says what is wrong in this many rows, and only the places of the others. */
const MOST_EXPLAINED = 3;
/** A message names the places of at most this many other rows. */
const MOST_NAMED = 10;

/** The row of a place such as `items row 3, column 2`, without the argument. */
const rowIn = (name: string, { argument }: InputError): string =>
  argument.startsWith(`${name} `) ? argument.slice(name.length + 1) : argument;

function othersOf(name: string, others: readonly InputError[]): string {
  if (others.length === 0) return "";
  const named = others.slice(0, MOST_NAMED).map((error) => rowIn(name, error));
  const more = others.length > named.length ? " …" : "";
  return ` And ${others.length.toLocaleString("en-US")} more: ${named.join("; ")}${more}.`;
}

/** One error for all rows that cannot be read. */
function together(name: string, errors: readonly InputError[]): InputError {
  const explained = errors.slice(0, MOST_EXPLAINED).map((error) => {
    const row = rowIn(name, error);
    return `${row.charAt(0).toUpperCase()}${row.slice(1)}: ${error.sentences}`;
  });
  return new InputError(
    name,
    `${errors.length.toLocaleString("en-US")} entries must be corrected. ${explained.join(" ")}${othersOf(name, errors.slice(MOST_EXPLAINED))}`
  );
}

/**
 * Reads the rows of a range one after the other. Rows that cannot be read are reported together, so that the preparer does not
 * correct one row a try.
 *
 * @param name - The argument, for the error message.
 * @param rows - The rows.
 * @param read - Reads a row; it throws an InputError whose argument is the place of the row.
 * @returns What was read, in order.
 * @throws InputError for the row that cannot be read, or one for all of them: the first three in full, the places of the others.
 *
 * @example
 * // items: 2 entries must be corrected. Row 2: "intrest" is not a recognized label. … Row 5: "x" is not a dollar amount. …
 */
export function readRows<Row, Value>(
  name: string,
  rows: readonly Row[],
  read: (row: Row) => Value
): Value[] {
  const values: Value[] = [];
  const errors: InputError[] = [];
  for (const row of rows) {
    try {
      values.push(read(row));
    } catch (thrown) {
      if (!(thrown instanceof InputError)) throw thrown;
      errors.push(thrown);
    }
  }
  const [first] = errors;
  if (first === undefined) return values;
  throw errors.length === 1 ? first : together(name, errors);
}
