import type { PageSetup, Worksheet } from "@cj-tech-master/excelts";

/** US Letter in the list of paper sizes of the file format. */
const LETTER = 1 as unknown as PageSetup["paperSize"];
/** In inches. */
const MARGINS = { left: 0.4, right: 0.4, top: 0.65, bottom: 0.6, header: 0.3, footer: 0.3 };

/** How a sheet is printed. */
export interface SheetPage {
  /** The rows repeated at the top of each page, such as 1:3. */
  readonly headingRows?: string;
  /** The most pages from top to bottom; any number if left out. */
  readonly pagesTall?: number;
  /** The cells that are printed; all of them if left out. */
  readonly area?: string;
  readonly isPortrait?: boolean;
}

/** Sets up a sheet for printing: one page wide, with the name of the sheet in the header and the page number in the footer. */
export function setPage(sheet: Worksheet, page: SheetPage = {}): void {
  const { headingRows, pagesTall = 0, area, isPortrait = false } = page;
  Object.assign(sheet.pageSetup, {
    orientation: isPortrait ? "portrait" : "landscape",
    paperSize: LETTER,
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: pagesTall,
    margins: MARGINS,
    horizontalCentered: true,
    ...(headingRows === undefined ? {} : { printTitlesRow: headingRows }),
    ...(area === undefined ? {} : { printArea: area }),
  } satisfies Partial<PageSetup>);
  sheet.headerFooter.oddHeader = "&LSample firm: extension requests&R&A";
  sheet.headerFooter.oddFooter = "&LEstimates only, not tax advice&RPage &P of &N";
}
