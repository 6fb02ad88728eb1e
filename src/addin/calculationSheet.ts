import { calculationFormula } from "./calculationFormula";
import { withCellAddresses } from "./tableReferences";
import { NotDone, type NewSheet, type SelectedCell } from "./workbookHost";

/** A call whose answer depends on a whole row of a client list. */
const ANSWERS_ROW = /EXT\.ROSTER(ROWS)?\(/;

/**
 * The sheet that shows how the result in a cell is calculated, for the file of a reviewer.
 *
 * @param cell - The selected cell.
 * @returns The sheet: which cell it explains, and the formula that fills it.
 * @throws NotDone when there is no calculation to show.
 */
export function calculationSheet(cell: SelectedCell): NewSheet {
  const { sheet, address, rowsBelow, tables = [] } = cell;
  if (cell.formula === "")
    throw new NotDone(`Cell ${address} has no formula. Select a cell with an EXT function.`);
  const row = Number(/\d+$/.exec(address)?.[0]) - rowsBelow;
  const formula = withCellAddresses(cell.formula, sheet, row, tables);
  const calculation = calculationFormula(formula, sheet, rowsBelow);
  if (calculation === undefined && ANSWERS_ROW.test(formula))
    throw new NotDone(
      `The formula in ${address} answers from a whole row of the list. Select Calculation at the top of this pane, beside the client.`
    );
  if (calculation === undefined)
    throw new NotDone(
      `There is no calculation to show for ${address}. Select a cell with DUE, EXTENDED, PAYBY, CHARGES, EFFECTIVERATE, LIABILITY, ESTPENALTY, METHOD or ISSUECOUNT.`
    );
  return {
    name: `Calculation ${address}`,
    cells: [
      [`Calculation of ${sheet}!${address}`],
      ["An estimate, not tax advice. It changes with the cells it refers to."],
      [calculation],
    ],
    widths: [34, 16, 16, 12, 16, 14, 16, 14, 44],
    formats: [],
    choices: [],
    headingRow: 3,
    isTable: false,
  };
}
