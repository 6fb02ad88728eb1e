import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Workbook } from "@cj-tech-master/excelts";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serial } from "../functions/sheet";
import { openSheet } from "./openSheet";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** As much of the grid library's own interface as the tests read and steer it by: it draws its cells on a canvas. */
interface GridRange {
  activate(): void;
  getValues(): unknown[][];
  getFormula(): string;
  setValues(values: unknown[][]): void;
  getCellRect(): { x: number; y: number; right: number; bottom: number };
}
interface GridSheet {
  getSheetName(): string;
  getRange(address: string): GridRange;
  getActiveRange(): { getA1Notation(): string } | null;
  getDataRange(): GridRange;
}
interface GridBook {
  getSheets(): GridSheet[];
  getSheetByName(name: string): GridSheet | null;
  getActiveSheet(): GridSheet;
  setActiveSheet(sheet: GridSheet): void;
  create(name: string, rows: number, columns: number): GridSheet;
}
type DemoPage = typeof globalThis & {
  demoSheet: { grid: { api: { getActiveWorkbook(): GridBook } } };
};

let page: Page;
let asked: readonly string[];
let complaints: readonly string[];
let close: () => Promise<void>;

beforeAll(async () => {
  ({ page, asked, complaints, close } = await openSheet());
}, 300_000);
afterAll(async () => {
  await close();
});

const values = (sheet: string, address: string): Promise<unknown[][]> =>
  page.evaluate(
    ([name = "", cells = ""]) =>
      (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getSheetByName(name)
        ?.getRange(cells)
        .getValues() ?? [],
    [sheet, address]
  );
const cell = async (sheet: string, address: string): Promise<unknown> =>
  (await values(sheet, address))[0]?.[0];

/** An empty sheet of its own for a test, shown and with its first cell selected. */
async function newSheet(name: string): Promise<void> {
  await page.evaluate((called) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    const sheet = book.create(called, 60, 20);
    book.setActiveSheet(sheet);
    sheet.getRange("A1").activate();
  }, name);
  await page.waitForTimeout(300);
}

/** Where a cell lies on the page. */
function placeOf(
  address: string
): Promise<{ x: number; y: number; right: number; bottom: number }> {
  return page.evaluate((cells) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    const rect = book.getActiveSheet().getRange(cells).getCellRect();
    const canvas = document.querySelector("#grid canvas[id^=univer-sheet-main]");
    const { x = 0, y = 0 } = canvas?.getBoundingClientRect() ?? {};
    return { x: x + rect.x, y: y + rect.y, right: x + rect.right, bottom: y + rect.bottom };
  }, address);
}

async function select(address: string): Promise<void> {
  const { x, y } = await placeOf(address);
  await page.mouse.click(x + 6, y + 6);
  await page.waitForTimeout(200);
}

/** Selects a cell that may lie beyond what is seen. */
async function goTo(address: string): Promise<void> {
  await page.evaluate((cells) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    book.getActiveSheet().getRange(cells).activate();
  }, address);
  await page.waitForTimeout(200);
}

/** Whether the grid has taken a cell as the selected one. */
function isSelected(address: string): Promise<boolean> {
  return page.evaluate((cells) => {
    const sheet = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook().getActiveSheet();
    return sheet.getActiveRange()?.getA1Notation() === cells;
  }, address);
}

/** Types into a cell, once more where the grid was not listening yet, or took Enter for a function of the list that it offers. */
async function type(address: string, text: string): Promise<void> {
  await expect
    .poll(
      async () => {
        await select(address);
        if (!(await isSelected(address))) return false;
        await page.keyboard.type(text);
        await page.keyboard.press("Enter");
        await page.waitForTimeout(500);
        const [formula, value] = await page.evaluate((cells) => {
          const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
          const range = book.getActiveSheet().getRange(cells);
          return [range.getFormula(), range.getValues()[0]?.[0]] as const;
        }, address);
        return text.startsWith("=") ? formula === text : formula !== "" || value !== null;
      },
      { interval: 1_000 }
    )
    .toBe(true);
}

/** A date that a cell shows, in ISO form whatever its number format. */
const isoDate = (shown: unknown): string =>
  String(shown).replace(
    /^(\d+)\/(\d+)\/(\d{4})$/,
    (_date, month: string, day: string, year: string) =>
      `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`
  );
const dateIn = async (sheet: string, address: string): Promise<string> =>
  isoDate(await cell(sheet, address));
