import { crc32 } from "@cj-tech-master/excelts/archive";
import { type UnzipFileInfo, unzipSync } from "fflate";

/** The most bytes of all parts of a workbook; several hundred thousand filled cells need less. */
export const MOST_UNPACKED = 100_000_000;
/** The most parts of a workbook. */
export const MOST_PARTS = 10_000;

/** Thrown for a zip file that is not unpacked. The message is the end of a sentence that begins with the name of the file. */
export class NotUnpacked extends Error {}

const END = 0x06054b50;
const LARGE_END_PLACE = 0x07064b50;
const ENTRY_LENGTH = 46;

/** The checksums of the parts in the order of the directory, which the zip library does not read. */
function checksums(bytes: Uint8Array): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const short = (at: number): number => view.getUint16(at, true);
  const long = (at: number): number => view.getUint32(at, true);
  const large = (at: number): number => Number(view.getBigUint64(at, true));
  let end = bytes.length - 22;
  while (long(end) !== END) end -= 1;
  const isLarge = end >= 20 && long(end - 20) === LARGE_END_PLACE;
  const largeEnd = isLarge ? large(end - 12) : 0;
  const count = isLarge ? large(largeEnd + 32) : short(end + 10);
  if (count > MOST_PARTS)
    throw new NotUnpacked(
      `has more than ${MOST_PARTS.toLocaleString("en-US")} parts, which is the limit`
    );
  let at = isLarge ? large(largeEnd + 48) : long(end + 16);
  return Array.from({ length: count }, () => {
    if ((short(at + 8) & 1) === 1) throw new RangeError("a part is encrypted");
    const checksum = long(at + 16);
    at += ENTRY_LENGTH + short(at + 28) + short(at + 30) + short(at + 32);
    return checksum;
  });
}

/** The names and sizes of the parts as the directory lists them. Nothing is unpacked. */
function listedParts(bytes: Uint8Array): UnzipFileInfo[] {
  const listed: UnzipFileInfo[] = [];
  unzipSync(bytes, { filter: (part) => listed.push(part) < 0 });
  const names = new Set(listed.map(({ name }) => name));
  // The libraries keep parts by name in plain objects, in which this name has another meaning.
  if (names.size < listed.length || names.has("__proto__"))
    throw new RangeError("a part has no name of its own");
  if (listed.reduce((sum, { originalSize }) => sum + originalSize, 0) > MOST_UNPACKED)
    throw new NotUnpacked(
      `would unpack to more than ${String(MOST_UNPACKED / 1e6)} MB, which is the limit`
    );
  return listed;
}

/**
 * Unpacks a zip file, but never more than its directory says and the limits allow, so that a small file cannot fill the memory.
 *
 * @param bytes - The file's content.
 * @returns Its parts by name, each complete.
 * @throws NotUnpacked when it is too large or damaged.
 */
export function unpackedParts(bytes: Uint8Array): Map<string, Uint8Array> {
  try {
    const expected = checksums(bytes);
    const listed = listedParts(bytes);
    const unpacked = unzipSync(bytes);
    return new Map(
      listed.map(({ name, originalSize }, index) => {
        const content = unpacked[name];
        if (content?.length !== originalSize || crc32(content) !== expected[index])
          throw new RangeError("a part is not what the directory says");
        return [name, content];
      })
    );
  } catch (error) {
    if (error instanceof NotUnpacked) throw error;
    throw new NotUnpacked("is damaged or incomplete: it cannot be unpacked");
  }
}
