import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import type { Browser, Frame, Page } from "playwright-core";
import type { CallResult, ExcelPage, SentCall } from "./excelPage";
import {
  ADDIN_ADDRESS,
  answerRequests,
  EXCEL_ADDRESS,
  type Network,
  type Seen,
} from "./officeFiles";
import type { ModelCell } from "./workbookModel";

type ExcelGlobals = typeof globalThis & { excel: ExcelPage };

/** The requirement sets of a current Excel on the web. */
export const CURRENT_SETS = {
  ExcelApi: "1.20",
  CustomFunctionsRuntime: "1.5",
  CustomFunctions: "1.12",
  SharedRuntime: "1.2",
  AddinCommands: "1.1",
} as const;

/** The flags of a call whose error cells and formatted numbers arrive as objects. */
export const RICH_CALL = 4 + 8;
/** The flag of a call whose error cells arrive as objects of an older shape. */
export const ERRORS_CALL = 4;

/** Which Excel opens the add-in. */
export interface ExcelKind extends Network {
  readonly sets?: Readonly<Record<string, string>>;
  /** As the host names itself: `Excel|Web|16.00`. */
  readonly host?: string;
  /** The settings that the workbook has. */
  readonly settings?: Readonly<Record<string, string>>;
  readonly viewport?: { readonly width: number; readonly height: number };
  /** The cells of the sheet Clients, by row and column counted from 0 such as "1,0", which is then selected. */
  readonly cells?: Readonly<Record<string, ModelCell>>;
  /** A script that every page and frame runs first. */
  readonly firstScript?: string;
}

/** The add-in in a frame of a page that stands for Excel. */
export interface InExcel {
  readonly page: Page;
  readonly addin: Frame;
  readonly seen: Seen;
  /** Calls functions through Microsoft's code, in one message. */
  call(calls: readonly SentCall[], flags?: number): Promise<CallResult[]>;
  /** Runs something in the page that stands for Excel. */
  inPage<Result, Given>(
    work: (excel: ExcelPage, given: Given) => Result,
    given: Given
  ): Promise<Result>;
  close(): Promise<void>;
}

let script: string | undefined;

function excelPage(): string {
  if (script === undefined) {
    const { outputFiles } = buildSync({
      entryPoints: [fileURLToPath(new URL("excelPage.ts", import.meta.url))],
      bundle: true,
      write: false,
      format: "iife",
      target: "es2020",
    });
    script = outputFiles[0]?.text ?? "";
  }
  return `<!doctype html><title>Excel</title><body><script>${script}</script>`;
}

const appContext = (sets: object) => ({
  _id: "id",
  _appName: 16,
  _appVersion: "16.01",
  _appUILocale: "en-us",
  _dataLocale: "en-us",
  _docUrl: "https://example.com/Book1.xlsx",
  _clientMode: 1,
  _settings: [],
  _reason: "documentOpened",
  _osfControlType: 1,
  _eToken: "",
  _correlationId: "correlation",
  _appInstanceId: "instance",
  _appMinorVersion: 0,
  _requirementMatrix: JSON.stringify(sets),
  _hostCustomMessage: "",
  _hostFullVersion: "16.0.18000.1",
  _clientWindowHeight: 800,
  _clientWindowWidth: 400,
  _addinName: "Extension Season",
  _appDomains: ["https://localhost:3000"],
  _featureGates: {},
  _initialDisplayMode: 1,
});

/**
 * Opens the built add-in in a frame, under its own content policy and with Microsoft's scripts, in front of which a page stands for
 * Excel.
 */
export async function openInExcel(browser: Browser, kind: ExcelKind = {}): Promise<InExcel> {
  const { sets = CURRENT_SETS, host = "Excel|Web|16.00", settings, viewport, ...rest } = kind;
  const { cells, firstScript, ...network } = rest;
  const context = await browser.newContext({ viewport: viewport ?? { width: 420, height: 820 } });
  const seen = await answerRequests(context, { ...network, excelPage: excelPage() });
  if (firstScript !== undefined) await context.addInitScript({ content: firstScript });
  const page = await context.newPage();
  await page.goto(EXCEL_ADDRESS);
  const named = host.replaceAll("|", "$");
  await page.evaluate(
    ([given, filled]) => {
      const { excel } = globalThis as ExcelGlobals;
      if (filled) {
        Object.assign(excel.book.sheets[0]?.cells ?? {}, filled);
        excel.book.active = { sheet: "Clients", row: 1, column: 0 };
      }
      excel.start(given);
    },
    [
      {
        address: ADDIN_ADDRESS,
        appContext: appContext(sets),
        hostInfo: `${named}$en-US$correlation$isNotDialog$$3`,
        frameHostInfo: `${host}|en-US|correlation||||3`,
        settings: settings ?? {},
      },
      cells,
    ] as const
  );
  await page.waitForSelector("iframe");
  const addin = await (await page.$("iframe"))?.contentFrame();
  if (!addin) throw new Error("The frame of the add-in is missing.");
  await addin.waitForLoadState("domcontentloaded");
  const inside = await page.evaluateHandle(() => (globalThis as ExcelGlobals).excel);
  const inPage: InExcel["inPage"] = (work, given) => inside.evaluate(work as never, given);
  return {
    page,
    addin,
    seen,
    inPage,
    call: (calls, flags = RICH_CALL) =>
      page.evaluate(
        async ([given, flag]) => {
          const { excel } = globalThis as ExcelGlobals;
          await excel.isReady;
          return excel.call(given, flag);
        },
        [calls, flags] as const
      ),
    close: () => context.close(),
  };
}
