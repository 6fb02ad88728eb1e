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

  const from = (column: number) => ({ col: column, row: firstRow - 1 });
  const to = (column: number) => ({ col: column, row: firstRow - 1 + rows });
  sheet.addColumnChart(
    {
      title: title("Requests by week"),
      showLegend: false,
      gapWidth: 40,
      series: [
        {
          name: "Requests",
          categories: WEEKS.labels,
          values: WEEKS.requests,
          fill: GREEN,
        },
      ],
      valueAxis: { numFmt: "0", majorUnit: 5, majorGridlines: true },
      categoryAxis: { textRotation: -45 },
    },
    { tl: from(2), br: to(4) }
  );
  const counts = (column: string): string =>
    `'${sheet.name}'!$${column}$${firstRow + 1}:$${column}$${firstRow + STAGES.length}`;
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
    { tl: from(4), br: to(6) }
  );
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
    { tl: from(6), br: to(7) }
  );
}
