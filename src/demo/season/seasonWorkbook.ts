import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { addAssumptionsSheet } from "./assumptionsSheet";
import { addClientDetailSheet } from "./clientDetailSheet";
import type { SampleClient } from "./clients";
import { addClientsSheet } from "./clientsSheet";
import { addColumnFormulasSheet } from "./columnFormulasSheet";
import { addComparePaymentsSheet } from "./comparePaymentsSheet";
import { addCostOfWaitingSheet } from "./costOfWaitingSheet";
import { addEstimatedTaxSheet } from "./estimatedTaxSheet";
import { addGlanceSheet, CHOSEN_CLIENT, GLANCE_SHEET } from "./glanceSheet";
import { addLetterSheet, LETTER_SHEET } from "./letterSheet";
import { addPartialPaymentsSheet } from "./partialPaymentsSheet";
import { addProjectionSheet } from "./projectionSheet";
import { addReadMeSheet } from "./readMeSheet";
import { addRequestSheet, REQUEST_SHEET } from "./requestSheet";
import { addRuleTablesSheet } from "./ruleTablesSheet";
import { addSuggestedPaymentSheet } from "./suggestedPaymentSheet";
import { addTotalsSheet } from "./totalsSheet";
import { addTotalTaxSheets } from "./totalTaxSheets";

/**
 * Builds the sample workbook, with its formulas as a person would type them.
 *
 * @param clients - The clients of the sample firm.
 * @param requestsOf - Clients with a request sheet and a letter of their own, after the sheets of the sample.
 */
export function seasonWorkbook(
  clients: readonly SampleClient[],
  requestsOf: readonly string[] = []
): Workbook {
  installChartSupport();
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  addGlanceSheet(workbook, clients);
  addClientsSheet(workbook, clients);
  addRequestSheet(workbook, clients, { client: "Larch", name: REQUEST_SHEET });
  addLetterSheet(workbook, clients, { request: REQUEST_SHEET, letter: LETTER_SHEET });
  addCostOfWaitingSheet(workbook, clients, `'${GLANCE_SHEET}'!${CHOSEN_CLIENT}`);
  addComparePaymentsSheet(workbook, clients);
  addSuggestedPaymentSheet(workbook, clients);
  addPartialPaymentsSheet(workbook, clients);
  addProjectionSheet(workbook);
  addEstimatedTaxSheet(workbook);
  addTotalTaxSheets(workbook);
  addTotalsSheet(workbook, clients);
  addClientDetailSheet(workbook, clients);
  addColumnFormulasSheet(workbook, clients);
  addAssumptionsSheet(workbook);
  addRuleTablesSheet(workbook);
  addReadMeSheet(workbook);
  for (const client of requestsOf) {
    const letter = `${client} letter`;
    addRequestSheet(workbook, clients, { client, name: client });
    addLetterSheet(workbook, clients, { request: client, letter });
  }
  return workbook;
}
