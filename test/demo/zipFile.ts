import { deflateRawSync } from "node:zlib";
import { crc32 } from "@cj-tech-master/excelts/archive";

/** A part as a zip file written by hand holds it, true or not. */
export interface WrittenPart {
  readonly name: string;
  readonly content: Uint8Array;
  /** The size the directory gives; the true one unless said otherwise. */
  readonly size?: number;
  /** Bytes in place of the packed content. */
  readonly packed?: Uint8Array;
  /** Points to the part written before instead of writing one. */
  readonly isSameAsBefore?: boolean;
  readonly checksum?: number;
  readonly flags?: number;
  readonly method?: number;
  /** Puts sizes and place among the extra fields, as files over four gigabytes do. */
  readonly isLarge?: boolean;
}

function record(length: number, write: (view: DataView) => void): Uint8Array {
  const bytes = new Uint8Array(length);
  write(new DataView(bytes.buffer));
  return bytes;
}

function fields(
  view: DataView,
  at: number,
  values: readonly (readonly [size: 2 | 4, value: number])[]
): void {
  let next = at;
  for (const [size, value] of values) {
    if (size === 2) view.setUint16(next, value, true);
    else view.setUint32(next, value, true);
    next += size;
  }
}

function largeFields(values: readonly number[]): Uint8Array {
  return record(4 + 8 * values.length, (view) => {
    fields(view, 0, [
      [2, 1],
      [2, 8 * values.length],
    ]);
    for (const [index, value] of values.entries())
      view.setBigUint64(4 + 8 * index, BigInt(value), true);
  });
}

/**
 * A zip file written byte by byte, so that it may say what is not so.
 *
 * @param parts - Its parts.
 * @param largeCount - How many parts an end for large files says it has; without it the end is an ordinary one.
 */
export function zipFile(parts: readonly WrittenPart[], largeCount?: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let length = 0;
  let offset = 0;
  const add = (piece: Uint8Array): void => {
    pieces.push(piece);
    length += piece.length;
  };
  for (const part of parts) {
    const name = new TextEncoder().encode(part.name);
    const packed = part.packed ?? new Uint8Array(deflateRawSync(part.content));
    const { flags = 0x800, method = 8, size = part.content.length } = part;
    const checksum = part.checksum ?? crc32(part.content);
    if (part.isSameAsBefore !== true) {
      offset = length;
      add(
        record(30, (view) => {
          fields(view, 0, [
            [4, 0x04034b50],
            [2, 45],
            [2, flags],
            [2, method],
            [4, 0],
            [4, checksum],
            [4, packed.length],
            [4, size],
            [2, name.length],
            [2, 0],
          ]);
        })
      );
      add(name);
      add(packed);
    }
    const extra = part.isLarge ? largeFields([size, packed.length, offset]) : new Uint8Array();
    const or = (value: number): number => (part.isLarge ? 0xffffffff : value);
    directory.push(
      record(46, (view) => {
        fields(view, 0, [
          [4, 0x02014b50],
          [2, 45],
          [2, 45],
          [2, flags],
          [2, method],
          [4, 0],
          [4, checksum],
          [4, or(packed.length)],
          [4, or(size)],
          [2, name.length],
          [2, extra.length],
          [2, 0],
          [2, 0],
          [2, 0],
          [4, 0],
          [4, or(offset)],
        ]);
      }),
      name,
      extra
    );
  }
  const start = length;
  for (const piece of directory) add(piece);
  const size = length - start;
  if (largeCount !== undefined) {
    const end = length;
    add(
      record(56, (view) => {
        fields(view, 0, [[4, 0x06064b50]]);
        view.setBigUint64(32, BigInt(largeCount), true);
        view.setBigUint64(48, BigInt(start), true);
      })
    );
    add(
      record(20, (view) => {
        fields(view, 0, [[4, 0x07064b50]]);
        view.setBigUint64(8, BigInt(end), true);
      })
    );
  }
  add(
    record(22, (view) => {
      fields(view, 0, [
        [4, 0x06054b50],
        [2, 0],
        [2, 0],
        [2, parts.length & 0xffff],
        [2, parts.length & 0xffff],
        [4, size],
        [4, start],
        [2, 0],
      ]);
    })
  );
  return new Uint8Array(Buffer.concat(pieces));
}
