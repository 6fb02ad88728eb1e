import { InputError } from "../inputError";
import { NotInTableError } from "../rules/notInTableError";

/** An error cell among the arguments: it passes through to the answer. */
export class ErrorCell extends Error {
  override readonly name = "ErrorCell";

  /** @param code - The error as the sheet shows it: `#DIV/0!`, `#N/A` … */
  constructor(readonly code: string) {
    super(code);
  }
}

/** Errors that a custom function may hand back as they are; the host takes any other only as an argument. */
const RETURNABLE = ["#N/A", "#VALUE!", "#DIV/0!", "#NUM!", "#NULL!"];

/**
 * What the sheet shows for an error: `#VALUE!` with a sentence for bad input, `#N/A` with a sentence for a figure that is not
 * published, an error cell's own code where an argument held one.
 *
 * Only these two codes carry a sentence in the host. Anything else that was thrown is a bug: it is thrown on, so that it looks like
 * one.
 *
 * @param thrown - What a calculation or a reader threw.
 * @returns The host's error.
 */
export function hostError(thrown: unknown): CustomFunctions.Error {
  const { Error: HostError, ErrorCode } = CustomFunctions;
  if (thrown instanceof InputError) return new HostError(ErrorCode.invalidValue, thrown.message);
  if (thrown instanceof NotInTableError)
    return new HostError(ErrorCode.notAvailable, thrown.message);
  if (thrown instanceof ErrorCell) {
    return RETURNABLE.includes(thrown.code)
      ? new HostError(thrown.code as CustomFunctions.ErrorCode)
      : new HostError(ErrorCode.invalidValue, `an argument holds the error ${thrown.code}`);
  }
  throw thrown;
}

/** Whether something thrown is an error as the host takes it. */
export function isHostError(thrown: unknown): boolean {
  return thrown instanceof CustomFunctions.Error;
}
