import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Server } from "node:http";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newClientList } from "../../src/addin/list/newClientList";
import { calendarDate } from "../../src/calendar/calendarDate";
import { metadata } from "../contract/builtAddIn";
import { openBrowser, openFolds, serveBuild, watchedPage, type Watched } from "./browser";
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
  await openFolds(watched.page);
  await watched.page.waitForSelector(".function");
  return watched;
}

async function faultsOfAccess(page: Page): Promise<string[]> {
  // The policy of the page blocks inline scripts, but not those of the browser's driver.
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
  it("shows every function, requests only its own files and reports no error", async () => {
    const { page, asked, complaints } = await opened();
    expect(await page.locator(".function").count()).toBe(metadata.functions.length);
    expect(await page.locator("#outside").count()).toBe(1);
    expect(await page.locator("#tools .buttons fluent-button").count()).toBe(0);
    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("answers the examples of an opened function", async () => {
    const { page, complaints } = await opened();
    await page.locator("#DUE > summary").click();
    expect(await page.locator("#DUE output").allTextContents()).toEqual([
      "4/15/2026",
      "4/17/2024",
      "6/17/2024",
      "4/15/2026",
    ]);
    expect(await page.locator("#DUE fluent-button").count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("answers the examples of all functions without an error", async () => {
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

  it("searches functions with the keyboard alone", async () => {
    const { page } = await opened();
    await page.locator("#search").focus();
    await page.keyboard.type("paper mailing");
    expect(await page.locator(".function:visible strong").allTextContents()).toEqual(["MAILTO"]);
    expect(await page.locator("#functions [role=status]").textContent()).toBe(
      `1 of ${String(metadata.functions.length)} functions`
    );
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    expect(await page.locator("#MAILTO").getAttribute("open")).not.toBeNull();
    await page.close();
  });

  it("shows the deadlines for the year entered, and a message for a year that is not covered", async () => {
    const { page } = await opened();
    await page.locator("#calendar-year").fill("2023");
    await page.locator("#calendar-state").selectOption("ME");
    await page.locator("#calendar-year").blur();
    const dates = await page.locator("#calendar tbody tr").allTextContents();
    expect(dates.find((row) => row.startsWith("Pay the tax"))).toContain("4/17/2024");
    await page.locator("#calendar-year").fill("1999");
    await page.locator("#calendar-year").blur();
    expect(await page.locator("#calendar output").textContent()).toMatch(/^#N\/A: .*1999/);
    await page.close();
  });

  it.each(["light", "dark"] as const)("is accessible in %s colors", async (colorScheme) => {
    const { page } = await opened();
    await page.emulateMedia({ colorScheme });
    await page.locator("#LINES > summary").click();
    await page.locator("#DUE > summary").click();
    expect(await faultsOfAccess(page)).toEqual([]);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(320);
    await page.close();
  });
});

describe("the page in a workbook", () => {
  it("registers every function with the host once", async () => {
    const { page, complaints } = await opened(OFFICE_HOST);
    const known = await page.evaluate(() => (globalThis as Host).standInAssociated);
    expect(known.toSorted()).toEqual(metadata.functions.map(({ id }) => id).toSorted());
    await page.waitForSelector("#tools .buttons fluent-button");
    expect(await page.locator("#outside").isVisible()).toBe(false);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("inserts an example in the selected cell, but not in one that is not empty", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.locator("#DUE > summary").click();
    const put = page.locator("#DUE fluent-button").first();
    await put.click();
    const status = page.locator("#said");
    await expect.poll(() => status.textContent()).toBe("Inserted the formula in cell A1.");
    expect((await workbookOf(page)).sheets[0]?.cells["0,0"]).toBe("=EXT.DUE(2025)");
    await put.click();
    await expect
      .poll(() => status.textContent())
      .toBe("Cell A1 is not empty. Select an empty cell.");
    await page.close();
  });

  it("adds a client list as a table, each time on a new sheet", async () => {
    const { page } = await opened(OFFICE_HOST);
    const add = page.locator("fluent-button", { hasText: "Build a client list" });
    const status = page.locator("#said");
    await add.click();
    await expect.poll(() => status.textContent()).toContain("Added the sheet Clients 2.");
    await add.click();
    await expect.poll(() => status.textContent()).toContain("Added the sheet Clients 3.");
    const { sheets } = await workbookOf(page);
    expect(sheets.map(({ name }) => name)).toEqual(["Clients", "Clients 2", "Clients 3"]);
    const { cells, headingRow, formats, choices } = newClientList({
      taxYear: 2025,
      asOf: calendarDate("2026-04-01"),
      assumedRate: "",
    });
    const headings = cells[headingRow - 1] ?? [];
    const made = sheets[1];
    expect(made?.frozen).toBe(headingRow);
    expect(made?.tables).toEqual([
      {
        row: headingRow - 1,
        column: 0,
        rows: cells.length - headingRow + 1,
        columns: headings.length,
      },
    ]);
    const due = headings.indexOf("Regular due date");
    expect(made?.cells[`${String(headingRow)},${String(due)}`]).toMatch(
      /^=EXT\.ROSTERROWS\(.*"Regular due date"\)$/
    );
    expect(made?.formats[String(due)]).toBe(formats[due]);
    const filer = headings.indexOf("Filer type");
    expect(made?.choices[String(filer)]).toBe(choices[filer]?.join(","));
    expect(sheets[0]?.cells).toEqual({});
    await page.close();
  });

  it("shows the calculation of a cell, also of one filled from above, and says if there is none", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.waitForSelector("#tools .buttons fluent-button");
    const show = page.locator("fluent-button", {
      hasText: "Show the calculation for the selected cell",
    });
    const status = page.locator("#said");
    await show.click();
    await expect.poll(() => status.textContent()).toMatch(/^Cell A1 has no formula/);
    await page.evaluate(() => {
      const { standInWorkbook: book } = globalThis as Host;
      Object.assign(book.sheets[0]?.cells ?? {}, {
        "1,7": "=EXT.CHARGES(B2:B9,E2:E9,F2:F9,H2:H9,I2:I9)",
      });
      book.active = { sheet: "Clients", row: 3, column: 7 };
      book.spilledFrom = { row: 1, column: 7 };
    });
    await show.click();
    await expect.poll(() => status.textContent()).toBe("Added the sheet Calculation H4.");
    const { sheets } = await workbookOf(page);
    expect(Object.values(sheets.at(-1)?.cells ?? {})).toContain(
      "=EXT.CHARGELINES('Clients'!B4,'Clients'!E4,'Clients'!F4,'Clients'!H4,'Clients'!I4)"
    );
    await page.close();
  });

  it("says so if Excel does not make the change", async () => {
    const { page } = await opened(OFFICE_HOST);
    await page.waitForSelector("#tools .buttons fluent-button");
    await page.evaluate(() => {
      (globalThis as Host).standInWorkbook.refuse = true;
    });
    await page.locator("fluent-button", { hasText: "Build a client list" }).click();
    await expect
      .poll(() => page.locator("#said").textContent())
      .toBe(
        "Excel could not make the change (GeneralException). Try again. If it fails again, save the workbook and restart Excel."
      );
    await page.close();
  });
});
