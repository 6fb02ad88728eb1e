import { openSheet } from "../browser/openSheet";

/** As much of the grid library's own interface as selects a cell. */
interface GridBook {
  getSheetByName(name: string): { getRange(address: string): { activate(): void } };
  setActiveSheet(sheet: unknown): void;
}
type DemoPage = typeof globalThis & {
  demoSheet: { grid: { api: { getActiveWorkbook(): GridBook } } };
};

const TRIES = 7;

/** What the pane takes, in milliseconds by the clock. */
export interface PaneTimes {
  /** The least time from the request of the page until the pane shows its first form, without Microsoft's script. */
  readonly ready: number;
  /** The least time from a selection in the demo sheet until the pane shows the client, without the rest that it waits for on purpose. */
  readonly answer: number;
}

/** How long the pane lets a selection rest before it reads the list, in milliseconds. */
const REST = 150;

/** Measures the pane in a browser. */
export async function paneTimes(): Promise<PaneTimes> {
  const { page, close } = await openSheet();
  try {
    const times = await page.evaluate(async (tries) => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      const sheet = book.getSheetByName("Clients");
      book.setActiveSheet(sheet);
      const title = (): string =>
        document.querySelector("#guide-content")?.shadowRoot?.querySelector("#client-title")
          ?.textContent ?? "";
      const shown: number[] = [];
      for (let row = 2; row < 2 + tries; row++) {
        const before = title();
        const begun = performance.now();
        sheet.getRange(`A${String(row)}`).activate();
        while (title() === before) await new Promise((next) => requestAnimationFrame(next));
        shown.push(performance.now() - begun);
      }
      return shown;
    }, TRIES);
    await page.route(/^https:/, (route) => route.abort());
    const ready: number[] = [];
    for (let count = 0; count < TRIES; count++) {
      await page.goto(new URL("addin.html", page.url()).href);
      await page.waitForSelector("#client-title");
      ready.push(await page.evaluate(() => performance.now()));
    }
    return { ready: Math.min(...ready), answer: Math.min(...times) - REST };
  } finally {
    await close();
  }
}
