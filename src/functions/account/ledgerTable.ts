import { shortDate } from "../../calendar/writtenDate";
import type { LedgerEvent, LedgerRow } from "../../calculation/account/ledger";
import { cellOrBlank, citation, dateCell, moneyCell, type AnswerTable } from "../cells/answerCell";

const HEADINGS = [
  "Date",
  "Event",
  "Amount",
  "Unpaid tax",
  "Failure-to-file penalty to date",
  "Failure-to-pay penalty to date",
  "Interest to date",
  "Penalties and interest to date",
  "Penalties and interest unpaid",
  "Overpayment",
  "Source",
];

const LABELS: Readonly<Record<LedgerEvent, string>> = {
  "tax due": "Tax due",
  payment: "Payment, applied to the tax first",
  "return due": "Return due",
  "return filed": "Return filed",
  "agreement accepted": "Installment agreement accepted",
  "notice and demand": "Notice and demand",
  "levy notice": "Levy notice",
};

/** The event; a notice also says by when to pay it. */
function eventText({ event, payBy }: LedgerRow): string {
  return payBy === undefined ? LABELS[event] : `${LABELS[event]}, pay by ${shortDate(payBy)}`;
}

/** The payment history: headings, then one row per event. */
export function ledgerTable(rows: readonly LedgerRow[]): AnswerTable {
  const cells = rows.map((row) => {
    const { date, amount, failureToFile, failureToPay, interest, source } = row;
    return [
      dateCell(date),
      eventText(row),
      cellOrBlank(amount, moneyCell),
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
  return [HEADINGS, ...cells];
}
