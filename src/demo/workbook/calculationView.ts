import type {
  CellLike,
  DefinedNamesLike,
  RowLike,
  WorkbookLike,
  WorksheetLike,
} from "@cj-tech-master/excelts/formula";
import type { TablePlace } from "./referenceWorld";
import { type SheetStore, StoredCell, type StoredFormula } from "./sheetStore";

type EachRow = (row: RowLike, rowNumber: number) => void;
type EachCell = (cell: CellLike, columnNumber: number) => void;
type EngineTable = ReturnType<NonNullable<WorksheetLike["getTables"]>>[number];
type UserFunctions = NonNullable<WorkbookLike["userFunctions"]>;

function engineTable(table: TablePlace): EngineTable {
  const { name, top, left, bottom, columns, hasHeader, hasTotals } = table;
  return {
    table: {
      name,
      tl: { row: top, col: left },
      columns: columns.map((column) => ({ name: column })),
      // Only the number of rows is used; their cells are read from the sheet.
      rows: new Array<unknown>(bottom - top + 1 - Number(hasHeader) - Number(hasTotals)),
      headerRow: hasHeader,
      totalsRow: hasTotals,
    },
  };
}

// The library writes a spill by finding the cell of its formula and then each other cell.
function viewSheet(sheet: SheetStore): WorksheetLike {
  let writing: StoredFormula | undefined;
  return {
    id: sheet.id,
    name: sheet.name,
    get dimensions() {
      return sheet.dimensions;
    },
    mergedRegions: sheet.mergedRegions,
    eachRow(first: unknown, second?: unknown): void {
      const visit = (second ?? first) as EachRow;
      for (const rowNumber of sheet.hiddenRows) {
        if (!sheet.rows.has(rowNumber)) visit({ hidden: true, eachCell() {} }, rowNumber);
      }
      for (const [rowNumber, cells] of sheet.rows) {
        const row: RowLike = {
          hidden: sheet.hiddenRows.has(rowNumber),
          eachCell(firstOfTwo: unknown, secondOfTwo?: unknown): void {
            const visitCell = (secondOfTwo ?? firstOfTwo) as EachCell;
            for (const [column, cell] of cells) visitCell(cell, column);
          },
        };
        visit(row, rowNumber);
      }
    },
    findCell(row, column) {
      const cell = sheet.find(row, column);
      writing = cell?.ownFormula ?? writing;
      return cell;
    },
    getCell(row, column) {
      if (writing !== undefined) {
        writing.height = Math.max(writing.height, row - writing.row + 1);
        writing.width = Math.max(writing.width, column - writing.column + 1);
      }
      return sheet.find(row, column) ?? sheet.put(new StoredCell(row, column, null));
    },
    getTables: () => sheet.tables.map(engineTable),
  };
}

/** What the calculating library receives instead of the workbook. */
export interface CalculationViewParts {
  readonly sheets: readonly SheetStore[];
  readonly definedNames: DefinedNamesLike;
  readonly userFunctions: UserFunctions;
  readonly calcProperties: NonNullable<WorkbookLike["calcProperties"]>;
}

/**
 * A new view of the sheets. The library keeps parsed formulas and spills by view, and forgets all but 10,000 formula texts, so each
 * pass over a part of the workbook has its own view.
 */
export function calculationView(parts: CalculationViewParts): WorkbookLike {
  const worksheets = parts.sheets.map(viewSheet);
  const byName = new Map(worksheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  return {
    worksheets,
    getWorksheet: (key) => byName.get(String(key).toLowerCase()),
    definedNames: parts.definedNames,
    calcProperties: parts.calcProperties,
    properties: { date1904: false },
    userFunctions: parts.userFunctions,
  };
}
