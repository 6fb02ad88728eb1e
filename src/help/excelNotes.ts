/** What to check when the add-in is run in Excel for the first time. */
export const FIRST_RUN: readonly string[] = [
  "`=EXT.DUE(2025)` returns a date that is shown as a date, and `=EXT.CALENDAR(2025)` fills a table.",
  '`=EXT.DUE("soon")` shows `#VALUE!`, and the warning sign beside the cell shows the message.',
  "A column of clients in one formula fills the cells below. A blank cell in the column is read as blank, not as 0.",
  "The sample workbook `dist/season.xlsx` opens without a repair message, recalculates and shows its chart.",
  "The guide opens from the Home tab. An example goes into the selected cell if the cell is empty, and not if it is not.",
  "The new client list has its table, formats, choices and frozen headings. A row typed below the table is calculated.",
  "The calculation is shown for a cell with a formula and for a cell filled by a formula above it. For a cell without a formula, a message is shown.",
  "The help opens from the Insert Function window.",
  "The browser console reports nothing.",
];

/** What Excel does not allow, and how to keep a workbook fast. */
export const EXCEL_LIMITS: readonly string[] = [
  "The add-in needs Microsoft 365, Excel on the web, or Excel 2021 or later. Excel for iPad has no custom functions.",
  "Conditional formatting and data validation cannot call custom functions. Put the formula in a column and refer to that column.",
  "A formula that fills several cells cannot be inside an Excel table.",
  "Use ranges such as `A2:A500` or table columns, not whole columns such as `A:A`.",
  "Enter the as-of date in a cell. With `TODAY()`, every edit recalculates the whole list.",
  "The 1904 date system is not supported: its dates are read as about four years too early.",
];
