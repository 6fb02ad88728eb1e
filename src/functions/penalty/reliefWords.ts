import type { CleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";

/** Where there is interest, but no penalty. */
export const NOTHING_TO_REMOVE = "There is no penalty to remove. Interest on the tax remains";

/** Why relief is best requested after the tax is paid. */
export const CONTINUES =
  "The failure-to-pay penalty continues until the tax is paid. Ask for relief after that";

/** How sure relief is, and its name for the tax year. */
export const likelyBy = ({ name }: CleanHistoryRule): string =>
  `Relief is likely, but not certain: ${name}`;
