import { built } from "../contract/builtAddIn";

/**
 * A stand-in for the host's script: as much of a workbook's interface as the guide uses, with the host's rule that nothing may be read
 * that was not loaded and synced. What is done to the workbook is kept in `standInWorkbook`. It runs in the page, so it is text.
 */
export const OFFICE_HOST = `${built("outside.js")}
(() => {
  "use strict";
  const book = {
    sheets: [{ name: "Clients", cells: {}, tables: [], formats: {}, choices: {}, widths: {} }],
    active: { sheet: "Clients", row: 0, column: 0 },
    spilledFrom: null,
    refuse: false,
  };
  globalThis.standInWorkbook = book;
  const sheetOf = (name) => book.sheets.find((sheet) => sheet.name === name);
  const letter = (column) => String.fromCharCode(65 + column);
  const clientObject = (properties, others = {}) => {
    const asked = new Set();
    const loaded = new Set();
    const made = { ...others };
    made.load = (names) => {
      for (const name of [names].flat()) asked.add(name.split("/")[0]);
      waiting.push(() => asked.forEach((name) => loaded.add(name)));
      return made;
    };
    for (const [name, read] of Object.entries(properties)) {
      Object.defineProperty(made, name, {
        get() {
          if (!loaded.has(name)) throw new Error("The property '" + name + "' is not available.");
          return read.get ? read.get() : read();
        },
        set(value) {
          if (!read.set) throw new Error("The property '" + name + "' is read only.");
          waiting.push(() => read.set(value));
        },
      });
    }
    return made;
  };
  let waiting = [];
  const at = (sheet, row, column) => sheet.cells[row + "," + column] ?? "";
  const range = (sheet, row, column, rows, columns) =>
    clientObject(
      {
        address: () => sheet.name + "!$" + letter(column) + "$" + (row + 1),
        rowIndex: () => row,
        columnIndex: () => column,
        values: () => [[String(at(sheet, row, column)).startsWith("=") ? 1 : at(sheet, row, column)]],
        formulas: {
          get: () => [[at(sheet, row, column)]],
          set: (block) => {
            block.forEach((line, r) =>
              line.forEach((value, c) => {
                if (value !== "") sheet.cells[row + r + "," + (column + c)] = value;
              })
            );
          },
        },
        numberFormat: { get: () => [["General"]], set: (block) => (sheet.formats[column] = block[0][0]) },
        isNullObject: () => false,
      },
      {
        worksheet: clientObject(
          { name: () => sheet.name },
          { getRangeByIndexes: (...place) => range(sheet, ...place) }
        ),
        getSpillParentOrNullObject: () => {
          const from = book.spilledFrom;
          if (from) return range(sheet, from.row, from.column, 1, 1);
          return clientObject({ isNullObject: () => true, formulas: () => [[]], rowIndex: () => 0 });
        },
        format: clientObject(
          {
            columnWidth: {
              get: () => sheet.widths[column] ?? 48,
              set: (width) => (sheet.widths[column] = width),
            },
          },
          { font: {}, fill: {} }
        ),
        dataValidation: {
          set rule(rule) {
            waiting.push(() => (sheet.choices[column] = rule.list.source));
          },
        },
        place: { row, column, rows, columns },
      }
    );
  const worksheets = clientObject(
    { items: () => book.sheets.map(({ name }) => ({ name })) },
    {
      getItemOrNullObject: () => ({ isNullObject: true }),
      add: (name) => {
        const sheet = { name, cells: {}, tables: [], formats: {}, choices: {}, widths: {} };
        waiting.push(() => book.sheets.push(sheet));
        return {
          getRangeByIndexes: (row, column, rows, columns) => range(sheet, row, column, rows, columns),
          tables: { add: (where) => waiting.push(() => sheet.tables.push(where.place)) },
          pageLayout: { headersFooters: { defaultForAllPages: {} } },
          getRange: () => ({ format: { fill: {} } }),
          freezePanes: {
            freezeRows: (rows) => waiting.push(() => (sheet.frozen = rows)),
            freezeAt: ({ place }) => waiting.push(() => (sheet.frozen = place.rows)),
          },
          activate: () => waiting.push(() => (book.active.sheet = name)),
        };
      },
    }
  );
  const context = {
    workbook: {
      settings: {
        add: () => undefined,
        getItemOrNullObject: () =>
          clientObject({ isNullObject: () => true, value: () => undefined }),
      },
      worksheets,
      getActiveCell: () => {
        const { sheet, row, column } = book.active;
        return range(sheetOf(sheet), row, column, 1, 1);
      },
    },
    sync: async () => {
      if (book.refuse) throw Object.assign(new Error("Refused"), { code: "GeneralException" });
      const work = waiting;
      waiting = [];
      for (const one of work) one();
    },
  };
  const associated = [];
  CustomFunctions.associate = (id) => associated.push(id);
  Object.assign(globalThis, {
    standInAssociated: associated,
    Office: {
      onReady: (ready) => setTimeout(() => ready({ host: "Excel", platform: "OfficeOnline" }), 10),
      context: { requirements: { isSetSupported: () => true } },
    },
    Excel: { run: (_options, work) => work(context) },
  });
})();`;
