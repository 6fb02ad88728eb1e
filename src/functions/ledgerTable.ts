import type { LedgerEvent, LedgerRow } from "../calculation/account/ledger";
import { citation, dayCell, moneyCell, optional, type AnswerTable } from "./results";

/** Headings of the running account. */
export const LEDGER_HEADINGS = [
  "Day",
  "Event",
  "Amount",
  "Tax left",
  "Failure to file so far",
  "Failure to pay so far",
  "Interest so far",
  "Charges so far",
  "Charges left",
  "Overpaid",
  "Source",
] as const;

const LABELS: Readonly<Record<LedgerEvent, string>> = {
  "tax due": "Tax due",
  payment: "Payment, to the tax first",
  "return due": "Return due",
  "return filed": "Return filed",
};

/** The running account as cells, a row an event. */
export function ledgerTable(rows: readonly LedgerRow[]): AnswerTable {
  return rows.map((row) => {
    const { date: day, event, amount, failureToFile, failureToPay, interest, source } = row;
    return [
      dayCell(day),
      LABELS[event],
      optional(amount, moneyCell),
      moneyCell(row.unpaidTax),
      moneyCell(failureToFile),
      moneyCell(failureToPay),
      moneyCell(interest),
      moneyCell(failureToFile.plus(failureToPay).plus(interest)),
      moneyCell(row.unpaidPenaltiesAndInterest),
      moneyCell(row.overpayment),
      citation(source),
    ];
  });
}
