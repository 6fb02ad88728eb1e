import { rulebook, type Rulebook } from "../rules/rulebook";
import {
  readerOf,
  type ArgumentKind,
  type ArgumentList,
  type Given,
  type Reader,
} from "./arguments/argumentKind";
import { BLANK, type AnswerCell, type AnswerTable } from "./cells/answerCell";
import { sizedAnswer } from "./cells/answerSize";
import { columnOf, isBlankRow, lengthOf, singleCell } from "./cells/columns";
import { hostError } from "./cells/hostError";

/** A formula that the help shows with the answer of the built function. */
export interface Example {
  readonly formula: string;
  /** What the cell shows; of a table, any one of its cells. */
  readonly answer: string;
  /** What the answer shows that the formula does not. */
  readonly remark?: string;
}

/** How a function is declared, read and explained. */
interface Definition<List extends ArgumentList, Table extends keyof Rulebook, Answer> {
  readonly arguments: List;
  /** The rule tables that an answer may depend on. */
  readonly tables: readonly Table[];
  /** Sections of law and official texts, in the style of the IRS instructions. */
  readonly law: readonly string[];
  readonly examples: readonly Example[];
  /** What else to know of the answer: its possible values, its limits. */
  readonly note?: string;
  readonly calculate: (given: Given<List>, rules: Pick<Rulebook, Table>) => Answer;
}

/** One answer for each row, a table that fills several cells, or one cell. */
export type FunctionForm = "row" | "table" | "cell";

/** A worksheet function as guide, help, tests and its declaration use it. */
export interface WorksheetFunction<Answer = AnswerTable> extends Omit<
  Definition<ArgumentList, keyof Rulebook, never>,
  "calculate"
> {
  readonly form: FunctionForm;
  /** Answers the cells that the host passes, in the order of the signature. */
  readonly answer: (cells: readonly unknown[]) => Answer;
}

const readersOf = (list: ArgumentList): (readonly [string, Reader])[] =>
  Object.entries(list).map(([name, kind]) => [name, readerOf(kind, name)]);

function read<List extends ArgumentList>(
  readers: readonly (readonly [string, Reader])[],
  cellAt: (index: number) => unknown
): Given<List> {
  const given: Record<string, unknown> = {};
  let index = 0;
  for (const [name, reader] of readers)
    given[name] = reader(cellAt(index++), given, given["taxYear"]);
  return given as Given<List>;
}

function answered<Answer>(work: () => Answer): Answer {
  try {
    return work();
  } catch (thrown) {
    throw hostError(thrown);
  }
}

/**
 * A function that answers row by row.
 *
 * Each argument is one cell, a column or a row of cells. Ranges of equal length go together and single cells repeat. For a column
 * the answer is a column: a row that cannot be answered shows its own error, and a blank row shows a blank cell.
 *
 * @param definition - Its arguments and the calculation of one row.
 * @returns The worksheet function; its answer throws the host's error when ranges differ in length or a single row is not accepted.
 */
export function rowFunction<List extends ArgumentList, Table extends keyof Rulebook>(
  definition: Definition<List, Table, AnswerCell>
): WorksheetFunction {
  const names = Object.keys(definition.arguments);
  const answer = (cells: readonly unknown[]): AnswerTable => {
    const columns = answered(() => names.map((name, index) => columnOf(name, cells[index])));
    const length = answered(() => lengthOf(columns));
    const readers = readersOf(definition.arguments);
    const answers: AnswerCell[] = [];
    for (let row = 0; row < length; row++) {
      try {
        const cellAt = (index: number): unknown => {
          const values = columns[index]?.cells ?? [];
          return values.length === 1 ? values[0] : values[row];
        };
        answers.push(
          length > 1 && isBlankRow(columns, row)
            ? BLANK
            : definition.calculate(read(readers, cellAt), rulebook)
        );
      } catch (thrown) {
        const error = hostError(thrown);
        if (length === 1) throw error;
        answers.push(error);
      }
    }
    const isAcross = columns.some(
      ({ cells: { length: many }, direction }) => many > 1 && direction === "across"
    );
    const range = columns.findIndex(({ cells: { length: many } }) => many > 1);
    const rows = isAcross ? [answers] : answers.map((cell) => [cell]);
    return answered(() => sizedAnswer(names[range] ?? "", rows));
  };
  return { ...definition, form: "row", answer };
}

function wholeFunction<List extends ArgumentList, Table extends keyof Rulebook, Answer>(
  form: "table" | "cell",
  definition: Definition<List, Table, Answer>
): WorksheetFunction<Answer> {
  const kinds = Object.entries<ArgumentKind<unknown>>(definition.arguments);
  const answer = (cells: readonly unknown[]): Answer =>
    answered(() => {
      const cellAt = (index: number): unknown => {
        const [name = "", kind] = kinds[index] ?? [];
        return kind?.takes === "range" ? cells[index] : singleCell(name, cells[index]);
      };
      return definition.calculate(read(readersOf(definition.arguments), cellAt), rulebook);
    });
  return { ...definition, form, answer };
}

/**
 * A function that fills several cells: a row of headings and the rows below it. It answers for one client.
 *
 * @param definition - Its arguments and the calculation of the table.
 * @returns The worksheet function; its answer throws the host's error when an argument is not accepted.
 */
export function tableFunction<List extends ArgumentList, Table extends keyof Rulebook>(
  definition: Definition<List, Table, AnswerTable>
): WorksheetFunction {
  const list = Object.entries<ArgumentKind<unknown>>(definition.arguments);
  const [range = ""] = list.find(([, { takes }]) => takes === "range") ?? list[0] ?? [];
  return wholeFunction("table", {
    ...definition,
    calculate: (given, rules) => sizedAnswer(range, definition.calculate(given, rules)),
  });
}

/**
 * A function that answers in one cell for one client and takes ranges as a whole.
 *
 * @param definition - Its arguments and the calculation of the cell.
 * @returns The worksheet function; its answer throws the host's error when an argument is not accepted.
 */
export function cellFunction<List extends ArgumentList, Table extends keyof Rulebook>(
  definition: Definition<List, Table, AnswerCell>
): WorksheetFunction<AnswerCell> {
  return wholeFunction("cell", definition);
}
