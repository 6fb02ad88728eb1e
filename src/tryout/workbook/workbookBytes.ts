import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { createFormulaSyntaxProbe } from "@cj-tech-master/excelts/formula";
import { unzipSync } from "fflate";

/** Says in one sentence why a file cannot be taken as a workbook. */
export class NotAWorkbook extends Error {}

const OLD_BINARY_START = [0xd0, 0xcf, 0x11, 0xe0];
const ZIP_START = [0x50, 0x4b];
/** As old files write text: two bytes a letter. */
const ENCRYPTED = [..."EncryptedPackage"].join("\0");

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function refuseOtherFormats(path: string, bytes: Uint8Array): void {
  if (bytes.length === 0) throw new NotAWorkbook(`${path} is empty.`);
  if (startsWith(bytes, OLD_BINARY_START)) {
    throw new NotAWorkbook(
      new TextDecoder("latin1").decode(bytes).includes(ENCRYPTED)
        ? `${path} is protected by a password; save a copy without one.`
        : `${path} is in the old .xls format; save it as .xlsx.`
    );
  }
  if (!startsWith(bytes, ZIP_START)) {
    throw new NotAWorkbook(`${path} is not an .xlsx workbook.`);
  }
  let parts: string[];
  try {
    // Every part is unpacked, so that a damaged one is noticed here and not halfway through.
    parts = Object.keys(unzipSync(bytes));
  } catch {
    throw new NotAWorkbook(`${path} is damaged or incomplete: it cannot be unpacked.`);
  }
  if (parts.includes("xl/workbook.bin")) {
    throw new NotAWorkbook(`${path} is a binary workbook (.xlsb); save it as .xlsx.`);
  }
  if (!parts.includes("xl/workbook.xml")) {
    throw new NotAWorkbook(`${path} is a zip file but holds no workbook.`);
  }
}

/**
 * Reads an .xlsx workbook from its bytes.
 *
 * @param path - The file's name, for the sentence.
 * @param bytes - Its content.
 * @returns The workbook.
 * @throws NotAWorkbook in one sentence when it cannot be taken as one.
 */
export async function workbookOfBytes(path: string, bytes: Uint8Array): Promise<Workbook> {
  refuseOtherFormats(path, bytes);
  installChartSupport();
  const workbook = new Workbook({
    formulaSyntaxProbe: createFormulaSyntaxProbe(),
  });
  try {
    await workbook.xlsx.load(bytes);
  } catch (error) {
    throw new NotAWorkbook(`${path} cannot be read as a workbook: ${(error as Error).message}`);
  }
  if (workbook.properties.date1904 === true) {
    throw new NotAWorkbook(
      `${path} counts days from 1904; the functions read dates of the 1900 system only.`
    );
  }
  return workbook;
}
