import { requestFindings } from "../calculation/request/requestFindings";
import { rulebook } from "../rules/rulebook";
import { requestToCheck } from "./requestArguments";
import { citation, dayCell, EMPTY, moneyCell, optional, type AnswerTable } from "./results";
import { answerRows, answerTable, singles } from "./rows";
import { gravityCounted } from "./wordArguments";

/**
 * What is wrong or risky with a client's request on a day, gravest first, with what to do about it. Spills; put it outside tables.
 *
 * @customfunction CHECK
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param totalTax Estimated total tax in dollars, line 4; a blank is one of the findings.
 * @param payments Withholding, estimates and credits in dollars, line 5; blank is none.
 * @param paying Dollars paid with the request, line 7; blank is nothing.
 * @param asOf The day looked at.
 * @param [askedOn] First day the request was made.
 * @param [confirmedOn] Day its proof came in; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed; from then on nothing is found.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filer] Blank or resident; abroad; nonresident.
 * @param [route] How the request goes in: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of a private delivery service, where one brings a paper request.
 * @param [outOfCountry] Whether line 8 is ticked: yes or no; blank is not looked at.
 * @param [priorTax] Dollars of last year's total tax.
 * @param [firstInstallment] Dollars planned for the new year's first estimate; 0 where none is needed.
 * @param [reliefBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponedTo] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row a finding; one row saying so when nothing is found.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4, 301.6651-1(c)(3); Form 4868; Pub. 1345
 * @example =EXT.CHECK(2025,20000,15000,1000,"2026-04-10") begins with paying less than 90%: 2,000.00 is missing
 */
export function check(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown,
  paying: unknown,
  asOf: unknown,
  askedOn?: unknown,
  confirmedOn?: unknown,
  rejectedOn?: unknown,
  filedOn?: unknown,
  state?: unknown,
  filer?: unknown,
  route?: unknown,
  carrier?: unknown,
  outOfCountry?: unknown,
  priorTax?: unknown,
  firstInstallment?: unknown,
  reliefBegins?: unknown,
  postponedTo?: unknown
): unknown[][] {
  const header = ["Gravity", "What", "Day", "Dollars", "About", "What to do", "Source"];
  return answerTable(header, (): AnswerTable => {
    const cells = singles({
      ...{ taxYear, totalTax, payments, paying, asOf, askedOn, confirmedOn, rejectedOn, filedOn },
      ...{ state, filer, route, carrier, outOfCountry, priorTax, firstInstallment },
      ...{ reliefBegins, postponedTo },
    });
    const found = requestFindings(requestToCheck(cells), rulebook);
    if (found.length === 0) return [["none", "Nothing found", EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]];
    return found.map(({ gravity, what, day, amount, about, remedy, source }) => [
      gravity,
      what,
      optional(day, dayCell),
      optional(amount, moneyCell),
      about ?? EMPTY,
      remedy,
      citation(source),
    ]);
  });
}

/**
 * How many findings CHECK has for a client, for filtering a list: what is wrong and what is a risk, reminders left out.
 *
 * @customfunction CHECKCOUNT
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param totalTax Estimated total tax in dollars, line 4; a blank is one of the findings.
 * @param payments Withholding, estimates and credits in dollars, line 5; blank is none.
 * @param paying Dollars paid with the request, line 7; blank is nothing.
 * @param asOf The day looked at.
 * @param [askedOn] First day the request was made.
 * @param [confirmedOn] Day its proof came in; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed; from then on nothing is found.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filer] Blank or resident; abroad; nonresident.
 * @param [route] How the request goes in: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of a private delivery service, where one brings a paper request.
 * @param [outOfCountry] Whether line 8 is ticked: yes or no; blank is not looked at.
 * @param [priorTax] Dollars of last year's total tax.
 * @param [firstInstallment] Dollars planned for the new year's first estimate; 0 where none is needed.
 * @param [reliefBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponedTo] Day to which that relief postpones what falls inside it.
 * @param [counted] risk (the default) counts wrong and risk; wrong counts those alone; reminder counts all.
 * @returns {any[][]} A whole number.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4, 301.6651-1(c)(3); Form 4868; Pub. 1345
 * @example =EXT.CHECKCOUNT(2025,20000,15000,1000,"2026-04-10") is 1; =EXT.CHECKCOUNT(2025,20000,15000,5000,"2026-04-10") is 0
 */
export function checkCount(
  taxYear: unknown[][],
  totalTax: unknown[][],
  payments: unknown[][],
  paying: unknown[][],
  asOf: unknown[][],
  askedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  state?: unknown[][],
  filer?: unknown[][],
  route?: unknown[][],
  carrier?: unknown[][],
  outOfCountry?: unknown[][],
  priorTax?: unknown[][],
  firstInstallment?: unknown[][],
  reliefBegins?: unknown[][],
  postponedTo?: unknown[][],
  counted?: unknown[][]
): unknown[][] {
  const given = {
    ...{ taxYear, totalTax, payments, paying, asOf, askedOn, confirmedOn, rejectedOn, filedOn },
    ...{ state, filer, route, carrier, outOfCountry, priorTax, firstInstallment },
    ...{ reliefBegins, postponedTo, counted },
  };
  return answerRows(given, (cells) => {
    const counts = gravityCounted("counted", cells.counted);
    const found = requestFindings(requestToCheck(cells), rulebook);
    return found.filter(({ gravity }) => counts.includes(gravity)).length;
  });
}
