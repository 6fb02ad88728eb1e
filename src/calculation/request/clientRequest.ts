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

/** Who brings a paper request, where it is not the postal service. */
export type Carrier = "designated" | "not designated";

/** A client's request as the preparer keeps it. */
export interface ClientRequest {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  readonly circumstances: Circumstances;
  readonly filerType: FilerType;
  /** Dollars, line 4; nothing where it is blank. */
  readonly totalTax: Decimal | undefined;
  readonly payments: Decimal;
  readonly paidWithRequest: Decimal;
  readonly asOf: CalendarDate;
  readonly record: RequestRecord;
  readonly method?: RequestMethod | undefined;
  readonly carrier?: Carrier | undefined;
  /** Line 8; nothing where the preparer does not keep it. */
  readonly line8Checked?: boolean | undefined;
  /** Dollars of last year's total tax. */
  readonly priorYearTax?: Decimal | undefined;
  /** Dollars planned for the new year's first estimate. */
  readonly firstInstallment?: Decimal | undefined;
}

/** The rules that the findings look at. */
export type IssueRules = ReturnDateRules &
  Pick<
    Rulebook,
    | "reasonableCauseTest"
    | "installments"
    | "perfectionPeriod"
    | "requestIssues"
    | "stateExtensions"
  >;

/** What is wrong, with the day, the dollars or the state it is about. */
export interface Issue {
  readonly check: RequestIssue;
  readonly day?: CalendarDate | undefined;
  readonly amount?: Decimal | undefined;
  readonly about?: string | undefined;
}
