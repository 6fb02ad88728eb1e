import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, extname, join, resolve } from "node:path";
import { strFromU8, unzipSync, zipSync } from "fflate";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { formulaPieces } from "../../src/host/formulaPieces";
import { OwnFunctionNames } from "../../src/demo/workbook/ownFunctionNames";
import { recalculateFile } from "../../src/demo/workbook/workbook";
import { readWorkbook } from "../../src/demo/workbook/readWorkbook";
import type { RecalculationReport } from "../../src/demo/workbook/recalculationReport";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { NotAWorkbook } from "../../src/demo/workbook/workbookFile";
import type { PackageParts } from "../../src/demo/workbook/workbookPackage";
import { firstElement, withAttribute } from "../../src/demo/workbook/xmlText";
import { changedParts, packageFaults } from "../otherLibraries/packageFaults";
import { runPython, runsPython } from "../otherLibraries/python";
import { say } from "./say";

/** The lines of each kind that are printed. */
const MOST_SHOWN = 40;
const NO_FUNCTIONS = new OwnFunctionNames("NONE", []);
const host = hostOfBuiltAddIn("null");
const scratch = mkdtempSync(join(tmpdir(), "soak-workbooks-"));

/** What a run over a folder counts. */
class Figures {
  files = 0;
  refused: string[] = [];
  crashed: string[] = [];
  damaged: string[] = [];
  lost: string[] = [];
  different: string[] = [];
  differentByFunction = new Map<string, number>();
  whole = 0;
  parts = 0;
  sameParts = 0;
  formulas = 0;
  kept = 0;
  notCalculated = 0;
  readonly written: { original: string; written: string }[] = [];

  /** Counts a file that was written. */
  add(original: string, written: string, report: RecalculationReport): void {
    const before = unpackedParts(readFileSync(original));
    const after = unpackedParts(readFileSync(written));
    const name = basename(original);
    const changed = changedParts(before, after);
    this.written.push({ original, written });
    this.whole += changed.length === 0 ? 1 : 0;
    this.parts += before.size;
    this.sameParts += before.size - changed.filter((part) => before.has(part)).length;
    this.lost.push(...changed.filter((part) => !after.has(part)).map((part) => `${name}: ${part}`));
    const known = new Set(packageFaults(before));
    const faults = packageFaults(after).filter((fault) => !known.has(fault));
    this.damaged.push(...faults.map((fault) => `${name}: ${fault}`));
    this.formulas += report.formulas;
    this.kept += report.kept;
    this.notCalculated += report.notCalculated.length;
    this.#compareValues(name, before, after);
  }

  #compareValues(name: string, first: PackageParts, second: PackageParts): void {
    const before = readWorkbook(first, NO_FUNCTIONS);
    const after = readWorkbook(second, NO_FUNCTIONS);
    for (const [index, store] of before.sheets.entries()) {
      for (const { row, column, text, sheet, hasValue } of before.formulas) {
        if (sheet !== store.name || !hasValue) continue;
        const was = store.find(row, column)?.content ?? null;
        const is = after.sheets[index]?.find(row, column)?.content ?? null;
        if (isSame(was, is)) continue;
        const called = formulaPieces(text).find(({ kind }) => kind === "call")?.text ?? "operators";
        this.differentByFunction.set(called, (this.differentByFunction.get(called) ?? 0) + 1);
        this.different.push(
          `${name}: ${sheet} row ${String(row)} column ${String(column)} =${text.slice(0, 60)}: ${JSON.stringify(was)}, now ${JSON.stringify(is)}`
        );
      }
    }
  }

  /** Prints the figures. */
  print(title: string): void {
    const lists: readonly (readonly [string, readonly string[]])[] = [
      ["refused", this.refused],
      ["crashed", this.crashed],
      ["damaged", this.damaged],
      ["parts lost", this.lost],
      ["values that differ from the file's", this.different],
    ];
    say(
      `\n${title}: ${String(this.files)} files, ${String(this.written.length)} written, ${String(this.whole)} whole`
    );
    const percent = ((100 * this.sameParts) / Math.max(1, this.parts)).toFixed(2);
    say(`parts byte for byte: ${String(this.sameParts)} of ${String(this.parts)} (${percent}%)`);
    say(
      `formulas: ${String(this.formulas)}, kept ${String(this.kept)}, not calculated ${String(this.notCalculated)}`
    );
    for (const [what, lines] of lists) {
      say(`${what}: ${String(lines.length)}`);
      for (const line of lines.slice(0, MOST_SHOWN)) say(`  ${line}`);
    }
    const byCount = [...this.differentByFunction].sort(([, a], [, b]) => b - a);
    if (byCount.length > 0)
      say(`by function: ${byCount.map(([call, count]) => `${call} ${String(count)}`).join(", ")}`);
  }
}

