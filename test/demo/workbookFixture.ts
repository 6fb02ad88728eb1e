import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type CellFormulaValue, type CellValue, Workbook } from "@cj-tech-master/excelts";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { strFromU8, unzipSync } from "fflate";
import { afterAll } from "vitest";
import type { StandInHost } from "../../src/host/standInHost";
import { recalculateFile, type RecalculatedWorkbook } from "../../src/demo/workbook/workbook";
import { fixtureHost } from "../host/fixtureAddIn";

const folders: string[] = [];

afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

/** A new folder for the files of one test, removed when the tests of the file are through. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "demo-"));
  folders.push(folder);
  return folder;
}

/** A formula as a cell's value. */
export function formula(text: string, result?: number | string): CellFormulaValue {
  return result === undefined ? { formula: text } : { formula: text, result };
}

/** A formula with the mark of a dynamic array, as a spreadsheet saves one that spills. */
export function dynamic(text: string, ref: string, result?: number): CellValue {
  return {
    formula: text,
    ref,
    shareType: "array",
    isDynamicArray: true,
    result,
  } as CellValue;
}

/** Builds a workbook, writes it to a file and gives the file's path. */
export async function workbookFile(build: (workbook: Workbook) => void): Promise<string> {
  const workbook = new Workbook({
    formulaSyntaxProbe: createFormulaSyntaxProbe(),
  });
  // Files that a program has made without calculating them ask for it.
  workbook.calcProperties.fullCalcOnLoad = true;
  build(workbook);
  const path = join(newFolder(), "given.xlsx");
  const bytes = await workbook.xlsx.writeBuffer();
  writeFileSync(path, new Uint8Array(bytes as unknown as ArrayBufferLike));
  return path;
}

/** A recalculated workbook, opened again from the bytes that would be written. */
export interface Reopened extends RecalculatedWorkbook {
  readonly workbook: Workbook;
  /** The text of a part of the written file. */
  readonly part: (name: string) => string;
  /** A cell's value; of a formula its result. */
  readonly value: (sheet: string, address: string) => unknown;
}

/** Recalculates a workbook file and opens what came out. */
export async function recalculated(path: string, host?: StandInHost): Promise<Reopened> {
  const outcome = recalculateFile(path, host ?? fixtureHost());
  const workbook = new Workbook({
    formulaSyntaxProbe: createFormulaSyntaxProbe(),
  });
  await workbook.xlsx.load(outcome.bytes);
  const parts = unzipSync(outcome.bytes);
  return {
    ...outcome,
    workbook,
    part: (name) => strFromU8(parts[name] ?? new Uint8Array()),
    value(sheet, address) {
      const cell = workbook.getWorksheet(sheet)?.getCell(address);
      return cell?.formula ? cell.result : cell?.value;
    },
  };
}
