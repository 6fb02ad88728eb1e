import { requestIssues } from "../calculation/request/requestIssues";
import { rulebook } from "../rules/rulebook";
import { clientRequest } from "./requestArguments";
import { citation, dayCell, EMPTY, moneyCell, optional, type AnswerTable } from "./results";
import { answerRows, answerTable, singles } from "./rows";
import { gravityCounted } from "./wordArguments";

/**
 * What is wrong or risky with a client's request on a day, gravest first, with what to do about it. Spills; put it outside tables.
 *
 * @customfunction ISSUES
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param totalTax Estimated total tax in dollars, line 4; a blank is one of the findings.
 * @param payments Withholding, estimates and credits in dollars, line 5; blank is none.
 * @param paidWithRequest Dollars paid with the request, line 7; blank is nothing.
 * @param asOf The day looked at.
 * @param [requestedOn] First day the request was made.
 * @param [confirmedOn] Day its proof came in; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed; from then on nothing is found.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [method] How the request goes in: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of a private delivery service, where one brings a paper request.
 * @param [line8Checked] Whether line 8 is ticked: yes or no; blank is not looked at.
 * @param [priorYearTax] Dollars of last year's total tax.
 * @param [firstInstallment] Dollars planned for the new year's first estimate; 0 where none is needed.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row a finding; one row saying so when nothing is found.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4, 301.6651-1(c)(3); Form 4868; Pub. 1345
 * @example =EXT.ISSUES(2025,20000,15000,1000,"2026-04-10") begins with paying less than 90%: 2,000.00 is missing
 */
export function check(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown,
  paidWithRequest: unknown,
  asOf: unknown,
  requestedOn?: unknown,
  confirmedOn?: unknown,
  rejectedOn?: unknown,
  filedOn?: unknown,
  state?: unknown,
  filerType?: unknown,
  method?: unknown,
  carrier?: unknown,
  line8Checked?: unknown,
  priorYearTax?: unknown,
  firstInstallment?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  const header = ["Severity", "What", "Day", "Dollars", "About", "What to do", "Source"];
  return answerTable(header, (): AnswerTable => {
    const cells = singles({
      ...{
        taxYear,
        totalTax,
        payments,
        paidWithRequest,
        asOf,
        requestedOn,
        confirmedOn,
        rejectedOn,
        filedOn,
      },
      ...{ state, filerType, method, carrier, line8Checked, priorYearTax, firstInstallment },
      ...{ postponementBegins, postponementEnds },
    });
    const found = requestIssues(clientRequest(cells), rulebook);
    if (found.length === 0) return [["none", "Nothing found", EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]];
    return found.map(({ severity, what, date: day, amount, details: about, remedy, source }) => [
      severity,
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
 * How many findings ISSUES has for a client, for filtering a list: what is wrong and what is a risk, reminders left out.
 *
 * @customfunction ISSUECOUNT
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param totalTax Estimated total tax in dollars, line 4; a blank is one of the findings.
 * @param payments Withholding, estimates and credits in dollars, line 5; blank is none.
 * @param paidWithRequest Dollars paid with the request, line 7; blank is nothing.
 * @param asOf The day looked at.
 * @param [requestedOn] First day the request was made.
 * @param [confirmedOn] Day its proof came in; of one sent again after a rejection, the day it was sent again.
 * @param [rejectedOn] Day an e-filed request was rejected.
 * @param [filedOn] Day the return was filed; from then on nothing is found.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [method] How the request goes in: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of a private delivery service, where one brings a paper request.
 * @param [line8Checked] Whether line 8 is ticked: yes or no; blank is not looked at.
 * @param [priorYearTax] Dollars of last year's total tax.
 * @param [firstInstallment] Dollars planned for the new year's first estimate; 0 where none is needed.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @param [counted] risk (the default) counts wrong and risk; wrong counts those alone; reminder counts all.
 * @returns {any[][]} A whole number.
 * @throws `#VALUE!` for an argument that cannot be read, or a day before the request it answers; `#N/A` for a tax year, or days to send again, that are not held.
 * @see 26 CFR 1.6081-4, 301.6651-1(c)(3); Form 4868; Pub. 1345
 * @example =EXT.ISSUECOUNT(2025,20000,15000,1000,"2026-04-10") is 1; =EXT.ISSUECOUNT(2025,20000,15000,5000,"2026-04-10") is 0
 */
export function checkCount(
  taxYear: unknown[][],
  totalTax: unknown[][],
  payments: unknown[][],
  paidWithRequest: unknown[][],
  asOf: unknown[][],
  requestedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  method?: unknown[][],
  carrier?: unknown[][],
  line8Checked?: unknown[][],
  priorYearTax?: unknown[][],
  firstInstallment?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][],
  counted?: unknown[][]
): unknown[][] {
  const given = {
    ...{
      taxYear,
      totalTax,
      payments,
      paidWithRequest,
      asOf,
      requestedOn,
      confirmedOn,
      rejectedOn,
      filedOn,
    },
    ...{ state, filerType, method, carrier, line8Checked, priorYearTax, firstInstallment },
    ...{ postponementBegins, postponementEnds, counted },
  };
  return answerRows(given, (cells) => {
    const counts = gravityCounted("counted", cells.counted);
    const found = requestIssues(clientRequest(cells), rulebook);
    return found.filter(({ severity }) => counts.includes(severity)).length;
  });
}
