import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { Nullable } from "@univerjs/core";
import type { StandInHost } from "../host/standInHost";
import { type AnswerCell, type Argument, type CellValue, OMITTED } from "../workbook/cellValues";
import type { GridAnswers } from "./gridAnswers";

/** The library names its errors by an enumeration whose values are the codes themselves. */
type GridError = Parameters<typeof ErrorValueObject.create>[0];

function cellValue(value: Nullable<BaseValueObject>): CellValue {
  if (!value || value.isNull()) return null;
  if (value.isError()) return { error: (value as unknown as ErrorValueObject).getErrorType() };
  return value.getValue() as string | number | boolean;
}

function argumentOf(value: BaseValueObject): Argument {
  if (!value.isArray()) return value.isNull() ? OMITTED : cellValue(value);
  const block = value as unknown as ArrayValueObject;
  return block.getArrayValue().map((row) => row.map(cellValue));
}

function gridValue({ value, error, numberFormat }: AnswerCell): BaseValueObject {
  if (error !== undefined) return ErrorValueObject.create(error as GridError);
  switch (typeof value) {
    case "number":
      return NumberValueObject.create(value, numberFormat ?? "");
    case "boolean":
      return BooleanValueObject.create(value);
    case "string":
      return StringValueObject.create(value);
    default:
      return NullValueObject.create();
  }
}

/** One of our functions as the grid's own calculation calls it, by way of the stand-in host: what it throws never reaches the grid. */
export class GridFunction extends BaseFunction {
  constructor(
    private readonly id: string,
    private readonly host: StandInHost,
    private readonly answers: GridAnswers
  ) {
    super(`${host.namespace}.${id}`);
    this.minParams = 0;
    this.maxParams = 255;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const rows = this.host.call(this.id, given.map(argumentOf));
    this.answers.note(this.subUnitId ?? "", this.row, this.column, rows);
    const [first] = rows;
    if (rows.length === 1 && first?.length === 1 && first[0]) return gridValue(first[0]);
    return ArrayValueObject.create({
      calculateValueList: rows.map((row) => row.map(gridValue)),
      rowCount: rows.length,
      columnCount: first?.length ?? 0,
      unitId: this.unitId ?? "",
      sheetId: this.subUnitId ?? "",
      row: this.row,
      column: this.column,
    });
  }
}
