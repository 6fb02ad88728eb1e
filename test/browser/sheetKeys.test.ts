import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Workbook } from "@cj-tech-master/excelts";
import type { AxeResults } from "axe-core";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sampleClients } from "../../src/demo/terminal/sampleClients";
import { DemoGrid } from "./demoGrid";
import { openSheet } from "./openSheet";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

let page: Page;
let grid: DemoGrid;
let asked: readonly string[];
let complaints: readonly string[];
let close: () => Promise<void>;

beforeAll(async () => {
  ({ page, asked, complaints, close } = await openSheet());
  grid = new DemoGrid(page);
}, 120_000);
afterAll(async () => {
  await close();
});

const focused = () => expect.poll(() => grid.focused());
const press = (...keys: readonly string[]): Promise<void> =>
  keys.reduce((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve());
const text = (id: string) => page.locator(`#${id}`).textContent();
const expanded = () => page.locator("#toggle").getAttribute("aria-expanded");

describe("the keys", () => {
  it("find the link to the guide with the first Tab, and follow it", async () => {
    // the grid takes the focus once it has drawn the first sheet
    await page.waitForTimeout(1_500);
    await press("Tab");
    await focused().toBe("skip");
    expect(await page.locator("#skip").boundingBox()).toMatchObject({ x: 12 });
    await press("Enter");
    await focused().toBe("guide");
    await press("Tab");
    await focused().toBe("guide-content as-of");
  });

  it("move with F6 from part to part, and back with Shift+F6", async () => {
    await press("F6");
    await focused().toBe("open");
    await press("F6");
    await focused().toBe("grid");
    // the element that had the focus before
    await press("F6");
    await focused().toBe("guide-content as-of");
    for (const [key, part] of [
      ["Shift+F6", "grid"],
      ["Shift+F6", "open"],
      ["Shift+F6", "guide-content as-of"],
      ["Shift+F6", "grid"],
    ] as const) {
      await press(key);
      await focused().toBe(part);
    }
    await press("ArrowDown");
    await expect.poll(() => grid.selected()).toBe("A2");
  });

  it("leave the editing of a cell with Escape, without a change", async () => {
    await grid.newSheet("Keys", [[2025]]);
    await grid.click("B2");
    for (const entry of ["text", "=EXT.DUE(A1", "=1+"]) {
      await page.keyboard.type(entry);
      await expect.poll(() => grid.isEditing()).toBe(true);
      // a list of functions closes first
      await expect
        .poll(
          async () => {
            await press("Escape");
            return grid.isEditing();
          },
          { interval: 300 }
        )
        .toBe(false);
      expect(await grid.cell("B2")).toBe("");
    }
    await press("ArrowDown");
    await expect.poll(() => grid.selected()).toBe("B3");
  });

  it("type the whole entry in a column that they scrolled into view beside a frozen one", async () => {
    await grid.newSheet("Frozen", [["Name"]]);
    await page.evaluate(
      "demoSheet.grid.api.getActiveWorkbook().getActiveSheet().setFrozenColumns(1)"
    );
    await grid.click("A4");
    await press(...Array.from({ length: 20 }, () => "ArrowRight"));
    await expect.poll(() => grid.selected()).toBe("U4");
    await page.keyboard.type("6300");
    await press("Enter");
    await expect.poll(() => grid.cell("U4")).toBe("6300");
    await grid.show("Keys");
  });

  it("go on in an entry while results arrive in a cell of the same place on another sheet", async () => {
    await grid.newSheet("Results");
    await grid.newSheet("Entry");
    await grid.click("C3");
    await page.keyboard.type("=EXT.DUE(");
    await expect.poll(() => grid.isEditing()).toBe(true);
    await page.evaluate(
      'demoSheet.grid.api.getActiveWorkbook().getSheetByName("Results").getRange("C3").setValue(1)'
    );
    await page.keyboard.type("2025)");
    await press("Enter");
    await expect.poll(() => grid.formula("C3")).toBe("=EXT.DUE(2025)");
    await grid.show("Keys");
  });

  it("keep what was typed when F6 leaves the cell", async () => {
    await grid.click("C2");
    await page.keyboard.type("=EXT.DUE(A1)");
    await press("F6");
    await focused().toBe("guide-content as-of");
    await expect.poll(() => grid.cell("C2")).toBe("4/15/2026");
    await press("Shift+F6");
    await focused().toBe("grid");
  });
});

describe("the message of an error", () => {
  it("is shown under the grid and in the pane", async () => {
    await grid.click("D2");
    await page.keyboard.type('=EXT.DUE("soon")');
    await press("Enter", "ArrowUp");
    const message = /^D2 #VALUE! taxYear: "soon" is not a tax year\. Enter a year such as 2025/;
    await expect.poll(() => text("cell-status")).toMatch(message);
    expect(await text("cell-error")).toMatch(message);
    expect(await page.locator("#cell-error").isVisible()).toBe(true);
    await press("ArrowDown");
    await expect.poll(() => page.locator("#cell-error").isVisible()).toBe(false);
  });

  it("names the closest function for a name that is misspelled or has no prefix", async () => {
    await grid.click("D4");
    await page.keyboard.type("=EXT.DEU(2025)");
    await press("Enter", "ArrowUp");
    await expect
      .poll(() => text("cell-status"))
      .toBe("D4 #NAME? EXT.DEU is not a function of the add-in. The closest name is EXT.DUE.");
    await grid.click("D6");
    await page.keyboard.type("=DUE(2025)");
    await press("Enter", "ArrowUp");
    await expect
      .poll(() => text("cell-status"))
      .toBe("D6 #NAME? The functions of the add-in begin with EXT. Enter EXT.DUE.");
  });
});

describe("unsaved changes", () => {
  const isAsked = () => page.locator("#question").isVisible();

  it("are kept unless the user goes on, for the sample and for a file", async () => {
    await page.locator("#sample").click();
    await focused().toBe("question-no");
    expect(await text("question-text")).toBe(
      "Your changes to season.xlsx are not saved. If you open the sample, they are lost."
    );
    await press("Escape");
    expect(await isAsked()).toBe(false);
    await focused().toBe("sample");
    await expect.poll(() => text("file-status")).toBe("Nothing was opened.");
    const file = { name: "other.xlsx", mimeType: KIND, buffer: await chartFile() };
    await page.locator("#file").setInputFiles(file);
    await focused().toBe("question-no");
    // F6 does not leave the question
    await press("F6", "Enter");
    await expect.poll(isAsked).toBe(false);
    expect(await grid.sheetInView()).toBe("Keys");
  });

  it("let the browser ask before the page is closed", async () => {
    const kind = new Promise<string>((resolve) => {
      page.once("dialog", (dialog) => {
        resolve(dialog.type());
        void dialog.dismiss();
      });
    });
    await page.evaluate(() => {
      setTimeout(() => {
        location.reload();
      });
    });
    expect(await kind).toBe("beforeunload");
    expect(await grid.sheetInView()).toBe("Keys");
  });

  it("include an entry that is still being typed, which a saved copy has", async () => {
    await grid.click("A5");
    await page.keyboard.type("still typing");
    const saving = page.waitForEvent("download");
    await page.locator("#save").click();
    const workbook = new Workbook();
    await workbook.xlsx.load(readFileSync(await (await saving).path()));
    expect(workbook.getWorksheet("Keys")?.getCell("A5").value).toBe("still typing");
  });

  it("are none after a copy was saved, and after another workbook was opened", async () => {
    const file = { name: "other.xlsx", mimeType: KIND, buffer: await chartFile() };
    const charts = Object.keys(unzipSync(file.buffer)).filter((name) =>
      /^xl\/charts\/chart\d+\.xml$/.test(name)
    ).length;
    const notShown = `It has ${charts === 1 ? "1 chart" : `${charts} charts`}, which the demo sheet does not show.`;
    await page.locator("#file").setInputFiles(file);
    await expect.poll(() => text("file-status")).toBe(`other.xlsx is open. ${notShown}`);
    await page.locator("#sample").click();
    await expect.poll(() => text("file-status")).toBe(`The sample is open again. ${notShown}`);
    expect(await isAsked()).toBe(false);
    await grid.newSheet("Lost");
    await page.locator("#sample").click();
    await page.locator("#question-yes").click();
    await expect.poll(() => grid.sheetInView()).not.toBe("Lost");
  });
});

/** A workbook with the charts of the sample. */
async function chartFile(): Promise<Buffer> {
  return Buffer.from(
    (await seasonWorkbook(sampleClients()).xlsx.writeBuffer()) as unknown as ArrayBuffer
  );
}

describe("a print", () => {
  const printed = (selector: string) =>
    page.evaluate(
      (wanted) =>
        [...document.querySelectorAll(wanted)].map((row) =>
          [...row.querySelectorAll("th, td")].map((cell) => cell.textContent)
        ),
      selector
    );

  it("has the cells of the sheet in view as tables, with the frozen names and headings in each", async () => {
    await grid.show("Clients");
    await expect.poll(() => grid.cell("S2")).toBe("4/15/2026");
    const shown = await grid.shown("A2:AP48");
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    await page.emulateMedia({ media: "print" });
    const title = await page.title();
    const caption = await page.locator("#print p").textContent();
    const screenParts = await Promise.all(
      ["body > header", "main", "body > footer"].map((part) => page.locator(part).isVisible())
    );
    const headings = await printed("#print thead tr");
    const rows = await printed("#print tbody tr");
    await page.emulateMedia({ media: null });
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    expect(title).toBe("Clients - season.xlsx");
    expect(caption).toBe("season.xlsx. Estimates only, not tax advice.");
    expect(screenParts).toEqual([false, false, false]);
    expect(headings.length).toBeGreaterThan(1);
    for (const heading of headings) expect(heading[0]).toBe("Client");
    expect(rows).toHaveLength(headings.length * shown.length);
    for (const [row, cells] of shown.entries()) {
      const texts = headings.flatMap((_table, index) => rows[index * shown.length + row] ?? []);
      // the name is repeated in each table
      const once = texts.filter((cell, index) => index === 0 || cell !== cells[0]);
      expect(once.filter((cell) => cell !== "")).toEqual(cells.filter((cell) => cell !== ""));
    }
    expect(await page.locator("#print table").count()).toBe(0);
    expect(await page.title()).toBe("Extension Season: demo sheet");
  });

  it("is landscape, begins with Ctrl+P or the button, and includes the entry being typed", async () => {
    await grid.newSheet("Printed", [["One"], ["Two"]]);
    const bytes = await page.pdf({ preferCSSPageSize: true });
    const pdf = bytes.toString("latin1");
    expect(pdf.match(/\/MediaBox \[0 0 792 612\]/g)?.length).toBeGreaterThan(0);
    expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(1);
    await grid.click("A3");
    await page.keyboard.type("Three");
    // The headless browser has no window for printing: the page only counts that it asks for one.
    await page.evaluate(() => {
      window.print = () => {
        dispatchEvent(new Event("beforeprint"));
        document.body.dataset["printed"] = document.getElementById("print")?.textContent ?? "";
        dispatchEvent(new Event("afterprint"));
      };
    });
    await page.getByRole("button", { name: "Print" }).click();
    await expect
      .poll(() => page.evaluate(() => document.body.dataset["printed"]))
      .toMatch(/^Printed.*OneTwoThree$/);
    await grid.click("A4");
    const isLeftToBrowser = page.evaluate(
      () =>
        new Promise<boolean>((resolve) => {
          addEventListener("keydown", ({ key, defaultPrevented }) => {
            if (key === "p") resolve(!defaultPrevented);
          });
        })
    );
    await press("Control+p");
    expect(await isLeftToBrowser).toBe(true);
  });
});

describe("a narrow page", () => {
  it("has the pane in the place of the grid, and a button back", async () => {
    await page.setViewportSize({ width: 320, height: 800 });
    await expect.poll(expanded).toBe("false");
    expect(await page.locator("#note").getAttribute("open")).toBe(null);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    const [wide, canvas] = await Promise.all([
      page.locator("#grid").boundingBox(),
      page.locator("#grid canvas[id^=univer-sheet-main]").boundingBox(),
    ]);
    expect(wide?.width).toBe(320);
    expect(canvas?.width).toBeGreaterThan(250);
    await page.locator("#toggle").click();
    await focused().toBe("guide");
    expect(await expanded()).toBe("true");
    const pane = await page.locator("#guide").boundingBox();
    expect(pane).toMatchObject({ x: 0, width: 320 });
    expect(await page.locator("#grid").getAttribute("inert")).toBe("");
    await page.getByRole("button", { name: "Back to the sheet" }).click();
    await focused().toBe("grid");
    expect(await expanded()).toBe("false");
    expect(await page.locator("#grid").getAttribute("inert")).toBe(null);
  });

  it("changes between grid and pane with F6", async () => {
    await press("F6");
    await focused().toBe("guide");
    expect(await expanded()).toBe("true");
    await press("Shift+F6");
    await focused().toBe("grid");
    expect(await expanded()).toBe("false");
  });

  it("has both again when it becomes wide", async () => {
    await page.setViewportSize({ width: 900, height: 800 });
    await expect.poll(expanded).toBe("true");
    expect(await page.locator("#grid").getAttribute("inert")).toBe(null);
    expect(await page.locator("#back").isVisible()).toBe(false);
    const pane = await page.locator("#guide").boundingBox();
    expect(pane?.x).toBeGreaterThan(400);
  });
});

describe("the colors", () => {
  /** Whether an empty cell of the grid is dark or light. */
  async function ground(): Promise<string> {
    const { x, y } = await grid.place("C9");
    const picture = await page.screenshot({ clip: { x, y, width: 2, height: 2 } });
    return page.evaluate(
      async (bytes) => {
        const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
        const context = new OffscreenCanvas(2, 2).getContext("2d");
        context?.drawImage(bitmap, 0, 0);
        const [red = 0] = context?.getImageData(0, 0, 1, 1).data ?? [];
        return red < 128 ? "dark" : "light";
      },
      [...picture]
    );
  }

  it("of the grid follow the computer's settings", async () => {
    await grid.newSheet("Colors");
    await expect.poll(ground).toBe("light");
    await page.emulateMedia({ colorScheme: "dark" });
    await expect.poll(ground).toBe("dark");
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(ground).toBe("light");
  });
});

describe("the page around the grid, which is a canvas of the library, is accessible", () => {
  async function faults(): Promise<string[]> {
    const results = await page.evaluate(() =>
      (globalThis as unknown as { axe: { run(where: object): Promise<AxeResults> } }).axe.run({
        exclude: [["#grid"]],
      })
    );
    return results.violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(" ")}`
    );
  }

  // 640 by 400 is a page of 1280 by 800 at 200%.
  it.each([
    [320, 800],
    [640, 400],
    [900, 800],
    [1440, 900],
  ])("at %i by %i pixels", async (width, height) => {
    await page.evaluate(axe);
    await page.setViewportSize({ width, height });
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      for (const isShown of ["true", "false"]) {
        if ((await expanded()) !== isShown) await page.locator("#toggle").click();
        // The grid's own hint on the button under the mouse is not part of the page.
        await page.mouse.move(1, 1);
        await expect.poll(() => page.locator("[role=tooltip]").count()).toBe(0);
        expect(await faults()).toEqual([]);
      }
    }
    await page.emulateMedia({ colorScheme: "light" });
  });

  it("with the error of a cell and with a question", async () => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await grid.newSheet("Faults");
    await grid.click("B2");
    await page.keyboard.type('=EXT.DUE("soon")');
    await press("Enter", "ArrowUp");
    await expect.poll(() => text("cell-error")).toMatch(/^B2 #VALUE!/);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await faults()).toEqual([]);
      await page.locator("#sample").click();
      expect(await faults()).toEqual([]);
      await press("Escape");
    }
  });
});

it("has asked for nothing beyond this machine and complained of nothing", () => {
  expect(asked).toEqual([]);
  expect(complaints).toEqual([]);
});
