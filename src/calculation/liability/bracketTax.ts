import { Decimal, ZERO } from "../../money/dollars";

/** A rate and the dollars of income up to which it applies; the last one has no limit. */
export interface Bracket {
  readonly upTo?: Decimal;
  readonly rate: Decimal;
}

/**
 * Tax by brackets on the part of an income that lies above another part of it.
 *
 * @param brackets - Rates, the lowest first.
 * @param below - Dollars of income that use up the lower brackets first; 0 for the tax on the whole.
 * @param income - Dollars of income, `below` included.
 * @returns Dollars, not rounded; zero if nothing lies above.
 */
export function bracketTax(brackets: readonly Bracket[], below: Decimal, income: Decimal): Decimal {
  let tax = ZERO;
  let taxed = below;
  for (const { upTo, rate } of brackets) {
    const top = upTo === undefined ? income : Decimal.min(income, upTo);
    if (top.lessThanOrEqualTo(taxed)) continue;
    tax = tax.plus(top.minus(taxed).times(rate));
    taxed = top;
  }
  return tax;
}
