import type { OwnFunctionNames } from "./ownFunctionNames";
import { type LoadedWorkbook, readWorkbook } from "./readWorkbook";
import { BeyondBounds, refuseBeyondBounds } from "./sheetBounds";
import { NotUnpacked, unpackedParts } from "./unpackedParts";
import { type PackageParts, UnreadablePart, workbookPart } from "./workbookPackage";

/** Thrown for a file that cannot be used as a workbook, with the reason in one sentence. */
export class NotAWorkbook extends Error {}

/** A workbook file that was opened. */
export interface OpenedFile {
  readonly parts: PackageParts;
  readonly loaded: LoadedWorkbook;
}

const OLD_BINARY_START = [0xd0, 0xcf, 0x11, 0xe0];
const REASONS = [NotUnpacked, BeyondBounds, UnreadablePart];
const ZIP_START = [0x50, 0x4b];
/** Text as older files have it: two bytes per letter. */
const ENCRYPTED = Array.from("EncryptedPackage").join("\0");

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

/**
 * Unpacks a workbook file, or explains why it cannot be used.
 *
 * @param path - The name of the file, for the message.
 * @param bytes - The content of the file.
 * @returns The parts of the file by name, and the workbook that they are.
 * @throws NotAWorkbook with the reason in one sentence.
 */
export function openWorkbookFile(
  path: string,
  bytes: Uint8Array,
  names: OwnFunctionNames
): OpenedFile {
  if (bytes.length === 0) throw new NotAWorkbook(`${path} is empty.`);
  if (startsWith(bytes, OLD_BINARY_START)) {
    throw new NotAWorkbook(
      new TextDecoder("latin1").decode(bytes).includes(ENCRYPTED)
        ? `${path} is protected by a password. Save a copy without a password.`
        : `${path} is in the old .xls format. Save it as .xlsx.`
    );
  }
  if (!startsWith(bytes, ZIP_START)) throw new NotAWorkbook(`${path} is not an .xlsx workbook.`);
  try {
    const parts = unpackedParts(bytes);
    if (parts.has("xl/workbook.bin"))
      throw new NotAWorkbook(`${path} is a binary workbook (.xlsb). Save it as .xlsx.`);
    if (!parts.has(workbookPart(parts)))
      throw new NotAWorkbook(`${path} is a zip file but not a workbook.`);
    refuseBeyondBounds(parts);
    return { parts, loaded: readWorkbook(parts, names) };
  } catch (error) {
    if (!REASONS.some((reason) => error instanceof reason)) throw error;
    throw new NotAWorkbook(`${path} ${(error as Error).message}.`, { cause: error });
  }
}
