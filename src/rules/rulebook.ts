import annualizedInstallments from "../../rules/annualized-installments.json";
import cleanHistoryRelief from "../../rules/clean-history-relief.json";
import combatZone from "../../rules/combat-zone.json";
import companionDates from "../../rules/companion-dates.json";
import installments from "../../rules/estimated-tax-installments.json";
import form2350 from "../../rules/form-2350.json";
import extensionOfTime from "../../rules/extension-of-time.json";
import reasonableCauseTest from "../../rules/reasonable-cause-test.json";
import failureToFileMinimum from "../../rules/failure-to-file-minimum.json";
import failureToFile from "../../rules/failure-to-file.json";
import failureToPay from "../../rules/failure-to-pay.json";
import levyNotice from "../../rules/levy-notice.json";
import noticeAndDemand from "../../rules/notice-and-demand.json";
import legalHolidays from "../../rules/legal-holidays.json";
import likeKindExchange from "../../rules/like-kind-exchange.json";
import orderOfPayments from "../../rules/order-of-payments.json";
import postponements from "../../rules/nationwide-postponements.json";
import refundClaims from "../../rules/refund-claims.json";
import requiredAnnualPayment from "../../rules/required-annual-payment.json";
import returnDueDate from "../../rules/return-due-date.json";
import underpaymentRate from "../../rules/underpayment-rate.json";
import { calendarDate } from "../calendar/calendarDate";
import { agreementReaders } from "./agreementTables";
import { readDatedTable } from "./datedTable";
import { liabilityReaders } from "./liabilityTables";
import { readListTable } from "./listTable";
import { readOnDemand } from "./readOnDemand";
import { requestReaders } from "./requestTables";
import type { Written } from "./schema/schemas";
import { stateReaders } from "./stateTable";

/** Every rule table of the add-in. The calculation takes what it needs of it as an argument. */
export const rulebook = readOnDemand({
  returnDueDate: () => readDatedTable(returnDueDate as Written["return-due-date"]),
  extensionOfTime: () => readDatedTable(extensionOfTime as Written["extension-of-time"]),
  installments: () => readDatedTable(installments as Written["estimated-tax-installments"]),
  legalHolidays: () => readListTable(legalHolidays as Written["legal-holidays"], "holidays"),
  nationwidePostponements: () =>
    readListTable(postponements as Written["nationwide-postponements"], "postponements", (row) => ({
      ...row,
      dueFrom: calendarDate(row.dueFrom),
      dueThrough: calendarDate(row.dueThrough),
      postponementEnds: calendarDate(row.postponementEnds),
    })),
  companionDates: () => readListTable(companionDates as Written["companion-dates"], "dates"),
  form2350: () => readDatedTable(form2350 as Written["form-2350"]),
  likeKindExchange: () => readDatedTable(likeKindExchange as Written["like-kind-exchange"]),
  refundClaims: () =>
    readListTable(refundClaims as Written["refund-claims"], "claims", (row) => ({
      ...row,
      claimedFrom: calendarDate(row.claimedFrom),
    })),
  combatZone: () => readDatedTable(combatZone as Written["combat-zone"]),
  underpaymentRate: () => readDatedTable(underpaymentRate as Written["underpayment-rate"]),
  failureToFile: () => readDatedTable(failureToFile as Written["failure-to-file"]),
  failureToFileMinimum: () =>
    readDatedTable(failureToFileMinimum as Written["failure-to-file-minimum"]),
  failureToPay: () => readDatedTable(failureToPay as Written["failure-to-pay"]),
  levyNotice: () => readDatedTable(levyNotice as Written["levy-notice"]),
  noticeAndDemand: () => readDatedTable(noticeAndDemand as Written["notice-and-demand"]),
  requiredAnnualPayment: () =>
    readDatedTable(requiredAnnualPayment as Written["required-annual-payment"]),
  annualizedInstallments: () =>
    readDatedTable(annualizedInstallments as Written["annualized-installments"]),
  orderOfPayments: () => readListTable(orderOfPayments as Written["order-of-payments"], "orders"),
  cleanHistoryRelief: () =>
    readListTable(cleanHistoryRelief as Written["clean-history-relief"], "reliefs", (row) => ({
      ...row,
      from: calendarDate(row.from),
    })),
  reasonableCauseTest: () =>
    readDatedTable(reasonableCauseTest as Written["reasonable-cause-test"]),
  ...agreementReaders,
  ...requestReaders,
  ...stateReaders,
  ...liabilityReaders,
});

/** Every rule table of the add-in. */
export type Rulebook = typeof rulebook;
