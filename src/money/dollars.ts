import { Decimal as SharedDecimal } from "decimal.js";

/**
 * The project's decimal numbers: 28 significant digits, rounded half up. A clone, so that no other code on the page can change its settings.
 */
export const Decimal = SharedDecimal.clone({
  precision: 28,
  rounding: SharedDecimal.ROUND_HALF_UP,
  toExpNeg: -40,
  toExpPos: 40,
});

/** A decimal number; with money, dollars. */
export type Decimal = SharedDecimal;

/** No dollars. */
export const ZERO = new Decimal(0);

/** Rounds to cents, half up. An answer is rounded once, at the end. */
export function toCents(amount: Decimal): Decimal {
  return amount.toDecimalPlaces(2);
}

/** Rounds up to the next cent, for an amount that must be paid at least. */
export function upToCents(amount: Decimal): Decimal {
  return amount.toDecimalPlaces(2, SharedDecimal.ROUND_UP);
}

/**
 * Rounds to whole dollars: less than 50 cents is dropped, 50 to 99 cents becomes the next dollar.
 *
 * @see 26 U.S.C. 6102(a); 26 CFR 301.6102-1
 */
export function toWholeDollars(amount: Decimal): Decimal {
  return amount.toDecimalPlaces(0);
}

/** Whether an amount is more than zero; no second number is made for the comparison. */
export function isMoreThanZero(amount: Decimal): boolean {
  return amount.isPositive() && !amount.isZero();
}

/** The amount, or zero if it is negative. */
export function atLeastZero(amount: Decimal): Decimal {
  return amount.isNegative() ? ZERO : amount;
}
