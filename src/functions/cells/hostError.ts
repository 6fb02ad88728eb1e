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

const INVALID_VALUE = "#VALUE!";
const NOT_AVAILABLE = "#N/A";
/** The errors that a custom function can return. The host accepts any other one only as an argument. */
const RETURNABLE: Readonly<Record<string, keyof typeof CustomFunctions.ErrorCode>> = {
  [NOT_AVAILABLE]: "notAvailable",
  [INVALID_VALUE]: "invalidValue",
  "#DIV/0!": "divisionByZero",
  "#NUM!": "invalidNumber",
  "#NULL!": "nullReference",
};

/** The error on a page without a host. The class of the host comes with a script that only a host loads. */
class PageError {
  constructor(
    readonly code: string,
    readonly message?: string
  ) {}
}

/** Makes an error of the host, or of the page if there is no host. */
function errorOf(code: string, sentence?: string): CustomFunctions.Error {
  const { Error: HostError, ErrorCode } = CustomFunctions as Partial<typeof CustomFunctions>;
  const name = RETURNABLE[code];
  return HostError && ErrorCode && name
    ? new HostError(ErrorCode[name], sentence)
    : (new PageError(code, sentence) as unknown as CustomFunctions.Error);
}

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
  if (thrown instanceof InputError) return errorOf(INVALID_VALUE, thrown.message);
  if (thrown instanceof NotInTableError) return errorOf(NOT_AVAILABLE, thrown.message);
  if (thrown instanceof ErrorCell) {
    if (thrown.code in RETURNABLE) return errorOf(thrown.code);
    const sentence = `An argument contains the error ${thrown.code}. Correct that cell.`;
    return errorOf(INVALID_VALUE, sentence);
  }
  throw thrown;
}

/** Whether an exception is an error of the host, or of a page without one. */
export function isHostError(thrown: unknown): boolean {
  const { Error: HostError } = CustomFunctions as Partial<typeof CustomFunctions>;
  return thrown instanceof PageError || (HostError !== undefined && thrown instanceof HostError);
}
