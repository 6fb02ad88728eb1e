import { z } from "zod";
import { byStatus, date, datedTable, figure, listTable, text } from "./parts";

/** Tables of penalties, interest, payments and estimated tax, by id. */
export const penaltyTables = {
  "underpayment-rate": datedTable({ rate: figure }),
  "failure-to-file": datedTable({
    monthlyRate: figure,
    maximumRate: figure,
    minimumAfterDays: figure,
  }),
  "failure-to-file-minimum": datedTable({ amount: figure }),
  "failure-to-pay": datedTable({ monthlyRate: figure, maximumRate: figure, agreementRate: figure }),
  "levy-notice": datedTable({ days: figure, monthlyRate: figure }),
  "notice-and-demand": datedTable({
    calendarDays: figure,
    businessDays: figure,
    largeAmount: figure,
  }),
  "reasonable-cause-test": datedTable({ shareToPay: figure }),
  "clean-history-relief": listTable("reliefs", {
    from: date,
    name: text,
    lookBackYears: z.int().positive(),
    how: text,
    confirm: text,
  }),
  "order-of-payments": listTable("orders", {
    when: z.enum(["designated", "undesignated"]),
    what: text,
  }),
  "estimated-tax-installments": datedTable({
    dayOfMonth: figure,
    months: z.tuple([figure, figure, figure, figure]),
    nonresidentMonths: z.tuple([figure, figure, figure]),
  }),
  "annualized-installments": datedTable({
    shares: z.tuple([figure, figure, figure, figure]),
    nonresidentShares: z.tuple([figure, figure, figure]),
  }),
  "required-annual-payment": datedTable({
    currentYearShare: figure,
    priorYearShare: figure,
    higherPriorYearShare: figure,
    higherIncomeAbove: byStatus.separate(figure),
    farmerShareNumerator: figure,
    farmerShareDenominator: figure,
    installmentShare: figure,
    nonresidentFirstInstallmentShare: figure,
    farmerInstallmentShare: figure,
    leastTaxDue: figure,
    penaltyEndMonth: figure,
    penaltyEndDay: figure,
    continuedRateMonth: figure,
    earlyReturnMonth: figure,
    earlyReturnDay: figure,
    farmerReturnMonth: figure,
    farmerReturnDay: figure,
  }),
};
