import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { answerLook } from "../../../src/addin/answers/answerLook";
import { HEADING_COLORS } from "../../../src/addin/workbook/newSheet";
import { catalog } from "../../../src/functions/catalog";
import { version } from "../../../src/rules/version";
import { openBrowser, openFolds } from "../browser";
import { CURRENT_SETS, openInExcel, type ExcelKind, type InExcel } from "./inExcel";
import type { ModelBook, ModelCell } from "./workbookModel";

/** The add-in in Excel with all that is folded opened. */
async function opened(kind?: ExcelKind): Promise<InExcel> {
  const inExcel = await openInExcel(browser, kind);
  await openFolds(inExcel.addin);
  return inExcel;
}

let browser: Browser;
let excel: InExcel;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});
beforeEach(async () => {
  excel = await opened();
  await excel.addin.waitForSelector("#tools .buttons fluent-button");
});
afterEach(async () => {
  await excel.close();
});

const book = (): Promise<ModelBook> => excel.inPage((page) => page.book, null);
const press = (name: string): Promise<void> =>
  excel.addin.locator("fluent-button", { hasText: name }).click();
const status = () => expect.poll(() => excel.addin.locator("#said").textContent());

/** Puts cells into the sheet Clients of the model. */
const put = (cells: Readonly<Record<string, ModelCell>>): Promise<void> =>
  excel.inPage((page, given) => {
    Object.assign(page.book.sheets[0]?.cells ?? {}, given);
  }, cells);

const LIST = "Build a client list";
const CALCULATION = "Show the calculation for the selected cell";
const RECALCULATE = "Recalculate this workbook";
const BLANKS = "Check blank cells";
/** Inserts the first example of a function. */
const insert = async (name: string, pane = excel): Promise<void> => {
  await pane.addin.locator(`#${name}`).evaluate((entry) => {
    entry.setAttribute("open", "");
  });
  await pane.addin.locator(`#${name} fluent-button`).first().click();
};

