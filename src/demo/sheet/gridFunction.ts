import type { Ctor } from "@univerjs/core";
import { ArrayValueObject, BaseFunction, type BaseValueObject } from "@univerjs/preset-sheets-core";
import type { StandInHost } from "../../host/standInHost";
import type { GridAnswers } from "./gridAnswers";
import { argumentOf, gridValue } from "./gridValues";

/**
 * Our functions as the calculation of the grid calls them. The stand-in host catches what a function throws, because an exception in
 * the grid would end the whole calculation.
 *
 * @param host - The stand-in host.
 * @param answers - Records the results, for their messages.
 * @returns The class of the functions. Each is created with its name as typed, such as EXT.DUE.
 */
export function gridFunction(host: StandInHost, answers: GridAnswers): Ctor<BaseFunction> {
  return class extends BaseFunction {
    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const name = String(this.name).slice(host.namespace.length + 1);
      const rows = host.call(name, given.map(argumentOf));
      const place = { sheetId: this.subUnitId ?? "", row: this.row, column: this.column };
      answers.note(place, { name, rows });
      const [first = []] = rows;
      if (rows.length === 1 && first.length === 1 && first[0]) return gridValue(first[0]);
      return ArrayValueObject.create({
        calculateValueList: rows.map((row) => row.map(gridValue)),
        rowCount: rows.length,
        columnCount: first.length,
        unitId: this.unitId ?? "",
        sheetId: place.sheetId,
        row: place.row,
        column: place.column,
      });
    }
  };
}
