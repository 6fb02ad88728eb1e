/**
 * As much of a workbook as the pane uses, under the names that Excel's object model has on the wire. It runs in the page in front of
 * the add-in. Formulas are not calculated: a cell with a formula shows what a test puts into it.
 */
import { columnLetters, columnNumber } from "../../../src/host/cellAddress";

/** A cell: its formula or value, and what it shows. */
export interface ModelCell {
  formula: string | number | boolean;
  shows?: string | number | boolean;
  /** The cell whose formula fills this one, by row and column. */
  filledFrom?: readonly [row: number, column: number];
}

type Value = string | number | boolean;

/** An object that the protocol can name: its members by their names on the wire. */
export type Member = Readonly<Record<string, unknown>>;

/** Thrown with the code that Excel answers. */
export class ExcelError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

const NULL_OBJECT = { isNullObject: true };

/** Letters of a column, counted from 0. */
const letters = (column: number): string => columnLetters(column + 1);

type Block = readonly [row: number, column: number, rows: number, columns: number];

/** A table on a sheet: its range. */
export interface ModelTable {
  readonly name: string;
  at: Block;
}

/** A conditional format of a cell with a formula as its condition. */
export interface ModelMark {
  readonly at: string;
  formula: string;
  color: string;
}

/** A sheet of the model, as a test reads it. */
export interface ModelSheet {
  name: string;
  readonly cells: Record<string, ModelCell>;
  readonly tables: ModelTable[];
  readonly formats: Record<string, string>;
  readonly choices: Record<string, string>;
  readonly widths: Record<string, number>;
  /** Columns whose width was fitted to their content. */
  readonly fitted: number[];
  readonly fills: Record<string, string>;
  readonly merged: Block[];
  readonly pivots: { readonly name: string; readonly at: Block }[];
  readonly marks: ModelMark[];
  isProtected: boolean;
  frozen?: number;
  frozenColumns?: number;
  /** How the sheet is printed, where a request has set it. */
  page?: Readonly<Record<string, unknown>>;
}

/** The workbook of the model, as a test reads and changes it. */
export interface ModelBook {
  readonly sheets: ModelSheet[];
  active: { sheet: string; row: number; column: number };
  readonly names: Record<string, string>;
  readonly settings: Record<string, unknown>;
  /** Each full calculation, by its kind. */
  readonly calculations: string[];
  /** What happened to cells, in order: the addresses whose formulas were written. */
  readonly written: string[];
  /** The code that every request gets, such as AccessDenied. */
  refuse?: string | undefined;
  /** The code that a change of a width or a number format gets. */
  refuseLook?: string | undefined;
  /** The code that a request gets once it has written so many cells. */
  refuseAfter?: { readonly written: number; readonly code: string } | undefined;
}

/** An empty sheet. */
export function emptySheet(name: string): ModelSheet {
  const kept = { formats: {}, choices: {}, widths: {}, fitted: [], fills: {} };
  return {
    name,
    cells: {},
    tables: [],
    merged: [],
    pivots: [],
    marks: [],
    isProtected: false,
    ...kept,
  };
}

/** A workbook with one empty sheet, A1 selected. */
export function emptyBook(): ModelBook {
  return {
    sheets: [emptySheet("Clients")],
    active: { sheet: "Clients", row: 0, column: 0 },
    names: {},
    settings: {},
    calculations: [],
    written: [],
  };
}

/** The width of a column in points, of which Excel has 48 where nobody has changed it. */
const DEFAULT_WIDTH = 48;

const key = (row: number, column: number): string => `${row},${column}`;

/** Whether two blocks have a cell in common. */
function meets([row, column, rows, columns]: Block, [top, left, height, width]: Block): boolean {
  const isInRows = row < top + height && top < row + rows;
  return isInRows && column < left + width && left < column + columns;
}

