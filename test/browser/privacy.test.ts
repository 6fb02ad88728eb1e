import type { Server } from "node:http";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { built, runBundle } from "../contract/builtAddIn";
import { answersOf, calls } from "../contract/calls";
import { OFFICE_ADDRESS, openBrowser, serveBuild, watchedPage, type Watched } from "./browser";
import { OFFICE_HOST } from "./officeHost";
import { REACH_RECORDER } from "./reachRecorder";

type Recorded = typeof globalThis & { reached: string[] };
type Host = typeof globalThis & { standInWorkbook: { sheets: unknown[] } };
type Asked = typeof globalThis & { answers: string[]; used: string[] };

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

/** The stand-in of the page without a host, which here keeps the functions it is given. */
const FUNCTIONS_HOST = `${built("outside.js")}
globalThis.known = new Map();
CustomFunctions.associate = (id, answer) => known.set(id, answer);`;

/** Makes every call, and notes what was reached for until then. */
const CALLS = `
globalThis.answers = ${JSON.stringify(calls)}.map(([id, ...values]) => {
  try {
    return JSON.stringify(known.get(id)(...values));
  } catch (thrown) {
    if (!(thrown instanceof CustomFunctions.Error)) throw thrown;
    return JSON.stringify(thrown);
  }
});
globalThis.used = [...reached];`;

const ALONE: Readonly<Record<string, readonly [contentType: string, body: string]>> = {
  "alone.html": [
    "text/html",
    `<!doctype html><title>Functions</title><script src="host.js"></script>
     <script src="functions.js"></script><script src="calls.js"></script>`,
  ],
  "host.js": ["text/javascript", FUNCTIONS_HOST],
  "calls.js": ["text/javascript", CALLS],
};

interface Recording extends Watched {
  /** Every address the page asked for, in order; those of its own server from its root. */
  readonly requests: readonly string[];
}

/** A page in which everything that reaches beyond it is noted, before and after its own server is asked. */
async function recordingPage(hostScript?: string): Promise<Recording> {
  const watched = await watchedPage(browser, address, hostScript);
  const requests: string[] = [];
  watched.page.on("request", (request) => requests.push(request.url().replace(address, "")));
  await watched.page.addInitScript(REACH_RECORDER);
  for (const [file, [contentType, body]] of Object.entries(ALONE))
    await watched.page.route(`${address}${file}`, (route) => route.fulfill({ contentType, body }));
  return { ...watched, requests };
}

const reachedIn = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...(globalThis as Recorded).reached]);

/** Everything a page left in its browser. */
async function keptBy(page: Page): Promise<unknown[]> {
  const { cookies, origins } = await page.context().storageState({ indexedDB: true });
  const caches = await page.evaluate(() => globalThis.caches.keys());
  return [...cookies, ...origins, ...caches];
}

describe("the built functions, alone in a page", () => {
  it("answer all calls without network, storage, clock or chance", async () => {
    const { page, asked, requests, complaints } = await recordingPage();
    await page.goto(`${address}alone.html`);
    const { answers, used } = await page.evaluate(() => {
      const { answers, used } = globalThis as Asked;
      return { answers, used };
    });
    expect(answers).toEqual(answersOf(runBundle()));
    expect(used).toEqual([]);
    expect(requests).toEqual(["alone.html", "host.js", "functions.js", "calls.js"]);
    expect(await keptBy(page)).toEqual([]);
    expect([...asked, ...complaints]).toEqual([]);
    await page.close();
  });
});

describe("what is noted", () => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await recordingPage());
    await page.goto(`${address}alone.html`);
  });
  afterAll(async () => {
    await page.close();
  });

  /** What a piece of a script reaches for, looked at before anything else runs in the page. */
  const reachedBy = (code: string): Promise<string[]> =>
    page.evaluate(`(() => { reached.length = 0; ${code}; return [...reached]; })()`);

  it.each([
    ["fetch a", "fetch('a').catch(() => 0)"],
    ["XMLHttpRequest", "new XMLHttpRequest()"],
    ["WebSocket", "new WebSocket('ws://a')"],
    ["EventSource", "new EventSource('a')"],
    ["RTCPeerConnection", "new RTCPeerConnection()"],
    ["Navigator.sendBeacon", "navigator.sendBeacon('a')"],
    ["Image", "new Image().src = 'a'"],
    ["<script>", "document.createElement('script').src = 'a'"],
    ["src", "document.createElement('script').src = 'a'"],
    ["href", "document.createElement('link').href = 'a'"],
    ["innerHTML", "document.body.innerHTML = '<p>'"],
    ["Worker", "new Worker('a')"],
    ["localStorage", "localStorage.length"],
    ["sessionStorage", "sessionStorage.length"],
    ["indexedDB", "typeof indexedDB"],
    ["caches", "typeof caches"],
    ["cookie", "document.cookie = 'a=b'"],
    ["serviceWorker", "typeof navigator.serviceWorker"],
    ["Date.now", "Date.now()"],
    ["new Date()", "+new Date()"],
    ["Date()", "Date()"],
    ["Performance.now", "performance.now()"],
    ["setTimeout 5", "setTimeout(() => 0, 5)"],
    ["setInterval", "clearInterval(setInterval(() => 0, 5))"],
    ["requestAnimationFrame", "requestAnimationFrame(() => 0)"],
    ["queueMicrotask", "queueMicrotask(() => 0)"],
    ["Math.random", "Math.random()"],
    ["Crypto.getRandomValues", "crypto.getRandomValues(new Uint8Array(1))[0]"],
    ["Crypto.randomUUID", "crypto.randomUUID()"],
    ["userAgent", "navigator.userAgent"],
    ["Clipboard.writeText", "navigator.clipboard?.writeText('a').catch(() => 0)"],
  ])("would be %s for %s", async (name, code) => {
    expect(await reachedBy(code)).toContain(name);
  });

  it.each([["const day = new Date(5)"], ["Date.UTC(2026, 3, 15)"], ["Math.max(1, 2)"]])(
    "is nothing for %s",
    async (code) => {
      expect(await reachedBy(code)).toEqual([]);
    }
  );

  it("is no use of an empty day under another class, because that day has no time", async () => {
    const code = "+new (class extends Date {})()";
    expect(await reachedBy(code)).toEqual([]);
    expect(await page.evaluate(`[${code}, new Date(5) instanceof Date]`)).toEqual([NaN, true]);
  });
});

