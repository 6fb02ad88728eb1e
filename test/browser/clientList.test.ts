import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { lookOf, USUAL_ANSWERS } from "../../src/addin/list/listColumns";
import { pixelsOfWidth } from "../../src/demo/sheet/sheetSizes";
import { roster } from "../../src/functions/season/roster";
import { columnLetters } from "../../src/host/cellAddress";
import { inventedLists, keptLists } from "../fixtures/invented/clientLists";
import { isLongRun } from "../soak/runLength";
import { openSheet } from "./openSheet";

/** As much of the grid library's own interface as the tests read it by: it draws its cells on a canvas. */
interface GridRange {
  activate(): void;
  getRawValues(): unknown[][];
  getFormula(): string;
  getCellRect(): { x: number; y: number };
}
interface GridSheet {
  getRange(address: string): GridRange;
  getActiveRange(): { getA1Notation(): string } | null;
  getColumnWidth(column: number): number;
}
interface GridBook {
  getActiveSheet(): GridSheet;
  getSheetByName(name: string): GridSheet | null;
  create(name: string, rows: number, columns: number): GridSheet;
  setActiveSheet(sheet: GridSheet): void;
  undo(): void;
}
type DemoPage = typeof globalThis & {
  demoSheet: { grid: { api: { getActiveWorkbook(): GridBook } } };
};

let page: Page;
let complaints: readonly string[];
let close: () => Promise<void>;

beforeAll(async () => {
  ({ page, complaints, close } = await openSheet());
  await page.locator("#tools > summary").click();
}, 300_000);
afterAll(async () => {
  await close();
});

const values = (address: string): Promise<unknown[][]> =>
  page.evaluate(
    (cells) =>
      (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet()
        .getRange(cells)
        .getRawValues(),
    address
  );

/** An empty sheet of its own, shown. */
async function newSheet(name: string): Promise<void> {
  await page.evaluate((called) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    book.setActiveSheet(book.create(called, 60, 40));
  }, name);
  await page.waitForTimeout(300);
}

/** Clicks a cell, and says whether the grid has taken it as the selected one. */
async function select(address: string): Promise<boolean> {
  const { x, y } = await page.evaluate((cells) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    const rect = book.getActiveSheet().getRange(cells).getCellRect();
    const canvas = document.querySelector("#grid canvas[id^=univer-sheet-main]");
    const { x: left = 0, y: top = 0 } = canvas?.getBoundingClientRect() ?? {};
    return { x: left + rect.x, y: top + rect.y };
  }, address);
  await page.mouse.click(x + 6, y + 6);
  await page.waitForTimeout(150);
  return page.evaluate((cells) => {
    const sheet = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook().getActiveSheet();
    return sheet.getActiveRange()?.getA1Notation() === cells;
  }, address);
}

/** Types a text as a person does, with Alt+Enter for a new line in the cell. */
async function typeText(text: string): Promise<void> {
  for (const [index, line] of text.split("\n").entries()) {
    if (index > 0) await page.keyboard.press("Alt+Enter");
    await page.keyboard.type(line);
  }
}

/** Selects a cell that may be beyond what is seen. */
async function goTo(address: string): Promise<void> {
  await page.evaluate((cells) => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    book.getActiveSheet().getRange(cells).activate();
  }, address);
  await page.waitForTimeout(200);
}

/** Types a list, each row from its first cell with Tab to the next. */
async function typeList(cells: readonly (readonly unknown[])[]): Promise<void> {
  await expect.poll(() => select("A1")).toBe(true);
  for (const [row, line] of cells.entries()) {
    await goTo(`A${row + 1}`);
    for (const cell of line) {
      await typeText(String(cell));
      await page.keyboard.press("Tab");
    }
    await page.waitForTimeout(100);
  }
}

const press = (name: string): Promise<void> =>
  page.locator("fluent-button", { hasText: name }).click();
const status = () => expect.poll(() => page.locator("#said").textContent());
const enter = (field: string, text: string): Promise<void> => page.locator(`#${field}`).fill(text);
const chosen = USUAL_ANSWERS.map((heading) => [heading]);
/** An answer as the grid keeps it: an error is its code. The grid leaves line breaks of a heading out of what it passes on. */
const kept = (cell: unknown): unknown => {
  if (typeof cell === "object" && cell !== null) return "#VALUE!";
  if (cell === "") return null;
  return typeof cell === "string" ? cell.replace(/\s+/g, "") : cell;
};
/** The list that is typed among the tests. */
const TYPED_AMONG_TESTS = /in a hurry/;
/** What the library of the grid logs when a line break is typed. */
const OF_THE_LIBRARY = "The column width is less than 0";

