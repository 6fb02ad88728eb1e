/** A part of a zip file as its directory lists it, still compressed. */
export interface PackedPart {
  readonly name: string;
  /** 0 is stored without compression, 8 is deflated. */
  readonly method: number;
  readonly isEncrypted: boolean;
  readonly checksum: number;
  /** The size after unpacking, in bytes, according to the directory. */
  readonly size: number;
  readonly packed: Uint8Array;
}

const END = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const LARGE_END = 0x06064b50;
const LARGE_END_PLACE = 0x07064b50;
const ENTRY = 0x02014b50;
const ENTRY_LENGTH = 46;
const PART = 0x04034b50;
const PART_LENGTH = 30;
const LARGE_FIELDS = 1;
/** Marks a field whose number is among the large fields. */
const ELSEWHERE = 0xffffffff;

/** The directory of a zip file. Reading outside the file, or something other than a directory, throws a RangeError. */
export class ZipDirectory {
  readonly count: number;
  readonly #bytes: Uint8Array;
  readonly #view: DataView;
  readonly #start: number;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    let end = bytes.length - END_LENGTH;
    const first = Math.max(0, end - LONGEST_COMMENT);
    while (end >= first && this.#long(end) !== END) end -= 1;
    const place = end - 20;
    if (place >= 0 && this.#long(place) === LARGE_END_PLACE) {
      const large = this.#large(place + 8);
      this.#require(large, LARGE_END);
      this.count = this.#large(large + 32);
      this.#start = this.#large(large + 48);
    } else {
      this.#require(end, END);
      this.count = this.#short(end + 10);
      this.#start = this.#long(end + 16);
    }
  }

  /** Every part in the order of the directory, not unpacked. */
  *parts(): Generator<PackedPart> {
    let at = this.#start;
    for (let index = 0; index < this.count; index += 1) {
      this.#require(at, ENTRY);
      const nameLength = this.#short(at + 28);
      const extraLength = this.#short(at + 30);
      const nameStart = at + ENTRY_LENGTH;
      const [size = 0, length = 0, offset = 0] = this.#sizes(at, nameStart + nameLength);
      this.#require(offset, PART);
      const start = offset + PART_LENGTH + this.#short(offset + 26) + this.#short(offset + 28);
      if (start + length > this.#bytes.length) throw new RangeError("a part is cut short");
      yield {
        name: new TextDecoder().decode(this.#bytes.subarray(nameStart, nameStart + nameLength)),
        method: this.#short(at + 10),
        isEncrypted: (this.#short(at + 8) & 1) === 1,
        checksum: this.#long(at + 16),
        size,
        packed: this.#bytes.subarray(start, start + length),
      };
      at = nameStart + nameLength + extraLength + this.#short(at + 32);
    }
  }

  /** The size unpacked, the size compressed and the place of a part; a number too large for its field is among the extra fields. */
  #sizes(entry: number, extra: number): number[] {
    const fields = [24, 20, 42].map((field) => this.#long(entry + field));
    let at = fields.includes(ELSEWHERE) ? extra : undefined;
    if (at === undefined) return fields;
    while (this.#short(at) !== LARGE_FIELDS) at += 4 + this.#short(at + 2);
    at += 4;
    return fields.map((field) => {
      if (field !== ELSEWHERE) return field;
      at = (at ?? 0) + 8;
      return this.#large(at - 8);
    });
  }

  #require(at: number, mark: number): void {
    if (this.#long(at) !== mark) throw new RangeError("no directory of a zip file");
  }

  #short(at: number): number {
    return this.#view.getUint16(at, true);
  }

  #long(at: number): number {
    return this.#view.getUint32(at, true);
  }

  #large(at: number): number {
    return Number(this.#view.getBigUint64(at, true));
  }
}
