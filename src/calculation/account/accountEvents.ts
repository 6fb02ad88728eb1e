import { compareDates, type CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import { NotInTableError } from "../../rules/notInTableError";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import type { LedgerEvent, LedgerInput, LedgerRules } from "./ledger";

/** An event of a payment history with its law. */
export interface AccountEvent {
  readonly date: CalendarDate;
  readonly event: LedgerEvent;
  /** Dollars due or paid; `undefined` for an event without an amount. */
  readonly amount: Decimal | undefined;
  readonly source: Source;
}

function paymentEvents(input: LedgerInput, rules: LedgerRules): readonly AccountEvent[] {
  const order = rules.orderOfPayments;
  const applied = order.rows.find(({ when }) => when === "undesignated");
  if (!applied)
    throw new NotInTableError(
      order,
      `There is no order for an undesignated payment (rules/${order.id}.json).`
    );
  const { source } = applied;
  return input.payments.map(({ date, amount }) => ({ date, event: "payment", amount, source }));
}

/** The agreement and the notices, as far as they are dated. */
function laterEvents(
  { agreementOn, noticeOn, levyNoticeOn }: LedgerInput,
  rules: LedgerRules
): readonly AccountEvent[] {
  const event = (
    what: LedgerEvent,
    date: CalendarDate | undefined,
    table: Parameters<typeof entryOn>[0]
  ): readonly AccountEvent[] =>
    date === undefined
      ? []
      : [{ date, event: what, amount: undefined, source: entryOn(table, date).source }];
  return [
    ...event("agreement accepted", agreementOn, rules.failureToPay),
    ...event("notice and demand", noticeOn, rules.noticeAndDemand),
    ...event("levy notice", levyNoticeOn, rules.levyNotice),
  ];
}

/**
 * The events of a payment history in order of dates. On one date payments come first, then what is due, the filing, and what follows
 * the filing.
 *
 * @param input - The return, its payments and the notices.
 * @param filingDue - Due date of the return, including any extension.
 * @param rules - Order of payments, and the law of agreements and notices.
 * @returns The events with the law of each.
 * @throws NotInTableError if the table has no order of payments, or does not cover the date of a notice.
 */
export function accountEvents(
  input: LedgerInput,
  filingDue: DueDate,
  rules: LedgerRules
): readonly AccountEvent[] {
  const { dates, totalTax, filedOn } = input;
  const { lastDay, source } = dates.payment;
  const all: readonly AccountEvent[] = [
    ...paymentEvents(input, rules),
    { date: lastDay, event: "tax due", amount: totalTax, source },
    { date: filingDue.lastDay, event: "return due", amount: undefined, source: filingDue.source },
    { date: filedOn, event: "return filed", amount: undefined, source: filingDue.source },
    ...laterEvents(input, rules),
  ];
  // The sort keeps the order above for events on one date, so that a payment comes before the amount due.
  return all.toSorted((one, other) => compareDates(one.date, other.date));
}
