import { charges as chargesOf } from "../calculation/penalty/charges";
import { failureToFilePenalty } from "../calculation/penalty/failureToFilePenalty";
import { failureToPayPenalty } from "../calculation/penalty/failureToPayPenalty";
import { toCents } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { chargesInput } from "./chargeArguments";
import { CHARGE_HEADINGS, chargeTable } from "./chargeTable";
import { client, datesOf } from "./client";
import { day as readDay, optionalDay, requireAfterTaxYear } from "./dayArguments";
import { money } from "./moneyArguments";
import { moneyCell } from "./results";
import { answerRows, answerTable, singles } from "./rows";
import { yesNo } from "./wordArguments";

/**
 * Addition to tax for filing late, alone: 5% of the net tax a month or part of a month, most 25%, with the minimum for a return more than 60 days late.
 *
 * @customfunction LATEFILE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param netTax Dollars of tax not paid by the last day to pay, after credits.
 * @param filedOn The day the return is filed.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Dollars and cents; not reduced by the late-payment addition of the same months, see CHARGES.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year or a minimum that is not held.
 * @see 26 U.S.C. 6651(a)(1), (b)(1)
 * @example =EXT.LATEFILE(2025,2000,"2026-05-20") is 200.00; =EXT.LATEFILE(2025,2000,"2026-07-01") is 525.00
 */
export function lateFile(
  taxYear: unknown[][],
  netTax: unknown[][],
  filedOn: unknown[][],
  extended?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  const given = {
    taxYear,
    netTax,
    filedOn,
    extended,
    state,
    filerType,
    postponementBegins,
    postponementEnds,
  };
  return answerRows(given, (cells) => {
    const who = client(cells);
    const unpaid = money("netTax", cells.netTax);
    const filed = readDay("filedOn", cells.filedOn);
    requireAfterTaxYear("filedOn", filed, who.taxYear);
    const dates = datesOf(who);
    const due = yesNo("extended", cells.extended) ? dates.extended : dates.regular;
    const input = { due, regular: dates.regular, filedOn: filed, unpaidTax: unpaid };
    return moneyCell(toCents(failureToFilePenalty(input, rulebook).amount));
  });
}

/**
 * Addition to tax for paying late, alone: 0.5% of the unpaid tax a month or part of a month, most 25%. The extension does not stop it; the 90% presumption, which may, is in CHARGES.
 *
 * @customfunction LATEPAY
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param unpaid Dollars not paid by the last day to pay.
 * @param paidOn The day they are paid.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad (counts from June); nonresident.
 * @param [agreementBegins] First day of an installment agreement, if the return was timely: half the rate from that month on.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year whose dates are not held.
 * @see 26 U.S.C. 6651(a)(2), (b)(2), (h)
 * @example =EXT.LATEPAY(2025,1000,"2026-06-01") is 10.00: two months begun
 */
export function latePay(
  taxYear: unknown[][],
  unpaid: unknown[][],
  paidOn: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  agreementBegins?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  const given = {
    taxYear,
    unpaid,
    paidOn,
    state,
    filerType,
    agreementBegins,
    postponementBegins,
    postponementEnds,
  };
  return answerRows(given, (cells) => {
    const who = client(cells);
    const owed = money("unpaid", cells.unpaid);
    const through = readDay("paidOn", cells.paidOn);
    requireAfterTaxYear("paidOn", through, who.taxYear);
    const agreement = optionalDay("agreementBegins", cells.agreementBegins);
    const due = datesOf(who).regular;
    const input = { due, unpaidTax: owed, payments: [], through, agreementBegins: agreement };
    return moneyCell(toCents(failureToPayPenalty(input, rulebook.failureToPay).amount));
  });
}

/**
 * What a return filed or paid late costs: both additions to tax and interest, every reduction and presumption applied. An estimate, not an assessment.
 *
 * @customfunction CHARGES
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param totalTax Dollars of total tax as the return will show it.
 * @param paidOnTime Dollars paid by the last day to pay: withholding, estimates, credits and what went with the request.
 * @param paidOn The day the rest is paid.
 * @param filedOn The day the return is filed.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [agreementBegins] First day of an installment agreement; counts only if the return is timely.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Dollars and cents, zero when nothing is charged.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, minimum or interest rate that is not held.
 * @see 26 U.S.C. 6601, 6621, 6622, 6651; 26 CFR 301.6651-1
 * @example =EXT.CHARGES(2025,20000,18500,"2026-10-15","2026-10-15","yes") is 50.34: interest only, 90% was paid
 */
export function charges(
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
  return answerRows(given, (cells) => moneyCell(chargesOf(chargesInput(cells), rulebook).total));
}

/**
 * The working of CHARGES: what, from, to, months or days, rate, base, amount, law, one line after another; the amounts add up to CHARGES to the cent. Spills; put it outside tables.
 *
 * @customfunction CHARGELINES
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param totalTax Dollars of total tax as the return will show it.
 * @param paidOnTime Dollars paid by the last day to pay: withholding, estimates, credits and what went with the request.
 * @param paidOn The day the rest is paid.
 * @param filedOn The day the return is filed.
 * @param [extended] Yes if a valid request was made in time; blank is no.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [agreementBegins] First day of an installment agreement; counts only if the return is timely.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row a step; one row saying so when nothing is charged.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, minimum or interest rate that is not held.
 * @see 26 U.S.C. 6601, 6621, 6622, 6651; 26 CFR 301.6651-1
 * @example =EXT.CHARGELINES(2025,20000,18500,"2026-10-15","2026-10-15","yes") shows the presumption and three rate periods
 */
export function chargeLines(
  taxYear: unknown,
  totalTax: unknown,
  paidOnTime: unknown,
  paidOn: unknown,
  filedOn: unknown,
  extended?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementBegins?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  return answerTable(CHARGE_HEADINGS, () => {
    const cells = singles({
      ...{ taxYear, totalTax, paidOnTime, paidOn, filedOn, extended, state, filerType },
      ...{ assumedRate, agreementBegins, postponementBegins, postponementEnds },
    });
    return chargeTable(chargesOf(chargesInput(cells), rulebook));
  });
}
