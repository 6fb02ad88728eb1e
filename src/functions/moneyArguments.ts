import { InputError } from "../inputError";
import { Decimal } from "../money/dollars";
import type { AssumedRate } from "../calculation/penalty/underpaymentRate";
import type { PaymentTarget } from "../calculation/request/suggestedPayment";
import { cellValue, isBlank, isBlankOrZero, shown, type CellValue } from "./cells";

const WRITTEN_MONEY = /^\$?\s*(\d{1,3}(,\d{3})+|\d+)?(\.\d*)?$/;
const WRITTEN_FRACTION = /^(\d+(\.\d*)?|\.\d+)\s*(%?)$/;

/** From here on a worksheet number no longer holds every cent. */
const TOO_MUCH = new Decimal("1e13");
/** Worksheet arithmetic is good to fifteen digits; what lies beyond is noise of binary fractions. */
const WORKSHEET_DIGITS = 15;

function fromNumber(number: number): Decimal {
  return new Decimal(number).toSignificantDigits(WORKSHEET_DIGITS);
}

/** Reads text such as `$1,234.50` or `(200)`; `undefined` when it is no amount. */
function fromText(text: string): Decimal | undefined {
  const trimmed = text.trim();
  const bracketed = trimmed.startsWith("(") && trimmed.endsWith(")");
  const signed = trimmed.startsWith("-");
  const bare = bracketed ? trimmed.slice(1, -1).trim() : signed ? trimmed.slice(1).trim() : trimmed;
  if (!WRITTEN_MONEY.test(bare) || !/\d/.test(bare)) return undefined;
  const amount = new Decimal(bare.replace(/[$,\s]/g, ""));
  return bracketed || signed ? amount.negated() : amount;
}

function signedOf(name: string, value: CellValue): Decimal {
  const amount =
    typeof value === "number" && Number.isFinite(value)
      ? fromNumber(value)
      : typeof value === "string"
        ? fromText(value)
        : undefined;
  if (amount === undefined)
    throw new InputError(name, `${shown(value)} is not an amount in dollars`);
  if (amount.abs().greaterThanOrEqualTo(TOO_MUCH)) {
    throw new InputError(name, `${shown(value)} is too large to be held to the cent`);
  }
  return amount;
}

function moneyOf(name: string, value: CellValue): Decimal {
  const amount = signedOf(name, value);
  if (amount.isNegative() && !amount.isZero()) {
    throw new InputError(name, `${shown(value)} is negative; give dollars, zero or more`);
  }
  return amount;
}

/**
 * Reads an amount that must be given. A zero is meant as zero; an empty cell is refused, so that nobody's tax is silently nil.
 *
 * @param name - The argument, for the message.
 * @param cell - Number, or text such as `$1,234.50`.
 * @returns Dollars, zero or more.
 */
export function money(name: string, cell: unknown): Decimal {
  const value = cellValue(cell);
  if (isBlank(value)) throw new InputError(name, "is empty; give dollars, 0 if there is nothing");
  return moneyOf(name, value);
}

/** Reads an amount that may be a loss; like `money`, an empty cell is refused. */
export function signedMoney(name: string, cell: unknown): Decimal {
  const value = cellValue(cell);
  if (isBlank(value)) throw new InputError(name, "is empty; give dollars, 0 if there is nothing");
  return signedOf(name, value);
}

/** Reads an amount that may be left out. */
export function optionalMoney(name: string, cell: unknown): Decimal | undefined {
  const value = cellValue(cell);
  return isBlank(value) ? undefined : moneyOf(name, value);
}

/** A fraction typed as 0.05, 5% or "5%". */
function fractionOf(value: CellValue): Decimal | undefined {
  if (typeof value === "number" && Number.isFinite(value)) return fromNumber(value);
  const written = typeof value === "string" ? WRITTEN_FRACTION.exec(value.trim()) : null;
  if (!written) return undefined;
  const number = new Decimal(written[1] ?? "0").toSignificantDigits(WORKSHEET_DIGITS);
  return written[3] === "%" ? number.div(100) : number;
}

/**
 * Reads the aim of a payment: `full`, `protect`, or a fraction of total tax.
 *
 * @returns `full` when left out.
 */
export function paymentAim(name: string, cell: unknown): PaymentTarget {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return "full";
  const word = typeof value === "string" ? value.trim().toLowerCase() : "";
  if (word === "full" || word === "reasonable cause") return word;
  const fraction = fractionOf(value);
  if (!fraction?.greaterThan(0) || fraction.greaterThan(2)) {
    throw new InputError(
      name,
      `${shown(value)} is none of full, protect or a fraction of total tax such as 95%`
    );
  }
  return fraction;
}

/**
 * Reads a cushion: a fraction of total tax below 1, or dollars.
 *
 * @returns `undefined` when left out.
 */
export function cushion(name: string, cell: unknown): Decimal | undefined {
  const value = cellValue(cell);
  if (typeof value === "string" && value.trim().endsWith("%")) {
    const fraction = fractionOf(value);
    if (fraction?.lessThan(1)) return fraction;
    throw new InputError(name, `${shown(value)} is no fraction of total tax below 100%`);
  }
  return optionalMoney(name, cell);
}

/** Reads a share of a tax, from 0 to 100% or more; nothing where it is left out. Zero is meant as zero. */
export function optionalShare(name: string, cell: unknown): Decimal | undefined {
  const value = cellValue(cell);
  if (isBlank(value)) return undefined;
  const fraction = fractionOf(value);
  if (fraction && !fraction.isNegative() && fraction.lessThan(10)) return fraction;
  throw new InputError(name, `${shown(value)} is no share of a tax; give a fraction such as 90%`);
}

/**
 * Reads the rate assumed for days beyond the published ones: a fraction a year such as 7%, or `latest`.
 *
 * @returns `undefined` when left out, so that such days are refused.
 */
export function assumedRate(name: string, cell: unknown): AssumedRate | undefined {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return undefined;
  if (typeof value === "string" && value.trim().toLowerCase() === "latest") return "latest";
  const fraction = fractionOf(value);
  if (!fraction?.greaterThan(0) || fraction.greaterThanOrEqualTo(1)) {
    throw new InputError(
      name,
      `${shown(value)} is no yearly rate; give a fraction such as 7% or 0.07, or the word latest`
    );
  }
  return fraction;
}
