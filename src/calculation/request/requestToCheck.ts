import type { CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import type { RequestCheck, RequestRoute } from "../../rules/requestTables";
import type { Rulebook } from "../../rules/rulebook";
import type { ClientDates } from "../dueDate/clientDates";
import type { Circumstances } from "../dueDate/dueDate";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { Filer } from "../filer";
import type { RequestRecord } from "../season/requestRecord";
import type { TaxYear } from "../taxYear";

/** Who brings a paper request, where it is not the postal service. */
export type Carrier = "designated" | "not designated";

/** A client's request as the preparer keeps it. */
export interface RequestToCheck {
  readonly taxYear: TaxYear;
  readonly dates: ClientDates;
  readonly circumstances: Circumstances;
  readonly filer: Filer;
  /** Dollars, line 4; nothing where it is blank. */
  readonly totalTax: Decimal | undefined;
  readonly payments: Decimal;
  readonly paying: Decimal;
  readonly asOf: CalendarDate;
  readonly record: RequestRecord;
  readonly route?: RequestRoute | undefined;
  readonly carrier?: Carrier | undefined;
  /** Line 8; nothing where the preparer does not keep it. */
  readonly outOfCountry?: boolean | undefined;
  /** Dollars of last year's total tax. */
  readonly priorTax?: Decimal | undefined;
  /** Dollars planned for the new year's first estimate. */
  readonly firstInstallment?: Decimal | undefined;
}

/** The rules that the findings look at. */
export type CheckingRules = ReturnDateRules &
  Pick<
    Rulebook,
    | "extensionPaymentPresumption"
    | "installments"
    | "rejectWindow"
    | "requestChecks"
    | "stateExtensions"
  >;

/** What is wrong, with the day, the dollars or the state it is about. */
export interface Finding {
  readonly check: RequestCheck;
  readonly day?: CalendarDate | undefined;
  readonly amount?: Decimal | undefined;
  readonly about?: string | undefined;
}
