import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { currentExcelFile } from "../../src/demo/season/currentExcelFile";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sampleClients } from "../../src/demo/terminal/sampleClients";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { newFolder } from "../demo/workbookFixture";
import { packageFaults } from "./packageFaults";
import { readWithOpenpyxl, runPython } from "./python";

interface ReadSheet {
  readonly charts: readonly { readonly kind: string; readonly references: readonly string[] }[];
  readonly conditionalFormats: number;
  readonly frozen: string | null;
  readonly orientation: string;
  readonly fitsWidth: boolean;
  readonly pagesTall: number;
  readonly headingRows: string | null;
  readonly header: string;
  readonly footer: string;
}

const path = join(newFolder(), "season.xlsx");
let bytes: Uint8Array;
let sheets: Readonly<Record<string, ReadSheet>>;

beforeAll(async () => {
  const made = seasonWorkbook(sampleClients(), ["Larch"]);
  const recalculated = await recalculateWorkbook(made, hostOfBuiltAddIn("null"));
  bytes = currentExcelFile(recalculated.bytes);
  writeFileSync(path, bytes);
  sheets = runPython("readSample.py", path) as Readonly<Record<string, ReadSheet>>;
}, 300_000);

describe("the sample workbook in openpyxl", () => {
  it("has three charts on its first sheet, over cells that are filled", () => {
    const [first] = Object.entries(sheets);
    expect(first?.[0]).toBe("Season at a glance");
    const charts = first?.[1].charts ?? [];
    expect(charts.map(({ kind }) => kind)).toEqual(["BarChart", "BarChart", "LineChart"]);
    const { error, values } = readWithOpenpyxl(path);
    expect(error).toBeNull();
    for (const reference of charts.flatMap(({ references }) => references)) {
      const match = /^'?([^'!]+)'?!\$([A-Z]+)\$(\d+):\$([A-Z]+)\$(\d+)$/.exec(reference);
      const [, sheet = "", column = "", from = "", , to = ""] = match ?? [];
      for (let row = Number(from); row <= Number(to); row += 1)
        expect(values[sheet]?.[`${column}${row}`], reference).not.toBeUndefined();
    }
  });

  it("colors the statuses and severities of the first sheet and of the client list", () => {
    expect(sheets["Season at a glance"]?.conditionalFormats).toBeGreaterThanOrEqual(12);
    expect(sheets["Clients"]?.conditionalFormats).toBeGreaterThanOrEqual(8);
  });

  it("keeps the name and the headings of the client list in view", () => {
    expect(sheets["Clients"]?.frozen).toBe("B2");
    expect(sheets["Clients"]?.headingRows).toBe("$1:$1");
  });

  // Where a client is chosen on the sheet, the repeated first row names the client, which a header cannot.
  const ofChosenClient = [
    "Extension request",
    "Cost of waiting",
    "Compare payments",
    "Partial payments",
    "Suggested payment",
    "Client detail",
  ];
  it("prints one page wide, with the name of the sheet or the client, and the page number", () => {
    for (const [name, sheet] of Object.entries(sheets)) {
      // One page has no room for all columns at a size that can be read.
      expect(sheet.fitsWidth, name).toBe(name !== "Column formulas");
      expect(sheet.orientation, name).toBe(/letter$/i.test(name) ? "portrait" : "landscape");
      const isOfChosen = ofChosenClient.includes(name);
      expect(sheet.header, name).toBe(isOfChosen ? null : "&A");
      if (isOfChosen) expect(sheet.headingRows, name).toBe("$1:$1");
      expect(sheet.footer, name).toBe("Page &P of &N");
    }
  });

  it("prints a request and a letter on one page each", () => {
    for (const name of ["Extension request", "Letter", "Larch", "Larch letter"])
      expect(sheets[name]?.pagesTall, name).toBe(1);
  });

  it("has no part that is missing or damaged", () => {
    expect(packageFaults(unpackedParts(bytes))).toEqual([]);
  });
});
