import { readFileSync } from "node:fs";
import { getCellDisplayText, Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { strFromU8, unzipSync } from "fflate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sampleClients } from "../../src/demo/terminal/sampleClients";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { openSheet } from "./openSheet";

type Grid = typeof globalThis & {
  demoSheet: {
    grid: {
      api: {
        getActiveWorkbook(): {
          getSheetByName(name: string): {
            getRange(address: string): { getValue(): unknown; setValue(value: unknown): void };
            insertRows(row: number, count: number): void;
          };
        };
      };
    };
  };
};

let page: Page;
let asked: readonly string[];
let complaints: readonly string[];
let close: () => Promise<void>;

beforeAll(async () => {
  ({ page, asked, complaints, close } = await openSheet());
}, 120_000);
afterAll(async () => {
  await close();
});

const cell = (sheet: string, address: string): Promise<unknown> =>
  page.evaluate(
    ([name = "", place = ""]) =>
      (globalThis as Grid).demoSheet.grid.api
        .getActiveWorkbook()
        .getSheetByName(name)
        .getRange(place)
        .getValue(),
    [sheet, address]
  );

/** The name of the last saved file. */
let savedName: string;

async function savedFile(): Promise<Buffer> {
  const [saving] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a copy" }).click(),
  ]);
  savedName = saving.suggestedFilename();
  return readFileSync(await saving.path());
}

async function shown(bytes: Uint8Array): Promise<Map<string, string>> {
  installChartSupport();
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  const texts = new Map<string, string>();
  for (const sheet of workbook.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((one) => {
        const text = getCellDisplayText(one);
        if (text !== "" || one.formula)
          texts.set(`${sheet.name}!${one.address}`, `${text} ${one.formula ?? ""}`);
      });
    });
  }
  return texts;
}

describe("a saved copy of the sample", () => {
  it("shows the results that the workbook library calculates without the grid", async () => {
    await expect.poll(() => cell("Season at a glance", "B10"), { timeout: 30_000 }).toBe(26);
    const copy = await savedFile();
    const { bytes } = await recalculateWorkbook(
      seasonWorkbook(sampleClients()),
      hostOfBuiltAddIn("null")
    );
    const [saved, calculated] = [await shown(copy), await shown(bytes)];
    expect(calculated.size).toBeGreaterThan(3000);
    const others = [...calculated].filter(([place, text]) => saved.get(place) !== text);
    expect(others).toEqual([]);
    expect([...saved.keys()].filter((place) => !calculated.has(place))).toEqual([]);
  });

  it("keeps the charts and the drop-down lists, which the grid does not show", async () => {
    const parts = unzipSync(await savedFile());
    expect(
      Object.keys(parts).filter((name) => /^xl\/charts\/chart\d+\.xml$/.test(name))
    ).toHaveLength(3);
    const sheets = Object.entries(parts).filter(([name]) => name.startsWith("xl/worksheets/sheet"));
    expect(sheets.some(([, part]) => strFromU8(part).includes("<dataValidation "))).toBe(true);
  });

  it("opens again from disk with the same results", async () => {
    const copy = await savedFile();
    const mimeType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    await page.locator("#file").setInputFiles({ name: "again.xlsm", mimeType, buffer: copy });
    await expect
      .poll(() => page.locator("#file-status").textContent())
      .toMatch(/^again\.xlsm is open\. It has \d+ charts?, which the demo sheet does not show\.$/);
    await expect.poll(() => cell("Season at a glance", "B10"), { timeout: 30_000 }).toBe(26);
  });

  it("has only the typed cell changed, and every other part byte for byte", async () => {
    const before = unzipSync(await savedFile());
    await page.evaluate(() => {
      (globalThis as Grid).demoSheet.grid.api
        .getActiveWorkbook()
        .getSheetByName("Clients")
        .getRange("AB55")
        .setValue("typed");
    });
    const after = unzipSync(await savedFile());
    const changed = Object.keys(before).filter(
      (name) => !Buffer.from(before[name] ?? []).equals(Buffer.from(after[name] ?? []))
    );
    expect(Object.keys(after)).toEqual(Object.keys(before));
    expect(savedName).toBe("again.copy.xlsm");
    expect(changed).toHaveLength(1);
    const sheet = strFromU8(after[changed[0] ?? ""] ?? new Uint8Array());
    expect(sheet).toMatch(/<c r="AB55"[^>]*><v>typed<\/v><\/c>/);
  });

  it("has only what is shown after rows have moved, and formulas that moved with them", async () => {
    await page.evaluate(() => {
      (globalThis as Grid).demoSheet.grid.api
        .getActiveWorkbook()
        .getSheetByName("Clients")
        .insertRows(5, 1);
    });
    await expect.poll(() => cell("Clients", "A7")).toBe("Bracken");
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save a copy" }).click();
    const question = await page.locator("#question-text").textContent();
    await page.getByRole("button", { name: "Save anyway" }).click();
    const saved = await saving;
    const copy = readFileSync(await saved.path());
    expect(question).toMatch(/It may lose .*charts, drawings/);
    // A file that was made anew has no macros, and another ending would keep Excel from opening it.
    expect(saved.suggestedFilename()).toBe("again.copy.xlsx");
    expect(Object.keys(unzipSync(copy)).filter((name) => name.includes("chart"))).toEqual([]);
    const texts = await shown(copy);
    expect(texts.get("Column formulas!E2")).toBe(
      "3,250.00 _xldudf_EXT_SHORTFALL(Clients!M2:M49,Clients!N2:N49)"
    );
  });
});

describe("a file dropped on the page", () => {
  it("is opened, or rejected in one sentence", async () => {
    const drop = (name: string, content: string) =>
      page.evaluate(
        ([called = "", text = ""]) => {
          const data = new DataTransfer();
          data.items.add(new File([text], called));
          const where = document.getElementById("grid");
          where?.dispatchEvent(
            new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true })
          );
        },
        [name, content]
      );
    await drop("letter.xlsx", "not a workbook");
    await expect
      .poll(() => page.locator("#file-status").textContent())
      .toBe("letter.xlsx is not an .xlsx workbook.");
    expect(await cell("Clients", "A7")).toBe("Bracken");
  });
});

describe("the guide beside the sheet", () => {
  it("can be hidden and shown again", async () => {
    const toggle = page.getByRole("button", { name: "Guide", exact: true });
    await toggle.click();
    expect(await page.locator("#guide").isVisible()).toBe(false);
    expect(await toggle.getAttribute("aria-expanded")).toBe("false");
    await toggle.click();
    expect(await page.locator("#guide").isVisible()).toBe(true);
  });

  it("is hidden at first on a narrow page, on which nothing is cut off", async () => {
    await page.setViewportSize({ width: 800, height: 700 });
    await page.reload();
    await page.waitForSelector("body[data-ready]", { timeout: 90_000 });
    expect(await page.locator("#guide").isVisible()).toBe(false);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(800);
  });
});

it("has asked for nothing beyond this machine and complained of nothing", () => {
  expect(asked).toEqual([]);
  expect(complaints).toEqual([]);
});
