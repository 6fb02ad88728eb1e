import { Decimal } from "../../money/dollars";
import { isBlank, isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { yesNo, yesOrNo } from "./yesNo";

const WRITTEN = /^\$?\s*(\d{1,3}(,\d{3})+|\d+)?(\.\d*)?$/;
/** A worksheet number of 1e13 or more no longer has exact cents. */
const TOO_LARGE_EXPONENT = 13;
/** Worksheet arithmetic is exact to fifteen digits. The digits after them come from binary fractions. */
const WORKSHEET_DIGITS = 15;

/** A number, as a cell contains it or as digits, at the fifteen digits to which the worksheet itself is exact. */
export function worksheetNumber(number: number | string): Decimal {
  const read = new Decimal(number);
  return read.precision() > WORKSHEET_DIGITS ? read.toSignificantDigits(WORKSHEET_DIGITS) : read;
}

/** Reads text such as `$1,234.50` or `(200)`; `undefined` when it is not an amount. */
function fromText(text: string): Decimal | undefined {
  const trimmed = text.trim();
  const isInParentheses = trimmed.startsWith("(") && trimmed.endsWith(")");
  const isSigned = trimmed.startsWith("-");
  const bare = isInParentheses
    ? trimmed.slice(1, -1).trim()
    : isSigned
      ? trimmed.slice(1).trim()
      : trimmed;
  if (!WRITTEN.test(bare) || !/\d/.test(bare)) return undefined;
  const amount = new Decimal(bare.replace(/[$,\s]/g, ""));
  return isInParentheses || isSigned ? amount.negated() : amount;
}

/** The dollars that a cell has, as a number or as text; `undefined` if it has none. */
export function readDollars(value: CellValue): Decimal | undefined {
  if (typeof value === "number") return Number.isFinite(value) ? worksheetNumber(value) : undefined;
  return typeof value === "string" ? fromText(value) : undefined;
}

function signedAmount(value: CellValue, name: string): Decimal {
  const amount = readDollars(value);
  if (amount === undefined)
    throw new InputError(
      name,
      `${shown(value)} is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.`
    );
  if (amount.e >= TOO_LARGE_EXPONENT)
    throw new InputError(
      name,
      `${shown(value)} is too large. Enter an amount below $10,000,000,000,000.`
    );
  return amount;
}

function amountOf(value: CellValue, name: string): Decimal {
  const amount = signedAmount(value, name);
  if (amount.isNegative() && !amount.isZero())
    throw new InputError(
      name,
      `${shown(value)} is negative. Enter zero or a positive dollar amount.`
    );
  return amount;
}

/** Dollars, zero or more. A blank cell returns an error, so that no tax becomes zero by accident. */
export const dollars: CellKind<Decimal> = {
  id: "dollars",
  title: "Dollars",
  description:
    "U.S. dollars, zero or more, as a number or as text. Cents are kept. 0 means none. A blank cell returns an error unless the argument is optional.",
  accepted: ["1234.5", '"$1,234.50"', "0"],
  notAccepted: ["-200", '"1.234,50"', '"about 200"'],
  takes: "cell",
  isEmpty: isBlank,
  whenBlank: { enter: "Enter a dollar amount, or 0 if there is none." },
  read: amountOf,
};

/** Dollars above zero where a blank cell, and so 0, means that there are none to enter. */
export const dollarsUnlessZero: CellKind<Decimal | undefined> = {
  ...dollars,
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
};

/** Dollars that may be a loss. A blank cell returns an error. */
export const signedDollars: CellKind<Decimal> = {
  ...dollars,
  id: "signed-dollars",
  title: "Dollars, gain or loss",
  description:
    "U.S. dollars as a number or as text, negative or in parentheses for a loss. Cents are kept. 0 means none. A blank cell returns an error.",
  accepted: ["1234.5", "-200", '"(200)"', '"-$1,234.50"'],
  notAccepted: ['"a loss"', '""'],
  read: signedAmount,
};

/** What is mailed with a paper request that is paid. */
const BY_MAIL: readonly CellValue[] = [
  "check",
  "money order",
  "check or money order",
  "by check",
  "cashier's check",
];

/** Whether an amount is paid: dollars, or yes or no. */
export const dollarsOrYesNo: CellKind<boolean> = {
  id: "dollars-or-yes-no",
  title: "Dollars, or yes or no",
  description:
    "U.S. dollars, zero or more, or only whether there are any: yes or no. `check` and `money order` are yes. A blank cell is no.",
  accepted: ["1500", '"yes"', '"check"', '"money order"', '"no"', "0"],
  notAccepted: ["-5", '"some"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: false },
  read: (value, name, earlier) => {
    if (BY_MAIL.includes(plainWord(value))) return true;
    return typeof value !== "number" && yesOrNo(value) !== undefined
      ? yesNo.read(value, name, earlier)
      : amountOf(value, name).greaterThan(0);
  },
};
