import { supports } from "./excelRequest";
import type { NewSheet } from "../workbook/newSheet";

const PAGE_LAYOUT = ["ExcelApi", "1.9"] as const;

/** Sets a new sheet up to be printed on one page, with its text wrapped in the columns. */
export function setPage(sheet: Excel.Worksheet, { cells, widths, page }: NewSheet): void {
  if (!page) return;
  const { format } = sheet.getRangeByIndexes(0, 0, cells.length, widths.length);
  if (page.wrapsText) format.wrapText = true;
  format.verticalAlignment = "Top";
  if (!supports(PAGE_LAYOUT)) return;
  const { pageLayout } = sheet;
  pageLayout.orientation = page.isLandscape ? "Landscape" : "Portrait";
  pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 1 };
  // An ampersand begins a code in a footer.
  pageLayout.headersFooters.defaultForAllPages.centerFooter = page.footer.replaceAll("&", "&&");
}