const sheetNames = (): Promise<string[]> =>
  page.evaluate(() =>
    (globalThis as DemoPage).demoSheet.grid.api
      .getActiveWorkbook()
      .getSheets()
      .map((sheet) => sheet.getSheetName())
  );

const status = (): Promise<string> =>
  page
    .locator("#cell-status")
    .textContent()
    .then((text) => text ?? "");

async function sheetFile(): Promise<Buffer> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Mine");
  sheet.getCell("A1").value = 2023;
  sheet.getCell("B1").value = "ME";
  sheet.getCell("C1").value = { formula: "_xldudf_EXT_DUE(A1,B1)", result: 0 };
  sheet.getCell("C2").value = { formula: "_xlfn.CONCAT(A1,B1)", result: "" };
  sheet.getCell("A3").value = "bold";
  sheet.getCell("A3").font = { bold: true };
  return Buffer.from((await workbook.xlsx.writeBuffer()) as unknown as ArrayBuffer);
}

describe("the demo sheet", () => {
  it("opens the sample with a result in every cell", async () => {
    await expect.poll(() => cell("Season at a glance", "B10"), { timeout: 30_000 }).toBe(26);
    const shown = await page.evaluate(() =>
      (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getSheets()
        .map((sheet) => [sheet.getSheetName(), sheet.getDataRange().getValues()] as const)
    );
    expect(shown.map(([name]) => name)).toEqual(
      expect.arrayContaining([
        "Season at a glance",
        "Clients",
        "Extension request",
        "Letter",
        "Rule tables",
      ])
    );
    const isError = (value: unknown) => typeof value === "string" && /^#[A-Z/0]+[!?]?$/.test(value);
    const errors = shown.flatMap(([name, rows]) =>
      rows
        .flat()
        .filter(isError)
        .map((value) => `${name} ${String(value)}`)
    );
    expect(errors).toEqual([]);
    // the answers that the workbook library gives to the same formulas, in test/demo/seasonWorkbook.test.ts and by npm start
    await expect
      .poll(() => values("Season at a glance", "A7:B12"), { timeout: 20_000 })
      .toEqual([
        ["not requested", 5],
        ["unconfirmed", 1],
        ["rejected", 0],
        ["extended", 26],
        ["filed", 11],
        ["past due", 4],
      ]);
  });

  it("calculates a formula that is typed, and shows a date as a date", async () => {
    await newSheet("Typed");
    await type("B2", '=EXT.DUE(2023,"ME")');
    await expect.poll(() => dateIn("Typed", "B2")).toBe("2024-04-17");
  });

  it("lists our functions while one is typed, and explains its arguments", async () => {
    await newSheet("Hints");
    const offered = page.getByText("EXT.STAGE", { exact: true });
    await expect
      .poll(
        async () => {
          if ((await offered.count()) > 0) return true;
          await page.keyboard.press("Escape");
          await select("A1");
          await page.keyboard.type("=EXT.STA");
          await page.waitForTimeout(1_000);
          return (await offered.count()) > 0;
        },
        { interval: 500 }
      )
      .toBe(true);
    await page.keyboard.type("GE(");
    await expect
      .poll(() => page.getByText("requestedOn", { exact: false }).count())
      .toBeGreaterThan(0);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  it("fills a formula down with its handle", async () => {
    await newSheet("Filled");
    await page.evaluate(() => {
      const sheet = (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet();
      sheet.getRange("A1:A4").setValues([[2022], [2023], [2024], [2025]]);
    });
    await type("B1", "=EXT.EXTENDED(A1)");
    await select("B1");
    await expect
      .poll(
        async () => {
          const { right, bottom } = await placeOf("B1");
          await select("B1");
          await page.mouse.move(right, bottom);
          await page.mouse.down();
          await page.mouse.move(right - 20, bottom + 30, { steps: 4 });
          await page.mouse.move(right - 20, bottom + 65, { steps: 4 });
          await page.mouse.up();
          await page.waitForTimeout(1_000);
          return (await values("Filled", "B1:B4")).flat().map(isoDate);
        },
        { interval: 500 }
      )
      .toEqual(["2023-10-16", "2024-10-15", "2025-10-15", "2026-10-15"]);
  });

  it("fills several cells, and says which one is not empty", async () => {
    await newSheet("Spilled");
    await type("A1", "=EXT.LINES(2025,20000,15000,3000)");
    await expect.poll(() => cell("Spilled", "B4")).toMatch(/^Balance due/);
    await type("F1", "=EXT.LINES(2025,20000,15000,3000)");
    await expect.poll(() => cell("Spilled", "F4")).toBe("6");
    await type("H3", "taken");
    await expect.poll(() => cell("Spilled", "F1")).toBe("#SPILL!");
    await select("F1");
    await expect.poll(status).toMatch(/^F1 #SPILL! .*H3 is not empty\.$/);
  });

  it("shows the message of an error for its cell, also in a column", async () => {
    await newSheet("Wrong");
    await type("A1", '=EXT.DUE("soon")');
    await select("A1");
    await expect.poll(status).toMatch(/^A1 #VALUE! taxYear: "soon" is not a tax year/);
    await page.evaluate(() => {
      const sheet = (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet();
      sheet.getRange("C1:C2").setValues([[2025], [2099]]);
    });
    await type("D1", "=EXT.DUE(C1:C2)");
    await expect.poll(() => cell("Wrong", "D2")).toBe("#N/A");
    await select("D2");
    await expect.poll(status).toMatch(/^D2 #N\/A .*2099/);
  });

  it("lets the buttons of the guide work on the sheet", async () => {
    await newSheet("Costs");
    await type("B2", '=EXT.CHARGES(2025,20000,18000,"10/15/2026","10/15/2026","yes")');
    await expect.poll(() => cell("Costs", "B2")).toBe("67.12");
    await goTo("B2");
    await page.locator("#tools > summary").click();
    await page
      .locator("fluent-button", { hasText: "Show the calculation for the selected cell" })
      .click();
    await expect.poll(async () => (await sheetNames()).at(-1)).toBe("Calculation B2");
    await expect
      .poll(() => cell("Calculation B2", "A15"))
      .toBe("No failure-to-pay penalty: 90% paid, reasonable cause");
  });

  it("rejects a file that is not a workbook, and does not change the sheet", async () => {
    await page
      .locator("#file")
      .setInputFiles({ name: "notes.xlsx", mimeType: KIND, buffer: Buffer.from("only text") });
    await page.getByRole("button", { name: "Open without saving" }).click();
    await expect
      .poll(() => page.locator("#file-status").textContent())
      .toBe("notes.xlsx is not an .xlsx workbook.");
    expect(await dateIn("Typed", "B2")).toBe("2024-04-17");
  });

  it("opens a file with its formulas as typed, and saves them as Excel stores them", async () => {
    await page
      .locator("#file")
      .setInputFiles({ name: "mine.xlsx", mimeType: KIND, buffer: await sheetFile() });
    await page.getByRole("button", { name: "Open without saving" }).click();
    await expect.poll(() => dateIn("Mine", "C1")).toBe("2024-04-17");
    const formula = await page.evaluate(() =>
      (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet()
        .getRange("C1")
        .getFormula()
    );
    expect(formula).toBe("=EXT.DUE(A1,B1)");
    expect(await cell("Mine", "C2")).toBe("2023ME");
    await type("D1", "=EXT.LINES(2025,20000,15000,3000)");
    await expect.poll(() => cell("Mine", "F4")).toBe("5,000");
    const saving = page.waitForEvent("download");
    await page.locator("#save").click();
    const saved = await saving;
    expect(saved.suggestedFilename()).toBe("mine.copy.xlsx");
    const workbook = new Workbook();
    await workbook.xlsx.load(readFileSync(await saved.path()));
    const sheet = workbook.getWorksheet("Mine");
    expect(sheet?.getCell("C1").formula).toBe("_xldudf_EXT_DUE(A1,B1)");
    expect(sheet?.getCell("C1").result).toEqual(expect.anything());
    const result = sheet?.getCell("C1").result;
    expect(result instanceof Date ? serial(result.toISOString().slice(0, 10)) : result).toBe(
      serial("2024-04-17")
    );
    expect(sheet?.getCell("F4").value).toBe(5000);
    expect(sheet?.getCell("A3").font?.bold).toBe(true);
  });

  it("opens the sample again", async () => {
    await page.locator("#sample").click();
    await expect.poll(() => cell("Season at a glance", "B10"), { timeout: 20_000 }).toBe(26);
  });

  it("is accessible, except for the grid, which is a canvas of the library", async () => {
    await page.evaluate(axe);
    const results = await page.evaluate(() =>
      (globalThis as unknown as { axe: { run(where: object): Promise<AxeResults> } }).axe.run({
        exclude: [["#grid"]],
      })
    );
    const faults = results.violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .map(({ html }) => html)
          .join(" ")
          .slice(0, 300)}`
    );
    expect(faults).toEqual([]);
  });

  it("has requested nothing from other machines and logged no error", () => {
    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
