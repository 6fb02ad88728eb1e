import { Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { rateColumn } from "./rateColumn";

/**
 * Tax by the rate schedule, exactly.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param taxableIncome - Dollars, all at ordinary rates.
 * @param rules - Rates and the income up to which each runs.
 * @returns Dollars, not rounded.
 * @throws NotInTableError for a year whose rates are not held.
 * @see 26 U.S.C. 1(j)
 *
 * @example
 * scheduleTax(2025, "single", 103350) //=> 17651
 */
export function scheduleTax(
  taxYear: TaxYear,
  status: FilingStatus,
  taxableIncome: Decimal,
  rules: Pick<Rulebook, "incomeTaxRates">
): Decimal {
  const { figures } = entryOn(rules.incomeTaxRates, taxYear.firstDay);
  const column = rateColumn(status);
  const brackets: readonly (readonly [rate: Decimal, upTo: Decimal | undefined])[] = [
    [figures.lowestRate, figures[`${column}10`]],
    [figures.secondRate, figures[`${column}12`]],
    [figures.thirdRate, figures[`${column}22`]],
    [figures.fourthRate, figures[`${column}24`]],
    [figures.fifthRate, figures[`${column}32`]],
    [figures.sixthRate, figures[`${column}35`]],
    [figures.highestRate, undefined],
  ];
  let tax = ZERO;
  let below = ZERO;
  for (const [rate, upTo] of brackets) {
    const top = upTo === undefined ? taxableIncome : Decimal.min(taxableIncome, upTo);
    if (top.lessThanOrEqualTo(below)) break;
    tax = tax.plus(top.minus(below).times(rate));
    below = top;
  }
  return tax;
}
