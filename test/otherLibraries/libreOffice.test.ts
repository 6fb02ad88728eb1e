import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import { describe, expect, it } from "vitest";
import { fileSpelling } from "../../src/demo/workbook/fileSpelling";
import { OwnFunctionNames } from "../../src/demo/workbook/ownFunctionNames";
import { readWorkbook } from "../../src/demo/workbook/readWorkbook";
import { recalculateFile } from "../../src/demo/workbook/workbook";
import type { SheetStore } from "../../src/demo/workbook/sheetStore";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { newFolder } from "../demo/workbookFixture";
import { fixtureHost } from "../host/fixtureAddIn";
import { CELLS, EVERYDAY, OTHERWISE_IN_EXCEL } from "./everydayFormulas";

const NO_FUNCTIONS = new OwnFunctionNames("NONE", []);

const sheetOf = (path: string): SheetStore | undefined =>
  readWorkbook(unpackedParts(readFileSync(path)), NO_FUNCTIONS).sheets[0];

/** The workbook as LibreOffice calculates and saves it. */
function savedByLibreOffice(path: string, folder: string): string {
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const outcome = join(folder, "outcome");
  const words = ["--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", outcome];
  execFileSync("soffice", [profile, ...words, path], { stdio: "ignore" });
  return join(outcome, "given.xlsx");
}

function isSame(first: unknown, second: unknown): boolean {
  if (typeof first !== "number" || typeof second !== "number")
    return JSON.stringify(first) === JSON.stringify(second);
  return Math.abs(first - second) <= 1e-9 * Math.max(1, Math.abs(second));
}

describe("an everyday formula", () => {
  it("has the result of LibreOffice, or is listed as one that may differ", async () => {
    const workbook = new Workbook();
    workbook.calcProperties.fullCalcOnLoad = true;
    const sheet = workbook.addWorksheet("Sheet");
    for (const [address, value] of Object.entries(CELLS)) sheet.getCell(address).value = value;
    for (const [index, text] of EVERYDAY.entries())
      sheet.getCell(index + 1, 1).value = { formula: fileSpelling(text, NO_FUNCTIONS) };
    const folder = newFolder();
    const [path, written] = [join(folder, "given.xlsx"), join(folder, "written.xlsx")];
    writeFileSync(path, new Uint8Array(await workbook.xlsx.writeBuffer()));
    const { bytes, report } = recalculateFile(path, fixtureHost());
    writeFileSync(written, bytes);
    const [ours, theirs] = [sheetOf(written), sheetOf(savedByLibreOffice(path, folder))];
    const listed = new Set([...report.notCalculated, ...report.mayDiffer].map(({ row }) => row));
    const differences = EVERYDAY.flatMap((text, index) => {
      const content = (store: SheetStore | undefined) => store?.find(index + 1, 1)?.content ?? null;
      const expected = OTHERWISE_IN_EXCEL[text] ?? content(theirs);
      const isListed = listed.has(index + 1);
      return isListed || isSame(content(ours), expected) ? [] : [[text, content(ours), expected]];
    });
    expect(differences).toEqual([]);
    // A few functions are not exact; a list that grows would be of no use.
    expect(listed.size).toBeLessThan(EVERYDAY.length / 10);
  });
});
