import type { Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/preset-sheets-core";
import { type AnswerCell, type Argument, type CellValue, OMITTED } from "../../host/cellValues";

/** The errors that the grid can show, by code. */
const ERRORS = new Map<string, ErrorType>(Object.values(ErrorType).map((code) => [code, code]));

function cellValue(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  if (value instanceof ErrorValueObject) return { error: value.getErrorType() };
  if (value.isLambda()) return { error: "#VALUE!" };
  return value.getValue();
}

/**
 * An argument from the calculation of the grid. A single cell comes as a block of one cell; no value at all is an omitted argument.
 *
 * @param value - The value of the grid.
 * @returns The argument for the stand-in host.
 */
export function argumentOf(value: BaseValueObject): Argument {
  if (!value.isArray()) return value.isNull() ? OMITTED : cellValue(value);
  const rows = (value as ArrayValueObject).getArrayValue().map((row) => row.map(cellValue));
  const [first] = rows;
  return rows.length === 1 && first?.length === 1 ? (first[0] ?? null) : rows;
}

/**
 * A cell of a result as the calculation of the grid needs it.
 *
 * @param cell - The cell.
 * @returns The value for the grid, with the number format of the result.
 */
export function gridValue(cell: AnswerCell): BaseValueObject {
  if (cell.error !== undefined)
    return ErrorValueObject.create(ERRORS.get(cell.error) ?? ErrorType.VALUE);
  switch (typeof cell.value) {
    case "number":
      return NumberValueObject.create(cell.value, cell.numberFormat ?? "");
    case "boolean":
      return BooleanValueObject.create(cell.value);
    case "string":
      return StringValueObject.create(cell.value);
    default:
      return NullValueObject.create();
  }
}
