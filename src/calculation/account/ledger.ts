import { compareDates, earlierDate, type CalendarDate } from "../../calendar/calendarDate";
import { atLeastZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { LatePayment } from "../penalty/underpaymentInterest";
import { charges, type ChargesInput } from "../penalty/charges";

/** What happened on a day of the account. */
export type LedgerEvent = "tax due" | "payment" | "return due" | "return filed";

/** The account at the end of a day. */
export interface LedgerRow {
  readonly day: CalendarDate;
  readonly event: LedgerEvent;
  /** Dollars due or paid; nothing where a day only passes or the return is filed. */
  readonly amount: Decimal | undefined;
  readonly taxLeft: Decimal;
  /** Dollars of charges so far that payments beyond the tax have not met. */
  readonly chargesLeft: Decimal;
  /** Dollars paid beyond the tax and the charges so far. */
  readonly overpaid: Decimal;
  /** Dollars and cents so far. */
  readonly failureToFile: Decimal;
  readonly failureToPay: Decimal;
  readonly interest: Decimal;
  readonly source: Source;
}

/** A return paid in parts. */
export interface LedgerInput extends Omit<ChargesInput, "paidOnTime" | "payments" | "through"> {
  /** Every payment but withholding that is left out, before and after the due date, rising by day. */
  readonly payments: readonly LatePayment[];
}

type LedgerRules = Parameters<typeof charges>[1] & Pick<Rulebook, "orderOfPayments">;

interface Happening {
  readonly day: CalendarDate;
  readonly event: LedgerEvent;
  readonly amount: Decimal | undefined;
  readonly source: Source;
}

function happenings(input: LedgerInput, rules: LedgerRules): readonly Happening[] {
  const { dates, totalTax, payments, filedOn, extended } = input;
  const filingDue = extended ? dates.extended : dates.regular;
  const order = rules.orderOfPayments;
  const applied = order.rows.find(({ when }) => when === "undesignated");
  if (!applied)
    throw new NotInTableError(
      order,
      `There is no order for an undesignated payment (rules/${order.id}.json).`
    );
  const all: Happening[] = [
    ...payments.map(({ day, amount }): Happening => ({
      day,
      event: "payment",
      amount,
      source: applied.source,
    })),
    {
      day: dates.payment.lastDay,
      event: "tax due",
      amount: totalTax,
      source: dates.payment.source,
    },
    { day: filingDue.lastDay, event: "return due", amount: undefined, source: filingDue.source },
    { day: filedOn, event: "return filed", amount: undefined, source: filingDue.source },
  ];
  // those of a day stay as they stand above, the payment before what is due
  return all.sort((one, other) => compareDates(one.day, other.day));
}

/**
 * The running account of a return paid in parts: each event with the tax left and what has been charged so far.
 *
 * A payment goes to the tax first, then to additions, then to interest, so that it stops both from growing at once; what is
 * charged stays until the tax is paid. Whether failure to pay is excused, and whether an agreement halves it, is judged on all that is
 * known, so that no row shows an addition that falls away later. Where the payments do not reach the whole tax, the account ends with its last event.
 *
 * @param input - The return and every payment, on time or late.
 * @param rules - Shares, minimum, presumption, rates, order of payments.
 * @returns The rows in order of days; the last one's charges are those of the whole.
 * @throws NotInTableError where a rate or the minimum is not published or the order of payments is not in its table.
 * @see 26 U.S.C. 6601, 6651(b); Rev. Proc. 2002-26, section 3
 */
export function ledger(input: LedgerInput, rules: LedgerRules): readonly LedgerRow[] {
  const { totalTax, filedOn } = input;
  const events = happenings(input, rules);
  const last = events.at(-1)?.day ?? filedOn;
  const { excused } = charges({ ...input, paidOnTime: ZERO, through: last }, rules);
  const filingDue = input.extended ? input.dates.extended : input.dates.regular;
  const outcome = { excused, timely: filedOn <= filingDue.lastDay };
  let paid = ZERO;
  return events.map(({ day, event, amount, source }) => {
    if (event === "payment" && amount) paid = paid.plus(amount);
    const soFar = charges(
      {
        ...input,
        paidOnTime: ZERO,
        filedOn: earlierDate(filedOn, day),
        outcome,
        through: day,
      },
      rules
    );
    const failureToFile = toCents(soFar.failureToFile.amount);
    const failureToPay = toCents(soFar.failureToPay.amount);
    const interest = toCents(soFar.interestOnTax.amount).plus(
      toCents(soFar.interestOnAddition.amount)
    );
    const charged = failureToFile.plus(failureToPay).plus(interest);
    const beyondTax = atLeastZero(paid.minus(totalTax));
    return {
      ...{ day, event, amount, failureToFile, failureToPay, interest, source },
      taxLeft: atLeastZero(totalTax.minus(paid)),
      chargesLeft: atLeastZero(charged.minus(beyondTax)),
      overpaid: atLeastZero(beyondTax.minus(charged)),
    };
  });
}
