import { compareDates, earlierDate, type CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";
import type { Payment } from "../penalty/underpaymentInterest";
import { charges, type ChargesInput } from "../penalty/charges";

/** What happened on a date of the payment history. */
export type LedgerEvent = "tax due" | "payment" | "return due" | "return filed";

/** The account after one event. */
export interface LedgerRow {
  readonly date: CalendarDate;
  readonly event: LedgerEvent;
  /** Dollars due or paid; `undefined` for an event without an amount. */
  readonly amount: Decimal | undefined;
  readonly unpaidTax: Decimal;
  /** Dollars of penalties and interest to date, less payments in excess of the tax. */
  readonly unpaidPenaltiesAndInterest: Decimal;
  /** Dollars paid in excess of the tax and of the penalties and interest to date. */
  readonly overpayment: Decimal;
  /** Dollars and cents to date. */
  readonly failureToFile: Decimal;
  readonly failureToPay: Decimal;
  readonly interest: Decimal;
  readonly source: Source;
}

/** A return with partial payments. */
export interface LedgerInput extends Omit<ChargesInput, "paidOnTime" | "payments" | "through"> {
  /** Every payment, before and after the due date, in order of dates. Include withholding as a payment. */
  readonly payments: readonly Payment[];
}

type LedgerRules = Parameters<typeof charges>[1] & Pick<Rulebook, "orderOfPayments">;

interface AccountEvent {
  readonly date: CalendarDate;
  readonly event: LedgerEvent;
  readonly amount: Decimal | undefined;
  readonly source: Source;
}

function accountEvents(
  { dates, totalTax, payments, filedOn }: LedgerInput,
  filingDue: DueDate,
  rules: LedgerRules
): readonly AccountEvent[] {
  const order = rules.orderOfPayments;
  const applied = order.rows.find(({ when }) => when === "undesignated");
  if (!applied)
    throw new NotInTableError(
      order,
      `There is no order for an undesignated payment (rules/${order.id}.json).`
    );
  const all: AccountEvent[] = [
    ...payments.map(({ date, amount }): AccountEvent => ({
      date,
      event: "payment",
      amount,
      source: applied.source,
    })),
    {
      date: dates.payment.lastDay,
      event: "tax due",
      amount: totalTax,
      source: dates.payment.source,
    },
    { date: filingDue.lastDay, event: "return due", amount: undefined, source: filingDue.source },
    { date: filedOn, event: "return filed", amount: undefined, source: filingDue.source },
  ];
  // The sort keeps the order above for events on one date, so that a payment comes before the amount due.
  return all.sort((one, other) => compareDates(one.date, other.date));
}

/**
 * Payment history of a return with partial payments: each event with the unpaid tax and the penalties and interest to date.
 *
 * A payment is applied to tax first, then to penalties, then to interest. It stops further penalties and interest on the amount it
 * pays: what is paid beyond the tax stops the interest on the failure-to-file penalty once it has paid the penalties. Interest to
 * date on an amount no longer grows once the amount is paid, so nothing grows after all is paid and the return is filed.
 *
 * Whether the 90% reasonable-cause test is met, and whether an installment agreement halves the failure-to-pay penalty, is decided
 * from all events, so that no row shows a penalty that a later row removes. If the payments do not cover the tax, the history ends
 * with the last event.
 *
 * @param input - The return and every payment, on time or late.
 * @param rules - Penalty rates, minimum penalty, 90% test, interest rates, order of payments.
 * @returns The rows in order of dates. The last row shows the whole amounts.
 * @throws NotInTableError if an interest rate or the minimum penalty is not published, or the table has no order of payments.
 * @see 26 U.S.C. 6601(a), (e)(2)(B), 6651(b); Rev. Proc. 2002-26, section 3
 */
export function ledger(input: LedgerInput, rules: LedgerRules): readonly LedgerRow[] {
  const { totalTax, filedOn } = input;
  const filingDue = input.validExtension ? input.dates.extended : input.dates.regular;
  const events = accountEvents(input, filingDue, rules);
  const last = events.at(-1)?.date ?? filedOn;
  const { excused } = charges({ ...input, paidOnTime: ZERO, through: last }, rules);
  const outcome = { excused, timely: filedOn <= filingDue.lastDay };
  let paid = ZERO;
  return events.map(({ date, event, amount, source }) => {
    if (event === "payment" && amount) paid = paid.plus(amount);
    const toDate = charges(
      {
        ...input,
        paidOnTime: ZERO,
        filedOn: earlierDate(filedOn, date),
        outcome,
        through: date,
      },
      rules
    );
    const failureToFile = toCents(toDate.failureToFile.amount);
    const failureToPay = toCents(toDate.failureToPay.amount);
    const interest = toCents(toDate.interestOnTax.amount).plus(
      toCents(toDate.interestOnPenalty.amount)
    );
    const penaltiesAndInterest = failureToFile.plus(failureToPay).plus(interest);
    const beyondTax = atLeastZero(paid.minus(totalTax));
    return {
      date,
      event,
      amount,
      failureToFile,
      failureToPay,
      interest,
      source,
      unpaidTax: atLeastZero(totalTax.minus(paid)),
      unpaidPenaltiesAndInterest: atLeastZero(penaltiesAndInterest.minus(beyondTax)),
      overpayment: atLeastZero(beyondTax.minus(penaltiesAndInterest)),
    };
  });
}
