import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { optional } from "../../../src/functions/arguments/argumentKind";
import { dollars as dollarsKind } from "../../../src/functions/arguments/dollars";
import { ErrorCell } from "../../../src/functions/cells/hostError";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const money = reading(dollarsKind, "tax");
const optionalMoney = reading(optional(dollarsKind), "tax");
const refused = (complaint: string): InputError => new InputError("tax", complaint);
const EMPTY = "The cell is blank. Enter a dollar amount, or 0 if there is none.";

describe("an amount", () => {
  it.each([
    [0, "0"],
    [-0, "0"],
    [1234.5, "1234.5"],
    [0.1 + 0.2, "0.3"],
    [1.005, "1.005"],
    [9_999_999_999_999.99, "9999999999999.99"],
    ["$1,234.50", "1234.5"],
    ["1234.5", "1234.5"],
    [" $ 1,234,567 ", "1234567"],
    [".5", "0.5"],
    ["5.", "5"],
    ["0", "0"],
    ["(0)", "0"],
    ["-0.00", "0"],
    [{ type: "Double", basicValue: 12.3, numberFormat: "#,##0.00" }, "12.3"],
  ])("of %j is %s dollars", (cell, dollars) => {
    expect(money(cell).abs().toString()).toBe(dollars);
    expect(money(cell).greaterThanOrEqualTo(0)).toBe(true);
  });

  it.each([
    [null, EMPTY],
    [undefined, EMPTY],
    ["", EMPTY],
    ["   ", EMPTY],
    ["(200)", '"(200)" is negative. Enter zero or a positive dollar amount.'],
    ["-5", '"-5" is negative. Enter zero or a positive dollar amount.'],
    ["-$5", '"-$5" is negative. Enter zero or a positive dollar amount.'],
    [-0.01, "-0.01 is negative. Enter zero or a positive dollar amount."],
    [1e13, "10000000000000 is too large. Enter an amount below $10,000,000,000,000."],
    [
      "10,000,000,000,000",
      '"10,000,000,000,000" is too large. Enter an amount below $10,000,000,000,000.',
    ],
    [Number.NaN, "NaN is not a dollar amount. Enter a number such as 1234.56 or $1,234.56."],
    [
      Number.POSITIVE_INFINITY,
      "Infinity is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.",
    ],
    [true, "TRUE is not a dollar amount. Enter a number such as 1234.56 or $1,234.56."],
    [
      "about 200",
      '"about 200" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    ["1,23", '"1,23" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    [
      "12,34,567",
      '"12,34,567" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    ["1.234,50", '"1.234,50" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["1e5", '"1e5" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["0x10", '"0x10" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["$", '"$" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["()", '"()" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["(-5)", '"(-5)" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["--5", '"--5" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["١٢", '"١٢" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    ["€5", '"€5" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
    [{}, '"[object]" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'],
  ])("is not read from %j", (cell, complaint) => {
    expect(() => money(cell)).toThrow(refused(complaint));
  });

  it("passes an error cell through", () => {
    expect(() => money({ code: "#DIV/0!" })).toThrow(new ErrorCell("#DIV/0!"));
  });

  it("is every amount of cents that a worksheet holds, as number and as text", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999_999_999_999 }), (cents) => {
        const whole = Math.floor(cents / 100);
        const text = `${String(whole)}.${String(cents % 100).padStart(2, "0")}`;
        expect(money(Number(text)).toFixed(2)).toBe(text);
        expect(money(text).toFixed(2)).toBe(text);
        const grouped = `$${whole.toLocaleString("en-US")}.${String(cents % 100).padStart(2, "0")}`;
        expect(money(grouped).toFixed(2)).toBe(text);
      }),
      { seed: 4868 }
    );
  });
});

describe("an amount that may be left out", () => {
  it.each([[null], [undefined], [""], [" "]])("is left out by %j", (cell) => {
    expect(optionalMoney(cell)).toBeUndefined();
  });

  it("is a zero when a zero is given", () => {
    expect(optionalMoney(0)?.toString()).toBe("0");
  });

  it("is refused when it cannot be read", () => {
    expect(() => optionalMoney("some")).toThrow(
      refused('"some" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.')
    );
  });
});
