import { requestIssues } from "../../calculation/request/requestIssues";
import { clientRequest, clientRequestOf } from "../arguments/clientRequest";
import { dateTables } from "../arguments/client";
import { minimumSeverity } from "../arguments/words";
import { BLANK, cellOrBlank, citation, dateCell, moneyCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";

const LAW = [
  "Regulations sections 1.6081-4 and 301.6651-1(c)(3)",
  "Form 4868 instructions",
  "Crocker v. Commissioner, 92 T.C. 899",
  "IRC sections 6511 and 6513",
  "Pub. 1345, rejected returns",
  "IR-2025-41",
];

/** The rule tables that the issues depend on. */
const issueTables = [
  ...dateTables,
  "estimateReview",
  "installments",
  "perfectionPeriod",
  "privateDeliveryServices",
  "reasonableCauseTest",
  "refundClaims",
  "requestIssues",
  "requestMethods",
  "stateExtensions",
] as const;

const ISSUES = tableFunction({
  arguments: clientRequest,
  tables: issueTables,
  law: LAW,
  examples: [
    {
      formula: '=EXT.ISSUES(2025,20000,15000,1000,"4/10/2026")',
      answer: "2,000.00",
      remark: "the amount still needed to reach 90%",
    },
  ],
  calculate: (given, rules) => {
    const found = requestIssues(clientRequestOf(given), rules);
    const headings = ["Severity", "Issue", "Date", "Amount", "Details", "What to do", "Source"];
    if (found.length === 0)
      return [headings, ["none", "No issues found", BLANK, BLANK, BLANK, BLANK, BLANK]];
    return [
      headings,
      ...found.map(({ severity, what, date, amount, details, remedy, source }) => [
        severity,
        what,
        cellOrBlank(date, dateCell),
        cellOrBlank(amount, moneyCell),
        details ?? BLANK,
        remedy,
        citation(source),
      ]),
    ];
  },
});

/**
 * Table of issues with a client's request on a date, most serious first, with what to do about each.
 *
 * @customfunction ISSUES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param totalTax Estimated total tax, line 4. A blank is reported as a problem.
 * @param payments Total payments, line 5: withholding, estimated tax payments and credits. Blank is none.
 * @param paidWithRequest Amount paid with the request, line 7. Blank is none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made.
 * @param [confirmedOn] Date you received proof; after a rejection, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed; no issues are reported from then on.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [method] How the request is made: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of the private delivery service that carries a paper request.
 * @param [line8Checked] Yes if line 8 (out of the country) is checked, no if not; blank skips this test.
 * @param [priorYearTax] Total tax on last year's return.
 * @param [firstInstallment] First estimated tax installment planned for the next tax year; 0 if none is required.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A row of headings, then one row per issue. Fills several cells; not for use inside an Excel table.
 */
export function issues(
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
): unknown[][];
export function issues(...cells: unknown[]): unknown[][] {
  return ISSUES.answer(cells);
}

const ISSUECOUNT = rowFunction({
  arguments: { ...clientRequest, minimumSeverity },
  tables: issueTables,
  law: LAW,
  examples: [
    { formula: '=EXT.ISSUECOUNT(2025,20000,15000,1000,"4/10/2026")', answer: "1" },
    { formula: '=EXT.ISSUECOUNT(2025,20000,15000,5000,"4/10/2026")', answer: "0" },
  ],
  calculate: (given, rules) => {
    const found = requestIssues(clientRequestOf(given), rules);
    return found.filter(({ severity }) => given.minimumSeverity.includes(severity)).length;
  },
});

/**
 * Number of issues ISSUES finds for a client: problems and risks, without reminders unless you ask for them.
 *
 * @customfunction ISSUECOUNT
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param totalTax Estimated total tax, line 4. A blank is reported as a problem.
 * @param payments Total payments, line 5: withholding, estimated tax payments and credits. Blank is none.
 * @param paidWithRequest Amount paid with the request, line 7. Blank is none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made.
 * @param [confirmedOn] Date you received proof; after a rejection, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed; no issues are reported from then on.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [method] How the request is made: electronic payment, e-file or paper.
 * @param [carrier] Yes, or the name of the private delivery service that carries a paper request.
 * @param [line8Checked] Yes if line 8 (out of the country) is checked, no if not; blank skips this test.
 * @param [priorYearTax] Total tax on last year's return.
 * @param [firstInstallment] First estimated tax installment planned for the next tax year; 0 if none is required.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @param [minimumSeverity] risk (default) counts problems and risks; problem counts problems only; reminder counts all.
 * @returns {any[][]} A whole number.
 */
export function issueCount(
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
  minimumSeverity?: unknown[][]
): unknown[][];
export function issueCount(...cells: unknown[]): unknown[][] {
  return ISSUECOUNT.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const issueFunctions = { ISSUES, ISSUECOUNT };
