import type { CalendarDate } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import { slippedName } from "../../functions/arguments/closestName";
import { catalog } from "../../functions/catalog";
import { columnLetters, readAddress } from "../../host/cellAddress";
import { answerLook } from "../answers/answerLook";
import { CALCULATED, calculationOf, calledName } from "./calculationFormula";
import { enteredRows, resultRow, stepRows } from "./calculationRows";
import { withCellAddresses } from "../workbook/tableReferences";
import type { CellsLook, NewSheet } from "../workbook/newSheet";
import { NotDone, type SelectedCell } from "../workbook/workbookHost";

/** Rows below the headings of the table that get its number formats; a longer one keeps those of the functions. */
const FORMATTED_ROWS = 80;
const LEAST_WIDTH = 10;
const LABEL_WIDTH = 34;
const VALUE_WIDTH = 16;

/** Functions whose answers depend on a whole row of a client list. */
const ROW_FUNCTIONS: readonly string[] = ["ROSTER", "ROSTERROWS"];

/** Says why a cell has no calculation, and which cells have one. */
function noCalculation(address: string, formula: string): NotDone {
  const name = calledName(formula);
  const others = `Select a cell with ${CALCULATED.slice(0, -1).join(", ")} or ${CALCULATED.at(-1) ?? ""}.`;
  if (name === undefined)
    return new NotDone(
      `Cell ${address} has no EXT function, so there is no calculation. ${others}`
    );
  if (!(name in catalog)) {
    const near = slippedName(name, Object.keys(catalog));
    const closest = near === undefined ? "" : ` The closest is EXT.${near}.`;
    return new NotDone(`EXT.${name} is not a function of the add-in.${closest}`);
  }
  if (name === "WHATIF")
    return new NotDone(
      `Cell ${address} is a heading of the WHATIF table. Select one of its amounts.`
    );
  if (ROW_FUNCTIONS.includes(name))
    return new NotDone(
      `The formula in ${address} answers from a whole row of the list. Select Calculation at the top of this pane, beside the client.`
    );
  if (catalog[name]?.form === "table")
    return new NotDone(`${name} is a table that already shows its rows and sources. ${others}`);
  return new NotDone(
    `There is no calculation to show for ${name}. Its help says how the result is found. ${others}`
  );
}

/** The look of the table that a formula fills: widths, and the number format of each column, from the examples of its function. */
function tableLook(formula: string): { widths: readonly number[]; formats: readonly string[] } {
  const examples = catalog[calledName(formula) ?? ""]?.examples ?? [];
  const looks = examples.map((example) => answerLook(example.formula));
  const columns = Math.max(0, ...looks.map(({ widths }) => widths.length));
  const indexes = Array.from({ length: columns }, (_column, index) => index);
  return {
    widths: indexes.map((index) =>
      Math.max(LEAST_WIDTH, ...looks.map(({ widths }) => widths[index] ?? 0))
    ),
    formats: indexes.map(
      (index) =>
        looks.flatMap(({ formats }) => formats.map((row) => row[index])).find(Boolean) ?? ""
    ),
  };
}

/** The title: what is calculated, and the name of the client if the first cell of the row has one. */
function titleOf(what: string, { sheet, address, tables = [] }: SelectedCell): string {
  const { top = 0, left = 1 } = readAddress(address) ?? {};
  const table = tables.find(
    (one) => one.sheet === sheet && top > one.headingRow && top <= one.headingRow + one.rows
  );
  const first = table?.firstColumn ?? 1;
  if (first === left) return what;
  const cell = `'${sheet.replaceAll("'", "''")}'!${columnLetters(first)}${String(top)}`;
  return `="${what}"&IF(ISTEXT(${cell}),": "&${cell},"")`;
}

/**
 * The sheet that shows how the result in a cell is calculated, for the file of a reviewer: what and whose, the entered values, the
 * result, and the table or the steps that lead to it.
 *
 * @param cell - The selected cell.
 * @param madeOn - The date on the sheet; none if it is not given.
 * @returns The sheet. Its first row is the title.
 * @throws NotDone when there is no calculation to show.
 */
export function calculationSheet(cell: SelectedCell, madeOn?: CalendarDate): NewSheet {
  const { sheet, address, rowsBelow, columnsRight = 0, tables = [] } = cell;
  if (cell.formula === "")
    throw new NotDone(`Cell ${address} has no formula. Select a cell with an EXT function.`);
  const row = Number(/\d+$/.exec(address)?.[0]) - rowsBelow;
  const formula = withCellAddresses(cell.formula, sheet, row, tables);
  const calculation = calculationOf(formula, sheet, rowsBelow, columnsRight);
  if (calculation === undefined) throw noCalculation(address, formula);
  const { lines } = calculation;
  const result = resultRow(calculation);
  const made = madeOn === undefined ? "" : `, made on ${shortDate(madeOn)}`;
  const above: readonly string[][] = [
    [titleOf(result.label, cell)],
    [`Cell ${sheet}!${address}${made}`],
    ["An estimate, not tax advice. It changes with the cells it refers to."],
    [],
    ["Entered", "Value"],
  ];
  const rows = [...enteredRows(calculation), ...stepRows(calculation), result];
  const total = above.length + rows.length;
  const table = lines === undefined ? undefined : { ...tableLook(lines), row: total + 2 };
  const looks: CellsLook[] = [
    { row: 1, column: 1, rows: 1, columns: 1, style: "title" },
    { row: above.length, column: 1, rows: 1, columns: 2, style: "heading" },
    ...rows.map(({ format }, index) => ({
      row: above.length + 1 + index,
      column: 2,
      rows: 1,
      columns: 1,
      format,
    })),
    { row: total, column: 1, rows: 1, columns: 2, style: "total" },
  ];
  if (table) {
    const { formats, widths } = table;
    const below = { row: table.row + 1, rows: FORMATTED_ROWS };
    looks.push(
      { row: table.row, column: 1, rows: 1, columns: widths.length, style: "heading" },
      { ...below, column: 1, columns: widths.length, style: "wrapped" },
      ...formats.flatMap((format, index) =>
        format === "" ? [] : [{ ...below, column: index + 1, columns: 1, format }]
      )
    );
  }
  const [labels = 0, values = 0, ...others] = table?.widths ?? [];
  return {
    name: `Calculation ${address}`,
    cells: [
      ...above,
      ...rows.map(({ label, content }) => [label, content]),
      ...(lines === undefined ? [] : [[], [lines]]),
    ],
    widths: [Math.max(LABEL_WIDTH, labels), Math.max(VALUE_WIDTH, values), ...others],
    formats: [],
    choices: [],
    headingRow: 1,
    isTable: false,
    looks,
    page: { footer: `Calculation ${sheet}!${address}${made}`, isLandscape: true, wrapsText: false },
  };
}
