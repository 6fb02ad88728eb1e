import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type { AxeResults } from "axe-core";
import { buildSync } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "./browser";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const styles = readFileSync(new URL("../../src/addin/addin.css", import.meta.url), "utf8");
const place = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

let browser: Browser;
let script = "";

beforeAll(async () => {
  browser = await openBrowser();
  const { outputFiles } = buildSync({
    entryPoints: [place("costCurvePage.tsx")],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2020",
    jsx: "automatic",
    jsxImportSource: "preact",
  });
  script = outputFiles[0]?.text ?? "";
}, 60_000);
afterAll(() => browser.close());

async function opened(width: number, colorScheme: "light" | "dark" = "light"): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
  await page.setContent(
    `<!doctype html><html lang="en-US"><title>Curve</title><style>${styles}</style><main><h1>Curve</h1><div id="curve"></div></main></html>`
  );
  await page.addScriptTag({ content: script });
  await page.waitForSelector(".cost-curve");
  return page;
}

describe("the cost curve in a browser", () => {
  it.each([
    [280, "light"],
    [320, "dark"],
    [760, "light"],
  ] as const)("is accessible and fits at %d pixels, %s", async (width, colorScheme) => {
    const page = await opened(width, colorScheme);
    await page.locator("summary").click();
    await page.evaluate(axe);
    const { violations } = await page.evaluate(() =>
      (globalThis as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run()
    );
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width
    );
    const [one, other] = await page.locator(".chart").all();
    const [above, below] = [await one?.boundingBox(), await other?.boundingBox()];
    const isBeside = (above?.y ?? 0) === (below?.y ?? 1);
    expect(isBeside).toBe(width >= 760);
    await page.close();
  });

  it("is read with the keyboard: by day, and from one change of a penalty to the next", async () => {
    const page = await opened(320);
    const slider = page.locator("input[type=range]");
    const figures = page.locator("[role=status]");
    await slider.focus();
    expect(await figures.textContent()).toMatch(/^June 1, 2026: with the extension \$/);
    await page.keyboard.press("ArrowRight");
    expect(await figures.textContent()).toMatch(/^June 2, 2026: /);
    expect(await slider.getAttribute("aria-valuetext")).toBe("June 2, 2026");
    await page.keyboard.press("PageUp");
    expect(await figures.textContent()).toMatch(/^June 14, 2026: .* without it \$1\d\d\./);
    await page.keyboard.press("PageUp");
    // The minimum penalty of 2026, $525, after 60 days: Rev. Proc. 2024-40, as the rule table cites it.
    expect(await figures.textContent()).toMatch(/^June 15, 2026: .* without it \$5\d\d\./);
    await page.keyboard.press("PageDown");
    expect(await figures.textContent()).toMatch(/^June 14, 2026: /);
    await page.keyboard.press("End");
    expect(await figures.textContent()).toMatch(/^April 15, 2027: /);
    await page.close();
  });

  it("shows the figures of the date that is pointed at", async () => {
    const page = await opened(320);
    const box = await page.locator(".chart").first().boundingBox();
    if (!box) throw new Error("The chart is not shown.");
    await page.mouse.click(box.x + box.width * 0.62, box.y + box.height / 2);
    expect(await page.locator("[role=status]").textContent()).toMatch(/^(October|November) \d+, /);
    await page.close();
  });
});
