/** The rules hold no row for what was asked, or none that may be relied on: becomes `#N/A` with this sentence. */
export class NotHeldError extends Error {
  override readonly name = "NotHeldError";

  /**
   * @param what - What is missing, as a sentence without its full stop.
   * @param file - The table's name under rules/.
   */
  constructor(what: string, file: string) {
    super(`${what} (rules/${file}.json)`);
  }
}
