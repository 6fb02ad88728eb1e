import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  assumedRate,
  cushion,
  money,
  optionalMoney,
  paymentAim,
} from "../../src/functions/moneyArguments";
import { ErrorCell } from "../../src/functions/errors";
import { InputError } from "../../src/inputError";

const refused = (complaint: string): InputError => new InputError("tax", complaint);
const EMPTY = "is empty; give dollars, 0 if there is nothing";

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
    expect(money("tax", cell).abs().toString()).toBe(dollars);
    expect(money("tax", cell).greaterThanOrEqualTo(0)).toBe(true);
  });

  it.each([
    [null, EMPTY],
    [undefined, EMPTY],
    ["", EMPTY],
    ["   ", EMPTY],
    ["(200)", '"(200)" is negative; give dollars, zero or more'],
    ["-5", '"-5" is negative; give dollars, zero or more'],
    ["-$5", '"-$5" is negative; give dollars, zero or more'],
    [-0.01, "-0.01 is negative; give dollars, zero or more"],
    [1e13, "10000000000000 is too large to be held to the cent"],
    ["10,000,000,000,000", '"10,000,000,000,000" is too large to be held to the cent'],
    [Number.NaN, "NaN is not an amount in dollars"],
    [Number.POSITIVE_INFINITY, "Infinity is not an amount in dollars"],
    [true, "TRUE is not an amount in dollars"],
    ["about 200", '"about 200" is not an amount in dollars'],
    ["1,23", '"1,23" is not an amount in dollars'],
    ["12,34,567", '"12,34,567" is not an amount in dollars'],
    ["1.234,50", '"1.234,50" is not an amount in dollars'],
    ["1e5", '"1e5" is not an amount in dollars'],
    ["0x10", '"0x10" is not an amount in dollars'],
    ["$", '"$" is not an amount in dollars'],
    ["()", '"()" is not an amount in dollars'],
    ["(-5)", '"(-5)" is not an amount in dollars'],
    ["--5", '"--5" is not an amount in dollars'],
    ["١٢", '"١٢" is not an amount in dollars'],
    ["€5", '"€5" is not an amount in dollars'],
    [{}, '"[object]" is not an amount in dollars'],
  ])("is not read from %j", (cell, complaint) => {
    expect(() => money("tax", cell)).toThrow(refused(complaint));
  });

  it("passes an error cell through", () => {
    expect(() => money("tax", { code: "#DIV/0!" })).toThrow(new ErrorCell("#DIV/0!"));
  });

  it("is every amount of cents that a worksheet holds, as number and as text", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999_999_999_999 }), (cents) => {
        const whole = Math.floor(cents / 100);
        const text = `${String(whole)}.${String(cents % 100).padStart(2, "0")}`;
        expect(money("tax", Number(text)).toFixed(2)).toBe(text);
        expect(money("tax", text).toFixed(2)).toBe(text);
        const grouped = `$${whole.toLocaleString("en-US")}.${String(cents % 100).padStart(2, "0")}`;
        expect(money("tax", grouped).toFixed(2)).toBe(text);
      }),
      { seed: 4868 }
    );
  });
});

describe("an amount that may be left out", () => {
  it.each([[null], [undefined], [""], [" "]])("is left out by %j", (cell) => {
    expect(optionalMoney("tax", cell)).toBeUndefined();
  });

  it("is a zero when a zero is given", () => {
    expect(optionalMoney("tax", 0)?.toString()).toBe("0");
  });

  it("is refused when it cannot be read", () => {
    expect(() => optionalMoney("tax", "some")).toThrow(
      refused('"some" is not an amount in dollars')
    );
  });
});

describe("the aim of a payment", () => {
  it.each([[null], [undefined], [""], [0], ["full"], [" FULL "]])("is all for %j", (cell) => {
    expect(paymentAim("tax", cell)).toBe("full");
  });

  it("is the presumption for protect", () => {
    expect(paymentAim("tax", "Protect")).toBe("reasonable cause");
  });

  it.each([
    [0.95, "0.95"],
    ["95%", "0.95"],
    ["95 %", "0.95"],
    [".95", "0.95"],
    [1.1, "1.1"],
    [2, "2"],
  ])("is a fraction for %j", (cell, fraction) => {
    expect(paymentAim("tax", cell).toString()).toBe(fraction);
  });

  it.each([[-0.5], [2.01], [95], ["95"], ["half"], [true], [Number.NaN], ["0%"]])(
    "is not read from %j",
    (cell) => {
      const quoted = typeof cell === "string" ? `"${cell}"` : String(cell).replace("true", "TRUE");
      expect(() => paymentAim("tax", cell)).toThrow(
        refused(`${quoted} is none of full, protect or a fraction of total tax such as 95%`)
      );
    }
  );
});

describe("a cushion", () => {
  it.each([
    [0.05, "0.05"],
    ["5%", "0.05"],
    ["$500", "500"],
    [0, "0"],
    ["99.9%", "0.999"],
  ])("of %j is read", (cell, amount) => {
    expect(cushion("tax", cell)?.toString()).toBe(amount);
  });

  it("may be left out", () => {
    expect(cushion("tax", null)).toBeUndefined();
  });

  it.each([
    ["100%", '"100%" is no fraction of total tax below 100%'],
    ["some%", '"some%" is no fraction of total tax below 100%'],
    [-5, "-5 is negative; give dollars, zero or more"],
  ])("is not read from %j", (cell, complaint) => {
    expect(() => cushion("tax", cell)).toThrow(refused(complaint));
  });
});

describe("the rate assumed for days to come", () => {
  it.each([[null], [undefined], [""], [0]])("is left out by %j", (cell) => {
    expect(assumedRate("tax", cell)).toBeUndefined();
  });

  it.each([
    ["latest", "latest"],
    [" Latest ", "latest"],
    [0.07, "0.07"],
    ["7%", "0.07"],
    ["0.065", "0.065"],
  ])("is read from %j", (cell, rate) => {
    expect(assumedRate("tax", cell)?.toString()).toBe(rate);
  });

  it.each([
    [7, "7"],
    [1, "1"],
    [-0.07, "-0.07"],
    ["7", '"7"'],
    ["100%", '"100%"'],
    ["newest", '"newest"'],
    [true, "TRUE"],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => assumedRate("tax", cell)).toThrow(
      refused(`${quoted} is no yearly rate; give a fraction such as 7% or 0.07, or the word latest`)
    );
  });
});
