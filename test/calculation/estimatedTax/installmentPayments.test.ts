import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  installmentPayments,
  type InstallmentPart,
} from "../../../src/calculation/estimatedTax/installmentPayments";
import { Decimal, ZERO } from "../../../src/money/dollars";
import published from "../../fixtures/published/estimated-tax.json";
import { calendarDate, written, type CalendarDate } from "../../../src/calendar/calendarDate";
import { anyEstimates, dueOn, paid, RUNS, usd } from "./givenEstimates";

const YEAR = ["2025-04-15", "2025-06-15", "2025-09-15", "2026-01-15"].map((due) => dueOn(due));

const four = (amount: Decimal): readonly Decimal[] => [amount, amount, amount, amount];
const HUNDRED = four(usd(100));

const sumOf = (parts: readonly InstallmentPart[]): Decimal =>
  parts.reduce((sum, { amount }) => sum.plus(amount), ZERO);

/** The day paid, or "open". */
const dateOf = (paidOn: CalendarDate | undefined): string =>
  paidOn === undefined ? "open" : written(paidOn);

/** Parts by installment: the day paid, or "open", and the amount. */
function applied(parts: readonly InstallmentPart[]): readonly (readonly string[])[][] {
  return [1, 2, 3, 4].map((number) =>
    parts
      .filter(({ installment }) => installment === number)
      .map(({ paidOn, amount }) => [dateOf(paidOn), amount.toString()])
  );
}

/** The same with the credits of one day together, as the form notes them. */
function byDay(parts: readonly InstallmentPart[]): readonly (readonly string[])[][] {
  return applied(parts).map((own) => {
    const days = [...new Set(own.map(([on]) => on ?? ""))];
    return days.map((on) => {
      const amounts = own.filter(([other]) => other === on).map(([, amount]) => usd(amount ?? 0));
      return [on, amounts.reduce((sum, amount) => sum.plus(amount), ZERO).toString()];
    });
  });
}

describe("payments laid against installments, as published", () => {
  it.each(published.applied)("$case ($source.document)", ({ inputs, expected }) => {
    const { dues, installment, withholding, payments } = inputs;
    const parts = installmentPayments(
      dues.map((due) => dueOn(due)),
      four(usd(installment)),
      usd(withholding),
      payments.map((payment) => paid(payment.day, payment.amount))
    );
    expect(byDay(parts)).toEqual(expected.applied);
  });

  const { unequalInstallments: unequal } = published;
  it(`${unequal.case} (${unequal.source.document})`, () => {
    const { dues, installments, credits } = unequal.inputs;
    const payments = credits.map((credit) => paid(credit.day, credit.amount));
    const parts = installmentPayments(
      dues.map((due) => dueOn(due)),
      installments.map((amount) => usd(amount)),
      ZERO,
      payments
    );
    const timely = (due: string): Decimal =>
      sumOf(
        parts.filter((part) => part.due.lastDay <= calendarDate(due) && dateOf(part.paidOn) <= due)
      );
    const dueThrough = dues.map((_, index) =>
      installments.slice(0, index + 1).reduce((sum, dollar) => sum + dollar, 0)
    );
    const creditedThrough = dues.map((due) =>
      payments
        .filter((payment) => payment.date <= calendarDate(due))
        .reduce((sum, payment) => sum.plus(payment.amount), ZERO)
    );
    expect(
      dues.map((due, index) =>
        usd(dueThrough[index] ?? 0)
          .minus(timely(due))
          .toString()
      )
    ).toEqual(unequal.expected.underpayments);
    expect(
      dues.map((due, index) => (creditedThrough[index] ?? ZERO).minus(timely(due)).toString())
    ).toEqual(unequal.expected.overpayments);
  });
});

// 26 U.S.C. 6654(b)(3): to the required installments in the order in which they are to be paid; (g)(1): withholding in equal parts
// on the due dates.
describe("payments laid against installments", () => {
  it("leave everything open where nothing was paid", () => {
    expect(applied(installmentPayments(YEAR, HUNDRED, ZERO, []))).toEqual([
      [["open", "100"]],
      [["open", "100"]],
      [["open", "100"]],
      [["open", "100"]],
    ]);
  });

  it("reach the next installment with what the earlier one does not take", () => {
    const parts = installmentPayments(YEAR, HUNDRED, ZERO, [paid("2025-01-10", 250)]);
    expect(applied(parts)).toEqual([
      [["2025-01-10", "100"]],
      [["2025-01-10", "100"]],
      [
        ["2025-01-10", "50"],
        ["open", "50"],
      ],
      [["open", "100"]],
    ]);
  });

  it("take no more of a payment than all installments", () => {
    const parts = installmentPayments(YEAR, HUNDRED, usd(40), [paid("2025-04-14", 5000)]);
    expect(sumOf(parts).toString()).toBe("400");
    expect(parts.every(({ paidOn }) => paidOn === calendarDate("2025-04-14"))).toBe(true);
  });

  it("count withholding in quarters, each on its due date and before a payment of that day", () => {
    const parts = installmentPayments(YEAR, HUNDRED, usd(80), [paid("2025-06-15", 100)]);
    expect(applied(parts).slice(0, 2)).toEqual([
      [
        ["2025-04-15", "20"],
        ["2025-06-15", "20"],
        ["2025-06-15", "60"],
      ],
      [
        ["2025-06-15", "40"],
        ["2025-09-15", "20"],
        ["2026-01-15", "20"],
        ["open", "20"],
      ],
    ]);
  });

  it("are nothing for an installment of nothing", () => {
    expect(installmentPayments(YEAR, four(ZERO), usd(80), [paid("2025-06-15", 100)])).toEqual([]);
  });

  it("add up to each installment, and use no more than was paid", () => {
    fc.assert(
      fc.property(anyEstimates, ({ requiredAnnualPayment, withholding, payments }) => {
        const installment = requiredAnnualPayment.div(4);
        const parts = installmentPayments(YEAR, four(installment), withholding, payments);
        YEAR.forEach((_, index) => {
          const own = parts.filter((part) => part.installment === index + 1);
          expect(sumOf(own).toString()).toBe(installment.toString());
        });
        const credits = payments.reduce((sum, { amount }) => sum.plus(amount), withholding);
        const used = sumOf(parts.filter(({ paidOn }) => paidOn !== undefined));
        expect(used.toString()).toBe(Decimal.min(credits, requiredAnnualPayment).toString());
      }),
      RUNS
    );
  });

  it("pay no installment while an earlier one is open", () => {
    fc.assert(
      fc.property(anyEstimates, ({ requiredAnnualPayment, withholding, payments }) => {
        const parts = installmentPayments(
          YEAR,
          four(requiredAnnualPayment.div(4)),
          withholding,
          payments
        );
        const last = (number: number): string =>
          parts
            .filter(({ installment }) => installment === number)
            .map(({ paidOn }) => dateOf(paidOn))
            .sort()
            .at(-1) ?? "";
        const first = (number: number): string =>
          dateOf(parts.find(({ installment }) => installment === number)?.paidOn);
        for (const number of [1, 2, 3]) expect(first(number + 1) >= last(number)).toBe(true);
      }),
      RUNS
    );
  });
});
