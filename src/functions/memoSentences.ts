import type { Charges } from "../calculation/penalty/charges";
import type { ClientDates } from "../calculation/dueDate/clientDates";
import { shortfall } from "../calculation/request/shortfall";
import type { TaxYear } from "../calculation/taxYear";
import { yearOf, type CalendarDate } from "../calendar/calendarDate";
import { toCents, type Decimal } from "../money/dollars";

/** What the sentences for the client are made of. */
export interface MemoContent {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  readonly totalTax: Decimal;
  readonly payments: Decimal;
  readonly paidWithRequest: Decimal;
  readonly requestedOn: CalendarDate | undefined;
  /** What the client still has to send, in the preparer's words. */
  readonly missing: string;
  /** What waiting until the planned day costs; only in the full memo. */
  readonly waiting: { readonly until: CalendarDate; readonly charges: Charges } | undefined;
}

const MONTHS =
  "January February March April May June July August September October November December".split(
    " "
  );

function inWords(day: CalendarDate): string {
  const [year = "", month = "", date = ""] = day.split("-");
  return `${MONTHS[Number(month) - 1] ?? ""} ${String(Number(date))}, ${year}`;
}

function dollars(amount: Decimal): string {
  const [whole = "", cents = ""] = toCents(amount).toFixed(2).split(".");
  return `$${whole.replace(/\B(?=(\d{3})+$)/g, ",")}.${cents}`;
}

function payment({
  dates,
  totalTax,
  payments,
  paidWithRequest,
  requestedOn,
}: MemoContent): readonly string[] {
  const short = shortfall(totalTax, payments);
  const payBy = inWords(dates.payment.lastDay);
  const rest = shortfall(short, paidWithRequest);
  if (short.isZero())
    return ["By our estimate your payments cover the tax, and nothing is due now."];
  if (paidWithRequest.isZero())
    return [
      `By our estimate ${dollars(short)} is still unpaid; whatever is not paid by ${payBy} bears interest.`,
    ];
  return [
    requestedOn === undefined
      ? `Please pay ${dollars(paidWithRequest)} by ${payBy}, electronically if you can, marked as an extension payment.`
      : `The request counts on ${dollars(paidWithRequest)} being paid by ${payBy}.`,
    rest.isZero()
      ? "By our estimate that covers the tax."
      : `By our estimate ${dollars(rest)} then remains unpaid and bears interest from ${payBy}.`,
  ];
}

function waitingCost({ waiting, dates }: MemoContent): readonly string[] {
  if (!waiting) return [];
  const { until, charges } = waiting;
  if (charges.total.isZero())
    return [`Filed and paid by ${inWords(until)}, no addition or interest is expected.`];
  return [
    `If the rest is paid only on ${inWords(until)}, interest and additions come to about ${dollars(charges.total)}; paying earlier lowers that.`,
    ...(until > dates.extended.lastDay
      ? [
          `A return filed after ${inWords(dates.extended.lastDay)} is late and costs more each month.`,
        ]
      : []),
  ];
}

/**
 * The sentences for the client: what is asked and until when, what it does not do, what to pay by when and how, what waiting costs,
 * what is missing, and that it is an estimate.
 *
 * @param content - What they are made of.
 * @param length - The full memo adds what was estimated, what waiting costs and what else has its own date.
 * @returns The sentences in order.
 */
export function memoSentences(content: MemoContent, length: "short" | "full"): readonly string[] {
  const { taxYear, dates, totalTax, payments, requestedOn, missing } = content;
  const year = String(yearOf(taxYear.lastDay));
  const extended = inWords(dates.extended.lastDay);
  const asked =
    requestedOn === undefined
      ? `We are asking for more time to file your ${year} federal income tax return, until ${extended}.`
      : `On ${inWords(requestedOn)} we asked for more time to file your ${year} federal income tax return, until ${extended}.`;
  const isFull = length === "full";
  return [
    asked,
    "The extension gives more time to file, not more time to pay.",
    ...(isFull
      ? [
          `We estimate the total tax at ${dollars(totalTax)} and your payments so far at ${dollars(payments)}.`,
        ]
      : []),
    ...payment(content),
    ...(isFull ? waitingCost(content) : []),
    ...(missing === "" ? [] : [`We still need from you: ${missing}.`]),
    ...(isFull
      ? [
          "The first estimate of the new year, contributions to an IRA and your state return have dates of their own, which this extension does not move.",
        ]
      : []),
    "These figures are estimates from what we have so far, not a bill; the return may show others.",
  ];
}
