import { crc32 } from "@cj-tech-master/excelts/archive";
import { Inflate } from "fflate";
import { type PackedPart, ZipDirectory } from "./zipDirectory";

/** The most bytes of all parts of a workbook; several hundred thousand filled cells need less. */
export const MOST_UNPACKED = 100_000_000;
/** The most parts of a workbook. */
export const MOST_PARTS = 10_000;

/** Thrown for a zip file that is not unpacked. The message is the end of a sentence that begins with the name of the file. */
export class NotUnpacked extends Error {}

const STORED = 0;
const DEFLATED = 8;
/** With this many bytes at a time, at most sixteen million are unpacked. */
const BYTES_AT_A_TIME = 16_384;

function inflated({ packed, size }: PackedPart): Uint8Array {
  const content = new Uint8Array(size);
  let length = 0;
  const inflate = new Inflate((piece) => {
    if (length + piece.length > size) throw new RangeError("a part is larger than it says");
    content.set(piece, length);
    length += piece.length;
  });
  for (let at = 0; at < packed.length; at += BYTES_AT_A_TIME) {
    const next = at + BYTES_AT_A_TIME;
    inflate.push(packed.subarray(at, next), next >= packed.length);
  }
  return content.subarray(0, length);
}

function unpacked(part: PackedPart): Uint8Array {
  const isKnown = part.method === STORED || part.method === DEFLATED;
  if (part.isEncrypted || !isKnown) throw new RangeError("a part is packed in another way");
  const content = part.method === STORED ? part.packed : inflated(part);
  if (content.length !== part.size || crc32(content) !== part.checksum)
    throw new RangeError("a part is not what the directory says");
  return content;
}

function packedParts(bytes: Uint8Array): Map<string, PackedPart> {
  const directory = new ZipDirectory(bytes);
  if (directory.count > MOST_PARTS)
    throw new NotUnpacked(
      `has more than ${MOST_PARTS.toLocaleString("en-US")} parts, which is the limit`
    );
  const parts = new Map<string, PackedPart>();
  let sum = 0;
  for (const part of directory.parts()) {
    // The libraries keep parts by name in plain objects, in which this name has another meaning.
    if (parts.has(part.name) || part.name === "__proto__")
      throw new RangeError("a part has no name of its own");
    parts.set(part.name, part);
    sum += part.size;
  }
  if (sum > MOST_UNPACKED)
    throw new NotUnpacked(
      `would unpack to more than ${String(MOST_UNPACKED / 1e6)} MB, which is the limit`
    );
  return parts;
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
    const parts = packedParts(bytes);
    return new Map([...parts].map(([name, part]) => [name, unpacked(part)]));
  } catch (error) {
    if (error instanceof NotUnpacked) throw error;
    throw new NotUnpacked("is damaged or incomplete: it cannot be unpacked");
  }
}
