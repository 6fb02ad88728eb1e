import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import type { DemoGrid } from "./demoGrid";

/** What a task took. */
export interface TaskCount {
  readonly task: string;
  readonly clicks: number;
  readonly keystrokes: number;
}

/** A hand that clicks and types on the demo sheet as a person does, and counts. */
export class CountedHand {
  readonly counts: TaskCount[] = [];
  #clicks = 0;
  #keystrokes = 0;

  constructor(
    readonly page: Page,
    readonly grid: DemoGrid
  ) {}

  /** Does a task and notes what it took. */
  async task(name: string, work: () => Promise<void>): Promise<void> {
    this.#clicks = 0;
    this.#keystrokes = 0;
    await work();
    this.counts.push({ task: name, clicks: this.#clicks, keystrokes: this.#keystrokes });
  }

  /** Clicks in the middle of an element, or on a point of it. */
  async click(place: Locator, position?: { x: number; y: number }): Promise<void> {
    this.#clicks += 1;
    await place.click(position && { position });
  }

  /** Clicks on a cell that is seen. */
  async cell(address: string): Promise<void> {
    this.#clicks += 1;
    await this.grid.click(address);
  }

  /** Adds an empty sheet with the button of the grid, and clicks on its first cell. */
  async newSheet(): Promise<void> {
    const before = await this.grid.sheetInView();
    await this.click(this.page.locator("[data-u-comp=sheet-bar-append-button]").first());
    await expect.poll(() => this.grid.sheetInView()).not.toBe(before);
    await this.cell("A1");
  }

  /** A choice in a drop-down list: a click that opens it and a click on the option. */
  async choose(list: Locator, label: string): Promise<void> {
    this.#clicks += 2;
    await list.selectOption({ label });
  }

  async type(text: string): Promise<void> {
    this.#keystrokes += text.length;
    await this.page.keyboard.type(text);
  }

  async press(...keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      this.#keystrokes += 1;
      await this.page.keyboard.press(key);
    }
  }

  /** Types entries into the selected cell and those below it. */
  async enter(...entries: readonly string[]): Promise<void> {
    for (const entry of entries) {
      const before = await this.grid.selected();
      await this.type(entry);
      await expect.poll(() => this.grid.isEditing()).toBe(true);
      await this.press("Enter");
      await expect.poll(() => this.grid.selected()).not.toBe(before);
    }
  }

  /** Types a table from the selected cell on, each row with the Tab key from cell to cell. */
  async enterRows(rows: readonly (readonly string[])[]): Promise<void> {
    for (const row of rows) {
      for (const [index, entry] of row.entries()) {
        await this.type(entry);
        // The Enter key after the last cell leads to the first cell of the next row.
        await this.press(index < row.length - 1 ? "Tab" : "Enter");
      }
      await expect.poll(() => this.grid.isEditing()).toBe(false);
    }
  }
}
