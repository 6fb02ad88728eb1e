import { inCell } from "../functions/sheet";
import { fromCatalog } from "../functions/fromCatalog";
import { cellsOf, type Call } from "./typedFormula";

/**
 * Calls the worksheet function under test as a sheet does: dates as serial numbers, null for an omitted argument.
 *
 * @param call - The call.
 * @returns Its result, or the code of its error.
 */
export function answerOfCall(call: Call): unknown {
  const answer = inCell(fromCatalog(call.name), ...cellsOf(call));
  return answer instanceof CustomFunctions.Error ? answer.code : answer;
}
