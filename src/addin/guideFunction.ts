/** One argument of a worksheet function, as the guide explains it. */
export interface GuideArgument {
  readonly name: string;
  readonly meaning: string;
  /** May be left out. */
  readonly optional?: true;
}

/** One worksheet function, as the guide explains it. */
export interface GuideFunction {
  /** The preparer's task the function serves; the guide groups by it. */
  readonly task: string;
  readonly name: string;
  readonly purpose: string;
  readonly arguments: readonly GuideArgument[];
}
