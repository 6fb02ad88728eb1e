import type { AddressInfo } from "node:net";
import type { Browser, CDPSession, Frame, Page } from "playwright-core";
import { serveSheet } from "../../src/demo/serve/sheetServer";
import { openBrowser, serveBuild } from "../browser/browser";
import { openInExcel } from "../browser/officeRuntime/inExcel";
import type { ModelCell } from "../browser/officeRuntime/workbookModel";
import { clientColumns, clientList } from "./columns";

/** What the pane and the functions take in Chromium. A time in milliseconds is by the clock of the page, but for the loading. */
export interface BrowserTimes {
  /** From the request of the pane's page until it shows the client of the selected row, in front of a model of Excel. */
  readonly opened: number;
  /** The same of the page of the demo sheet, whose grid loads first. */
  readonly demoOpened: number;
  /** From the event of another selected row until the pane shows its four figures. */
  readonly followed: number;
  /** CHARGES of a row after a few runs, in microseconds. */
  readonly charges: number;
  /** Processor time of the page for loading the functions, in milliseconds. */
  readonly loading: number;
}

const TRIES = 7;
const ROWS = 10_000;

function median(times: readonly number[]): number {
  return times.toSorted((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** The median of a few measurements, one after the other. */
async function medianOf(measure: () => Promise<number>): Promise<number> {
  const times: number[] = [];
  for (let count = 0; count < TRIES; count += 1) times.push(await measure());
  return median(times);
}

// What runs in the pages is text: the compiler of this script adds names to functions that the pages do not know.

/** Notes in a page when an element is there first, also in the shadow tree of the pane. */
const noteFirst = (selector: string): string => `(() => {
  const watched = new WeakSet();
  const look = () => {
    const tree = document.querySelector("#guide-content")?.shadowRoot;
    if (tree) watch(tree);
    if ((tree ?? document).querySelector(${JSON.stringify(selector)})) globalThis.firstSeen ??= performance.now();
  };
  const watch = (root) => {
    if (watched.has(root)) return;
    watched.add(root);
    new MutationObserver(look).observe(root, { subtree: true, childList: true });
  };
  watch(document);
})();`;

async function firstSeen(where: Page | Frame): Promise<number> {
  const found = await where.waitForFunction("globalThis.firstSeen", undefined, { timeout: 60_000 });
  return (await found.jsonValue()) as number;
}

async function openedInExcel(browser: Browser): Promise<number> {
  const filled = clientList(47).flatMap((line, row) =>
    line.map((formula, column) => [`${row},${column}`, { formula }] as const)
  );
  const cells = Object.fromEntries(filled.filter(([, { formula }]) => formula !== ""));
  const excel = await openInExcel(browser, {
    cells: cells as Record<string, ModelCell>,
    firstScript: noteFirst("#client .four"),
  });
  try {
    return await firstSeen(excel.addin);
  } finally {
    await excel.close();
  }
}

/** Opens the demo sheet, notes when its pane is there, and works on the page. */
async function inDemo<Result>(
  browser: Browser,
  work: (page: Page) => Promise<Result>
): Promise<Result> {
  const server = await serveSheet(0);
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    await page.addInitScript({ content: noteFirst("#client-title") });
    await page.goto(`http://127.0.0.1:${String((server.address() as AddressInfo).port)}/`);
    return await work(page);
  } finally {
    await page.close();
    server.close();
  }
}

/**
 * Selects rows of the client list in the demo sheet one after the other, and notes how long the pane takes for each. The first row only
 * shows the sheet, whose selected row may be the one that the pane shows already.
 */
const FOLLOW_ROWS = `(async () => {
  const { api } = demoSheet.grid;
  const sheet = api.getActiveWorkbook().getSheetByName("Clients");
  const pane = document.querySelector("#guide-content").shadowRoot;
  const shown = () => pane.querySelector("#client .place")?.textContent ?? "no client";
  const showsRow = (row) =>
    shown().startsWith("Clients, row " + row + " ") &&
    pane.querySelectorAll("#client .four dd").length === 4;
  const rest = () => new Promise((resolve) => setTimeout(resolve, 2_000));
  const select = (row) => { sheet.getRange("A" + row).activate(); };
  api.getActiveWorkbook().setActiveSheet(sheet);
  await rest();
  select(2);
  const times = [];
  for (let row = 3; row < 3 + ${String(TRIES)}; row += 1) {
    await rest();
    times.push(await new Promise((resolve, reject) => {
      let told;
      const event = api.addEvent(api.Event.SelectionChanged, () => { told ??= performance.now(); });
      const observer = new MutationObserver(() => {
        if (told === undefined || !showsRow(row)) return;
        observer.disconnect();
        event.dispose();
        resolve(performance.now() - told);
      });
      observer.observe(pane, { subtree: true, childList: true, characterData: true });
      setTimeout(() => reject(new Error("Row " + row + " is selected; the pane shows " + shown())), 20_000);
      select(row);
    }));
  }
  return times;
})()`;

async function followed(page: Page): Promise<number> {
  await page.waitForSelector("body[data-ready]", { timeout: 90_000 });
  return median(await page.evaluate<number[]>(FOLLOW_ROWS));
}

const HOST = `globalThis.functions = {};
globalThis.CustomFunctions = { associate: (id, work) => { functions[id] = work; } };`;

/** Processor time of the page's thread so far, in milliseconds. */
async function threadTime(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN) * 1000;
}

/** Processor time in which a page without history loads the functions. */
async function loaded(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    await page.addInitScript({ content: HOST });
    await page.goto(`${address}icons/icon-16.png`);
    const session = await context.newCDPSession(page);
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
    const before = await threadTime(session);
    await page.addScriptTag({ url: `${address}functions.js` });
    return (await threadTime(session)) - before;
  } finally {
    await context.close();
  }
}

/** CHARGES of a column after a few runs, in microseconds for a row. */
async function chargesPerRow(browser: Browser, address: string): Promise<number> {
  const page = await browser.newPage();
  try {
    await page.addInitScript({ content: HOST });
    await page.goto(`${address}icons/icon-16.png`);
    await page.addScriptTag({ url: `${address}functions.js` });
    const times = await page.evaluate<number[]>(`(() => {
      const cells = ${JSON.stringify(Object.values(clientColumns(ROWS)))};
      return Array.from({ length: ${String(2 * TRIES)} }, () => {
        const begun = performance.now();
        functions.CHARGES(...cells);
        return performance.now() - begun;
      });
    })()`);
    return (median(times.slice(TRIES)) / ROWS) * 1000;
  } finally {
    await page.close();
  }
}

/** Measures the pane and the functions in Chromium. */
export async function browserTimes(): Promise<BrowserTimes> {
  const browser = await openBrowser();
  const { server, address } = await serveBuild();
  try {
    return {
      opened: await medianOf(() => openedInExcel(browser)),
      demoOpened: await medianOf(() => inDemo(browser, firstSeen)),
      followed: await inDemo(browser, followed),
      charges: await chargesPerRow(browser, address),
      loading: await medianOf(() => loaded(browser, address)),
    };
  } finally {
    await browser.close();
    server.close();
  }
}
