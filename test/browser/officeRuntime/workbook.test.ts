import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { version } from "../../../src/rules/version";
import { openBrowser } from "../browser";
import { CURRENT_SETS, openInExcel, type InExcel } from "./inExcel";
import type { ModelBook, ModelCell } from "./workbookModel";

let browser: Browser;
let excel: InExcel;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});
beforeEach(async () => {
  excel = await openInExcel(browser);
  await excel.addin.waitForSelector("#tools fluent-button");
});
afterEach(async () => {
  await excel.close();
});

const book = (): Promise<ModelBook> => excel.inPage((page) => page.book, null);
const press = (name: string): Promise<void> =>
  excel.addin.locator("fluent-button", { hasText: name }).click();
const status = () => expect.poll(() => excel.addin.locator("#tools [role=status]").textContent());

/** Puts cells into the sheet Clients of the model. */
const put = (cells: Readonly<Record<string, ModelCell>>): Promise<void> =>
  excel.inPage((page, given) => {
    Object.assign(page.book.sheets[0]?.cells ?? {}, given);
  }, cells);

const LIST = "Add a client list";
const CALCULATION = "Show the calculation for the selected cell";
const RECALCULATE = "Recalculate this workbook";

describe("the pane and Microsoft's object model of the workbook", () => {
  it("adds a client list: the table first, then the formulas into it", async () => {
    await press(LIST);
    await status().toBe("Added the sheet Clients 2. Replace the example row with your clients.");
    const { sheets, written } = await book();
    const [, made] = sheets;
    expect(made?.tables.map(({ at: [row, , rows] }) => [row, rows])).toEqual([[2, 2]]);
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
    expect((await book()).sheets[1]?.cells["2,0"]?.formula).toBe(
      "=EXT.CALENDAR('Clients'!A5,'Clients'!B5)"
    );
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
    const other = await openInExcel(browser, { settings: { extensionSeasonVersion: "0.0.1" } });
    await expect
      .poll(() => other.addin.locator("#tools [role=status]").textContent())
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
    for (const button of [LIST, CALCULATION, RECALCULATE]) {
      await press(button);
      await status().toMatch(sentence);
    }
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
    const other = await openInExcel(browser, { sets });
    await other.addin.locator("fluent-button", { hasText: LIST }).click();
    await expect
      .poll(() => other.addin.locator("#tools [role=status]").textContent())
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
    const late = await openInExcel(browser, { hostScriptMayArrive });
    await late.addin.locator("#DUE > summary").click();
    expect(await late.addin.locator("#DUE output").first().textContent()).toBe("4/15/2026");
    expect(await late.addin.locator("#outside").textContent()).toMatch(/^Connecting to Excel/);
    expect(await late.addin.locator("#DUE fluent-button").count()).toBe(0);
    arrive();
    await late.addin.locator("#DUE fluent-button").first().click();
    await expect
      .poll(() => late.addin.locator("#tools [role=status]").textContent())
      .toBe("Inserted the formula in cell A1.");
    expect(await late.addin.locator("#outside").isVisible()).toBe(false);
    await late.close();
  });
});
