import { formulaCall } from "../../src/addin/answers/formulaCall";
import { catalog } from "../../src/functions/catalog";
import { inCell, type WorksheetFunction } from "./sheet";

/** A worksheet function by its name in a cell, as the host calls it. */
export function fromCatalog(id: string): WorksheetFunction {
  const found = catalog[id];
  if (!found) throw new RangeError(`${id} is not in the catalog`);
  return (...cells) => found.answer(cells);
}

/** What a formula returns: the value of one cell, a table, or an error. */
export function answerToFormula(formula: string): unknown {
  const { id, values } = formulaCall(formula);
  return inCell(fromCatalog(id), ...values);
}