describe("the tool for client lists in the demo sheet", () => {
  const lists = [...inventedLists, ...keptLists].map((list, index) => ({
    ...list,
    sheet: `L${index}`,
  }));
  // Typing takes a second a row. The others are typed in the long run, and are read by Microsoft's script among the tests.
  it.each(isLongRun ? lists : lists.filter(({ title }) => TYPED_AMONG_TESTS.test(title)))(
    "writes the answers of ROSTER beside a list that is typed: $title",
    async ({ cells, sheet }) => {
      await newSheet(sheet);
      await typeList(cells);
      await goTo("A2");
      await press("Use my list");
      await status().toMatch(/^Check how your headings are read/);
      await enter("list-year", "2025");
      await enter("as-of", "2026-04-20");
      await press("Write the answers");
      await status().toMatch(/^Added 12 columns in /);
      const expected = roster(cells as unknown[][], 2025, "4/20/2026", "", chosen);
      const width = cells[0]?.length ?? 0;
      const place = `${columnLetters(width + 1)}1:${columnLetters(width + 12)}${cells.length}`;
      const shown = async (): Promise<unknown> =>
        (await values(place)).map((line) => line.map(kept));
      await expect.poll(shown, { timeout: 20_000 }).toEqual(expected.map((line) => line.map(kept)));
    }
  );

  it("lists what cannot be read, jumps to it, and adds up the rest", async () => {
    await newSheet("Faults");
    await typeList([
      ["Name", "ST", "Total tax", "W/H", "Fee"],
      ["Abbott", "Maine", 12400, 10000, 450],
      ["Chavez", "Texass", 60000, "n/a", 900],
      ["Total", "", 72400, 10000, 1350],
    ]);
    await expect.poll(() => select("B2")).toBe(true);
    await press("Use my list");
    const panel = page.locator("#client-list section");
    await expect.poll(() => panel.locator(".faults li").count()).toBe(2);
    expect(await panel.locator(".totals dd").allTextContents()).toEqual([
      "2",
      "$2,400.00",
      "$2,400.00",
    ]);
    expect(await panel.textContent()).toContain("1 row is left out of the totals");
    expect(await panel.textContent()).toContain("Check: it looks like money");
    await press("D3");
    await status().toBe("Selected cell D3.");
    await expect.poll(() => select("D3")).toBe(true);
    await page.keyboard.type("50000");
    await page.keyboard.press("Enter");
    await expect.poll(() => panel.locator(".faults li").count(), { timeout: 5_000 }).toBe(1);
    await expect
      .poll(() => panel.locator(".totals dd").allTextContents())
      .toEqual(["2", "$12,400.00", "$12,400.00"]);
  });

  it("updates its own columns a second time, and Undo takes the change back in the steps it says", async () => {
    await newSheet("Again");
    await typeList([
      ["Client", "Total tax", "Payments"],
      ["Alder", 20000, 15000],
    ]);
    await expect.poll(() => select("A2")).toBe(true);
    await press("Use my list");
    await enter("as-of", "2026-04-01");
    await press("Write the answers");
    const said = page.locator("#said");
    await status().toMatch(
      /^Added 12 columns in D1:O2\. Select Undo \d times to take this back\.$/
    );
    const widthOf = (column: string): Promise<number> =>
      page.evaluate(
        (index) =>
          (globalThis as DemoPage).demoSheet.grid.api
            .getActiveWorkbook()
            .getActiveSheet()
            .getColumnWidth(index),
        column.charCodeAt(0) - "A".charCodeAt(0)
      );
    // Next deadline is a sentence, and Balance due an amount.
    expect(await widthOf("L")).toBe(pixelsOfWidth(lookOf("Next deadline").width));
    expect(await widthOf("F")).toBeLessThan(await widthOf("L"));
    const steps = Number(/Undo (\d)/.exec((await said.textContent()) ?? "")?.[1]);
    await expect.poll(() => values("F2")).toEqual([[5000]]);
    await expect.poll(() => select("A2")).toBe(true);
    for (let step = 0; step < steps; step++) {
      await page.keyboard.press("Control+z");
      await page.waitForTimeout(500);
    }
    expect(await values("A1:F2")).toEqual([
      ["Client", "Total tax", "Payments", null, null, null],
      ["Alder", 20000, 15000, null, null, null],
    ]);
    await press("Use my list");
    await press("Write the answers");
    await status().toMatch(/^Added 12 columns in D1:O2\./);
    await enter("as-of", "2026-05-01");
    await press("Write the answers");
    await status().toMatch(/^Updated 12 columns in D1:O2\./);
    await expect
      .poll(() => values("J2:L2"))
      .toEqual([["past due", -16, "file now (was due 4/15/2026)"]]);
    expect(await values("P1:P2")).toEqual([[null], [null]]);
  });

  it("writes nothing over a cell of the user", async () => {
    await newSheet("Taken");
    await typeList([
      ["Client", "Total tax", "Payments", "", "Mine"],
      ["Alder", 20000, 15000, "", "kept"],
    ]);
    await expect.poll(() => select("A2")).toBe(true);
    await press("Use my list");
    await press("Write the answers");
    await status().toBe(
      "Cell E1 to the right of the list is not empty. Insert columns beside the list, then try again."
    );
    expect(await values("D1:E2")).toEqual([
      [null, "Mine"],
      [null, "kept"],
    ]);
  });

  it("says that an empty cell is in no list", async () => {
    await newSheet("Empty");
    await expect.poll(() => select("C5")).toBe(true);
    await press("Use my list");
    await status().toBe("The selected cell is not in a list. Select a cell of your client list.");
  });

  it("builds a client list that calculates a client typed into its second row", async () => {
    await enter("as-of", "2026-04-01");
    await enter("list-year", "2025");
    await press("Build a client list");
    await status().toMatch(/^Added the sheet Clients 2\./);
    await expect
      .poll(() => values("A4:F6"), { timeout: 20_000 })
      .toEqual(
        [
          ["Example", "not requested", "request or file, and pay, by 4/15/2026", 14, 5000, 5000],
          [null, "", "", "", "", ""],
          [null, "", "", "", "", ""],
        ].map((line) => line.map((cell) => cell))
      );
    await expect.poll(() => select("A5")).toBe(true);
    await page.keyboard.type("Birch");
    await page.keyboard.press("Enter");
    await goTo("O5");
    await page.keyboard.type("9000");
    await page.keyboard.press("Tab");
    await page.keyboard.type("9,500");
    await page.keyboard.press("Enter");
    await expect
      .poll(() => values("B5:F5"), { timeout: 20_000 })
      .toEqual([["not requested", "request or file, and pay, by 4/15/2026", 14, 0, 0]]);
  });

  it("has logged no error", () => {
    expect(complaints.filter((one) => !one.startsWith(OF_THE_LIBRARY))).toEqual([]);
  });
});
