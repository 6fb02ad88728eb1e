import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { liveAnswer } from "../../../src/addin/answers/liveAnswer";
import { catalog } from "../../../src/functions/catalog";
import { openBrowser, openFolds } from "../browser";
import { ADDIN_ADDRESS, answerRequests, type Network, type Seen } from "./officeFiles";

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** The page in a browser on-line: office.js loads, but no host is there. */
async function opened(network: Network = {}): Promise<{ page: Page; seen: Seen }> {
  const context = await browser.newContext();
  const seen = await answerRequests(context, network);
  const page = await context.newPage();
  await page.goto(ADDIN_ADDRESS);
  await openFolds(page);
  await page.waitForSelector(".function");
  return { page, seen };
}

const hostNote = (page: Page): Promise<string | null> => page.locator("#outside").textContent();

describe("the page in a browser, with office.js and without a host", () => {
  it("answers every example and says that it is open outside Excel", async () => {
    const { page, seen } = await opened();
    await expect.poll(() => hostNote(page)).toContain("This page is open outside Excel.");
    await page.evaluate(() => {
      for (const entry of document.querySelectorAll("details")) entry.open = true;
    });
    const examples = Object.values(catalog).flatMap((one) => one.examples);
    expect(await page.locator(".example").count()).toBe(examples.length);
    expect(await page.locator(".example .error").allTextContents()).toEqual([]);
    expect(seen.errors).toEqual([]);
    await page.context().close();
  });

  it.each(["1990", "2050"])("says why there is no table for %s, and shows none", async (year) => {
    const { page, seen } = await opened();
    expect(await page.evaluate(() => typeof CustomFunctions.Error)).toBe("undefined");
    expect(await page.locator("#calendar tbody tr").count()).toBeGreaterThan(5);
    await page.locator("#calendar-year").fill(year);
    await page.locator("#calendar-year").blur();
    const [[refusal] = []] = liveAnswer(`=EXT.CALENDAR(${year},"","resident")`);
    expect(refusal?.text).toMatch(/^#N\/A: /);
    await expect.poll(() => page.locator("#calendar output").textContent()).toBe(refusal?.text);
    expect(await page.locator("#calendar table").count()).toBe(0);
    expect(seen.errors).toEqual([]);
    await page.context().close();
  });

  it("is allowed only the frames of office.js: its telemetry is blocked", async () => {
    const { page, seen } = await opened();
    await expect.poll(() => hostNote(page)).toContain("outside Excel");
    const isTelemetry = (refused: string) =>
      /^frame-src https:\/\/telemetryservice\./.test(refused);
    expect(seen.refused.filter((refused) => !isTelemetry(refused))).toEqual([]);
    await page.context().close();
  });
});

describe("the address of office.js", () => {
  const FORMER = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

  it("may be the former one under the same policy", async () => {
    const { page, seen } = await opened({ officeTag: FORMER });
    expect(seen.asked).toContain(FORMER);
    expect(await page.evaluate(() => typeof Office)).toBe("object");
    await expect.poll(() => hostNote(page)).toContain("outside Excel");
    await page.context().close();
  });

  it("may not answer: the page says so and is complete", async () => {
    const { page, seen } = await opened({ isOfficeBlocked: true });
    await expect
      .poll(() => hostNote(page))
      .toMatch(/^\s*Microsoft's script office\.js did not load/);
    await page.locator("#DUE > summary").click();
    expect(await page.locator("#DUE output").first().textContent()).toBe("4/15/2026");
    expect(seen.errors).toEqual([]);
    await page.context().close();
  });
});
