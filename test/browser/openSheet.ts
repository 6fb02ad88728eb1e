import type { AddressInfo } from "node:net";
import { serveSheet } from "../../src/demo/serve/sheetServer";
import { openBrowser, watchedPage, type Watched } from "./browser";

/** The demo sheet in a page of its own. */
export interface OpenSheet extends Watched {
  /** Closes the browser and the sheet's server. */
  close(): Promise<void>;
}

/** Serves the built demo sheet on loopback and opens it, ready to be typed into. */
export async function openSheet(): Promise<OpenSheet> {
  const browser = await openBrowser();
  const server = await serveSheet(0);
  const { port } = server.address() as AddressInfo;
  const address = `http://127.0.0.1:${String(port)}/`;
  const watched = await watchedPage(browser, address);
  await watched.page.setViewportSize({ width: 1280, height: 800 });
  await watched.page.goto(address);
  await watched.page.waitForSelector("body[data-ready]", { timeout: 90_000 });
  const close = async (): Promise<void> => {
    await browser.close();
    server.close();
  };
  return { ...watched, close };
}
