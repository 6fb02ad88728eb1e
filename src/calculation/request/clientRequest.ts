import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { RequestMethod } from "../../rules/requestWords";
import type { Rulebook } from "../../rules/rulebook";
import type { RequestIssue } from "../../rules/schema/requestTables";
import type { ClientDates } from "../dueDate/clientDates";
import type { Circumstances } from "../dueDate/dueDate";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { FilerType } from "../filerType";
import type { RequestRecord } from "../season/requestRecord";
import type { TaxYear } from "../taxYear";

/** A private delivery service that delivers a paper request instead of U.S. mail. */
export type Carrier = "designated" | "not designated";

/** A client's request as the preparer recorded it. */
export interface ClientRequest {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  readonly circumstances: Circumstances;
  readonly filerType: FilerType;
  /** Dollars, line 4; `undefined` if it is blank. */
  readonly totalTax: Decimal | undefined;
  readonly payments: Decimal;
  readonly paidWithRequest: Decimal;
  readonly asOf: CalendarDate;
  readonly record: RequestRecord;
  readonly method?: RequestMethod | undefined;
  readonly carrier?: Carrier | undefined;
  /** Whether line 8 is checked; `undefined` if not recorded. */
  readonly line8Checked?: boolean | undefined;
  /** Dollars of total tax on last year's return. */
  readonly priorYearTax?: Decimal | undefined;
  /** Dollars planned for the first estimated tax installment of the new year. */
  readonly firstInstallment?: Decimal | undefined;
}

/** The rules that the issues need. */
export type IssueRules = ReturnDateRules &
  Pick<
    Rulebook,
    | "reasonableCauseTest"
    | "estimateReview"
    | "installments"
    | "perfectionPeriod"
    | "refundClaims"
    | "requestIssues"
    | "requestMethods"
    | "stateExtensions"
  >;

/** An issue, with the date, the dollars or the details it concerns. */
export interface Issue {
  readonly check: RequestIssue;
  readonly date?: CalendarDate | undefined;
  readonly amount?: Decimal | undefined;
  readonly details?: string | undefined;
}
