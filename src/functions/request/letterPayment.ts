import { longDate } from "../../calendar/writtenDate";
import { shortfall } from "../../calculation/request/shortfall";
import { writtenDollars } from "../cells/writtenDollars";
import type { LetterFacts } from "./letterFacts";

function withRequestSentences(facts: LetterFacts): readonly string[] {
  const { asOf, record, dates, givesTime, plan } = facts;
  const { withRequest, withRequestOn } = plan;
  const payBy = longDate(dates.payment.lastDay);
  const amount = writtenDollars(withRequest);
  if (withRequest.isZero()) return [];
  if (withRequestOn !== undefined)
    return [
      `Our figures assume that ${amount} was paid with the request on ${longDate(withRequestOn)}.`,
    ];
  if (asOf > dates.payment.lastDay)
    return [`Our figures assume that ${amount} was paid by ${payBy}.`];
  const isFiled = record.filedOn !== undefined;
  if (record.requestedOn !== undefined && !isFiled && givesTime)
    return [`The request assumes that ${amount} is paid by ${payBy}.`];
  const isForRequest = givesTime && !isFiled;
  return [
    `Please pay ${amount} by ${payBy}.`,
    ...(isForRequest
      ? ["If you can, pay electronically and mark it as an extension payment."]
      : []),
  ];
}

function balanceSentences(facts: LetterFacts): readonly string[] {
  const { asOf, record, dates, plan, plannedPaymentDate } = facts;
  const { balance, paidOn, withRequest } = plan;
  const payBy = longDate(dates.payment.lastDay);
  const amount = writtenDollars(balance);
  const isAfterRequest = withRequest.greaterThan(0);
  if (balance.isZero()) return ["Based on our estimate, that payment covers the tax."];
  if (record.paidOn !== undefined)
    return [`The balance of ${amount} was paid on ${longDate(record.paidOn)}.`];
  if (paidOn < asOf) {
    const how = plannedPaymentDate === undefined ? "with the return" : "as planned";
    return [
      `Our figures assume that the balance of ${amount} was paid on ${longDate(paidOn)}, ${how}.`,
    ];
  }
  if (asOf > dates.payment.lastDay)
    return [
      `Based on our estimate, ${amount} is unpaid, and the payment due date was ${payBy}.`,
      "Interest accrues on it until it is paid.",
    ];
  return [
    isAfterRequest
      ? `Based on our estimate, a balance of ${amount} remains after that payment.`
      : `Based on our estimate, ${amount} is still unpaid.`,
    `Interest accrues on any amount not paid by ${payBy}.`,
  ];
}

/**
 * The sentences on what is paid, what is to be paid and by when. A payment that the record does not show is stated as an assumption
 * once its date has passed.
 *
 * @returns The sentences in order.
 */
export function paymentSentences(facts: LetterFacts): readonly string[] {
  const { totalTax, payments, record } = facts;
  const isFiled = record.filedOn !== undefined;
  if (shortfall(totalTax, payments).isZero())
    return [
      isFiled
        ? "Based on our figures, your payments cover the tax."
        : "Based on our estimate, your payments cover the tax, and you do not owe anything now.",
    ];
  return [...withRequestSentences(facts), ...balanceSentences(facts)];
}
