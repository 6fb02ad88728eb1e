/**
 * What the host gives a custom function at run time, as far as the wrappers use it: `CustomFunctions.associate`, `Error`, `ErrorCode`.
 * Names and codes as in the types published for the platform (package "@types/custom-functions-runtime").
 */
class HostError {
  constructor(
    readonly code: string,
    readonly message?: string
  ) {}
}

export const associated = new Map<string, (...cells: unknown[]) => unknown>();

Object.assign(globalThis, {
  CustomFunctions: {
    associate: (id: string, worksheetFunction: (...cells: unknown[]) => unknown) =>
      associated.set(id, worksheetFunction),
    Error: HostError,
    ErrorCode: {
      divisionByZero: "#DIV/0!",
      invalidName: "#NAME?",
      invalidNumber: "#NUM!",
      invalidReference: "#REF!",
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      nullReference: "#NULL!",
    },
  },
});
