import type { Example } from "./example";

/** What a preparer should know of an answer in each number format that the functions use. */
const UNITS: readonly (readonly [format: string, told: string])[] = [
  [
    "yyyy-mm-dd",
    "Days are worksheet dates. Where a cell shows a number such as 46127, give it a date format.",
  ],
  [
    "#,##0.00",
    "Money is in US dollars. What is worked out is rounded to the cent once, at its end, half a cent upwards unless said otherwise.",
  ],
  [
    "#,##0",
    "Money in whole dollars drops less than 50 cents and takes 50 cents and more to the next dollar.",
  ],
  [
    "0.00%",
    "Rates are fractions: 0.07 is 7%. Where a cell shows the fraction, give it a percentage format.",
  ],
];

/**
 * Sentences on the units of a function's answers and how they are rounded.
 *
 * @param examples - The function's examples, whose cells say in which formats it answers.
 * @returns One sentence or more for each format.
 */
export function answerUnits(examples: readonly Example[]): readonly string[] {
  const cells = examples.flatMap(({ answer }) => answer.flat());
  const formats = cells.map(({ numberFormat = "" }) => numberFormat);
  return UNITS.filter(([format]) =>
    formats.some((used) => used === format || used.startsWith(`${format}"`))
  ).map(([, told]) => told);
}
