/**
 * The script that runs in the page of the add-in before its bundle. It defines `CustomFunctions`, a console that only records, and
 * `standInPage`, through which JSON text goes in and out. `hostPageScript` makes one text of it, so that no object of the calling
 * process, and through it no `process` or `require`, can reach the add-in.
 */
import type { AnswerCell } from "./cellValues";
import { customFunctions, CustomFunctionsError, type WorksheetFunction } from "./customFunctions";
import type { HostPage } from "./standInHost";

/** The errors beside which Excel shows the message of the function. */
const CODES_WITH_MESSAGE = ["#VALUE!", "#N/A"];

const functions = new Map<string, WorksheetFunction>();
const remarks: string[] = [];

function associate(id: string, worksheetFunction: WorksheetFunction): void {
  if (typeof worksheetFunction !== "function") throw new TypeError(`${id} is not a function`);
  functions.set(id.toUpperCase(), worksheetFunction);
}

function recorder(level: string) {
  return (...parts: unknown[]): void => {
    remarks.push(`${level}: ${parts.map(String).join(" ")}`);
  };
}

function errorCell({ code, message }: CustomFunctionsError): AnswerCell {
  const shown = CODES_WITH_MESSAGE.includes(code) && typeof message === "string";
  return shown ? { error: code, message } : { error: code };
}

function encodeObject(value: object, faults: string[]): AnswerCell {
  if (value instanceof CustomFunctionsError) return errorCell(value);
  const { type, basicValue, numberFormat, then } = value as Readonly<Record<string, unknown>>;
  if (type === "Error" && typeof basicValue === "string") return { error: basicValue };
  if (typeof type === "string" && "basicValue" in value) {
    const cell = encodeCell(basicValue, faults);
    return typeof numberFormat === "string" ? { ...cell, numberFormat } : cell;
  }
  if (value instanceof Date) {
    faults.push("a Date object in the result; Excel shows it as text");
    return { value: String(value) };
  }
  faults.push(
    typeof then === "function"
      ? "a promise in the result; every function here returns at once"
      : "an object in the result that Excel does not know"
  );
  return { error: "#VALUE!" };
}

function encodeCell(value: unknown, faults: string[]): AnswerCell {
  switch (typeof value) {
    case "string":
    case "boolean":
      return { value };
    case "number":
      if (Number.isFinite(value)) return { value };
      faults.push(`${String(value)} in the result`);
      return { error: "#NUM!" };
    case "undefined":
    case "object":
      if (value !== null && value !== undefined) return encodeObject(value, faults);
      faults.push(`${String(value)} in the result; Excel shows it as 0`);
      return { value: 0 };
    default:
      faults.push(`a ${typeof value} in the result`);
      return { error: "#VALUE!" };
  }
}

function encodeRows(value: unknown, faults: string[]): AnswerCell[][] {
  if (!Array.isArray(value)) return [[encodeCell(value, faults)]];
  const rows = value as unknown[];
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  const isRow = (row: unknown): row is unknown[] => Array.isArray(row) && row.length === width;
  if (width === 0 || !rows.every(isRow)) {
    faults.push("a result that is not a rectangle of at least one cell");
    return [[{ error: "#VALUE!" }]];
  }
  return rows.map((row) => row.map((cell) => encodeCell(cell, faults)));
}

function encodeThrown(thrown: unknown, faults: string[]): AnswerCell {
  if (thrown instanceof CustomFunctionsError) return errorCell(thrown);
  faults.push(`an exception: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
  return { error: "#VALUE!" };
}

function call(id: string, argumentsText: string, wantsRows: boolean): string {
  const faults: string[] = [];
  let rows: AnswerCell[][];
  try {
    const cells = JSON.parse(argumentsText) as unknown[];
    const value = functions.get(id.toUpperCase())?.(...cells, { functionName: id });
    const isError = value instanceof CustomFunctionsError;
    if (!isError && Array.isArray(value) !== wantsRows) {
      faults.push(
        wantsRows
          ? "a single value where rows are declared"
          : "rows where a single value is declared"
      );
    }
    rows = encodeRows(value, faults);
  } catch (thrown) {
    rows = [[encodeThrown(thrown, faults)]];
  }
  return JSON.stringify({ rows, faults });
}

const standInPage: HostPage = {
  call,
  associated: () => JSON.stringify([...functions.keys()]),
  remarks: () => JSON.stringify(remarks),
  offerFormattedNumbers: () => {
    const requirements = { isSetSupported: () => true };
    Object.assign(globalThis, { Office: { context: { requirements } } });
  },
};

Object.assign(globalThis, { CustomFunctions: customFunctions(associate), standInPage });
// A page in a browser has a window and a console already, and keeps them.
if (typeof window === "undefined") {
  const levels = ["log", "info", "debug", "warn", "error"];
  const console = Object.fromEntries(levels.map((level) => [level, recorder(level)]));
  Object.assign(globalThis, { window: globalThis, self: globalThis, console });
}
