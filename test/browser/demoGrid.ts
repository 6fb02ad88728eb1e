import type { Page } from "playwright-core";
import { expect } from "vitest";

/** As much of the grid library's own interface as the tests read it by: it draws its cells on a canvas. */
interface GridRange {
  activate(): void;
  getA1Notation(): string;
  getValues(): unknown[][];
  getDisplayValues(): string[][];
  getFormula(): string;
  setValues(values: unknown[][]): void;
  getCellRect(): { x: number; y: number };
}
interface GridSheet {
  getSheetName(): string;
  getRange(address: string): GridRange;
  getActiveRange(): GridRange | null;
  scrollToCell(row: number, column: number): void;
}
interface GridBook {
  isCellEditing(): boolean;
  getSheets(): GridSheet[];
  getSheetByName(name: string): GridSheet;
  getActiveSheet(): GridSheet;
  setActiveSheet(sheet: GridSheet): void;
  create(name: string, rows: number, columns: number): GridSheet;
}
type DemoPage = typeof globalThis & {
  demoSheet: { grid: { api: { getActiveWorkbook(): GridBook } } };
};

/** What the tests read of the grid of the demo sheet, and where its cells lie on the page. */
export class DemoGrid {
  constructor(readonly page: Page) {}

  /** What the cells of a range of the sheet in view show. */
  shown(address: string): Promise<string[][]> {
    return this.page.evaluate(
      (cells) =>
        (globalThis as DemoPage).demoSheet.grid.api
          .getActiveWorkbook()
          .getActiveSheet()
          .getRange(cells)
          .getDisplayValues(),
      address
    );
  }

  /** What a cell of the sheet in view shows. */
  async cell(address: string): Promise<string> {
    return (await this.shown(address))[0]?.[0] ?? "";
  }

  formula(address: string): Promise<string> {
    return this.page.evaluate(
      (cells) =>
        (globalThis as DemoPage).demoSheet.grid.api
          .getActiveWorkbook()
          .getActiveSheet()
          .getRange(cells)
          .getFormula(),
      address
    );
  }

  selected(): Promise<string> {
    return this.page.evaluate(
      () =>
        (globalThis as DemoPage).demoSheet.grid.api
          .getActiveWorkbook()
          .getActiveSheet()
          .getActiveRange()
          ?.getA1Notation() ?? ""
    );
  }

  isEditing(): Promise<boolean> {
    return this.page.evaluate(() =>
      (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook().isCellEditing()
    );
  }

  sheetInView(): Promise<string> {
    return this.page.evaluate(() =>
      (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet()
        .getSheetName()
    );
  }

  /** Shows a sheet without a click, as preparation of a test. */
  async show(name: string): Promise<void> {
    await this.page.evaluate((wanted) => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      const sheet = book.getSheetByName(wanted);
      book.setActiveSheet(sheet);
      sheet.scrollToCell(0, 0);
    }, name);
    await expect.poll(() => this.sheetInView()).toBe(name);
    // The grid draws the sheet, and finds its cells under the mouse, a little later.
    await this.page.waitForTimeout(500);
  }

  /** An empty sheet, shown. */
  async newSheet(name: string, cells: unknown[][] = []): Promise<void> {
    await this.page.evaluate(
      ([called, content]) => {
        const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
        const sheet = book.create(called, 60, 30);
        book.setActiveSheet(sheet);
        const width = content[0]?.length ?? 0;
        const last = `${String.fromCharCode(64 + width)}${String(content.length)}`;
        if (width > 0) sheet.getRange(`A1:${last}`).setValues(content);
      },
      [name, cells] as const
    );
    await expect.poll(() => this.sheetInView()).toBe(name);
    await this.page.waitForTimeout(300);
  }

  /** A point within a cell, on the page. */
  place(address: string): Promise<{ x: number; y: number }> {
    return this.page.evaluate((cells) => {
      const sheet = (globalThis as DemoPage).demoSheet.grid.api
        .getActiveWorkbook()
        .getActiveSheet();
      const rect = sheet.getRange(cells).getCellRect();
      const canvas = document.querySelector("#grid canvas[id^=univer-sheet-main]");
      const { x = 0, y = 0 } = canvas?.getBoundingClientRect() ?? {};
      return { x: x + rect.x + 6, y: y + rect.y + 6 };
    }, address);
  }

  /** Clicks on a cell that is seen. */
  async click(address: string): Promise<void> {
    await expect
      .poll(
        async () => {
          const { x, y } = await this.place(address);
          await this.page.mouse.click(x, y);
          await this.page.waitForTimeout(100);
          return this.selected();
        },
        { interval: 300 }
      )
      .toBe(address);
  }

  /** The id of the element with the focus, also inside the pane: `grid` for a cell. */
  focused(): Promise<string> {
    return this.page.evaluate(() => {
      let found = document.activeElement;
      const path = [];
      while (found) {
        const isCell = found instanceof HTMLElement && found.dataset["uComp"] === "editor";
        path.push(isCell ? "grid" : found.id || found.tagName.toLowerCase());
        found = found.shadowRoot?.activeElement ?? null;
      }
      return path.join(" ");
    });
  }
}
