import { yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { longDate } from "../../calendar/writtenDate";
import type { ClientDates } from "../../calculation/dueDate/clientDates";
import type { Charges } from "../../calculation/penalty/charges";
import { shortfall } from "../../calculation/request/shortfall";
import type { TaxYear } from "../../calculation/taxYear";
import { toCents, type Decimal } from "../../money/dollars";

/** What a letter to the client says. */
export interface LetterContent {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  readonly totalTax: Decimal;
  readonly payments: Decimal;
  readonly paidWithRequest: Decimal;
  readonly requestedOn: CalendarDate | undefined;
  /** What the client still has to send; empty if nothing. */
  readonly stillNeeded: string;
  /** The cost of waiting until a date; in the full letter only. */
  readonly waiting: { readonly until: CalendarDate; readonly charges: Charges } | undefined;
}

function dollars(amount: Decimal): string {
  const [whole = "", cents = ""] = toCents(amount).toFixed(2).split(".");
  return `$${whole.replace(/\B(?=(\d{3})+$)/g, ",")}.${cents}`;
}

function payment(content: LetterContent): readonly string[] {
  const { dates, totalTax, payments, paidWithRequest, requestedOn } = content;
  const short = shortfall(totalTax, payments);
  const payBy = longDate(dates.payment.lastDay);
  const rest = shortfall(short, paidWithRequest);
  if (short.isZero())
    return ["Based on our estimate, your payments cover the tax, and you do not owe anything now."];
  if (paidWithRequest.isZero())
    return [
      `Based on our estimate, ${dollars(short)} is still unpaid.`,
      `Interest accrues on any amount not paid by ${payBy}.`,
    ];
  return [
    ...(requestedOn === undefined
      ? [
          `Please pay ${dollars(paidWithRequest)} by ${payBy}.`,
          "If you can, pay electronically and mark it as an extension payment.",
        ]
      : [`The request assumes that ${dollars(paidWithRequest)} is paid by ${payBy}.`]),
    rest.isZero()
      ? "Based on our estimate, that payment covers the tax."
      : `Based on our estimate, ${dollars(rest)} will still be unpaid, and interest accrues from ${payBy}.`,
  ];
}

function costOfWaiting({ waiting, dates }: LetterContent): readonly string[] {
  if (!waiting) return [];
  const { until, charges } = waiting;
  const { lastDay: extended } = dates.extended;
  if (charges.total.isZero())
    return [`If you file and pay by ${longDate(until)}, we expect no penalties or interest.`];
  return [
    `If you wait until ${longDate(until)} to pay the balance, we expect about ${dollars(charges.total)} in penalties and interest.`,
    "Paying earlier reduces this amount.",
    ...(until > extended
      ? [`A return filed after ${longDate(extended)} is late, and the cost increases each month.`]
      : []),
  ];
}

/**
 * The sentences of a letter to the client: the request and its date, what an extension does not do, what to pay and by when, the
 * cost of waiting, what is still needed, and that the amounts are estimates.
 *
 * @returns The sentences in order.
 */
export function letterSentences(
  content: LetterContent,
  length: "short" | "full"
): readonly string[] {
  const { taxYear, dates, totalTax, payments, requestedOn, stillNeeded } = content;
  const year = String(yearOf(taxYear.lastDay));
  const extended = longDate(dates.extended.lastDay);
  const request =
    requestedOn === undefined ? "We are requesting" : `On ${longDate(requestedOn)}, we requested`;
  const isFull = length === "full";
  return [
    `${request} an extension of time, until ${extended}, to file your ${year} federal income tax return.`,
    "An extension of time to file is not an extension of time to pay.",
    ...(isFull
      ? [
          `We estimate your total tax at ${dollars(totalTax)} and your payments so far at ${dollars(payments)}.`,
        ]
      : []),
    ...payment(content),
    ...(isFull ? costOfWaiting(content) : []),
    ...(stillNeeded === "" ? [] : [`We still need the following from you: ${stillNeeded}.`]),
    ...(isFull
      ? [
          "Your first estimated tax payment of the new year, IRA contributions and state return have their own deadlines.",
          "This extension does not change them.",
        ]
      : []),
    "These amounts are estimates based on the information we have now.",
    "They are not a bill, and the return may show different amounts.",
  ];
}
