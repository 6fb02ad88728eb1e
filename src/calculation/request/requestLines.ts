import { atLeastZero, toWholeDollars, type Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import { formEdition } from "./formEdition";

/** A line of the request with its content. */
export interface FilledLine {
  readonly line: string;
  readonly what: string;
  /** Whole dollars on lines 4 to 7. */
  readonly amount?: Decimal;
  /** Whether the box on line 8 or 9 is checked. */
  readonly checked?: boolean;
  readonly source: Source;
}

/**
 * Lines 4 to 9 of the request, in whole dollars as the form requires.
 *
 * Line 6 is calculated from the rounded lines 4 and 5, so that the lines on the form add up.
 *
 * @param taxYear - Tax year of the form; a fiscal year takes the form of the year in which it begins.
 * @param totalTax - Dollars of estimated total tax.
 * @param payments - Dollars of total payments, without the amount paid with the request.
 * @param paidWithRequest - Dollars paid with the request.
 * @param filerType - Decides whether line 8 or 9 is checked.
 * @param rules - The lines and their labels.
 * @returns The lines in order.
 * @throws NotInTableError for an edition of the form that the table does not cover.
 * @see Form 4868, lines 4 to 9; 26 U.S.C. 6102(a)
 */
export function requestLines(
  taxYear: TaxYear,
  totalTax: Decimal,
  payments: Decimal,
  paidWithRequest: Decimal,
  filerType: FilerType,
  rules: Pick<Rulebook, "requestLines">
): readonly FilledLine[] {
  formEdition(taxYear, rules.requestLines);
  const line4 = toWholeDollars(totalTax);
  const line5 = toWholeDollars(payments);
  const amounts: Readonly<Record<string, Decimal>> = {
    4: line4,
    5: line5,
    6: atLeastZero(line4.minus(line5)),
    7: toWholeDollars(paidWithRequest),
  };
  const boxes: Readonly<Record<string, boolean>> = {
    8: filerType === "out of country",
    9: filerType === "nonresident",
  };
  return rules.requestLines.rows.map(({ line, what, source }) => {
    const amount = amounts[line];
    const checked = boxes[line];
    return {
      line,
      what,
      source,
      ...(amount === undefined ? {} : { amount }),
      ...(checked === undefined ? {} : { checked }),
    };
  });
}
