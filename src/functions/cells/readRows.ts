import { InputError } from "./inputError";

/** A message has at most this many characters, with its argument: a host shows it in a small box. */
const LONGEST_MESSAGE = 250;
/** A message says what is wrong in at most this many rows. */
const MOST_EXPLAINED = 3;
/** A message names the places of at most this many other rows. */
const MOST_NAMED = 4;

/** The row of a place such as `items row 3, column 2`, without the argument. */
const rowIn = (name: string, { argument }: InputError): string =>
  argument.startsWith(`${name} `) ? argument.slice(name.length + 1) : argument;

const capitalized = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** Where the rows are that the message does not explain. */
function othersOf(name: string, others: readonly InputError[]): string {
  if (others.length === 0) return "";
  const named = others.slice(0, MOST_NAMED).map((error) => rowIn(name, error));
  const more = others.length > named.length ? " …" : "";
  return ` And ${others.length.toLocaleString("en-US")} more: ${named.join("; ")}${more}.`;
}

/** What is wrong in a row: with what to enter, or shorter without it. */
function explanations(name: string, error: InputError): readonly string[] {
  const whole = ` ${capitalized(rowIn(name, error))}: ${error.sentences}`;
  const remedy = whole.lastIndexOf(". ", whole.length - 2);
  return remedy === -1 ? [whole] : [whole, whole.slice(0, remedy + 1)];
}

/** One error for all rows that cannot be read. */
function together(name: string, errors: readonly InputError[]): InputError {
  let sentences = `${errors.length.toLocaleString("en-US")} entries must be corrected.`;
  let explained = 0;
  for (const error of errors.slice(0, MOST_EXPLAINED)) {
    const others = othersOf(name, errors.slice(explained + 1));
    const fitting = explanations(name, error).find(
      (text) => `${name}: ${sentences}${text}${others}`.length <= LONGEST_MESSAGE
    );
    if (fitting === undefined) break;
    sentences += fitting;
    explained += 1;
  }
  return new InputError(name, sentences + othersOf(name, errors.slice(explained)));
}

/**
 * Reads the rows of a range one after the other. Rows that cannot be read are reported together, so that the preparer does not
 * correct one row a try.
 *
 * @param name - The argument, for the error message.
 * @param rows - The rows.
 * @param read - Reads a row; it throws an InputError whose argument is the place of the row.
 * @returns What was read, in order.
 * @throws InputError for the row that cannot be read, or one for all of them: up to three are explained, the others are named.
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
