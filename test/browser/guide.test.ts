import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Server } from "node:http";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { metadata } from "../contract/builtAddIn";
import { openBrowser, serveBuild, watchedPage, type Watched } from "./browser";
import { OFFICE_HOST } from "./officeHost";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface StandInSheet {
  readonly name: string;
  readonly cells: Readonly<Record<string, unknown>>;
  readonly tables: readonly Readonly<Record<string, number>>[];
  readonly formats: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly frozen?: number;
}
interface StandInWorkbook {
  sheets: StandInSheet[];
  active: { sheet: string; row: number; column: number };
  spilledFrom: { row: number; column: number } | null;
  refuse: boolean;
}
type Host = typeof globalThis & {
  standInWorkbook: StandInWorkbook;
  standInAssociated: string[];
};

let browser: Browser;
let server: Server;
let address: string;

beforeAll(async () => {
  browser = await openBrowser();
  ({ server, address } = await serveBuild());
}, 60_000);
afterAll(async () => {
  await browser.close();
  server.close();
});

async function opened(hostScript?: string): Promise<Watched> {
  const watched = await watchedPage(browser, address, hostScript);
  await watched.page.goto(`${address}addin.html`);
  await watched.page.waitForSelector(".function");
  return watched;
}

async function faultsOfAccess(page: Page): Promise<string[]> {
  // the page's own policy keeps written-in scripts out, but not those of the browser's driver
  await page.evaluate(axe);
  const results = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run()
  );
  return results.violations.map(
    ({ id, nodes }) =>
      `${id}: ${nodes
        .map(({ html }) => html)
        .join(" ")
        .slice(0, 300)}`
  );
}

const workbookOf = (page: Page): Promise<StandInWorkbook> =>
  page.evaluate(() => (globalThis as Host).standInWorkbook);

