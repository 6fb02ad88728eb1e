import { crc32 } from "@cj-tech-master/excelts/archive";
import { Inflate } from "fflate";
import { type PackedPart, ZipDirectory } from "./zipDirectory";

/** Bytes that the parts of a workbook may come to together; several hundred thousand filled cells need less. */
export const MOST_UNPACKED = 100_000_000;
/** Parts that a workbook may have. */
export const MOST_PARTS = 10_000;

/** Says why a zip file is not unpacked, as the end of a sentence that begins with its name. */
export class NotUnpacked extends Error {}

const STORED = 0;
const DEFLATED = 8;
/** So many bytes at a time come to sixteen million at most. */
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
      `holds more than ${MOST_PARTS.toLocaleString("en-US")} parts, which no workbook needs`
    );
  const parts = new Map<string, PackedPart>();
  let sum = 0;
  for (const part of directory.parts()) {
    // The libraries keep parts by name in plain objects, where this one name means something else.
    if (parts.has(part.name) || part.name === "__proto__")
      throw new RangeError("a part has no name of its own");
    parts.set(part.name, part);
    sum += part.size;
  }
  if (sum > MOST_UNPACKED)
    throw new NotUnpacked(
      `would unpack to more than ${String(MOST_UNPACKED / 1e6)} MB, which is more than is taken here`
    );
  return parts;
}

/**
 * Unpacks a zip file, but never more of it than its directory says and than a workbook may have, so that no small file can
 * fill the memory.
 *
 * @param bytes - The file's content.
 * @returns Its parts by name, each whole.
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
