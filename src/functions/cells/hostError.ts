import { InputError } from "./inputError";
import { NotInTableError } from "../../rules/notInTableError";

/** An error cell among the arguments. It passes through to the answer. */
export class ErrorCell extends Error {
  override readonly name = "ErrorCell";

  /** @param code - The error as the sheet shows it: `#DIV/0!`, `#N/A` … */
  constructor(readonly code: string) {
    super(code);
  }
}

/** The errors that a custom function can return. The host accepts any other one only as an argument. */
const RETURNABLE: Readonly<Record<string, keyof typeof CustomFunctions.ErrorCode>> = {
  "#N/A": "notAvailable",
  "#VALUE!": "invalidValue",
  "#DIV/0!": "divisionByZero",
  "#NUM!": "invalidNumber",
  "#NULL!": "nullReference",
};

/**
 * The error that the cell shows: `#VALUE!` with a sentence for bad input, `#N/A` with a sentence for a figure that is not in the
 * rule tables, and the code of an error cell among the arguments.
 *
 * The host shows a sentence with these two codes only. Any other exception is a bug: it is thrown again, so that it looks like one.
 *
 * @param thrown - What a calculation or an argument threw.
 * @returns The host's error.
 */
export function hostError(thrown: unknown): CustomFunctions.Error {
  const { Error: HostError, ErrorCode } = CustomFunctions;
  if (thrown instanceof InputError) return new HostError(ErrorCode.invalidValue, thrown.message);
  if (thrown instanceof NotInTableError)
    return new HostError(ErrorCode.notAvailable, thrown.message);
  if (thrown instanceof ErrorCell) {
    const returnable = RETURNABLE[thrown.code];
    if (returnable !== undefined) return new HostError(ErrorCode[returnable]);
    const sentence = `An argument contains the error ${thrown.code}. Correct that cell.`;
    return new HostError(ErrorCode.invalidValue, sentence);
  }
  throw thrown;
}

/** Whether an exception is an error of the host. */
export function isHostError(thrown: unknown): boolean {
  return thrown instanceof CustomFunctions.Error;
}
