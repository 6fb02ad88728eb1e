import type { PageSetup, Worksheet } from "@cj-tech-master/excelts";

/** US Letter in the list of paper sizes of the file format. */
const LETTER = 1 as unknown as PageSetup["paperSize"];
/** In inches. */
const MARGINS = { left: 0.4, right: 0.4, top: 0.65, bottom: 0.6, header: 0.3, footer: 0.3 };

/** How a sheet is printed. */
export interface SheetPage {
  /** The rows repeated at the top of each page, such as 1:3. */
  readonly headingRows?: string;
  /** The columns repeated at the left of each page, such as A:A. */
  readonly headingColumns?: string;
  /** The pages from left to right; one if left out. */
  readonly pagesWide?: number;
  /** Whether the first row names the client, who can be another one whenever the sheet is printed: it is repeated on each page. */
  readonly hasClientTitle?: boolean;
  /** The most pages from top to bottom; any number if left out. */
  readonly pagesTall?: number;
  /** The cells that are printed; all of them if left out. */
  readonly area?: string;
  readonly isPortrait?: boolean;
}

/**
 * Sets up a sheet for printing: one page wide, with the page number in the footer, and in the header the name of the sheet, where the
 * title does not say more.
 */
export function setPage(sheet: Worksheet, page: SheetPage = {}): void {
  const { headingColumns, pagesWide = 1, pagesTall = 0, area, isPortrait = false } = page;
  const { hasClientTitle = false, headingRows = hasClientTitle ? "1:1" : undefined } = page;
  Object.assign(sheet.pageSetup, {
    orientation: isPortrait ? "portrait" : "landscape",
    paperSize: LETTER,
    fitToPage: true,
    fitToWidth: pagesWide,
    fitToHeight: pagesTall,
    margins: MARGINS,
    horizontalCentered: true,
    ...(headingRows === undefined ? {} : { printTitlesRow: headingRows }),
    ...(headingColumns === undefined ? {} : { printTitlesColumn: headingColumns }),
    ...(area === undefined ? {} : { printArea: area }),
  } satisfies Partial<PageSetup>);
  sheet.headerFooter.oddHeader = `&LSample firm: extension requests${hasClientTitle ? "" : "&R&A"}`;
  sheet.headerFooter.oddFooter = "&LEstimates only, not tax advice&RPage &P of &N";
}
