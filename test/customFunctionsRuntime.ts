import { customFunctions, type WorksheetFunction } from "../src/host/customFunctions";

/** The functions that the imported files have associated, by id. */
export const associated = new Map<string, WorksheetFunction>();

Object.assign(globalThis, {
  CustomFunctions: customFunctions((id, worksheetFunction) =>
    associated.set(id, worksheetFunction)
  ),
});
