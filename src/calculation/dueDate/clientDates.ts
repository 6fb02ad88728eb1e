import type { FilerType } from "../filerType";
import type { TaxYear } from "../taxYear";
import type { Circumstances, DueDate } from "./dueDate";
import { extendedDueDate } from "./extendedDueDate";
import { paymentDueDate } from "./paymentDueDate";
import { returnDueDate, type ReturnDateRules } from "./returnDueDate";

/** The three dates that govern a client's return. */
export interface ClientDates {
  /** Return without any request; from here failure to file and failure to pay count when nothing was asked. */
  readonly regular: DueDate;
  /** Payment without interest. */
  readonly payment: DueDate;
  /** Return with the automatic extension. */
  readonly extended: DueDate;
}

/**
 * The dates that govern a client's return.
 *
 * @param taxYear - Calendar or fiscal tax year.
 * @param filerType - Who files.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Due dates, holidays, postponements.
 * @returns Regular, payment and extended due dates.
 * @throws NotInTableError for a tax year whose dates are not held.
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
