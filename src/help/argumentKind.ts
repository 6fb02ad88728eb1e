/** How the arguments of one kind are given. */
export interface ArgumentKind {
  readonly title: string;
  /** Unit, meaning of an empty cell and limits; code between backticks. */
  readonly told: string;
  /** Ways to write one that are taken, as they stand in a formula. */
  readonly taken: readonly string[];
  /** Ways that are refused, where one might try them. */
  readonly refused: readonly string[];
}
