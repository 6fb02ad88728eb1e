import { inCell } from "../functions/sheet";
import { worksheetFunction } from "../functions/worksheetFunctions";
import { cellsOf, type Call } from "./typedFormula";

/**
 * What the worksheet function under test answers to a call, called as a sheet does: with serials, and nothing for what is left out.
 *
 * @param call - The call.
 * @returns Its answer; the code where that is an error.
 */
export function answerOfCall(call: Call): unknown {
  const answer = inCell(worksheetFunction(call.name), ...cellsOf(call));
  return answer instanceof CustomFunctions.Error ? answer.code : answer;
}
