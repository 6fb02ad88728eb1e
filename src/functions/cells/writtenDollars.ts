import type { Decimal } from "../../money/dollars";

/** Dollars and cents as a sentence writes them, such as $1,234.50, rounded to cents, half up if the amount is a decimal number. */
export function writtenDollars(amount: Decimal | number): string {
  const [whole = "", cents = ""] = amount.toFixed(2).split(".");
  return `$${whole.replace(/\B(?=(\d{3})+$)/g, ",")}.${cents}`;
}
