import type { Worksheet } from "@cj-tech-master/excelts";
import type { ChartRichText } from "@cj-tech-master/excelts/chart";
import { STAGES } from "../../calculation/season/requestStage";
import { COST_SHEET, COST_TABLE } from "./costOfWaitingSheet";
import { putFormula, putNote, styleLink } from "./sheetStyle";
import { STATUS_CHART_COLORS } from "./statusColors";
import { TOTALS_SHEET, WEEKS } from "./totalsSheet";

const GREEN = "16645A";
const RED = "C0392B";
const EXTENDED = "2E8B67";

/** A title in the size of the cells. */
function title(text: string): ChartRichText {
  return { paragraphs: [{ runs: [{ text, properties: { size: 1200, bold: true } }] }] };
}

/** From one cell to another, counted from 0. */
interface ChartPlace {
  readonly tl: { readonly col: number; readonly row: number };
  readonly br: { readonly col: number; readonly row: number };
}

function addRequestsByWeek(sheet: Worksheet, place: ChartPlace): void {
  sheet.addColumnChart(
    {
      title: title("Requests by week"),
      showLegend: false,
      gapWidth: 40,
      series: [{ name: "Requests", categories: WEEKS.labels, values: WEEKS.requests, fill: GREEN }],
      valueAxis: { numFmt: "0", majorUnit: 5, majorGridlines: true },
      categoryAxis: { textRotation: -45 },
    },
    place
  );
}

function addClientsByStatus(sheet: Worksheet, headingRow: number, place: ChartPlace): void {
  const counts = (column: string): string =>
    `'${sheet.name}'!$${column}$${headingRow + 1}:$${column}$${headingRow + STAGES.length}`;
  sheet.addBarChart(
    {
      title: title("Clients by status"),
      showLegend: false,
      gapWidth: 40,
      series: [
        {
          name: "Clients",
          categories: counts("A"),
          values: counts("B"),
          fill: GREEN,
          dataLabels: {
            showVal: true,
            showSerName: false,
            showCatName: false,
            showLegendKey: false,
          },
          dataPoints: STATUS_CHART_COLORS.map((fill, index) => ({ index, fill })),
        },
      ],
      categoryAxis: { orientation: "maxMin" },
      valueAxis: { hidden: true, majorGridlines: false },
    },
    place
  );
}

function addCostOfWaiting(sheet: Worksheet, place: ChartPlace): void {
  sheet.addLineChart(
    {
      title: title("Cost of waiting for the chosen client"),
      legendPosition: "b",
      showLegend: true,
      series: [
        {
          name: "Without extension",
          categories: COST_TABLE.dates,
          values: COST_TABLE.without,
          line: RED,
          lineWidth: 2.25,
          lineDash: "dash",
        },
        {
          name: "With extension",
          categories: COST_TABLE.dates,
          values: COST_TABLE.withExtension,
          line: EXTENDED,
          lineWidth: 2.25,
        },
      ],
      valueAxis: { numFmt: "$#,##0", majorGridlines: true },
      categoryAxis: { textRotation: -45 },
    },
    place
  );
}

/**
 * Adds the charts beside the counts: requests by week, clients by status, and the cost of waiting of the chosen client.
 *
 * @param sheet - The first sheet, with the counts by status in its first two columns.
 * @param place - The row of the headings of the counts, and how many rows the charts cover.
 */
export function addGlanceCharts(
  sheet: Worksheet,
  { firstRow, rows }: { readonly firstRow: number; readonly rows: number }
): void {
  // A program that draws no charts shows where their figures are.
  putNote(sheet, `D${firstRow + 2}`, "Excel draws three charts here. Their figures:");
  putFormula(
    sheet,
    `D${firstRow + 3}`,
    `HYPERLINK("#${TOTALS_SHEET}!${WEEKS.corner}","Requests by week")`
  );
  putFormula(sheet, `D${firstRow + 4}`, `HYPERLINK("#'${COST_SHEET}'!A1","${COST_SHEET}")`);
  for (const row of [firstRow + 3, firstRow + 4]) styleLink(sheet.getCell(`D${row}`));

  const across = (from: number, to: number): ChartPlace => ({
    tl: { col: from, row: firstRow - 1 },
    br: { col: to, row: firstRow - 1 + rows },
  });
  addRequestsByWeek(sheet, across(2, 4));
  addClientsByStatus(sheet, firstRow, across(4, 6));
  addCostOfWaiting(sheet, across(6, 7));
}
