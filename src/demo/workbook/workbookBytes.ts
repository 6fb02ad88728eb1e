import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { zipSync } from "fflate";
import { sheetNames } from "./fileFormulas";
import { BeyondBounds, refuseBeyondBounds } from "./sheetBounds";
import { NotUnpacked, unpackedParts } from "./unpackedParts";
import { firstUnreadCell } from "./unreadCells";

/** Thrown for a file that cannot be used as a workbook, with the reason in one sentence. */
export class NotAWorkbook extends Error {}

/** A workbook and the bytes it was read from. */
export interface WorkbookFile {
  readonly workbook: Workbook;
  /** A zip file with the unpacked parts, not compressed; nothing else of the file is read. */
  readonly bytes: Uint8Array;
}

const OLD_BINARY_START = [0xd0, 0xcf, 0x11, 0xe0];
const WORKBOOK_PART = "xl/workbook.xml";
const ZIP_START = [0x50, 0x4b];
/** Text as older files have it: two bytes per letter. */
const ENCRYPTED = [..."EncryptedPackage"].join("\0");

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function checkedParts(path: string, bytes: Uint8Array): Map<string, Uint8Array> {
  try {
    const parts = unpackedParts(bytes);
    refuseBeyondBounds(parts);
    return parts;
  } catch (error) {
    if (!(error instanceof NotUnpacked || error instanceof BeyondBounds)) throw error;
    throw new NotAWorkbook(`${path} ${error.message}.`);
  }
}

function partsOfWorkbook(path: string, bytes: Uint8Array): Map<string, Uint8Array> {
  if (bytes.length === 0) throw new NotAWorkbook(`${path} is empty.`);
  if (startsWith(bytes, OLD_BINARY_START)) {
    throw new NotAWorkbook(
      new TextDecoder("latin1").decode(bytes).includes(ENCRYPTED)
        ? `${path} is protected by a password. Save a copy without a password.`
        : `${path} is in the old .xls format. Save it as .xlsx.`
    );
  }
  if (!startsWith(bytes, ZIP_START)) {
    throw new NotAWorkbook(`${path} is not an .xlsx workbook.`);
  }
  const parts = checkedParts(path, bytes);
  if (parts.has("xl/workbook.bin")) {
    throw new NotAWorkbook(`${path} is a binary workbook (.xlsb). Save it as .xlsx.`);
  }
  if (!parts.has(WORKBOOK_PART)) {
    throw new NotAWorkbook(`${path} is a zip file but not a workbook.`);
  }
  return parts;
}

function refuseUnread(path: string, workbook: Workbook, workbookPart: Uint8Array): void {
  const listed = sheetNames(new TextDecoder().decode(workbookPart)).length;
  if (listed === 0) throw new NotAWorkbook(`${path} has no sheet.`);
  if (workbook.worksheets.length + workbook.chartsheets.length < listed)
    throw new NotAWorkbook(`${path} lists a sheet that is missing or cannot be read.`);
  const unread = firstUnreadCell(workbook);
  if (unread !== undefined)
    throw new NotAWorkbook(`${path} is damaged: the content of ${unread} cannot be read.`);
  if (workbook.properties.date1904 === true) {
    throw new NotAWorkbook(
      `${path} uses the 1904 date system. The functions read only dates of the 1900 date system.`
    );
  }
}

/**
 * Reads an .xlsx workbook from its bytes.
 *
 * @param path - The name of the file, for the message.
 * @param given - The content of the file.
 * @returns The workbook, and the bytes that were read.
 * @throws NotAWorkbook with the reason in one sentence.
 */
export async function workbookOfBytes(path: string, given: Uint8Array): Promise<WorkbookFile> {
  const parts = partsOfWorkbook(path, given);
  const bytes = zipSync(Object.fromEntries(parts), { level: 0 });
  installChartSupport();
  const workbook = new Workbook({
    formulaSyntaxProbe: createFormulaSyntaxProbe(),
  });
  try {
    await workbook.xlsx.load(bytes);
  } catch (error) {
    throw new NotAWorkbook(`${path} could not be read as a workbook: ${(error as Error).message}`);
  }
  // The library writes a reference to the theme it has read, even to a theme that does not exist.
  if (![...parts.keys()].some((name) => name.startsWith("xl/theme/"))) workbook.clearThemes();
  refuseUnread(path, workbook, parts.get(WORKBOOK_PART) ?? new Uint8Array());
  return { workbook, bytes };
}
