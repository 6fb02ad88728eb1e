import { effectiveAnnualRate } from "../calculation/account/effectiveAnnualRate";
import { ledger as ledgerOf } from "../calculation/account/ledger";
import { charges as chargesOf } from "../calculation/penalty/charges";
import { rulebook } from "../rules/rulebook";
import { chargesInput } from "./chargeArguments";
import { client, datesOf } from "./client";
import { day, optionalDay, requireAfterTaxYear } from "./dayArguments";
import { LEDGER_HEADINGS, ledgerTable } from "./ledgerTable";
import { assumedRate as readAssumedRate, money } from "./moneyArguments";
import { payments as readPayments } from "./paymentArguments";
import { dayCell, fractionCell, moneyCell } from "./results";
import { allCells, answered, answerRows, answerTable, singles } from "./rows";
import { yesNo } from "./wordArguments";

/** A hundredth of a percent. */
const RATE_PLACES = 4;

/**
 * The running account of a return paid in parts: each payment and date with the tax left, both additions and interest so far, and the law. Spills; put it outside tables.
 *
 * @customfunction LEDGER
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param totalTax Dollars of total tax as the return will show it.
 * @param payments Every payment as rows of day and amount, before and after the due date, in any order; withholding counts as paid on the due date.
 * @param filedOn The day the return is filed.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [agreementBegins] First day of an installment agreement; counts only if the return is timely.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row an event; the last row's charges are those of the whole.
 * @throws `#VALUE!` for an argument that cannot be read, naming the row of a payment; `#N/A` for a tax year, minimum or rate that is not held.
 * @see 26 U.S.C. 6601, 6651(b); Rev. Proc. 2002-26, section 3
 * @example =EXT.LEDGER(2025,20000,{"2026-04-15",15000;"2026-10-15",5000},"2026-10-15","yes") ends with charges of 317.81
 */
export function ledger(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown[][],
  filedOn: unknown,
  extended?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementBegins?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  return answerTable(LEDGER_HEADINGS, () => {
    const cells = singles({
      ...{ taxYear, totalTax, filedOn, extended, state, filerType },
      ...{ assumedRate, agreementBegins, postponementBegins, postponementEnds },
    });
    const given = client(cells);
    const filed = day("filedOn", cells.filedOn);
    requireAfterTaxYear("filedOn", filed, given.taxYear);
    const input = {
      dates: datesOf(given),
      totalTax: money("totalTax", cells.totalTax),
      payments: readPayments("payments", payments, given.taxYear),
      filedOn: filed,
      validExtension: yesNo("extended", cells.extended),
      agreementBegins: optionalDay("agreementBegins", cells.agreementBegins),
      assumedRate: readAssumedRate("assumedRate", cells.assumedRate),
    };
    return ledgerTable(ledgerOf(input, rulebook));
  });
}

/**
 * What each choice would cost: extra payments with the request down, days on which the rest is paid and the return filed across, CHARGES in each cell. Spills; put it outside tables.
 *
 * @customfunction WHATIF
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param totalTax Dollars of total tax as the return will show it.
 * @param paidOnTime Dollars paid by the last day to pay, without the extra payment.
 * @param extraPayments Dollars of extra payments to try: one cell or a range.
 * @param days Days to try, on which the rest is paid and the return filed: one cell or a range.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [agreementBegins] First day of an installment agreement; counts only if the return is timely.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Days in the first row, extra payments in the first column, dollars and cents in the cells.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, minimum or rate that is not held.
 * @see 26 U.S.C. 6601, 6651
 * @example =EXT.WHATIF(2025,20000,15000,{0;3000},{"2026-04-15","2026-10-15"},"yes") shows 317.81 and 67.12 under 2026-10-15
 */
export function whatIf(
  taxYear: unknown,
  totalTax: unknown,
  paidOnTime: unknown,
  extraPayments: unknown[][],
  days: unknown[][],
  extended?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementBegins?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  return answered(() => {
    const cells = singles({
      ...{ taxYear, totalTax, paidOnTime, extended, state, filerType },
      ...{ assumedRate, agreementBegins, postponementBegins, postponementEnds },
    });
    const tried = allCells("days", days).map((cell) => ({ cell, read: day("days", cell) }));
    const year = client(cells).taxYear;
    for (const { read } of tried) requireAfterTaxYear("days", read, year);
    const onTime = money("paidOnTime", cells.paidOnTime);
    const rows = allCells("extraPayments", extraPayments).map((extra) => {
      const amount = money("extraPayments", extra);
      const sum = onTime.plus(amount).toString();
      const costs = tried.map(({ cell }) => {
        const input = chargesInput({ ...cells, paidOnTime: sum, paidOn: cell, filedOn: cell });
        return moneyCell(chargesOf(input, rulebook).total);
      });
      return [moneyCell(amount), ...costs];
    });
    return [["Extra payment", ...tried.map(({ read }) => dayCell(read))], ...rows];
  });
}

/**
 * What a delay costs a year, compounded: CHARGES against what was not paid in time, as the effective annual rate that a loan would be held against.
 *
 * @customfunction EFFECTIVERATE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param totalTax Dollars of total tax as the return will show it.
 * @param paidOnTime Dollars paid by the last day to pay.
 * @param paidOn The day the rest is paid.
 * @param filedOn The day the return is filed.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [agreementBegins] First day of an installment agreement; counts only if the return is timely.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A fraction a year to a hundredth of a percent, such as 0.1308; 0 where nothing is charged.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, minimum or rate that is not held.
 * @see 26 U.S.C. 6601, 6651
 * @example =EXT.EFFECTIVERATE(2025,20000,18500,"2026-10-15","2026-10-15","yes") is 6.81%
 */
export function effectiveRate(
  taxYear: unknown[][],
  totalTax: unknown[][],
  paidOnTime: unknown[][],
  paidOn: unknown[][],
  filedOn: unknown[][],
  extended?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  assumedRate?: unknown[][],
  agreementBegins?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  const given = {
    ...{ taxYear, totalTax, paidOnTime, paidOn, filedOn, extended, state, filerType },
    ...{ assumedRate, agreementBegins, postponementBegins, postponementEnds },
  };
  return answerRows(given, (cells) => {
    const input = chargesInput(cells);
    const { total } = chargesOf(input, rulebook);
    const unpaid = input.totalTax.minus(input.paidOnTime);
    const due = input.dates.payment.countedFrom;
    const rate = effectiveAnnualRate(total, unpaid, due, day("paidOn", cells.paidOn));
    return fractionCell(rate.toDecimalPlaces(RATE_PLACES));
  });
}
