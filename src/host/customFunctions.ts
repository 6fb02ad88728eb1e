/** A worksheet function as the add-in associates it with its id. */
export type WorksheetFunction = (...cells: unknown[]) => unknown;

/** What a worksheet function throws or returns to answer with an error. */
export class CustomFunctionsError {
  constructor(
    readonly code: string,
    readonly message?: string
  ) {}
}

/**
 * A stand-in for the object `CustomFunctions` that Excel gives to an add-in at run time, with the names and codes of the package
 * `@types/custom-functions-runtime`.
 *
 * @param keep - Receives each function that the add-in associates, with its id.
 * @returns The object.
 */
export function customFunctions(keep: (id: string, worksheetFunction: WorksheetFunction) => void) {
  return {
    associate: keep,
    Error: CustomFunctionsError,
    ErrorCode: {
      divisionByZero: "#DIV/0!",
      invalidName: "#NAME?",
      invalidNumber: "#NUM!",
      invalidReference: "#REF!",
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      nullReference: "#NULL!",
    },
  };
}