function rangeOf(
  book: ModelBook,
  sheet: ModelSheet,
  row: number,
  column: number,
  rows: number,
  columns: number
): Member {
  const block = <Result>(read: (cell: ModelCell | undefined) => Result): Result[][] =>
    Array.from({ length: rows }, (_r, r) =>
      Array.from({ length: columns }, (_c, c) => read(sheet.cells[key(row + r, column + c)]))
    );
  const each = (write: (r: number, c: number) => void): void => {
    for (let r = 0; r < rows; r++) for (let c = 0; c < columns; c++) write(r, c);
  };
  const corner = `${letters(column)}${row + 1}`;
  const end = `${letters(column + columns - 1)}${row + rows}`;
  const address = `${/^\w+$/.test(sheet.name) ? sheet.name : `'${sheet.name}'`}!${
    rows * columns === 1 ? corner : `${corner}:${end}`
  }`;
  const sub = (r: number, c: number, height: number, width: number): Member =>
    rangeOf(book, sheet, r, c, height, width);
  return {
    Address: address,
    RowIndex: row,
    ColumnIndex: column,
    RowCount: rows,
    ColumnCount: columns,
    get Formulas() {
      return block((cell) => cell?.formula ?? "");
    },
    set Formulas(given: Value[][]) {
      each((r, c) => {
        const formula = given[r]?.[c] ?? "";
        const { refuseAfter } = book;
        if (refuseAfter && book.written.length >= refuseAfter.written)
          throw new ExcelError(refuseAfter.code);
        book.written.push(`${sheet.name}!${letters(column + c)}${row + r + 1}`);
        if (formula === "") Reflect.deleteProperty(sheet.cells, key(row + r, column + c));
        else sheet.cells[key(row + r, column + c)] = { formula };
      });
    },
    get Values() {
      return block((cell) => {
        if (cell === undefined) return "";
        if (cell.shows !== undefined) return cell.shows;
        return String(cell.formula).startsWith("=") ? 1 : cell.formula;
      });
    },
    set Values(given: Value[][]) {
      each((r, c) => {
        const value = given[r]?.[c] ?? "";
        book.written.push(`${sheet.name}!${letters(column + c)}${row + r + 1}`);
        sheet.cells[key(row + r, column + c)] = {
          formula: typeof value === "string" ? value.replace(/^'/, "") : value,
        };
      });
    },
    set NumberFormat(given: string[][]) {
      if (book.refuseLook !== undefined) throw new ExcelError(book.refuseLook);
      each((r, c) => {
        sheet.formats[key(row + r, column + c)] = given[r]?.[c] ?? "";
      });
    },
    get NumberFormat() {
      return Array.from({ length: rows }, (_r, r) =>
        Array.from(
          { length: columns },
          (_c, c) => sheet.formats[key(row + r, column + c)] ?? "General"
        )
      );
    },
    Worksheet: worksheetOf(book, sheet),
    Format: {
      Font: { Bold: false, Color: "", Size: 11 },
      Fill: {
        set Color(color: string) {
          each((r, c) => {
            sheet.fills[key(row + r, column + c)] = color;
          });
        },
      },
      WrapText: false,
      VerticalAlignment: "Bottom",
      get ColumnWidth() {
        return sheet.widths[column] ?? DEFAULT_WIDTH;
      },
      set ColumnWidth(width: number) {
        if (book.refuseLook !== undefined) throw new ExcelError(book.refuseLook);
        sheet.widths[column] = width;
      },
      AutofitColumns: () => {
        sheet.fitted.push(column);
      },
    },
    DataValidation: {
      set Rule(rule: { list: { source: string } }) {
        sheet.choices[column] = rule.list.source;
      },
    },
    Select: () => {
      book.active = { sheet: sheet.name, row, column };
    },
    CopyFrom: () => undefined,
    GetPivotTables: () => ({
      Items: sheet.pivots
        .filter(({ at }) => meets(at, [row, column, rows, columns]))
        .map(({ name }) => ({ Id: name, Name: name })),
    }),
    GetMergedAreasOrNullObject: () =>
      sheet.merged.some((at) => meets(at, [row, column, rows, columns]))
        ? { Address: address }
        : NULL_OBJECT,
    ConditionalFormats: {
      get Items() {
        return sheet.marks.map((mark) => markOf(sheet, mark));
      },
      GetItem: (id: string) => markOf(sheet, sheet.marks[Number(id)] ?? newMark()),
      Add: () => {
        const mark = { ...newMark(), at: corner };
        sheet.marks.push(mark);
        return markOf(sheet, mark);
      },
    },
    GetCell: (r: number, c: number) => sub(row + r, column + c, 1, 1),
    GetSpillParentOrNullObject: () => {
      const from = sheet.cells[key(row, column)]?.filledFrom;
      return from ? sub(from[0], from[1], 1, 1) : NULL_OBJECT;
    },
    GetSpillingToRangeOrNullObject: () => NULL_OBJECT,
    GetTables: () => ({
      Items: sheet.tables
        .filter(({ at: [top, left, height, width] }) => {
          const isInside = row >= top && row < top + height;
          return isInside && column >= left && column < left + width;
        })
        .map((table) => tableOf(book, sheet, table)),
    }),
  };
}

function newMark(): ModelMark {
  return { at: "", formula: "", color: "" };
}

function markOf(sheet: ModelSheet, mark: ModelMark): Member {
  return {
    Id: String(sheet.marks.indexOf(mark)),
    Type: "Custom",
    Custom: {
      Rule: {
        get Formula() {
          return mark.formula;
        },
        set Formula(formula: string) {
          mark.formula = formula;
        },
      },
      Format: {
        Fill: {
          set Color(color: string) {
            mark.color = color;
          },
        },
      },
    },
    Delete: () => {
      sheet.marks.splice(sheet.marks.indexOf(mark), 1);
    },
  };
}

function tableOf(book: ModelBook, sheet: ModelSheet, table: ModelTable): Member {
  const [row, column, rows, columns] = table.at;
  return {
    Id: table.name,
    Name: table.name,
    ShowHeaders: true,
    ShowTotals: false,
    Resize: (range: Member) => {
      table.at = blockOf(range);
    },
    Worksheet: worksheetOf(book, sheet),
    GetRange: () => rangeOf(book, sheet, row, column, rows, columns),
    GetHeaderRowRange: () => rangeOf(book, sheet, row, column, 1, columns),
    GetDataBodyRange: () => rangeOf(book, sheet, row + 1, column, rows - 1, columns),
  };
}

function blockOf(range: Member): Block {
  const {
    RowIndex = 0,
    ColumnIndex = 0,
    RowCount = 0,
    ColumnCount = 0,
  } = range as Record<string, number>;
  return [RowIndex, ColumnIndex, RowCount, ColumnCount];
}

function rangeAt(book: ModelBook, sheet: ModelSheet, address: string): Member {
  const [, left = "A", top = "1", right = left, bottom = top] =
    /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/.exec(address) ?? [];
  const [row, column] = [Number(top) - 1, columnNumber(left) - 1];
  return rangeOf(book, sheet, row, column, Number(bottom) - row, columnNumber(right) - column);
}

function worksheetOf(book: ModelBook, sheet: ModelSheet): Member {
  return {
    Id: sheet.name,
    Name: sheet.name,
    Visibility: "Visible",
    Protection: { Protected: sheet.isProtected },
    GetRange: (address?: string) => rangeAt(book, sheet, address ?? "A1"),
    GetRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
      rangeOf(book, sheet, row, column, rows, columns),
    GetUsedRangeOrNullObject: () => {
      const places = Object.keys(sheet.cells).map((place) => place.split(",").map(Number));
      if (places.length === 0) return NULL_OBJECT;
      const rows = places.map(([row = 0]) => row);
      const columns = places.map(([, column = 0]) => column);
      const [top, left] = [Math.min(...rows), Math.min(...columns)];
      const height = Math.max(...rows) - top + 1;
      return rangeOf(book, sheet, top, left, height, Math.max(...columns) - left + 1);
    },
    get Tables() {
      return {
        Items: sheet.tables.map((table) => tableOf(book, sheet, table)),
        GetItem: (name: string) => {
          const found = sheet.tables.find((one) => one.name === name);
          if (!found) throw new ExcelError("ItemNotFound");
          return tableOf(book, sheet, found);
        },
        Add: (range: Member) => {
          const at = blockOf(range);
          const all = book.sheets.flatMap(({ tables }) => tables);
          const made = { name: `Table${all.length + 1}`, at };
          sheet.tables.push(made);
          book.written.push(`${sheet.name}!${made.name}`);
          return tableOf(book, sheet, made);
        },
      };
    },
    Delete: () => {
      book.sheets.splice(book.sheets.indexOf(sheet), 1);
    },
    PageLayout: {
      set Orientation(orientation: string) {
        sheet.page = { ...sheet.page, orientation };
      },
      set Zoom(zoom: object) {
        sheet.page = { ...sheet.page, zoom };
      },
      HeadersFooters: {
        DefaultForAllPages: {
          set CenterFooter(footer: string) {
            sheet.page = { ...sheet.page, footer };
          },
        },
      },
    },
    FreezePanes: {
      FreezeRows: (rows: number) => {
        sheet.frozen = rows;
      },
      FreezeAt: (range: Member) => {
        const [, , rows, columns] = blockOf(range);
        Object.assign(sheet, { frozen: rows, frozenColumns: columns });
      },
    },
    Activate: () => {
      book.active = { sheet: sheet.name, row: 0, column: 0 };
    },
  };
}

function sheetNamed(book: ModelBook, name: string): ModelSheet {
  const found = book.sheets.find((sheet) => sheet.name === name);
  if (!found) throw new ExcelError("ItemNotFound");
  return found;
}

/** The object named Workbook, from which every path of a request begins. */
export function workbookOf(book: ModelBook): Member {
  return {
    GetActiveCell: () => {
      const { sheet, row, column } = book.active;
      return rangeOf(book, sheetNamed(book, sheet), row, column, 1, 1);
    },
    Application: {
      Calculate: (kind: string) => {
        book.calculations.push(kind);
      },
    },
    get Tables() {
      const all = book.sheets.flatMap((sheet) =>
        sheet.tables.map((one) => tableOf(book, sheet, one))
      );
      return { Items: all, GetItem: (name: string) => all.find((one) => one["Id"] === name) };
    },
    get Names() {
      const items = Object.entries(book.names).map(([Name, Formula]) => ({ Name, Formula }));
      return { Items: items };
    },
    Settings: {
      Add: (name: string, value: unknown) => {
        book.settings[name] = value;
        return { Key: name, Value: value };
      },
      GetItemOrNullObject: (name: string) =>
        name in book.settings ? { Key: name, Value: book.settings[name] } : NULL_OBJECT,
    },
    Worksheets: {
      get Items() {
        return book.sheets.map((sheet) => worksheetOf(book, sheet));
      },
      Add: (name: string) => {
        const sheet = emptySheet(name);
        book.sheets.push(sheet);
        return worksheetOf(book, sheet);
      },
      GetItem: (name: string) => worksheetOf(book, sheetNamed(book, name)),
      GetItemOrNullObject: (name: string) => {
        const found = book.sheets.find((sheet) => sheet.name === name);
        return found ? worksheetOf(book, found) : NULL_OBJECT;
      },
    },
  };
}
