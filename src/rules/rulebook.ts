import combatZone from "../../rules/combat-zone.json";
import companionDates from "../../rules/companion-dates.json";
import installments from "../../rules/estimated-tax-installments.json";
import extensionOfTime from "../../rules/extension-of-time.json";
import presumption from "../../rules/reasonable-cause-test.json";
import minimum from "../../rules/failure-to-file-minimum.json";
import failureToFile from "../../rules/failure-to-file.json";
import failureToPay from "../../rules/failure-to-pay.json";
import legalHolidays from "../../rules/legal-holidays.json";
import orderOfPayments from "../../rules/order-of-payments.json";
import postponements from "../../rules/nationwide-postponements.json";
import requiredAnnualPayment from "../../rules/required-annual-payment.json";
import returnDueDate from "../../rules/return-due-date.json";
import underpaymentRate from "../../rules/underpayment-rate.json";
import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import type { HolidayRule, Observance } from "../calendar/legalHoliday";
import { readDatedTable } from "./datedTable";
import { liabilityTables } from "./liabilityTables";
import { oneOf, readListTable } from "./listTable";
import { requestTables } from "./requestTables";
import { stateTable } from "./stateTable";

const OBSERVANCES: readonly Observance[] = [
  "nearest weekday",
  "Monday after a Sunday",
  "never on a weekend",
];

/** What a postponement may move. */
export const ACTS = ["return", "extended return", "payment", "installment"] as const;

/** An act with a due date. */
export type Act = (typeof ACTS)[number];

/** A postponement for everyone of the acts due in a span of days. */
export interface NationwidePostponement {
  readonly dueFrom: CalendarDate;
  readonly dueThrough: CalendarDate;
  readonly postponementEnds: CalendarDate;
  readonly acts: readonly Act[];
  /** Whether the time does not count for interest and additions (section 7508A), or only the last day moved. */
  readonly periodDisregarded: boolean;
}

/** The date of the return that a companion date equals. */
export const FOLLOWED = ["payment", "regular return", "extended return"] as const;

/** Another date of the season that equals one of the return's. */
export interface CompanionDate {
  readonly what: string;
  readonly follows: (typeof FOLLOWED)[number];
}

/** Payments told apart by whether the payer said what they are for. */
export const PAYMENT_KINDS = ["designated", "undesignated"] as const;

/** The order in which a kind of payment is applied. */
export interface PaymentOrder {
  readonly when: (typeof PAYMENT_KINDS)[number];
  readonly what: string;
}

/** Every rule the add-in holds, typed. The calculation takes what it needs of it as an argument. */
export const rulebook = {
  returnDueDate: readDatedTable(returnDueDate, [
    "dayOfMonth",
    "regularMonth",
    "outOfCountryMonth",
    "nonresidentMonth",
  ]),
  extensionOfTime: readDatedTable(extensionOfTime, ["months"]),
  installments: readDatedTable(installments, [
    "dayOfMonth",
    "firstMonth",
    "secondMonth",
    "thirdMonth",
    "fourthMonth",
  ]),
  legalHolidays: readListTable(legalHolidays, legalHolidays.holidays, (row): HolidayRule => ({
    ...row,
    observed: oneOf(OBSERVANCES, row.observed),
  })),
  nationwidePostponements: readListTable(
    postponements,
    postponements.postponements,
    (row): NationwidePostponement => ({
      dueFrom: calendarDate(row.dueFrom),
      dueThrough: calendarDate(row.dueThrough),
      postponementEnds: calendarDate(row.postponedTo),
      acts: row.acts.map((act) => oneOf(ACTS, act)),
      periodDisregarded: row.periodDisregarded,
    })
  ),
  companionDates: readListTable(companionDates, companionDates.dates, (row): CompanionDate => ({
    what: row.what,
    follows: oneOf(FOLLOWED, row.follows),
  })),
  combatZone: readDatedTable(combatZone, ["daysAfterLeaving"]),
  underpaymentRate: readDatedTable(underpaymentRate, ["rate"]),
  failureToFile: readDatedTable(failureToFile, ["monthlyRate", "maximumRate", "minimumAfterDays"]),
  failureToFileMinimum: readDatedTable(minimum, ["amount"]),
  failureToPay: readDatedTable(failureToPay, ["monthlyRate", "maximumRate", "agreementRate"]),
  requiredAnnualPayment: readDatedTable(requiredAnnualPayment, [
    "currentYearShare",
    "priorYearShare",
    "higherPriorYearShare",
    "higherIncomeAbove",
    "higherIncomeAboveSeparate",
    "farmerShareNumerator",
    "farmerShareDenominator",
    "leastTaxDue",
  ]),
  orderOfPayments: readListTable(orderOfPayments, orderOfPayments.orders, (row): PaymentOrder => ({
    when: oneOf(PAYMENT_KINDS, row.when),
    what: row.what,
  })),
  reasonableCauseTest: readDatedTable(presumption, ["shareToPay"]),
  ...requestTables,
  ...stateTable,
  ...liabilityTables,
};

/** Every rule the add-in holds, typed. */
export type Rulebook = typeof rulebook;
