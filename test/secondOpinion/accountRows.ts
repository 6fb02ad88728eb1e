import { civil } from "./civilDays";
import { monthByMonth, outcomeOf, type Bill, type LateReturn, type Outcome } from "./monthByMonth";
import { payNoticeBy } from "./noticeDays";
import { statuteDates } from "./statuteDates";
import type { Drawn } from "./randomReturns";
import { totalOf } from "./workedReturn";

/** An event of a payment history, in the words of the sheet. */
export type Event =
  | "Payment, applied to the tax first"
  | "Tax due"
  | "Return due"
  | "Return filed"
  | "Installment agreement accepted"
  | "Notice and demand"
  | `Notice and demand, pay by ${string}`
  | "Levy notice";

/** The payment history after an event. Amounts are cents. */
export interface AccountRow {
  readonly day: number;
  readonly event: Event;
  /** Undefined where no money is paid, due or demanded. */
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

const happening = (event: Event, day: number | undefined): readonly Happening[] =>
  day === undefined ? [] : [{ day, event, amount: undefined }];

/** Events by date. On one date, payments come first, then due dates, then the filing, then what follows it. */
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
    ...happening("Installment agreement accepted", given.agreementOn),
    ...happening("Notice and demand", given.noticeOn),
    ...happening("Levy notice", given.levyNoticeOn),
  ];
  const days = [...new Set(all.map(({ day }) => day))].toSorted((one, other) => one - other);
  return days.flatMap((day) => all.filter((happening) => happening.day === day));
}

/** The last date of a payment history. */
export const lastDayOf = (given: Drawn): number =>
  Math.max(...happenings(given).map(({ day }) => day));

/** What the notice bills, and the cents that it demands. */
interface Demand extends Bill {
  readonly cents: number;
}

/** Section 6303(a): the notice states the amount and demands its payment. That is all that is unpaid on its day. */
function demandOf(given: Drawn, outcome: Outcome): Demand | undefined {
  const { noticeOn } = given;
  if (noticeOn === undefined) return undefined;
  const parts = monthByMonth({ ...given, through: noticeOn }, outcome);
  const paid = given.payments.filter(({ day }) => day <= noticeOn);
  const owed = paid.reduce((sum, { cents }) => sum - cents, given.taxCents + totalOf(parts));
  const cents = Math.max(0, owed);
  const until = payNoticeBy(noticeOn, cents, given.state);
  return { on: noticeOn, until, failureToPay: parts.failureToPay, cents };
}

const usDate = (number: number): string => {
  const { year, month, date } = civil(number);
  return [month, date, year].map(String).join("/");
};

/**
 * The payment history of a return with partial payments. Each row is calculated anew from the law for the return as of that date,
 * except for facts known only at the end: whether the 90% test is met, whether the return was timely, and what is paid in time after a
 * notice.
 */
export function accountRows(given: Drawn): readonly AccountRow[] {
  const whole: LateReturn = { ...given, through: lastDayOf(given) };
  const outcome = outcomeOf(whole);
  const demand = demandOf(given, outcome);
  let paid = 0;
  return happenings(given).map(({ day, event: what, amount: ownAmount }) => {
    const billed = what === "Notice and demand" ? demand : undefined;
    const event: Event = billed ? `Notice and demand, pay by ${usDate(billed.until)}` : what;
    const amount = billed?.cents ?? ownAmount;
    if (event === "Payment, applied to the tax first") paid += amount ?? 0;
    const parts = monthByMonth(
      { ...given, filed: Math.min(given.filed, day), through: day },
      outcome,
      demand
    );
    const interest = parts.interestOnTax + parts.interestOnAddition + parts.interestAfterNotice;
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
