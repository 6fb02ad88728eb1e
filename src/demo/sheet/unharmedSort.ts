import type { Ctor } from "@univerjs/core";
import {
  ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  functionLookup,
} from "@univerjs/preset-sheets-core";

function copyOf(value: BaseValueObject): BaseValueObject {
  if (!value.isArray()) return value;
  const array = value as ArrayValueObject;
  return ArrayValueObject.create({
    calculateValueList: array.getArrayValue().map((row) => [...row]),
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  });
}

type FunctionClass = Ctor<BaseFunction>;

function unharmed(Sort: FunctionClass): FunctionClass {
  return class extends Sort {
    override calculate(...given: BaseValueObject[]) {
      return super.calculate(...given.map(copyOf));
    }
  };
}

/** The SORT of the grid library changes the order of the cells it reads for other formulas too; these functions sort a copy. */
export const UNHARMED_SORTS: readonly [FunctionClass, string][] = (
  functionLookup as unknown as readonly (readonly [FunctionClass, string])[]
)
  .filter(([, name]) => name === "SORT" || name === "SORTBY")
  .map(([Sort, name]) => [unharmed(Sort), name]);
