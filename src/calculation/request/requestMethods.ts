import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { RequestMethod } from "../../rules/requestWords";
import type { Source } from "../../rules/source";
import type { ClientDates } from "../dueDate/clientDates";
import { isFiscalYear, type TaxYear } from "../taxYear";
import { formEdition } from "./formEdition";
import { methodDeadline } from "./methodDeadline";
import { requestGivesTime } from "./requestGivesTime";
import { resendDeadline, type ResendRules } from "./resendDeadline";

/** Why a method is not available to a client. */
export type ClosedBecause =
  | "no payment with the request"
  | "fiscal-year filers must use paper"
  | "the deadline has passed"
  | "a request gives no more time";

/** A method to make the request, for one client on one date. */
export interface MethodForClient {
  readonly method: RequestMethod;
  readonly closedBecause: ClosedBecause | undefined;
  readonly deadline: CalendarDate;
  readonly how: string;
  readonly proof: string;
  readonly source: Source;
}

/** What decides which methods are available. */
export interface RequestMethodsInput {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  /** Dollars paid with the request. */
  readonly paidWithRequest: Decimal;
  readonly asOf: CalendarDate;
  /** Date on which an e-filed request, made on time, was rejected. */
  readonly rejectedOn?: CalendarDate | undefined;
}

/**
 * The methods to make the request, the best available one first.
 *
 * An electronic payment marked as an extension payment is the request itself. Without a payment the method is e-file. A fiscal-year
 * filer must use paper. After the deadline only a rejected request can be e-filed again, and a payment made then is still late. Under
 * the client's own disaster postponement the electronic methods close first, and only paper stays open to the end of the period. Where
 * the postponement leaves a request no more time to give, no method is offered.
 *
 * @param input - Tax year, dates, payment and the as-of date.
 * @param rules - Methods, perfection period.
 * @returns Every method, the available ones first, in the order of the form.
 * @throws NotInTableError for a tax year that the methods do not cover, or a rejected request without a perfection period.
 * @see Form 4868, how to file; 26 CFR 1.6081-4(b); IR-2025-41
 */
export function requestMethods(
  input: RequestMethodsInput,
  rules: ResendRules
): readonly MethodForClient[] {
  const { taxYear, dates, paidWithRequest, asOf, rejectedOn } = input;
  formEdition(taxYear, rules.requestMethods);
  const isFiscal = isFiscalYear(taxYear);
  const isPointless = !requestGivesTime(dates) && asOf <= dates.regular.lastDay;
  const wasRejected = rejectedOn !== undefined && rejectedOn <= asOf;
  const methods = rules.requestMethods.rows.map((rule): MethodForClient => {
    const { method, how, proof, source } = rule;
    const canResend = method === "e-file" && wasRejected && !isFiscal;
    const deadline = canResend
      ? resendDeadline(dates.regular, rejectedOn, rules)
      : methodDeadline(method, dates.regular, rules);
    const closedBecause = isPointless
      ? "a request gives no more time"
      : isFiscal && !rule.fiscalYear
        ? "fiscal-year filers must use paper"
        : rule.needsPayment && !paidWithRequest.greaterThan(0)
          ? "no payment with the request"
          : asOf > deadline
            ? "the deadline has passed"
            : undefined;
    return { method, closedBecause, deadline, how, proof, source };
  });
  return [
    ...methods.filter(({ closedBecause }) => closedBecause === undefined),
    ...methods.filter(({ closedBecause }) => closedBecause !== undefined),
  ];
}
