/**
 * What the preparer entered cannot be used: the cell shows `#VALUE!` with this sentence.
 *
 * The sentence names the argument, what was entered, and what is accepted with an example.
 */
export class InputError extends Error {
  override readonly name = "InputError";

  /**
   * @param argument - The worksheet argument, as the preparer sees its name, and its row where it is a range.
   * @param sentences - What was entered and what is accepted, in full sentences.
   */
  constructor(
    readonly argument: string,
    readonly sentences: string
  ) {
    super(`${argument}: ${sentences}`);
  }
}
