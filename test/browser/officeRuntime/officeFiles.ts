import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { BrowserContext } from "playwright-core";
import { built } from "../../contract/builtAddIn";

const require = createRequire(import.meta.url);
const OFFICE = path.dirname(require.resolve("@microsoft/office-js/dist/office.js"));
const BUILD = fileURLToPath(new URL("../../../dist/", import.meta.url));
const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
};

/** The address of office.js in the built page. */
export const OFFICE_ADDRESS =
  /<script[^>]*\ssrc="?(https:[^">\s]+)/.exec(built("addin.html"))?.[1] ?? "";
/** Where the manifest says that the add-in is served. */
export const ADDIN_ADDRESS = "https://localhost:3000/addin.html";
/** An address that office.js takes for that of Excel on the web. */
export const EXCEL_ADDRESS = "https://excel.officeapps.live.com/x/excel.html";

/** How the network of a test differs from one where everything is found at once. */
export interface Network {
  /** Whether nothing answers at the address of office.js. */
  readonly isOfficeBlocked?: boolean;
  /** Another address of office.js, put into the tag of the page under the policy as built. */
  readonly officeTag?: string;
  /** Resolves when the script of the host, such as excel-web-16.00.js, may arrive. */
  readonly hostScriptMayArrive?: Promise<void>;
  /** Text of the page in front of the add-in. */
  readonly excelPage?: string;
}

/** What a page asked for beyond the add-in, and what went wrong in it. */
export interface Seen {
  readonly asked: string[];
  readonly refused: string[];
  readonly errors: string[];
}

/**
 * Answers every request of a context: the build at its address, Microsoft's package at the address of office.js, the page of Excel at
 * its own. Nothing reaches the network.
 */
export async function answerRequests(context: BrowserContext, network: Network): Promise<Seen> {
  const seen: Seen = { asked: [], refused: [], errors: [] };
  const { officeTag = OFFICE_ADDRESS } = network;
  const folders = [new URL(".", officeTag).href];
  const fileOf = (url: URL): string | undefined => {
    const folder = folders.find((one) => url.href.startsWith(one));
    // The package has all names in lower case; Microsoft's server takes any.
    if (folder !== undefined)
      return path.join(OFFICE, url.href.slice(folder.length).split("?")[0]?.toLowerCase() ?? "");
    if (url.href.startsWith(new URL(".", ADDIN_ADDRESS).href))
      return path.join(BUILD, url.pathname);
    return undefined;
  };
  await context.route("**/*", async (route) => {
    const url = new URL(route.request().url());
    if (url.href === EXCEL_ADDRESS) {
      await route.fulfill({ contentType: "text/html", body: network.excelPage ?? "" });
      return;
    }
    const isOfAddIn = url.href.startsWith(new URL(".", ADDIN_ADDRESS).href);
    if (!isOfAddIn) seen.asked.push(url.href.split("?")[0] ?? "");
    const isOffice = folders.some((one) => url.href.startsWith(one));
    if (isOffice && network.isOfficeBlocked === true) return route.abort();
    if (/excel-\w+-[\d.]+\.js/.test(url.pathname)) await network.hostScriptMayArrive;
    const file = fileOf(url);
    if (file === undefined || !existsSync(file)) return route.fulfill({ status: 404, body: "" });
    const body = readFileSync(file);
    const isPage = url.href.startsWith(ADDIN_ADDRESS);
    await route.fulfill({
      body: isPage ? body.toString().replace(OFFICE_ADDRESS, officeTag) : body,
      contentType: KINDS[path.extname(file)] ?? "application/octet-stream",
      headers: { "access-control-allow-origin": "*" },
    });
  });
  await context.exposeFunction("policyRefused", (refused: string) => seen.refused.push(refused));
  await context.addInitScript(() => {
    const { policyRefused } = globalThis as unknown as {
      policyRefused: (text: string) => void;
    };
    addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) => {
      policyRefused(`${effectiveDirective} ${blockedURI}`);
    });
  });
  context.on("weberror", (error) => seen.errors.push(error.error().message));
  return seen;
}
