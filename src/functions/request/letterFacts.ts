import { yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { longDate } from "../../calendar/writtenDate";
import type { ClientDates } from "../../calculation/dueDate/clientDates";
import { requestGivesTime } from "../../calculation/request/requestGivesTime";
import type { ResendRules } from "../../calculation/request/resendDeadline";
import {
  plannedReturn,
  type PlanInput,
  type PlannedReturn,
} from "../../calculation/season/plannedReturn";
import { recordAsOf } from "../../calculation/season/recordAsOf";
import type { RequestRecord } from "../../calculation/season/requestRecord";
import { requestStage, type RequestStage } from "../../calculation/season/requestStage";
import { isFiscalYear, type TaxYear } from "../../calculation/taxYear";
import type { Decimal } from "../../money/dollars";

/** What a letter to the client is about, as known on the as-of date. */
export interface LetterFacts {
  readonly asOf: CalendarDate;
  /** The return as a sentence names it, such as "2025 federal income tax return". */
  readonly returnName: string;
  readonly dates: ClientDates;
  readonly totalTax: Decimal;
  readonly payments: Decimal;
  /** What happened through the as-of date. */
  readonly record: RequestRecord;
  /** Status of the request, whether or not the return is filed. */
  readonly request: RequestStage;
  /** Whether a request gives more time to file. */
  readonly givesTime: boolean;
  /** Whether the extension holds by the record, may still hold, or does not. */
  readonly extension: "holds" | "may hold" | "none";
  /** The return as recorded and planned. */
  readonly plan: PlannedReturn;
  readonly plannedPaymentDate: CalendarDate | undefined;
}

/** What the facts of a letter follow from. */
export interface LetterInput extends PlanInput {
  readonly taxYear: TaxYear;
}

function returnName(taxYear: TaxYear): string {
  return isFiscalYear(taxYear)
    ? `federal income tax return for the year ending ${longDate(taxYear.lastDay)}`
    : `${String(yearOf(taxYear.lastDay))} federal income tax return`;
}

/**
 * The facts of a letter to the client on a date.
 *
 * @param input - Dollars and dates. What happened after the as-of date is ignored.
 * @param rules - Perfection period, methods.
 * @returns The facts.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 */
export function letterFacts(input: LetterInput, rules: ResendRules): LetterFacts {
  const { dates, asOf, totalTax, payments, plannedPaymentDate } = input;
  const record = recordAsOf(input.record, asOf);
  const request = requestStage(dates, { ...record, filedOn: undefined }, asOf, rules);
  const plan = plannedReturn(input, rules);
  const hasProof =
    request.stage === "extended" ||
    (request.missed === "extended date missed" && record.confirmedOn !== undefined);
  return {
    asOf,
    returnName: returnName(input.taxYear),
    dates,
    totalTax,
    payments,
    record,
    request,
    givesTime: requestGivesTime(dates),
    extension: !plan.validExtension ? "none" : hasProof ? "holds" : "may hold",
    plan,
    plannedPaymentDate,
  };
}