describe("the page outside a workbook", () => {
  it("shows every function, asks for nothing but its own files and complains of nothing", async () => {
    const { page, asked, complaints } = await opened();
    expect(await page.locator(".function").count()).toBe(metadata.functions.length);
    expect(await page.locator("#outside").count()).toBe(1);
    expect(await page.locator("#tools button").count()).toBe(0);
    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("answers the examples of a function that is opened", async () => {
    const { page, complaints } = await opened();
    await page.locator("#DUE > summary").click();
    expect(await page.locator("#DUE output").allTextContents()).toEqual([
      "2026-04-15",
      "2024-04-17",
      "2024-06-17",
    ]);
    expect(await page.locator("#DUE button").count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("answers the examples of all functions without a fault", async () => {
    const { page, asked, complaints } = await opened();
    await page.evaluate(() => {
      for (const entry of document.querySelectorAll("details")) entry.open = true;
    });
    const answers = page.locator(".example output, .example table");
    expect(await answers.count()).toBeGreaterThanOrEqual(metadata.functions.length);
    expect(await page.locator(".example .error").allTextContents()).toEqual([]);
    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("finds functions by what is typed, by keyboard alone", async () => {
    const { page } = await opened();
    await page.locator("#search").focus();
    await page.keyboard.type("post office box");
    expect(await page.locator(".function:visible strong").allTextContents()).toEqual(["MAILTO"]);
    expect(await page.locator("#functions [role=status]").textContent()).toBe(
      `1 of ${String(metadata.functions.length)} functions`
    );
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.locator("#MAILTO").getAttribute("open")).not.toBeNull();
    await page.close();
  });

  it("shows the dates of the year that is chosen, and a sentence for one that is not held", async () => {
    const { page } = await opened();
    await page.locator("#calendar-year").fill("2023");
    await page.locator("#calendar-state").selectOption("ME");
    await page.locator("#calendar-year").blur();
    const dates = await page.locator("#calendar tbody tr").allTextContents();
    expect(dates.find((row) => row.startsWith("Pay the tax"))).toContain("2024-04-17");
    await page.locator("#calendar-year").fill("1999");
    await page.locator("#calendar-year").blur();
    expect(await page.locator("#calendar output").textContent()).toMatch(/^#N\/A: .*1999/);
    await page.close();
  });

  it.each(["light", "dark"] as const)(
    "is open to all readers, in the %s colors",
    async (colorScheme) => {
      const { page } = await opened();
      await page.emulateMedia({ colorScheme });
      await page.locator("#LINES > summary").click();
      await page.locator("#DUE > summary").click();
      expect(await faultsOfAccess(page)).toEqual([]);
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(width).toBeLessThanOrEqual(320);
      await page.close();
    }
  );
});

describe("the page in a workbook", () => {
  it("makes every function known to the host, once", async () => {
    const { page, complaints } = await opened(OFFICE_HOST);
    const known = await page.evaluate(() => (globalThis as Host).standInAssociated);
    expect(known.toSorted()).toEqual(metadata.functions.map(({ id }) => id).toSorted());
    await page.waitForSelector("#tools button");
    expect(await page.locator("#outside").count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("puts an example in the selected cell, and not in one that is taken", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.locator("#DUE > summary").click();
    const put = page.locator("#DUE button").first();
    await put.click();
    const status = page.locator("#tools [role=status]");
    await expect.poll(() => status.textContent()).toBe("Put it in A1.");
    expect((await workbookOf(page)).sheets[0]?.cells["0,0"]).toBe("=EXT.DUE(2025)");
    await put.click();
    await expect.poll(() => status.textContent()).toBe("A1 is not empty; select an empty cell.");
    await page.close();
  });

  it("builds a client list as a table on a sheet of its own, each time another", async () => {
    const { page } = await opened(OFFICE_HOST);
    const build = page.getByRole("button", { name: "Build a client list" });
    const status = page.locator("#tools [role=status]");
    await build.click();
    await expect.poll(() => status.textContent()).toContain("Extension clients.");
    await build.click();
    await expect.poll(() => status.textContent()).toContain("Extension clients 2.");
    const { sheets } = await workbookOf(page);
    expect(sheets.map(({ name }) => name)).toEqual([
      "Clients",
      "Extension clients",
      "Extension clients 2",
    ]);
    const made = sheets[1];
    expect(made?.frozen).toBe(3);
    expect(made?.tables).toEqual([{ row: 2, column: 0, rows: 2, columns: 23 }]);
    expect(made?.cells["2,0"]).toBe("Client");
    expect(made?.cells["3,15"]).toBe("=EXT.DUE(B4,C4,D4,N4,O4)");
    expect(made?.formats["15"]).toBe("yyyy-mm-dd");
    expect(made?.choices["3"]).toBe("resident,abroad,nonresident");
    expect(sheets[0]?.cells).toEqual({});
    await page.close();
  });

  it("shows the working of a cell, of one filled from above too, and says where there is none", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.waitForSelector("#tools button");
    const show = page.getByRole("button", { name: "Show the working of the selected cell" });
    const status = page.locator("#tools [role=status]");
    await show.click();
    await expect.poll(() => status.textContent()).toMatch(/^A1 holds no formula/);
    await page.evaluate(() => {
      const { standInWorkbook: book } = globalThis as Host;
      Object.assign(book.sheets[0]?.cells ?? {}, {
        "1,7": "=EXT.CHARGES(B2:B9,E2:E9,F2:F9,H2:H9,I2:I9)",
      });
      book.active = { sheet: "Clients", row: 3, column: 7 };
      book.spilledFrom = { row: 1, column: 7 };
    });
    await show.click();
    await expect.poll(() => status.textContent()).toBe("Added the sheet Working H4.");
    const { sheets } = await workbookOf(page);
    expect(sheets.at(-1)?.cells["2,0"]).toBe(
      "=EXT.CHARGELINES('Clients'!B4,'Clients'!E4,'Clients'!F4,'Clients'!H4,'Clients'!I4)"
    );
    await page.close();
  });

  it("says so when the workbook does not take it", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.waitForSelector("#tools button");
    await page.evaluate(() => {
      (globalThis as Host).standInWorkbook.refuse = true;
    });
    await page.getByRole("button", { name: "Build a client list" }).click();
    await expect
      .poll(() => page.locator("#tools [role=status]").textContent())
      .toBe("The workbook did not take it. End any cell editing and try again.");
    await page.close();
  });
});