/** Opens all that the guide has, as a reader would. */
async function readAll(page: Page): Promise<void> {
  await page.waitForSelector(".function", { state: "attached" });
  await page.evaluate(() => {
    for (const entry of document.querySelectorAll("details")) entry.open = true;
  });
  await page.locator("#search").fill("post office box");
  await page.locator("#calendar-year").fill("2023");
  await page.locator("#calendar-state").selectOption("ME");
  await page.locator("#calendar-year").blur();
  await expect.poll(() => page.locator("#calendar tbody tr").count()).toBeGreaterThan(5);
}

const ITS_OWN = [
  "addin.html",
  "outside.js",
  "functions.js",
  "addin.js",
  "addin.css",
  "icons/icon-32.png",
  "icons/icon-64.png",
  "functions.json",
];
/** Elements for text, tables and fields. None of them loads or sends anything. */
const PLAIN =
  "a address caption code dd details div dl dt fluent-button form h2 h3 input label li ol option output p path section select small span strong summary svg table tbody td th thead tr ul".split(
    " "
  );

/** Reached for by the browser's driver while it asks the page; test/contract/guideBundle.test.ts shows that the page's script has neither. */
const OF_THE_DRIVER = ["eval", "performance"];
/** Drawing, now or in a moment, by the libraries that the page is made with; test/contract/guideBundle.test.ts names the places of the rest. */
const OF_THE_LIBRARIES = [
  "<template>",
  "innerHTML",
  "queueMicrotask",
  "requestAnimationFrame",
  "setTimeout 35",
  "setTimeout undefined",
  "navigator",
  "userAgent",
  "Math.random",
];

/** What a page reached for, elements that hold only text left out, each thing once. */
async function reachedBeyondText(page: Page): Promise<string[]> {
  const reached = new Set(await reachedIn(page));
  for (const name of [...PLAIN.map((tag) => `<${tag}>`), ...OF_THE_DRIVER, ...OF_THE_LIBRARIES])
    reached.delete(name);
  return [...reached].toSorted();
}

describe("the page of the add-in", () => {
  const READ = ["fetch functions.json", "new Date()"];

  it("reads only its own files, also when everything on it is opened", async () => {
    const { page, asked, requests, complaints } = await recordingPage();
    await page.goto(`${address}addin.html`);
    await readAll(page);
    expect(await reachedBeyondText(page)).toEqual(READ);
    const beyond = requests.filter((request) => !ITS_OWN.includes(request));
    expect(beyond).toEqual([OFFICE_ADDRESS]);
    expect(await keptBy(page)).toEqual([]);
    expect([...asked, ...complaints]).toEqual([]);
    await page.close();
  });

  it("changes a workbook or the clipboard only when a button is clicked, and asks for today to begin with", async () => {
    const { page, requests, complaints } = await recordingPage(OFFICE_HOST);
    await page.goto(`${address}addin.html`);
    await page.waitForSelector("#tools .buttons fluent-button", { state: "attached" });
    await readAll(page);
    // the stand-in for the host answers after ten milliseconds; fifteen thousand are the page's patience
    const waits = ["setTimeout 10", "setTimeout 15000"];
    expect(await reachedBeyondText(page)).toEqual([...READ, ...waits]);
    const untouched = await page.evaluate(() => (globalThis as Host).standInWorkbook.sheets);
    expect(untouched).toEqual([
      { name: "Clients", cells: {}, tables: [], formats: {}, choices: {}, widths: {} },
    ]);
    await page.locator("fluent-button", { hasText: "Build a client list" }).click();
    const status = page.locator("#said");
    await expect.poll(() => status.textContent()).toContain("Added the sheet Clients 2.");
    expect(await reachedBeyondText(page)).toEqual([...READ, ...waits]);
    await page.locator("fluent-button", { hasText: "Copy a diagnosis" }).click();
    await page.waitForSelector("#diagnosis-text");
    const copied = ["Clipboard.writeText"];
    expect(new Set(await reachedBeyondText(page))).toEqual(new Set([...READ, ...waits, ...copied]));
    const beyond = requests.filter((request) => !ITS_OWN.includes(request));
    expect(beyond).toEqual([OFFICE_ADDRESS]);
    expect(await keptBy(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
