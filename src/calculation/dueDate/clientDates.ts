import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import type { Circumstances, DueDate } from "./dueDate";
import { extendedDueDate } from "./extendedDueDate";
import { paymentDueDate } from "./paymentDueDate";
import { returnDueDate, type ReturnDateRules } from "./returnDueDate";

/** The three due dates of a client's return. */
export interface ClientDates {
  /** Return without an extension. Both penalties count from this date if no extension was requested. */
  readonly regular: DueDate;
  /** Payment due date: last day to pay without interest. */
  readonly payment: DueDate;
  /** Return with the automatic extension. */
  readonly extended: DueDate;
}

/**
 * The due dates of a client's return.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, holidays, postponements.
 * @returns Regular, payment and extended due dates.
 * @throws NotInTableError for a tax year that the tables do not cover.
 */
export function clientDates(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules
): ClientDates {
  return {
    regular: returnDueDate(taxYear, filerType, circumstances, rules),
    payment: paymentDueDate(taxYear, filerType, circumstances, rules),
    extended: extendedDueDate(taxYear, filerType, circumstances, rules),
  };
}
