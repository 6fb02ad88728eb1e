/** A step of the first run in Excel. Code is between backticks. */
interface FirstRunStep {
  readonly step: string;
  /** What to see. */
  readonly see: string;
  /** What to send back if something else is seen, beside the diagnosis. */
  readonly send: string;
}

/** What to check when the add-in is run in Excel for the first time. What would stop the most comes first. */
export const FIRST_RUN: readonly FirstRunStep[] = [
  {
    step: "Open a workbook and open the guide from the Home tab. On the web, select Allow if the browser asks about your local network.",
    see: "The guide has its tools, and no note above them.",
    send: "The note, and the first red lines of the browser console.",
  },
  {
    step: "Enter `=EXT.DUE(2025)` in a cell.",
    see: "The names of the functions appear as you type. The cell shows April 15, 2026, as a date.",
    send: "What the cell shows, and whether Recalculate this workbook changes it.",
  },
  {
    step: "Select Check blank cells in the guide.",
    see: "One sentence says that this Excel sends blank cells as blank. No sheet is left behind.",
    send: "The sentence. On a build that sends 0, the build is in the diagnosis.",
  },
  {
    step: "In the guide, open CALENDAR and select Insert in selected cell.",
    see: "A table with dates. Each column is wide enough: no cell shows `########`.",
    send: "A picture of the table.",
  },
  {
    step: "Select Build a client list, type a second client in row 5, and a client in the row below the table.",
    see: "The second client is calculated. The table grows, and the new row is calculated too. The choices, the colored cells and the frozen headings are there.",
    send: "Whether the formulas are in the new row.",
  },
  {
    step: "Select a cell of the new list, then Use my list and Write the answers. Then select Undo once.",
    see: "The pane shows how each heading is read. New columns have answers in each row. Undo takes all of them back.",
    send: "What the pane said, and how many times Undo was needed.",
  },
  {
    step: "Save the workbook, restart Excel, open the workbook again, and open the guide.",
    see: "The results are there. If cells show `#NAME?` or `#BUSY!`, select Recalculate this workbook, and they show results.",
    send: "Which error stays, in which kind of cell, after how long.",
  },
  {
    step: 'Enter `=EXT.DUE("soon")`.',
    see: "`#VALUE!`, and the warning sign beside the cell shows the message.",
    send: "The text behind the warning sign.",
  },
  {
    step: "Enter one formula over a column of clients, such as `=EXT.DUE(A2:A50)`, with a blank cell among them.",
    see: "The answers fill the cells below. The row of the blank cell is empty.",
    send: "What the row of the blank cell shows.",
  },
  {
    step: "Open `dist/season.xlsx` with the add-in already open.",
    see: "No repair message. The figures and the chart are there.",
    send: "The repair message, or the sheet and the error of a cell.",
  },
  {
    step: "Use Show the calculation for a cell with a formula, for a cell filled by a formula above it, and for a cell without a formula.",
    see: "A sheet with the calculation for the first two, a message for the third.",
    send: "The message.",
  },
  {
    step: "Use a tool of the guide on a protected sheet, with a chart selected, and while a cell is being edited.",
    see: "A sentence says what to do. Nothing is changed.",
    send: "The sentence, and what was changed.",
  },
  {
    step: "Open the help of a function from the Insert Function window.",
    see: "The page of the function.",
    send: "What opens instead.",
  },
  {
    step: "Open the console of the browser or of the pane.",
    see: "Nothing is reported, except that a page of Microsoft's telemetry was blocked. The add-in blocks it on purpose.",
    send: "Every other line.",
  },
];

/** What Excel does not allow, and how to keep a workbook fast. */
export const EXCEL_LIMITS: readonly string[] = [
  "The add-in needs Microsoft 365, Excel on the web, or Excel LTSC 2024 or later. Microsoft does not support custom functions in Excel LTSC 2021. Excel for iPad has none.",
  "Conditional formatting and data validation cannot call custom functions. Put the formula in a column and refer to that column.",
  "A formula that fills several cells cannot be inside an Excel table.",
  "Use ranges such as `A2:A500` or table columns, not whole columns such as `A:A`.",
  "Enter the as-of date in a cell. With `TODAY()`, every edit recalculates the whole list.",
  "Some builds of Excel send a blank cell to a function as 0. Check blank cells in the guide tells which kind yours is.",
  "Excel keeps the results of an earlier version of the add-in. After an update, select Recalculate this workbook in the guide.",
  "The examples use commas between arguments. Where your Excel uses semicolons, type semicolons, or insert the example from the guide.",
  "Open the add-in before a workbook that uses it. Without the add-in, a colleague sees the last results until the workbook is recalculated.",
  "The 1904 date system is not supported: its dates are read as about four years too early.",
];
