import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { charges } from "../../../src/calculation/penalty/charges";
import {
  suggestedPayment,
  type SuggestedPaymentInput,
} from "../../../src/calculation/request/suggestedPayment";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { ZERO } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { dollarsUpTo, RUNS } from "../arbitrary";
import { day, usd } from "../given";

/** Tax $20,000, $15,000 paid. */
const suggested = (more: Partial<SuggestedPaymentInput>): string =>
  suggestedPayment(
    { totalTax: usd("20000"), payments: usd("15000"), target: "full", ...more },
    rulebook
  ).toString();

describe("what to pay with the request", () => {
  it("is the balance due, or enough for 90%, or an aimed share of the tax", () => {
    expect(suggested({})).toBe("5000");
    // 26 CFR 301.6651-1(c)(3): 18,000 of 20,000
    expect(suggested({ target: "reasonable cause" })).toBe("3000");
    expect(suggested({ target: usd("0.95") })).toBe("4000");
    expect(suggested({ target: usd("0") })).toBe("0");
  });

  // A cushion and the new year's first estimate in one payment: common practice, no source.
  it.each([
    ["a fraction of the tax below 1", "0.05", undefined, "6000"],
    ["dollars from 1 up", "250", undefined, "5250"],
    ["one dollar, not the whole tax", "1", undefined, "5001"],
    ["none beside a first estimate", undefined, "2500", "7500"],
    ["both", "0.05", "2500", "8500"],
  ])("with a cushion of %s", (_what, cushion, firstInstallment, amount) => {
    const more = {
      cushion: cushion === undefined ? undefined : usd(cushion),
      firstInstallment: firstInstallment === undefined ? undefined : usd(firstInstallment),
    };
    expect(suggested(more)).toBe(amount);
  });

  it("is nothing where more was paid, and an overpayment goes toward the first estimate", () => {
    expect(suggested({ payments: usd("21000") })).toBe("0");
    expect(suggested({ payments: usd("21000"), firstInstallment: usd("2500") })).toBe("1500");
  });

  it("rises to the next cent: half a cent short of 90% is short", () => {
    const odd = {
      totalTax: usd("20000.05"),
      payments: usd("15000"),
      target: "reasonable cause",
    } as const;
    // 90% is 18,000.045
    expect(suggestedPayment(odd, rulebook).toString()).toBe("3000.05");
  });

  it("with the target reasonable cause meets the 90% test, and a cent less does not", () => {
    fc.assert(
      fc.property(dollarsUpTo(200_000), dollarsUpTo(200_000), (totalTax, payments) => {
        const paidWithRequest = suggestedPayment(
          { totalTax, payments, target: "reasonable cause" },
          rulebook
        );
        fc.pre(
          paidWithRequest.greaterThan(ZERO) && totalTax.greaterThan(payments.plus(paidWithRequest))
        );
        const excused = (paidOnTime: typeof payments): boolean => {
          const filedOn = day("2026-10-15");
          const rest = totalTax.minus(paidOnTime);
          const charged = charges(
            {
              dates: clientDates(calendarTaxYear(2025), "resident", {}, rulebook),
              totalTax,
              paidOnTime,
              payments: [{ date: filedOn, amount: rest }],
              filedOn,
              validExtension: true,
              through: filedOn,
            },
            rulebook
          );
          return charged.excused !== undefined;
        };
        expect(excused(payments.plus(paidWithRequest))).toBe(true);
        expect(excused(payments.plus(paidWithRequest).minus("0.01"))).toBe(false);
      }),
      RUNS
    );
  });

  it("in full leaves nothing to charge, and is never below zero nor finer than a cent", () => {
    fc.assert(
      fc.property(dollarsUpTo(90_000), dollarsUpTo(90_000), (totalTax, payments) => {
        const paidWithRequest = suggestedPayment({ totalTax, payments, target: "full" }, rulebook);
        expect(payments.plus(paidWithRequest).greaterThanOrEqualTo(totalTax)).toBe(true);
        expect(paidWithRequest.isNegative()).toBe(false);
        expect(paidWithRequest.decimalPlaces()).toBeLessThanOrEqual(2);
        if (totalTax.greaterThan(payments))
          expect(payments.plus(paidWithRequest).equals(totalTax)).toBe(true);
      }),
      RUNS
    );
  });
});
