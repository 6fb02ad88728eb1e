import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { serial } from "../../functions/sheet";
import { openBrowser } from "../browser";
import { openInExcel, type InExcel } from "./inExcel";
import type { ModelCell, ModelSheet } from "./workbookModel";

let browser: Browser;
let excel: InExcel;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});
afterEach(async () => {
  await excel.close();
});

const HEADINGS = ["Client", "ST", "Tax year", "Est. total tax", "W/H", "Requested", "Rejected"];
const LIST = [
  HEADINGS,
  ["Abbott", "Ohio", 2025, 12_400, 6000, "", ""],
  ["Chavez", "TX", 2025, "n/a", 1000, "", ""],
];

/** Opens the add-in in a workbook with a list, with one of its cells selected. */
async function openWith(
  cells: readonly (readonly (string | number)[])[],
  row: number
): Promise<void> {
  let arrive: () => void = () => undefined;
  const hostScriptMayArrive = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  excel = await openInExcel(browser, { hostScriptMayArrive });
  const filled: Record<string, ModelCell> = {};
  for (const [at, line] of cells.entries())
    for (const [column, formula] of line.entries())
      if (formula !== "") filled[`${at},${column}`] = { formula };
  await excel.inPage(
    (page, { given, selected }) => {
      Object.assign(page.book.sheets[0]?.cells ?? {}, given);
      page.book.active = { sheet: "Clients", row: selected, column: 0 };
    },
    { given: filled, selected: row }
  );
  arrive();
}

const text = (selector: string) =>
  expect.poll(() => excel.addin.locator(selector).first().textContent());
const press = (name: string): Promise<void> =>
  excel.addin.locator(":is(button, fluent-button)", { hasText: name }).first().click();
const setAsOf = (date: string): Promise<void> => excel.addin.locator("#as-of").fill(date);
const sheets = (): Promise<ModelSheet[]> => excel.inPage((page) => page.book.sheets, null);

describe("the pane and a client list in Excel", () => {
  it("shows the selected client and records an event in the column of the list", async () => {
    await openWith(LIST, 1);
    await text("#client-title").toBe("Abbott");
    await setAsOf("2026-04-10");
    await text(".four").toContain("$6,400.00");
    await press("Record an event");
    await press("Enter this date in the list");
    await text("#said").toMatch(
      /^Entered 4\/10\/2026 in cell F2 \(Requested\) for Abbott\. Next: pay by/
    );
    const [sheet] = await sheets();
    expect(sheet?.cells["1,5"]?.formula).toBe(serial("2026-04-10"));
    expect(sheet?.formats["1,5"]).toBe("m/d/yyyy");
    await text("#client .status").toContain("Requested, no proof yet");
    expect(excel.seen.errors).toEqual([]);
  });

  it("goes to the client list from a cell outside it", async () => {
    await openWith(LIST, 30);
    await text("#client-title").toBe("Look up due dates");
    await press("Go to the client list");
    await text("#client-title").toBe("Abbott");
    const { active } = await excel.inPage((page) => page.book, null);
    expect(active).toEqual({ sheet: "Clients", row: 1, column: 0 });
    expect(excel.seen.errors).toEqual([]);
  });

  it("does not write into a protected sheet, and says so", async () => {
    await openWith(LIST, 1);
    await text("#client-title").toBe("Abbott");
    await press("Record an event");
    await excel.inPage((page) => {
      page.book.refuse = "AccessDenied";
    }, null);
    await press("Enter this date in the list");
    await text("#said").toMatch(/^The workbook or the sheet is protected or read-only\./);
    const [sheet] = await sheets();
    expect(sheet?.cells["1,5"]).toBeUndefined();
  });

  it("names the cell that cannot be read", async () => {
    await openWith(LIST, 2);
    await text("#client-title").toBe("Chavez");
    await text("#client .problems").toContain('Cell D3 (Est. total tax): "n/a" is not a dollar');
  });

  it("puts a letter on a sheet that prints on one page", async () => {
    await openWith(LIST, 1);
    await text("#client-title").toBe("Abbott");
    await setAsOf("2026-04-10");
    await press("Letter");
    await press("Put it into a sheet");
    await text("#said").toBe("Added the sheet Letter Abbott.");
    const [, letter] = await sheets();
    expect(letter?.cells["0,0"]?.formula).toBe("April 10, 2026");
    expect(letter?.page).toEqual({
      orientation: "Portrait",
      zoom: expect.objectContaining({
        horizontalFitToPages: 1,
        verticalFitToPages: 1,
      }) as object,
      footer: "Abbott, 4/10/2026",
    });
    expect(excel.seen.errors).toEqual([]);
  });
});