function isSame(first: unknown, second: unknown): boolean {
  if (typeof first !== "number" || typeof second !== "number")
    return JSON.stringify(first) === JSON.stringify(second);
  return Math.abs(first - second) <= 1e-9 * Math.max(1, Math.abs(first));
}

/** A copy of a workbook that asks for its calculation, as programs that do not calculate save it. */
function askingCopy(path: string): string {
  const copy = join(scratch, `asking-${basename(path)}`);
  const parts = unzipSync(readFileSync(path));
  for (const [name, content] of Object.entries(parts)) {
    const text = /workbook\.xml$/.test(name) ? strFromU8(content) : "";
    if (!/<(?:\w+:)?workbook\b/.test(text)) continue;
    const present = firstElement(text, "calcPr");
    const asking =
      present === undefined
        ? text.replace(/<\/((?:\w+:)?)workbook>/, '<$1calcPr fullCalcOnLoad="1"/></$1workbook>')
        : text.replace(present.tag, () => withAttribute(present.tag, "fullCalcOnLoad", "1"));
    parts[name] = new TextEncoder().encode(asking);
  }
  writeFileSync(copy, zipSync(parts));
  return copy;
}

function tryFile(path: string, figures: Figures): void {
  figures.files += 1;
  const name = basename(path);
  try {
    const { bytes, report } = recalculateFile(path, host);
    const written = join(scratch, `written-${String(figures.files)}-${name}`);
    writeFileSync(written, bytes);
    figures.add(path, written, report);
  } catch (error) {
    const list = error instanceof NotAWorkbook ? figures.refused : figures.crashed;
    list.push(`${name}: ${(error as Error).message.replace(path, "").trim()}`);
  }
}

/** Adds the files that openpyxl opened before and no longer opens. */
function openAgain(figures: Figures): void {
  const open = (paths: readonly string[]): (string | null)[] => {
    const list = join(scratch, "list.json");
    writeFileSync(list, JSON.stringify(paths));
    return runPython("openWorkbooks.py", list) as (string | null)[];
  };
  const before = open(figures.written.map(({ original }) => original));
  const after = open(figures.written.map(({ written }) => written));
  for (const [index, reason] of after.entries())
    if (reason !== null && before[index] === null)
      figures.damaged.push(`${basename(figures.written[index]?.original ?? "")}: ${reason}`);
}

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error("Name the folder with the workbooks.");
const paths = readdirSync(folder)
  .filter((name) => [".xlsx", ".xlsm", ".xltx", ".xltm"].includes(extname(name).toLowerCase()))
  .map((name) => resolve(folder, name));
try {
  const asSaved = new Figures();
  const calculated = new Figures();
  for (const path of paths) {
    tryFile(path, asSaved);
    let copy: string | undefined;
    try {
      copy = askingCopy(path);
    } catch {
      // It is not a zip file, which the first run has counted as refused.
    }
    if (copy !== undefined) tryFile(copy, calculated);
  }
  if (runsPython) for (const figures of [asSaved, calculated]) openAgain(figures);
  asSaved.print("As saved");
  calculated.print("Asked to calculate every formula");
  process.exitCode = asSaved.damaged.length + calculated.damaged.length > 0 ? 1 : 0;
} finally {
  rmSync(scratch, { recursive: true });
}
