import { existsSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium, type Browser, type Frame, type Page } from "playwright-core";

const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
/** The address of office.js in the built page. */
export const OFFICE_ADDRESS = "https://officeapis.public.onecdn.static.microsoft/1/office.js";
const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
};
const built = new URL("../../dist/", import.meta.url);

const found = process.env["CHROMIUM_PATH"] ?? PLACES.find((place) => existsSync(place));

/**
 * Whether the tests in a browser run: where there is a Chromium, and where they are required even if there is none, so that they
 * fail and say so.
 */
export const runsInBrowser = found !== undefined || process.env["BROWSER_TESTS"] === "required";

/** Opens the system's Chromium, or says how to come by one. */
export function openBrowser(): Promise<Browser> {
  if (found === undefined)
    throw new Error(
      "These tests need Chromium: install the package chromium of the system, or name one in CHROMIUM_PATH."
    );
  const args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"];
  return chromium.launch({ executablePath: found, headless: true, args });
}

/** Serves the built add-in on loopback, nothing else. */
export async function serveBuild(): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const file = new URL(pathname.slice(1), built);
    if (!file.href.startsWith(built.href) || !existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const type = KINDS[extname(pathname)] ?? "application/octet-stream";
    response.writeHead(200, { "content-type": type }).end(readFileSync(fileURLToPath(file)));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { server, address: `http://127.0.0.1:${String(port)}/` };
}

/** What a page asked for beyond its own server, and what it complained of. */
export interface Watched {
  readonly page: Page;
  readonly asked: readonly string[];
  readonly complaints: readonly string[];
}

/**
 * A page that is watched: every request beyond its own server is refused and noted, but the host's script where a stand-in is given.
 *
 * @param browser - The browser.
 * @param address - The page's own server.
 * @param hostScript - What to hand out in the place of the host's script; nothing keeps it away.
 */
export async function watchedPage(
  browser: Browser,
  address: string,
  hostScript?: string
): Promise<Watched> {
  const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
  const asked: string[] = [];
  const complaints: string[] = [];
  await page.route(
    (url) => !url.href.startsWith(address),
    async (route) => {
      const url = route.request().url();
      if (url === OFFICE_ADDRESS && hostScript !== undefined) {
        await route.fulfill({ contentType: "text/javascript", body: hostScript });
        return;
      }
      if (url !== OFFICE_ADDRESS) asked.push(url);
      await route.abort();
    }
  );
  page.on("pageerror", ({ message }) => complaints.push(message));
  page.on("console", (said) => {
    if (said.type() === "error" && !said.text().includes("net::ERR_FAILED"))
      complaints.push(said.text());
  });
  return { page, asked, complaints };
}

/** Opens what is folded in the guide, as a reader would who looks for a tool or a function. */
export async function openFolds(page: Page | Frame): Promise<void> {
  await page.waitForSelector(".fold", { state: "attached" });
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>(".fold")) fold.open = true;
  });
}
