import type { TaxYear } from "../../calculation/taxYear";
import { cellValue, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";

/** What the help says of a kind of argument. */
export interface KindHelp {
  /** Its anchor on a help page, and its key in the tests. */
  readonly id: string;
  readonly title: string;
  /** Unit, meaning of a blank cell and limits. Code is between backticks. */
  readonly description: string;
  /** Values that are accepted, as written in a formula. */
  readonly accepted: readonly string[];
  /** Values that return an error, although someone might try them. */
  readonly notAccepted: readonly string[];
}

/** What a blank cell means: a value, or an error that says what to enter. */
export type WhenBlank<Value> = { readonly means: Value } | { readonly enter: string };

/** The arguments read before this one that a kind may use. */
export interface Earlier {
  readonly taxYear?: TaxYear;
}

/** A kind of argument that is one cell. */
export interface CellKind<Value> extends KindHelp {
  readonly takes: "cell";
  /** `isBlank`, or `isBlankOrZero` where 0 is not a possible value. */
  readonly isEmpty: (value: CellValue) => boolean;
  readonly whenBlank: WhenBlank<Value>;
  /** Reads a cell that is not blank. `name` is the argument, for the error message. */
  readonly read: (value: CellValue, name: string, earlier: Earlier) => Value;
}

/** A kind of argument that is a range of cells, read as a whole. */
export interface RangeKind<Value> extends KindHelp {
  readonly takes: "range";
  readonly whenBlank: WhenBlank<Value>;
  readonly read: (range: unknown, name: string, earlier: Earlier) => Value;
}

/** A kind of argument: how it is read, what a blank cell means, and what the help says of it. */
export type ArgumentKind<Value> = CellKind<Value> | RangeKind<Value>;

/** The arguments of a function by name, in the order of its signature. */
export type ArgumentList = Readonly<Record<string, ArgumentKind<unknown>>>;

/** The values read for a list of arguments. */
export type Given<List extends ArgumentList> = {
  readonly [Name in keyof List]: ReturnType<List[Name]["read"]>;
};

/** The same kind where a blank cell means a value; `undefined` unless one is named. */
export function optional<Value>(kind: CellKind<Value>): CellKind<Value | undefined>;
export function optional<Value>(kind: CellKind<Value>, means: Value): CellKind<Value>;
export function optional<Value>(kind: CellKind<Value>, means?: Value): CellKind<Value | undefined> {
  return { ...kind, whenBlank: { means } };
}

function blankValue<Value>(whenBlank: WhenBlank<Value>, name: string): Value {
  if ("means" in whenBlank) return whenBlank.means;
  throw new InputError(name, `The cell is blank. ${whenBlank.enter}`);
}

/**
 * Reads one argument by its kind.
 *
 * @param kind - The kind.
 * @param name - The argument, for the error message.
 * @param argument - A cell, or for a range kind what the host passed.
 * @param earlier - The arguments read before it.
 * @returns The value.
 * @throws InputError when the cell is blank and must not be, or cannot be read.
 */
export function readArgument<Value>(
  kind: ArgumentKind<Value>,
  name: string,
  argument: unknown,
  earlier: Earlier = {}
): Value {
  if (kind.takes === "range")
    return argument === null || argument === undefined
      ? blankValue(kind.whenBlank, name)
      : kind.read(argument, name, earlier);
  const value = cellValue(argument);
  return kind.isEmpty(value) ? blankValue(kind.whenBlank, name) : kind.read(value, name, earlier);
}

const LONGEST_WORD = 200;

/** A text as it is compared: lower case, single spaces. */
export function plainText(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, " ");
}

/** A word as it is compared. A text too long for any word stays as it is. */
export function plainWord(value: CellValue): CellValue {
  return typeof value === "string" && value.length <= LONGEST_WORD ? plainText(value) : value;
}

/** Reads one argument from its cell. */
export type Reader = (
  cell: unknown,
  earlier: Earlier,
  /** What tells the tax years of two rows apart: the cell, or the year read from it. */
  year: unknown
) => unknown;

/** Reads one argument, and keeps its last value for the next row: the rows of a client list often repeat a cell. */
export function readerOf(kind: ArgumentKind<unknown>, name: string): Reader {
  let last: { cell: unknown; year: unknown; value: unknown } | undefined;
  return (cell, earlier, year) => {
    if (last !== undefined && last.cell === cell && last.year === year) return last.value;
    const value = readArgument(kind, name, cell, earlier);
    last = { cell, year, value };
    return value;
  };
}

const UNREAD = Symbol("unread");

/** The tax year of a row, read when an argument after it asks for it. */
class EarlierYear implements Earlier {
  constructor(readonly given: (name: string) => unknown) {}
  get taxYear(): TaxYear {
    return this.given("taxYear") as TaxYear;
  }
}

/** Gives the value of an argument of a row by its name. It is a function, which the lint refuses to spread: a copy would lose what is not read yet. */
export type RowReader<List extends ArgumentList> = <Name extends keyof List & string>(
  name: Name
) => Given<List>[Name];

/**
 * Reads the arguments of a row each once, when it is first asked for: one cell that cannot be read does not hide the others.
 *
 * @param list - The arguments.
 * @returns The reader of a row, from the cell of each argument.
 */
export function lazily<List extends ArgumentList>(
  list: List
): (cellOf: (name: string) => unknown) => RowReader<List> {
  const readers = new Map(
    Object.entries(list).map(([name, kind], index) => [name, { index, read: readerOf(kind, name) }])
  );
  return (cellOf) => {
    const values = new Array<unknown>(readers.size).fill(UNREAD);
    const given = (name: string): unknown => {
      const argument = readers.get(name);
      if (argument === undefined) return undefined;
      const { index, read } = argument;
      if (values[index] === UNREAD) values[index] = read(cellOf(name), earlier, cellOf("taxYear"));
      return values[index];
    };
    const earlier = new EarlierYear(given);
    return given as RowReader<List>;
  };
}

/** Reads the arguments of a list, in their order, from a row that may have more. */
export function readAll<List extends ArgumentList>(
  list: List,
  given: (name: keyof List & string) => Given<List>[keyof List]
): Given<List> {
  const values: Partial<Record<keyof List, unknown>> = {};
  for (const name in list) values[name] = given(name);
  return values as Given<List>;
}

/** The same kind for a cell that is read later, row by row. */
export function unread(kind: CellKind<unknown>): CellKind<CellValue> {
  return { ...kind, isEmpty: () => false, whenBlank: { means: null }, read: (value) => value };
}
