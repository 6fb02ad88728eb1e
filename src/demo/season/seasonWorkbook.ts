import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { addAssumptionsSheet } from "./assumptionsSheet";
import { addBoardSheet } from "./boardSheet";
import { addClientsSheet } from "./clientsSheet";
import { addEstimateSheets } from "./estimateSheets";
import { addEstimatesSheet } from "./estimatesSheet";
import { addLedgerSheet } from "./ledgerSheet";
import { addOneClientSheet } from "./oneClientSheet";
import { addReadMeSheet } from "./readMeSheet";
import { addRequestSheet } from "./requestSheet";
import { addRulesSheet } from "./rulesSheet";
import { addTotalsSheet } from "./totalsSheet";
import { addWhatIfSheet } from "./whatIfSheet";

/** Builds the sample workbook of an invented practice, its formulas as a person would type them. */
export function seasonWorkbook(): Workbook {
  installChartSupport();
  const workbook = new Workbook({ formulaSyntaxProbe: createFormulaSyntaxProbe() });
  addReadMeSheet(workbook);
  addClientsSheet(workbook);
  addBoardSheet(workbook);
  addRequestSheet(workbook);
  addTotalsSheet(workbook);
  addWhatIfSheet(workbook);
  addLedgerSheet(workbook);
  addEstimatesSheet(workbook);
  addEstimateSheets(workbook);
  addOneClientSheet(workbook);
  addAssumptionsSheet(workbook);
  addRulesSheet(workbook);
  return workbook;
}
