import {
  type AnswerCell,
  type Argument,
  type CellValue,
  isErrorCell,
  OMITTED,
} from "../../host/cellValues";
import { NativeCorrections } from "./nativeCorrections";
import { OMITTED_MARK } from "./engineFormula";
import type { StandInHost } from "../../host/standInHost";

/** A call of one of our functions and its result, for the messages and number formats of its cells. */
export interface AnsweredCall {
  readonly name: string;
  readonly rows: readonly (readonly AnswerCell[])[];
}

/** A value of the calculating library, with the numbers it uses for the kinds of value. */
export type EngineValue =
  | { readonly kind: 0 }
  | { readonly kind: 1; readonly value: number }
  | { readonly kind: 2; readonly value: string }
  | { readonly kind: 3; readonly value: boolean }
  | { readonly kind: 4; readonly code: string }
  | {
      readonly kind: 5;
      readonly rows: readonly (readonly EngineValue[])[];
      readonly height: number;
      readonly width: number;
    }
  | { readonly kind: 6 | 7 };

/** A function as the library calls it. */
export type EngineFunction = {
  minArity: number;
  maxArity: number;
  invoke: (values: unknown[]) => unknown;
};

const MOST_ARGUMENTS = 255;

function toCellValue(value: EngineValue): CellValue {
  switch (value.kind) {
    case 0:
      return null;
    case 1:
    case 2:
    case 3:
      return value.value;
    case 4:
      return { error: value.code };
    default:
      return { error: "#VALUE!" };
  }
}

function toArgument(value: EngineValue): Argument {
  if (value.kind === 2 && value.value === OMITTED_MARK) return OMITTED;
  return value.kind === 5 ? value.rows.map((row) => row.map(toCellValue)) : toCellValue(value);
}

function toEngineValue(cell: AnswerCell): EngineValue {
  if (isErrorCell(cell)) return { kind: 4, code: cell.error };
  switch (typeof cell.value) {
    case "number":
      return { kind: 1, value: cell.value };
    case "boolean":
      return { kind: 3, value: cell.value };
    default:
      return { kind: 2, value: cell.value ?? "" };
  }
}

function toEngineAnswer(rows: readonly (readonly AnswerCell[])[]): EngineValue {
  const width = rows[0]?.length ?? 0;
  const first = rows[0]?.[0];
  if (rows.length === 1 && width === 1 && first !== undefined) return toEngineValue(first);
  return {
    kind: 5,
    rows: rows.map((row) => row.map(toEngineValue)),
    height: rows.length,
    width,
  };
}

/** Gives the functions of the add-in to the calculating library, and records the result of each call. */
export class FunctionBridge {
  /** Recorded calls by the number of the calling formula, in the order of the calls. */
  readonly calls = new Map<number, AnsweredCall[]>();
  callCount = 0;
  readonly corrections = new NativeCorrections();

  constructor(readonly host: StandInHost) {}

  /** The functions as the library needs them, by their typed names, and those of Excel that it has wrong. */
  engineFunctions(): ReadonlyMap<string, EngineFunction> {
    const functions = this.corrections.functions();
    for (const name of this.host.functions.keys()) {
      functions.set(`${this.host.namespace}.${name}`.toUpperCase(), {
        minArity: 1,
        maxArity: MOST_ARGUMENTS,
        invoke: (values) => this.#call(name, values as EngineValue[]),
      });
    }
    return functions;
  }

  /** Deletes the recorded calls of a formula before it is calculated again. */
  forget(site: number): void {
    this.calls.delete(site);
    this.corrections.doubtful.delete(site);
  }

  #call(name: string, values: readonly EngineValue[]): EngineValue {
    const [site, ...rest] = values;
    const rows = this.host.call(name, rest.map(toArgument));
    this.callCount += 1;
    if (site?.kind === 1) this.#remember(site.value, { name, rows });
    return toEngineAnswer(rows);
  }

  #remember(site: number, call: AnsweredCall): void {
    const known = this.calls.get(site);
    if (known === undefined) this.calls.set(site, [call]);
    else known.push(call);
  }
}
