import {
  DATE_FORMAT,
  MONEY_FORMAT,
  PERCENT_FORMAT,
  WHOLE_DOLLAR_FORMAT,
} from "../functions/cells/answerCell";
import type { AnsweredExample } from "./answeredExample";

/** What a preparer should know of an answer in each number format that the functions use. */
const UNITS: readonly (readonly [format: string, sentence: string])[] = [
  [
    DATE_FORMAT,
    "Dates are worksheet dates. If a cell shows a number such as 46127, give it a date format.",
  ],
  [
    MONEY_FORMAT,
    "Amounts are in U.S. dollars. A calculated amount is rounded once, to the nearest cent; half a cent is rounded up.",
  ],
  [
    WHOLE_DOLLAR_FORMAT,
    "Amounts in whole dollars are rounded as on the form: less than 50 cents is dropped, and 50 cents or more is rounded up.",
  ],
  [
    PERCENT_FORMAT,
    "Rates and shares are percents. If a cell shows a number such as 0.07, give it a percent format.",
  ],
];

/**
 * Sentences on the units and the rounding of a function's answers.
 *
 * @param examples - The function's examples; the formats of their cells decide which sentences apply.
 */
export function answerUnits(examples: readonly AnsweredExample[]): readonly string[] {
  const formats = examples.flatMap(({ cells }) =>
    cells.flat().map(({ numberFormat = "" }) => numberFormat)
  );
  return UNITS.filter(([format]) =>
    formats.some((used) => used === format || used.startsWith(`${format}"`))
  ).map(([, sentence]) => sentence);
}
