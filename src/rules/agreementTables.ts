import fees from "../../rules/installment-agreement-fees.json";
import agreements from "../../rules/installment-agreements.json";
import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import { Decimal } from "../money/dollars";
import { readListTable } from "./listTable";
import type { TablesOf } from "./readOnDemand";
import type { Written } from "./schema/schemas";

interface WrittenInForce {
  readonly from: string;
  readonly through?: string;
  readonly textDated: string;
}

/** When a row applies, and the date of the text that says so. */
export interface InForce {
  readonly from: CalendarDate;
  readonly through: CalendarDate | undefined;
  readonly textDated: CalendarDate;
}

function inForce({ from, through, textDated }: WrittenInForce): InForce {
  return {
    from: calendarDate(from),
    through: through === undefined ? undefined : calendarDate(through),
    textDated: calendarDate(textDated),
  };
}

/** Reads the rules of installment agreements. */
export const agreementReaders = {
  installmentAgreements: () =>
    readListTable(agreements as Written["installment-agreements"], "kinds", (row) => ({
      ...row,
      ...inForce(row),
      limit: new Decimal(row.limit),
      term: new Decimal(row.term),
    })),
  installmentAgreementFees: () =>
    readListTable(fees as Written["installment-agreement-fees"], "fees", (row) => ({
      ...row,
      ...inForce(row),
      fee: new Decimal(row.fee),
    })),
};

/** A kind of agreement as one text describes it. */
export type AgreementKind = TablesOf<
  typeof agreementReaders
>["installmentAgreements"]["rows"][number];

/** A setup fee as one text names it. */
export type AgreementFee = TablesOf<
  typeof agreementReaders
>["installmentAgreementFees"]["rows"][number];
