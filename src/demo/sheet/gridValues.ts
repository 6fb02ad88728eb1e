import type { Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  type ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/preset-sheets-core";
import { type AnswerCell, type Argument, type CellValue, OMITTED } from "../../host/cellValues";

function cellValue(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  if (value.isError()) return { error: (value as ErrorValueObject).getErrorType() };
  if (value.isLambda()) return { error: "#VALUE!" };
  return value.getValue() as number | string | boolean;
}

/**
 * An argument as the grid's calculation hands it over. A cell comes as a block of one; alone, nothing is an argument left out.
 *
 * @param value - The grid's value.
 * @returns The argument for the stand-in host.
 */
export function argumentOf(value: BaseValueObject): Argument {
  if (!value.isArray()) return value.isNull() ? OMITTED : cellValue(value);
  const rows = (value as ArrayValueObject).getArrayValue().map((row) => row.map(cellValue));
  const [first] = rows;
  return rows.length === 1 && first?.length === 1 ? (first[0] ?? null) : rows;
}

/**
 * A cell of an answer as the grid's calculation takes it.
 *
 * @param cell - The cell.
 * @returns The grid's value, with the number format the answer asks for.
 */
export function gridValue(cell: AnswerCell): BaseValueObject {
  if (cell.error !== undefined) return ErrorValueObject.create(cell.error as ErrorType);
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
