/**
 * What the preparer typed cannot be used: becomes `#VALUE!` with this sentence.
 *
 * The sentence names the argument, says what came and what is wanted.
 */
export class InputError extends Error {
  override readonly name = "InputError";

  /**
   * @param argument - The worksheet argument at fault, as the preparer sees its name.
   * @param complaint - What came and what is wanted, without the argument's name.
   */
  constructor(
    readonly argument: string,
    complaint: string
  ) {
    super(`${argument}: ${complaint}`);
  }
}
