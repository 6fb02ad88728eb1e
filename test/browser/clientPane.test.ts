import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serial } from "../functions/sheet";
import { openSheet } from "./openSheet";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** As much of the grid library's own interface as the tests steer it by: it draws its cells on a canvas. */
interface GridSheet {
  getRange(address: string): {
    activate(): void;
    getValues(): unknown[][];
    getCellRect(): { x: number; y: number };
  };
  getActiveRange(): { getA1Notation(): string } | null;
  getSheetName(): string;
  scrollToCell(row: number, column: number): void;
}
interface GridBook {
  getSheetByName(name: string): GridSheet | null;
  getActiveSheet(): GridSheet;
  setActiveSheet(sheet: GridSheet): void;
}
type DemoPage = typeof globalThis & {
  demoSheet: { grid: { api: { getActiveWorkbook(): GridBook } } };
};

let page: Page;
let complaints: readonly string[];
let close: () => Promise<void>;
/** The rows of the clients on the sheet Clients, by name. */
let rows: ReadonlyMap<string, number>;
/** The column of each heading. */
let columns: ReadonlyMap<string, string>;

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

beforeAll(async () => {
  ({ page, complaints, close } = await openSheet());
  await page.setViewportSize({ width: 1280, height: 1000 });
  const values = await page.evaluate(() => {
    const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
    return book.getSheetByName("Clients")?.getRange("A1:Z60").getValues() ?? [];
  });
  rows = new Map(values.map(([name], index) => [String(name), index + 1]));
  const top = values.findIndex(([name]) => name === "Client");
  columns = new Map(
    (values[top] ?? []).map((heading, index) => [String(heading), LETTERS.charAt(index)])
  );
}, 300_000);
afterAll(async () => {
  await close();
});

const addressOf = (name: string, heading = "Client"): string =>
  `${columns.get(heading) ?? ""}${String(rows.get(name))}`;

/** Shows a cell of a sheet. */
async function show(sheet: string, address: string): Promise<void> {
  await page.evaluate(
    ([name = "", cell = ""]) => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      const shown = book.getSheetByName(name);
      if (!shown) throw new RangeError(`There is no sheet ${name}.`);
      book.setActiveSheet(shown);
      shown.getRange(cell).activate();
      shown.scrollToCell(0, 0);
    },
    [sheet, address]
  );
}

/** Clicks the row of a client with the mouse, once its sheet is shown. */
async function clickClient(name: string): Promise<void> {
  await show("Clients", "A2");
  await page.waitForTimeout(500);
  const selected = async (): Promise<unknown> => {
    const { x, y } = await page.evaluate((cell) => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      const rect = book.getActiveSheet().getRange(cell).getCellRect();
      const canvas = document.querySelector("#grid canvas[id^=univer-sheet-main]");
      const { x: left = 0, y: top = 0 } = canvas?.getBoundingClientRect() ?? {};
      return { x: left + rect.x, y: top + rect.y };
    }, addressOf(name));
    await page.mouse.click(x + 6, y + 6);
    return page.evaluate(() => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      return book.getActiveSheet().getActiveRange()?.getA1Notation();
    });
  };
  // The grid finds its cells under the mouse a little after it has drawn them.
  await expect.poll(selected, { interval: 300 }).toBe(addressOf(name));
  await expect.poll(() => page.locator("#client-title").textContent()).toBe(name);
}

const button = (name: string) =>
  page.locator("#guide .guide :is(button, fluent-button)", { hasText: name });
const said = () => expect.poll(() => page.locator("#said").textContent());
const textOf = async (selector: string): Promise<string> =>
  (await page.locator(selector).allTextContents()).join(" ").replace(/\s+/g, " ");

