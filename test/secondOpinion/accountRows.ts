import { monthByMonth, outcomeOf, type LateReturn } from "./monthByMonth";
import { statuteDates } from "./statuteDates";
import type { Drawn } from "./randomReturns";

/** An event of a payment history, in the words of the sheet. */
export type Event = "Payment, applied to the tax first" | "Tax due" | "Return due" | "Return filed";

/** The payment history after an event. Amounts are cents. */
export interface AccountRow {
  readonly day: number;
  readonly event: Event;
  /** Undefined where no money is paid and none is due. */
  readonly amount: number | undefined;
  readonly taxLeft: number;
  readonly failureToFile: number;
  readonly failureToPay: number;
  readonly interest: number;
  readonly charged: number;
  readonly chargesLeft: number;
  readonly overpaid: number;
}

type Happening = Pick<AccountRow, "day" | "event" | "amount">;

/** Events by date. On one date, payments come first, then due dates, then the filing. */
function happenings(given: Drawn): readonly Happening[] {
  const { paidWithRequest, filing, extended } = statuteDates(given);
  const due = given.extended ? extended : filing;
  const all: Happening[] = [
    ...given.payments.map(({ day, cents }): Happening => ({
      day,
      event: "Payment, applied to the tax first",
      amount: cents,
    })),
    { day: paidWithRequest.last, event: "Tax due", amount: given.taxCents },
    { day: due.last, event: "Return due", amount: undefined },
    { day: given.filed, event: "Return filed", amount: undefined },
  ];
  const days = [...new Set(all.map(({ day }) => day))].toSorted((one, other) => one - other);
  return days.flatMap((day) => all.filter((happening) => happening.day === day));
}

/** The last date of a payment history. */
export const lastDayOf = (given: Drawn): number =>
  Math.max(...happenings(given).map(({ day }) => day));

/**
 * The payment history of a return with partial payments. Each row is calculated anew from the law for the return as of that date,
 * except for two facts known only at the end: whether the 90% test is met and whether the return was timely.
 */
export function accountRows(given: Drawn): readonly AccountRow[] {
  const whole: LateReturn = { ...given, through: lastDayOf(given) };
  const outcome = outcomeOf(whole);
  let paid = 0;
  return happenings(given).map(({ day, event, amount }) => {
    if (event === "Payment, applied to the tax first") paid += amount ?? 0;
    const parts = monthByMonth(
      { ...given, filed: Math.min(given.filed, day), through: day },
      outcome
    );
    const interest = parts.interestOnTax + parts.interestOnAddition;
    const charged = parts.failureToFile + parts.failureToPay + interest;
    const beyond = Math.max(0, paid - given.taxCents);
    return {
      day,
      event,
      amount,
      interest,
      charged,
      failureToFile: parts.failureToFile,
      failureToPay: parts.failureToPay,
      taxLeft: Math.max(0, given.taxCents - paid),
      chargesLeft: Math.max(0, charged - beyond),
      overpaid: Math.max(0, beyond - charged),
    };
  });
}
