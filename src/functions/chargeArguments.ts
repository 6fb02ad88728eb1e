import type { Decimal } from "../money/dollars";
import { laterDate, type CalendarDate } from "../calendar/calendarDate";
import type { ChargesInput } from "../calculation/penalty/charges";
import { client, datesOf, type ClientCells } from "./client";
import { day, optionalDay, requireAfterTaxYear } from "./dayArguments";
import { assumedRate, money } from "./moneyArguments";
import { yesNo } from "./wordArguments";

/** The cells that say how a return was filed and paid. */
export interface ChargeCells extends ClientCells {
  readonly totalTax: unknown;
  readonly paidOnTime: unknown;
  readonly paidOn: unknown;
  readonly filedOn: unknown;
  readonly extended: unknown;
  readonly assumedRate: unknown;
  readonly agreementBegins: unknown;
}

/**
 * Reads a return filed on one day whose rest was paid on one day.
 *
 * A return may well be filed before its tax is paid: the law charges both, so neither order is refused.
 */
export function chargesInput(cells: ChargeCells): ChargesInput {
  const given = client(cells);
  const totalTax = money("totalTax", cells.totalTax);
  const paidOnTime = money("paidOnTime", cells.paidOnTime);
  const paidOn = day("paidOn", cells.paidOn);
  const filedOn = day("filedOn", cells.filedOn);
  requireAfterTaxYear("paidOn", paidOn, given.taxYear);
  requireAfterTaxYear("filedOn", filedOn, given.taxYear);
  return paidAtOnce({
    dates: datesOf(given),
    totalTax,
    paidOnTime,
    paidOn,
    filedOn,
    validExtension: yesNo("extended", cells.extended),
    agreementBegins: optionalDay("agreementBegins", cells.agreementBegins),
    assumedRate: assumedRate("assumedRate", cells.assumedRate),
  });
}

/** A return filed on one day whose rest is paid on one day. */
export type PaidAtOnce = Omit<ChargesInput, "payments" | "through"> & {
  readonly paidOn: CalendarDate;
};

/** What the charges need of a return whose rest is paid on one day. */
export function paidAtOnce({ paidOn, ...given }: PaidAtOnce): ChargesInput {
  const rest: Decimal = given.totalTax.minus(given.paidOnTime);
  return {
    ...given,
    payments: rest.greaterThan(0) ? [{ date: paidOn, amount: rest }] : [],
    through: laterDate(paidOn, given.filedOn),
  };
}
