import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { addAssumptionsSheet } from "./assumptionsSheet";
import { addClientDetailSheet } from "./clientDetailSheet";
import type { SampleClient } from "./clients";
import { addClientsSheet } from "./clientsSheet";
import { addComparePaymentsSheet } from "./comparePaymentsSheet";
import { addEstimatedTaxSheet } from "./estimatedTaxSheet";
import { addPartialPaymentsSheet } from "./partialPaymentsSheet";
import { addReadMeSheet } from "./readMeSheet";
import { addRequestSheet } from "./requestSheet";
import { addRuleTablesSheet } from "./ruleTablesSheet";
import { addSummarySheet } from "./summarySheet";
import { addTotalsSheet } from "./totalsSheet";
import { addTotalTaxSheets } from "./totalTaxSheets";

/**
 * Builds the sample workbook, with its formulas as a person would type them.
 *
 * @param clients - The clients of the sample firm.
 */
export function seasonWorkbook(clients: readonly SampleClient[]): Workbook {
  installChartSupport();
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  addReadMeSheet(workbook);
  addClientsSheet(workbook, clients);
  addSummarySheet(workbook, clients);
  addRequestSheet(workbook, clients);
  addTotalsSheet(workbook, clients);
  addComparePaymentsSheet(workbook, clients);
  addPartialPaymentsSheet(workbook, clients);
  addEstimatedTaxSheet(workbook);
  addTotalTaxSheets(workbook);
  addClientDetailSheet(workbook, clients);
  addAssumptionsSheet(workbook);
  addRuleTablesSheet(workbook);
  return workbook;
}