describe("the pane and Microsoft's object model of the workbook", () => {
  it("adds a client list: the table first, then the formulas into it", async () => {
    await press(LIST);
    await status().toBe("Added the sheet Clients 2. Replace the example with your clients.");
    const { sheets, written } = await book();
    const [, made] = sheets;
    expect(made?.tables.map(({ at: [row, , rows] }) => [row, rows])).toEqual([[2, 26]]);
    const table = written.findIndex((one) => one.startsWith("Clients 2!Table"));
    const isInTable = (one: string): boolean => /^Clients 2![A-Z]+4$/.test(one);
    expect(written.findIndex(isInTable)).toBeGreaterThan(table);
    expect(table).toBeGreaterThan(0);
    expect(excel.seen.errors).toEqual([]);
  });

  it("inserts an example in the selected cell, and leaves one that is not empty", async () => {
    await excel.addin.locator("#DUE > summary").click();
    await excel.addin.locator("#DUE fluent-button").first().click();
    await status().toBe("Inserted the formula in cell A1.");
    await excel.addin.locator("#DUE fluent-button").first().click();
    await status().toBe("Cell A1 is not empty. Select an empty cell.");
    expect((await book()).sheets[0]?.cells["0,0"]?.formula).toBe("=EXT.DUE(2025)");
  });

  it("widens the columns that an answer fills, and narrows none", async () => {
    await excel.inPage((page) => {
      Object.assign(page.book.sheets[0]?.widths ?? {}, { 0: 300, 1: 20 });
      page.book.active = { sheet: "Clients", row: 4, column: 0 };
    }, null);
    await insert("CALENDAR");
    await status().toBe("Inserted the formula in cell A5.");
    const widths = (await book()).sheets[0]?.widths ?? {};
    const { widths: characters } = answerLook("=EXT.CALENDAR(2025)");
    expect(Object.keys(widths)).toHaveLength(characters.length);
    expect(widths[0]).toBe(300);
    // Excel's usual font has digits of 5.25 points, and a cell keeps about 4 points free beside the text.
    for (const [column, characterCount] of characters.slice(1).entries())
      expect(widths[column + 1]).toBeGreaterThan(characterCount * 5.25 + 4);
    expect((await book()).sheets[0]?.formats).toEqual({});
  });

  it("inserts no formula whose answer would meet a cell that is not empty", async () => {
    await put({ "6,1": { formula: "taken" } });
    await excel.inPage((page) => {
      page.book.active = { sheet: "Clients", row: 4, column: 0 };
    }, null);
    await insert("CALENDAR");
    await status().toMatch(/^The answer fills \d+ rows and \d+ columns from A5, and these cells/);
    expect((await book()).written).toEqual([]);
  });

  it("inserts a formula into a protected sheet that forbids widths, and says so", async () => {
    await excel.inPage((page) => {
      page.book.refuseLook = "AccessDenied";
    }, null);
    await insert("DUE");
    await status().toMatch(/^Inserted the formula in cell A1\. .* ########, widen the column\.$/);
    expect((await book()).written).toEqual(["Clients!A1"]);
    expect(excel.seen.errors).toEqual([]);
  });

  it("gives the cells their number formats where a function cannot", async () => {
    const sets = { ExcelApi: "1.12", CustomFunctionsRuntime: "1.3", SharedRuntime: "1.1" };
    const older = await opened({ sets });
    await older.addin.waitForSelector("#tools .buttons fluent-button");
    await older.inPage((page) => {
      Object.assign(page.book.sheets[0]?.formats ?? {}, { "1,1": "d-mmm" });
    }, null);
    await insert("CALENDAR", older);
    await expect
      .poll(() => older.addin.locator("#said").textContent())
      .toBe("Inserted the formula in cell A1.");
    const { formats } = await older.inPage(
      (page) => ({ formats: page.book.sheets[0]?.formats ?? {} }),
      null
    );
    const look = answerLook("=EXT.CALENDAR(2025)").formats;
    expect(look[1]?.includes("m/d/yyyy")).toBe(true);
    for (const [row, line] of look.entries())
      for (const [column, format = "General"] of line.entries())
        expect(formats[`${row},${column}`]).toBe(row === 1 && column === 1 ? "d-mmm" : format);
    await older.close();
  });

  it.each([
    [null, /^This Excel sends a blank cell as blank\./, "Blank cells: sent as blank"],
    [0, /^This Excel sends a blank cell as 0,/, "Blank cells: sent as 0"],
  ])("tells whether Excel sends a blank cell as %s", async (sent, sentence, line) => {
    await excel.inPage((page, given) => {
      page.sendsBlankAs = given;
    }, sent);
    await press(BLANKS);
    await status().toMatch(sentence);
    const { sheets, written, active } = await book();
    expect(sheets.map(({ name }) => name)).toEqual(["Clients"]);
    expect(written).toEqual(["Extension Season check!A1", "Extension Season check!B1"]);
    expect(active).toEqual({ sheet: "Clients", row: 0, column: 0 });
    await press("Copy a diagnosis");
    expect(await excel.addin.locator("#diagnosis-text").inputValue()).toContain(line);
  });

  it("says if the functions do not answer the check of blank cells", async () => {
    await press(BLANKS);
    await status().toMatch(/^The check did not get an answer from the functions\./);
    expect((await book()).sheets).toHaveLength(1);
  });

  it("copies a diagnosis without the content of a cell", async () => {
    await put({ "0,0": { formula: "secret of a client" } });
    await press(CALCULATION);
    await status().toMatch(/^Cell A1 has no formula/);
    await excel.inPage((page) => {
      page.book.refuse = "AccessDenied";
    }, null);
    await press(LIST);
    await status().toMatch(/^The workbook or the sheet is protected/);
    await press("Copy a diagnosis");
    const text = await excel.addin.locator("#diagnosis-text").inputValue();
    const count = Object.keys(catalog).length;
    expect(text.split("\n")).toEqual([
      `Extension Season ${version}`,
      "Page: excel",
      "Host: Excel, OfficeOnline, build 16.0.18000.1",
      "Requirement sets: ExcelApi 1.20, CustomFunctionsRuntime 1.5, SharedRuntime 1.2, AddinCommands 1.1",
      expect.stringMatching(/^Scripts of Microsoft: https:.*\/office\.js .*excel-web-16\.00\.js/),
      `Functions registered: ${count} of ${count}`,
      "Blank cells: not checked",
      expect.stringMatching(/^Last error: .*AccessDenied/),
    ]);
    expect(text).not.toContain("secret");
  });

  it("shows the calculation of a cell that refers to table columns", async () => {
    await put({
      "2,0": { formula: "Tax year" },
      "2,1": { formula: "State" },
      "2,2": { formula: "Due" },
      "4,2": { formula: "=EXT.DUE([@[Tax year]],Table1[[#This Row],[State]])" },
    });
    await excel.inPage((page) => {
      page.book.sheets[0]?.tables.push({ name: "Table1", at: [2, 0, 4, 3] });
      page.book.active = { sheet: "Clients", row: 4, column: 2 };
    }, null);
    await press(CALCULATION);
    await status().toBe("Added the sheet Calculation C5.");
    const made = (await book()).sheets[1];
    const written = Object.values(made?.cells ?? {}).map(({ formula }) => formula);
    expect(written).toContain("=EXT.CALENDAR('Clients'!A5,'Clients'!B5)");
    expect(written).toContain("=EXT.DUE('Clients'!A5,'Clients'!B5)");
    expect(made?.fills["4,0"]).toBe(HEADING_COLORS.fill);
  });

  it("enters again what was calculated before the add-in was loaded, and nothing else", async () => {
    const kept: Record<string, ModelCell> = {
      "0,0": { formula: "=SUM(1,2)", shows: "#NAME?" },
      "1,0": { formula: "=EXT.DUE(2025)", shows: 46127 },
      "2,0": { formula: "EXT.DUE(", shows: "#NAME?" },
      "6,3": { formula: '=MYEXT.DUE("x")', shows: "#NAME?" },
    };
    await put({
      ...kept,
      "3,1": { formula: "=_xldudf_EXT_DUE(A1)", shows: "#NAME?" },
      "4,1": { formula: "=1+ext.charges(A1,B1)", shows: "#BUSY!" },
    });
    await press(RECALCULATE);
    await status().toBe("Entered 2 formulas again and recalculated the workbook.");
    const { sheets, written, calculations } = await book();
    expect(written).toEqual(["Clients!B4", "Clients!B5"]);
    expect(sheets[0]?.cells).toEqual({
      ...kept,
      "3,1": { formula: "=EXT.DUE(A1)" },
      "4,1": { formula: "=1+EXT.CHARGES(A1,B1)" },
    });
    expect(calculations).toEqual(["Full"]);
    await press(RECALCULATE);
    await status().toBe("Recalculated the workbook. No formula had to be entered again.");
  });

  it("offers to recalculate a workbook of another version, once a button has noted the version", async () => {
    expect((await book()).settings).toEqual({});
    await press(RECALCULATE);
    await status().toContain("Recalculated");
    const { settings } = await book();
    expect(settings).toEqual({ extensionSeasonVersion: version });
    const other = await opened({ settings: { extensionSeasonVersion: "0.0.1" } });
    await expect
      .poll(() => other.addin.locator("#said").textContent())
      .toMatch(/last used with version 0\.0\.1 .* Select "Recalculate this workbook"/);
    await other.close();
  });

  it.each([
    ["InvalidOperationInCellEditMode", /^A cell is being edited\. Press Enter or Esc/],
    ["AccessDenied", /^The workbook or the sheet is protected or read-only\./],
    ["InvalidSelection", /^No cell is selected\. Select a cell/],
    ["GeneralException", /^Excel could not make the change \(GeneralException\)\./],
  ])("says what %s means, and changes nothing", async (code, sentence) => {
    await excel.inPage((page, given) => {
      page.book.refuse = given;
    }, code);
    for (const button of [LIST, CALCULATION, RECALCULATE, BLANKS]) {
      await press(button);
      await status().toMatch(sentence);
    }
    await insert("DUE");
    await status().toMatch(sentence);
    const { sheets, written } = await book();
    expect(sheets).toHaveLength(1);
    expect(written).toEqual([]);
    expect(excel.seen.errors).toEqual([]);
  });

  it("leaves no sheet behind that could not be written whole", async () => {
    await excel.inPage((page) => {
      page.book.refuseAfter = { written: 3, code: "AccessDenied" };
    }, null);
    await press(LIST);
    await status().toMatch(/^The workbook or the sheet is protected/);
    expect((await book()).sheets).toHaveLength(1);
  });

  it("waits until no cell is being edited, where Excel can", async () => {
    const sets = { ...CURRENT_SETS, DelayForCellEdit: "1.1" };
    const other = await opened({ sets });
    await other.addin.locator("fluent-button", { hasText: LIST }).click();
    await expect
      .poll(() => other.addin.locator("#said").textContent())
      .toContain("Added the sheet");
    expect(await other.inPage((page) => page.waitsForEditing, null)).toBe(true);
    await other.close();
  });
});

describe("a host script that arrives late", () => {
  it("turns the guide into the hosted one, with the entries that are open", async () => {
    let arrive: () => void = () => undefined;
    const hostScriptMayArrive = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    const late = await opened({ hostScriptMayArrive });
    await late.addin.locator("#DUE > summary").click();
    expect(await late.addin.locator("#DUE output").first().textContent()).toBe("4/15/2026");
    expect(await late.addin.locator("#outside").textContent()).toMatch(/^Connecting to Excel/);
    expect(await late.addin.locator("#DUE fluent-button").count()).toBe(0);
    arrive();
    await late.addin.locator("#DUE fluent-button").first().click();
    await expect
      .poll(() => late.addin.locator("#said").textContent())
      .toBe("Inserted the formula in cell A1.");
    expect(await late.addin.locator("#outside").isVisible()).toBe(false);
    await late.close();
  });
});
