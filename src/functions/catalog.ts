import { agreementFunctions } from "./account/agreement";
import { comparisonFunctions } from "./account/comparison";
import { ledgerFunctions } from "./account/ledger";
import type { AnswerCell, AnswerTable } from "./cells/answerCell";
import { claimsAndExchanges } from "./dueDate/claimsAndExchanges";
import { otherDates } from "./dueDate/otherDates";
import { returnDates } from "./dueDate/returnDates";
import { annualizedFunctions } from "./estimatedTax/annualized";
import { estimatedTaxPenaltyFunctions } from "./estimatedTax/estimatedTaxPenalty";
import { requiredPaymentFunctions } from "./estimatedTax/requiredPayment";
import { deductionFunctions } from "./liability/deductions";
import { incomeTaxes } from "./liability/incomeTaxes";
import { otherTaxes } from "./liability/otherTaxes";
import { totalTaxFunctions } from "./liability/totalTax";
import { chargesFunctions } from "./penalty/charges";
import { firstTimeFunctions } from "./penalty/firstTime";
import { interestFunctions } from "./penalty/interest";
import { singlePenalties } from "./penalty/singlePenalties";
import { balanceDueFunctions } from "./request/balanceDue";
import { issueFunctions } from "./request/issues";
import { letterFunctions } from "./request/letter";
import { mailingFunctions } from "./request/mailing";
import { methodFunctions } from "./request/methods";
import { ruleTableFunctions } from "./rules/ruleTables";
import { calendarFunctions } from "./season/calendar";
import { rosterFunctions } from "./season/roster";
import { rosterHeadingFunctions } from "./season/rosterHeadings";
import { rosterRowFunctions } from "./season/rosterRows";
import { statusFunctions } from "./season/status";
import { stateFunctions } from "./stateReturn/stateDates";
import type { WorksheetFunction } from "./worksheetFunction";

/** A function of the catalog: it answers a table or one cell. */
export type CatalogFunction = WorksheetFunction<AnswerTable | AnswerCell>;

/** A task of the preparer, and the functions for it. */
export interface Task {
  /** The folder of src/functions, and of src/calculation beneath it. */
  readonly folder: string;
  readonly title: string;
  readonly functions: Readonly<Record<string, CatalogFunction>>;
}

/**
 * The tasks of a season in the order in which they come up, each with its functions by worksheet name. Guide, help, README,
 * reference and tests follow this list.
 */
export const TASKS: readonly Task[] = [
  {
    folder: "dueDate",
    title: "Due dates",
    functions: { ...returnDates, ...otherDates, ...claimsAndExchanges },
  },
  {
    folder: "liability",
    title: "Total tax",
    functions: { ...totalTaxFunctions, ...incomeTaxes, ...otherTaxes, ...deductionFunctions },
  },
  {
    folder: "request",
    title: "Extension request",
    functions: {
      ...balanceDueFunctions,
      ...methodFunctions,
      ...mailingFunctions,
      ...issueFunctions,
      ...letterFunctions,
    },
  },
  {
    folder: "season",
    title: "Extended season",
    functions: {
      ...calendarFunctions,
      ...statusFunctions,
      ...rosterFunctions,
      ...rosterRowFunctions,
      ...rosterHeadingFunctions,
    },
  },
  { folder: "stateReturn", title: "State returns", functions: stateFunctions },
  {
    folder: "penalty",
    title: "Penalties and interest",
    functions: {
      ...chargesFunctions,
      ...singlePenalties,
      ...interestFunctions,
      ...firstTimeFunctions,
    },
  },
  {
    folder: "account",
    title: "Partial payments",
    functions: { ...ledgerFunctions, ...agreementFunctions, ...comparisonFunctions },
  },
  {
    folder: "estimatedTax",
    title: "Estimated tax",
    functions: {
      ...requiredPaymentFunctions,
      ...annualizedFunctions,
      ...estimatedTaxPenaltyFunctions,
    },
  },
  { folder: "rules", title: "Rule tables", functions: ruleTableFunctions },
];

/** Every worksheet function by its name in a cell. */
export const catalog: Readonly<Record<string, CatalogFunction>> = Object.assign(
  {},
  ...TASKS.map(({ functions }) => functions)
) as Readonly<Record<string, CatalogFunction>>;
