import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { expect } from "vitest";
import { DONE, INCOMPLETE, REFUSED } from "../../src/demo/terminal/exitCode";
import { run } from "./commandFixture";
import { newFolder } from "./workbookFixture";

const DOCUMENT = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const RELATIONS = "application/vnd.openxmlformats-package.relationships+xml";

/** The parts of a workbook by name, as text. */
export type Parts = Readonly<Record<string, string>>;

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (character) => `&#${String(character.charCodeAt(0))};`);

/** A row whose first cell holds a formula and 777, which it does not come to. */
export const formulaRow = (row: number, formula: string): string =>
  `<row r="${String(row)}"><c r="A${String(row)}"><f>${escaped(formula)}</f><v>777</v></c></row>`;

/** A sheet of some rows. */
export const sheetPart = (rows: string, before = "", after = ""): string =>
  `${DOCUMENT}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;

const relations = (list: string): string =>
  `${DOCUMENT}<Relationships xmlns="${PACKAGE}/relationships">${list}</Relationships>`;

const relation = (id: number, kind: string, target: string): string =>
  `<Relationship Id="rId${String(id)}" Type="${OFFICE}/${kind}" Target="${target}"/>`;

function contentTypes(count: number): string {
  const override = (part: string, kind: string): string =>
    `<Override PartName="/xl/${part}.xml" ContentType="${TYPES}.${kind}+xml"/>`;
  const sheets = Array.from({ length: count }, (_sheet, index) =>
    override(`worksheets/sheet${String(index + 1)}`, "worksheet")
  );
  return `${DOCUMENT}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="${RELATIONS}"/><Default Extension="xml" ContentType="application/xml"/>${override("workbook", "sheet.main")}${sheets.join("")}</Types>`;
}

/**
 * The parts of a workbook, written by hand so that each of them can be spoilt.
 *
 * @param sheets - The text of its sheets by name.
 * @param names - Its defined names, as they stand in the part.
 */
export function workbookParts(sheets: Parts, names = ""): Parts {
  const numbered = Object.entries(sheets).map(([name, text], index) => ({
    name,
    text,
    id: index + 1,
  }));
  const listed = numbered.map(
    ({ name, id }) =>
      `<sheet name="${escaped(name)}" sheetId="${String(id)}" r:id="rId${String(id)}"/>`
  );
  const targets = numbered.map(({ id }) =>
    relation(id, "worksheet", `worksheets/sheet${String(id)}.xml`)
  );
  return {
    "[Content_Types].xml": contentTypes(numbered.length),
    "_rels/.rels": relations(relation(1, "officeDocument", "xl/workbook.xml")),
    "xl/workbook.xml": `${DOCUMENT}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${listed.join("")}</sheets><definedNames>${names}</definedNames><calcPr fullCalcOnLoad="1"/></workbook>`,
    "xl/_rels/workbook.xml.rels": relations(targets.join("")),
    ...Object.fromEntries(
      numbered.map(({ text, id }) => [`xl/worksheets/sheet${String(id)}.xml`, text])
    ),
  };
}

/** A workbook of one sheet whose first cells hold some formulas. */
export const formulas = (...texts: string[]): Parts =>
  workbookParts({ Sheet: sheetPart(texts.map((text, row) => formulaRow(row + 1, text)).join("")) });

/** A workbook of one sheet. */
export const oneSheet = (rows: string, before = "", after = ""): Parts =>
  workbookParts({ Sheet: sheetPart(rows, before, after) });

/** Some parts without one. */
export const without = (parts: Parts, name: string): Parts =>
  Object.fromEntries(Object.entries(parts).filter(([other]) => other !== name));

/** Some parts, in one of them a text replaced by another. */
export function replaced(parts: Parts, name: string, text: string, by: string): Parts {
  const part = parts[name] ?? "";
  if (!part.includes(text)) throw new RangeError(`${name} holds no ${text}`);
  return { ...parts, [name]: part.replaceAll(text, by) };
}

/** A zip file of some parts. */
export const zipped = (parts: Parts): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));

async function tryBytes(bytes: Uint8Array) {
  const folder = newFolder();
  writeFileSync(join(folder, "given.xlsx"), bytes);
  const outcome = await run(join(folder, "given.xlsx"));
  return {
    ...outcome,
    folder,
    written: readdirSync(folder).filter((name) => name !== "given.xlsx"),
  };
}

const ONE_SENTENCE = /^\S[^\n]{10,400}$/;

/** Expects the program to refuse a file in one sentence, to print nothing else and to write nothing. */
export async function expectRefused(bytes: Uint8Array, sentence: RegExp): Promise<void> {
  const { code, printed, complaints, written } = await tryBytes(bytes);
  expect({ code, printed, written }).toEqual({ code: REFUSED, printed: "", written: [] });
  expect(complaints).toHaveLength(1);
  expect(complaints[0]).toMatch(sentence);
  expect(complaints[0]).toMatch(ONE_SENTENCE);
}

/** A recalculated file. */
export interface Recalculated {
  readonly printed: string;
  readonly isComplete: boolean;
  /** The value in the first column of a sheet, of the first unless named. */
  readonly value: (row: number, sheet?: string) => unknown;
  /** The parts of the file that was written. */
  readonly parts: Parts;
}

/** Expects the program to recalculate a file, and gives what came of it. */
export async function expectRecalculated(bytes: Uint8Array): Promise<Recalculated> {
  const { code, printed, complaints, folder, written } = await tryBytes(bytes);
  expect(complaints).toEqual([]);
  expect([DONE, INCOMPLETE]).toContain(code);
  expect(written).toEqual(["given.recalculated.xlsx"]);
  const output = readFileSync(join(folder, "given.recalculated.xlsx"));
  const workbook = new Workbook();
  await workbook.xlsx.load(output);
  return {
    printed,
    isComplete: code === DONE,
    value: (row, name) => {
      const sheet = name === undefined ? workbook.worksheets[0] : workbook.getWorksheet(name);
      const cell = sheet?.getCell(row, 1);
      return cell?.formula ? cell.result : cell?.value;
    },
    parts: Object.fromEntries(
      Object.entries(unzipSync(output)).map(([name, part]) => [name, strFromU8(part)])
    ),
  };
}
