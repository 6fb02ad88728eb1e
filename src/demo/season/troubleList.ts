import type { Worksheet } from "@cj-tech-master/excelts";
import type { SampleClient } from "./clients";
import { CLIENTS_SHEET, FIRST_ROW } from "./clientsSheet";
import { clientBlock } from "./columnFormulasSheet";
import { putFormula, putLabel, styleHeadings, styleLink, underlineRows } from "./sheetStyle";
import { colorBySeverity, colorByStatus, colorPassed } from "./statusColors";

/** The most clients of the list. */
const MOST_ROWS = 40;
const ROW_HEIGHT = 30;
/** An amount of zero is not shown. */
const MONEY_OR_BLANK = "#,##0.00;-#,##0.00;";
/** A hidden column with each client's position in the client list. */
const POSITION = "H";

/** Heading, the heading of the client list that it shows, and the cell format. */
const COLUMNS: readonly (readonly [heading: string, shown: string, format?: string])[] = [
  ["Client", "Client"],
  ["Severity", "Severity"],
  ["Status", "Status"],
  ["Issue", "Most serious issue"],
  ["By when", "Next deadline"],
  ["To reach 90%", "To reach 90%", MONEY_OR_BLANK],
  ["What to do", "What to do"],
];

/**
 * Adds the clients with a problem or a risk, worst first: by severity, then by the days left. Each name is a link to the client's row.
 *
 * @param sheet - The sheet.
 * @param clients - The clients of the sample firm.
 * @param top - The row of the label; the headings are in the next row.
 * @returns The last row.
 */
export function addTroubleList(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  top: number
): number {
  const block = (heading: string): string => clientBlock(clients, heading);
  putLabel(sheet, `A${top}`, "Clients with a problem or a risk, worst first");
  for (const [index, [heading]] of COLUMNS.entries())
    sheet.getCell(top + 1, index + 1).value = heading;
  styleHeadings(sheet, top + 1, 32);
  const first = top + 2;
  const last = first + MOST_ROWS - 1;
  sheet.getColumn(POSITION).hidden = true;
  for (let row = first; row <= last; row += 1) {
    const urgency = block("Urgency");
    const place = row - first + 1;
    const position = `$${POSITION}${row}`;
    putFormula(
      sheet,
      `${POSITION}${row}`,
      `IFERROR(MATCH(LARGE(${urgency},${place}),${urgency},0),0)`
    );
    for (const [index, [heading, shown, format]] of COLUMNS.entries()) {
      const found = `INDEX(${block(shown)},${position})`;
      const target = `"#${CLIENTS_SHEET}!A"&(${position}+${FIRST_ROW - 1})`;
      const value = heading === "Client" ? `HYPERLINK(${target},${found})` : found;
      const cell = sheet.getCell(row, index + 1);
      putFormula(sheet, cell.address, `IF(${position}=0,"",${value})`, format);
      cell.alignment =
        heading === "What to do"
          ? { wrapText: true, vertical: "top", horizontal: "left", indent: 1 }
          : { wrapText: true, vertical: "top" };
      if (heading === "Client") styleLink(cell);
    }
    sheet.getRow(row).height = ROW_HEIGHT;
  }
  putFormula(
    sheet,
    `A${last + 1}`,
    `IF(COUNT(${block("Urgency")})>${MOST_ROWS},"The sheet ${CLIENTS_SHEET} has "&(COUNT(${block("Urgency")})-${MOST_ROWS})&" more.","")`
  );
  colorBySeverity(sheet, `B${first}:B${last}`, `$B${first}`);
  colorByStatus(sheet, `C${first}:C${last}`, `$C${first}`);
  colorPassed(sheet, `E${first}:E${last}`, `$E${first}`);
  underlineRows(sheet, `A${first}:G${last}`, `$A${first}`);
  return last + 1;
}