/** What axe-core finds in the pane, and whether something is wider than the pane. */
async function faults(): Promise<string[]> {
  // The policy of the page blocks inline scripts, but not those of the browser's driver.
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(where: object): Promise<AxeResults> } }).axe.run({
      include: [["#guide"]],
    })
  );
  const beyond = await page.evaluate(() => {
    const pane = document.querySelector("#guide");
    return pane !== null && pane.scrollWidth > pane.clientWidth ? ["wider than the pane"] : [];
  });
  return [
    ...violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .map(({ html }) => html)
          .join(" ")
          .slice(0, 300)}`
    ),
    ...beyond,
  ];
}

async function setAsOf(date: string): Promise<void> {
  await page.locator("#as-of").fill(date);
}

describe("the pane beside a client list", () => {
  it("opens on a sheet without one, says what to select, and goes to it", async () => {
    await expect
      .poll(() => textOf("#client .why"))
      .toMatch(/^To see a client, select a cell in the client's row\./);
    expect(await page.locator("#client .error").count()).toBe(0);
    await button("Go to the client list").click();
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Alder");
    await said().toBe("");
  });

  it("shows the client of the row that is clicked", async () => {
    await clickClient("Bramble");
    expect(await textOf("#client .now")).toBe("Past due47 days ago");
    expect(await textOf(".four dd")).toBe("4/15/2026 No extension $7,600.00 $7,600.00");
    expect(await textOf(".waiting .applies")).toBe("Without the extensionthis client$1,667.63");
    await clickClient("Betony");
    expect(await textOf("#client .status.good")).toBe("Extended");
  });

  it("shows the client of a new selection also while another part of the guide is in sight", async () => {
    await clickClient("Alder");
    await page.locator("#guide .fold").last().scrollIntoViewIfNeeded();
    await show("Clients", addressOf("Anise"));
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Anise");
  });

  it("lists the practice, the worst first, and jumps to a row", async () => {
    await expect.poll(() => textOf(".counts")).toMatch(/^4 Past due/);
    await page.locator(".trouble button", { hasText: "Oxlip" }).click();
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Oxlip");
    const selected = await page.evaluate(() => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      return book.getActiveSheet().getActiveRange()?.getA1Notation();
    });
    expect(selected).toBe(addressOf("Oxlip"));
  });

  it("records an event by clicks and typing, and answers with the next step", async () => {
    await clickClient("Bramble");
    await setAsOf("2026-04-14");
    await button("Record an event").click();
    expect(await page.locator("#event").inputValue()).toBe("requested");
    expect(await page.locator("#event-date").inputValue()).toBe("2026-04-14");
    await page.locator("#event-date").focus();
    await page.keyboard.type("04132026");
    await page.keyboard.press("Enter");
    const cell = addressOf("Bramble", "Requested on");
    await said().toBe(
      `Entered 4/13/2026 in cell ${cell} (Requested on) for Bramble. Next: pay by 4/15/2026.`
    );
    await expect.poll(() => textOf("#client .status.warning")).toContain("Requested, no proof yet");
    const written = await page.evaluate((address) => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      return book.getSheetByName("Clients")?.getRange(address).getValues()[0]?.[0];
    }, cell);
    expect([serial("2026-04-13"), "4/13/2026"]).toContain(written);
  });

  it("lets what it said go with the client, and not before", async () => {
    await said().toMatch(/for Bramble\. Next: pay by/);
    await show("Clients", addressOf("Bramble", "State"));
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Bramble");
    await said().toMatch(/for Bramble\. Next: pay by/);
    await clickClient("Anise");
    await said().toBe("");
    await clickClient("Bramble");
  });

  it("names the column that a list lacks for an event", async () => {
    await page.locator("#event").selectOption("paid");
    await button("Enter this date in the list").click();
    await said().toBe(
      'The list has no column for "balance paid". Add a column with the heading "Paid on".'
    );
    await button("Record an event").click();
  });

  it("shows the letter of the date, and puts it into a sheet", async () => {
    await setAsOf("2026-06-01");
    await clickClient("Celandine");
    await button("Letter").first().click();
    await page.locator("#greeting").fill("Ms. Celandine");
    const letter = await page.locator("#letter-text").inputValue();
    expect(letter).toMatch(
      /^Dear Ms\. Celandine:\n\nYour 2025 federal .* was due April 15, 2026\./
    );
    expect(letter).toContain("we expect about $814.31 in penalties and interest.");
    await button("Put it into a sheet").click();
    await said().toBe("Added the sheet Letter Celandine.");
    await button("Back to Celandine").click();
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Celandine");
  });

  it("adds the calculation and a sheet with formulas that refer to the row", async () => {
    await clickClient("Celandine");
    await button("Calculation").first().click();
    await said().toBe("Added the sheet Calculation Celandine.");
    await button("Back to Celandine").click();
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Celandine");
    await button("Put into a sheet").click();
    await said().toBe("Added the sheet Celandine.");
    const answers = await page.evaluate(() => {
      const book = (globalThis as DemoPage).demoSheet.grid.api.getActiveWorkbook();
      return book.getSheetByName("Celandine")?.getRange("B4:B12").getValues().flat() ?? [];
    });
    expect(answers.map(String)).toEqual(expect.arrayContaining(["814.31", "past due"]));
  });

  it("offers year, state and filer type outside a client list", async () => {
    await show("Read me", "A1");
    await expect.poll(() => page.locator("#client-title").textContent()).toBe("Look up due dates");
    await page.locator("#typed-taxYear").fill("2023");
    await page.locator("#typed-state").selectOption({ label: "Maine" });
    // Patriots' Day moved the date for Maine: Notice in the instructions for 2023.
    await expect.poll(() => textOf(".four dd")).toBe("4/17/2024 10/15/2024 4/17/2024");
    await page.locator("#typed-taxYear").fill("next");
    await expect.poll(() => textOf(".problems")).toMatch(/^Tax year: "next" is not/);
  });

  it("has reported no error", () => {
    expect(complaints).toEqual([]);
  });
});

describe.each([
  ["light", 368, 100],
  ["dark", 368, 100],
  ["light", 320, 100],
  ["dark", 320, 100],
  ["light", 640, 200],
] as const)(
  "the pane in %s colors, %i pixels wide, text at %i percent",
  (colorScheme, width, text) => {
    beforeAll(async () => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.evaluate(
        ([pixels, percent]) => {
          const pane = document.querySelector<HTMLElement>("#guide");
          pane?.style.setProperty("flex-basis", `${pixels}px`);
          document.documentElement.style.setProperty("font-size", `${percent}%`);
        },
        [width, text] as const
      );
      await setAsOf("2026-06-01");
    });

    it.each(["Record an event", "Letter", "Mailing address"])(
      "is accessible with a client and %s open",
      async (panel) => {
        await clickClient("Celandine");
        await button(panel).first().click();
        expect(await faults()).toEqual([]);
        await button(panel).first().click();
      }
    );

    it("is accessible outside a list, and with a date that is not complete", async () => {
      await show("Read me", "A1");
      await expect
        .poll(() => page.locator("#client-title").textContent())
        .toBe("Look up due dates");
      expect(await faults()).toEqual([]);
      await setAsOf("");
      expect(await textOf("#client .error")).toContain("The as-of date is not complete.");
      expect(await faults()).toEqual([]);
      await setAsOf("2026-06-01");
    });
  }
);
