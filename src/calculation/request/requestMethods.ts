import { calendarDate, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { requireReach } from "../../rules/listTable";
import type { RequestMethod } from "../../rules/requestWords";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { ClientDates } from "../dueDate/clientDates";
import { isFiscalYear, type TaxYear } from "../taxYear";
import { resendDeadline } from "./resendDeadline";

/** Why a way is closed to this client. */
export type ClosedBecause = "nothing is paid" | "fiscal year" | "the last day has passed";

/** One way to make the request, as it stands for this client on this day. */
export interface MethodForClient {
  readonly method: RequestMethod;
  readonly closedBecause: ClosedBecause | undefined;
  readonly lastDay: CalendarDate;
  readonly how: string;
  readonly proof: string;
  readonly source: Source;
}

/** What decides how a request can go in. */
export interface RequestMethodsInput {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  /** Dollars paid with the request. */
  readonly paidWithRequest: Decimal;
  readonly asOf: CalendarDate;
  /** An e-filed request made in time came back on this day. */
  readonly rejectedOn?: CalendarDate | undefined;
}

/**
 * The ways to make the request, best first.
 *
 * An electronic payment marked for it is the request itself; without a payment it goes by e-file; a fiscal-year filer asks on paper.
 * After the last day only a request that was rejected may still be e-filed again, and its payment is late all the same.
 *
 * @param input - Tax year, dates, payment and the day.
 * @param rules - Ways to ask, days to send again.
 * @returns Every way, those open first in the order of the form.
 * @throws NotInTableError for a tax year whose ways to ask, or a rejected request whose days to send again, are not held.
 * @see Form 4868, how to ask; 26 CFR 1.6081-4(b)
 */
export function requestMethods(
  input: RequestMethodsInput,
  rules: Pick<Rulebook, "requestMethods" | "perfectionPeriod">
): readonly MethodForClient[] {
  const { taxYear, dates, paidWithRequest, asOf, rejectedOn } = input;
  const { lastDay: due } = dates.regular;
  const form = yearOf(taxYear.firstDay);
  requireReach(rules.requestMethods, calendarDate(`${String(form)}-12-31`));
  const isFiscal = isFiscalYear(taxYear);
  const wasRejected = rejectedOn !== undefined && rejectedOn <= asOf;
  const methods = rules.requestMethods.rows.map((rule): MethodForClient => {
    const { method, how, proof, source } = rule;
    const opensAgain = method === "e-file" && wasRejected && !isFiscal;
    const lastDay = opensAgain ? resendDeadline(dates.regular, rejectedOn, rules) : due;
    const closedBecause =
      isFiscal && !rule.fiscalYear
        ? "fiscal year"
        : rule.needsPayment && !paidWithRequest.greaterThan(0)
          ? "nothing is paid"
          : asOf > lastDay
            ? "the last day has passed"
            : undefined;
    return { method, closedBecause, lastDay, how, proof, source };
  });
  return [
    ...methods.filter(({ closedBecause }) => closedBecause === undefined),
    ...methods.filter(({ closedBecause }) => closedBecause !== undefined),
  ];
}
