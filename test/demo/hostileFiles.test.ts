import { readFileSync } from "node:fs";
import net from "node:net";
import { strToU8 } from "fflate";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { MOST_PARTS, MOST_UNPACKED } from "../../src/demo/workbook/unpackedParts";
import { runLength, tell } from "../soak/runLength";
import { goodWorkbook } from "./commandFixture";
import {
  expectRecalculated,
  expectRefused,
  formulas,
  type Parts,
  replaced,
  without,
  workbookParts,
  zipped,
} from "./hostileWorkbook";
import { type WrittenPart, zipFile } from "./zipFile";

const WORKBOOK = "xl/workbook.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";
const SHEET = "xl/worksheets/sheet1.xml";

const good = formulas("EXT.DOUBLE(4)");
const written = (parts: Parts, change: Partial<WrittenPart> = {}): WrittenPart[] =>
  Object.entries(parts).map(([name, text]) => ({ name, content: strToU8(text), ...change }));
const withPart = (part: WrittenPart): Uint8Array => zipFile([...written(good), part]);
const damaged = /is damaged or incomplete: it cannot be unpacked\.$/;
const tooLarge = /would unpack to more than 100 MB, which is the limit\.$/;

describe("a zip file", () => {
  const nothing = strToU8("not packed at all");
  const zeros = new Uint8Array(20_000_000);
  const megabyte = new Uint8Array(1_000_000);
  const repeated = Array.from({ length: MOST_UNPACKED / megabyte.length }, (_part, index) => ({
    name: `xl/media/${String(index)}.bin`,
    content: megabyte,
    packed: nothing,
    isSameAsBefore: index > 0,
  }));

  it.each<[what: string, bytes: () => Uint8Array, sentence: RegExp]>([
    [
      "one part too large by what it says, not looked at",
      () => withPart({ name: "a", content: nothing, packed: nothing, size: MOST_UNPACKED }),
      tooLarge,
    ],
    [
      "many parts in one place that are too large together",
      () => zipFile([...written(good), ...repeated]),
      tooLarge,
    ],
    [
      "a part larger than it says",
      () => withPart({ name: "a", content: zeros, size: 10 }),
      damaged,
    ],
    [
      "a part smaller than it says",
      () => withPart({ name: "a", content: nothing, size: 99 }),
      damaged,
    ],
    [
      "a part that is not what was packed",
      () => withPart({ name: "a", content: nothing, checksum: 1 }),
      damaged,
    ],
    ["an encrypted part", () => withPart({ name: "a", content: nothing, flags: 1 }), damaged],
    [
      "a part packed in an unknown way",
      () => withPart({ name: "a", content: nothing, method: 14 }),
      damaged,
    ],
    [
      "a part of a name that objects have",
      () => withPart({ name: "__proto__", content: nothing }),
      damaged,
    ],
    ["two parts of one name", () => withPart({ name: SHEET, content: nothing }), damaged],
    [
      "a part in the place of another",
      () => withPart({ name: "a", content: nothing, isSameAsBefore: true }),
      damaged,
    ],
    [
      "100,000 parts",
      () => zipFile(written(good), 100_000),
      /has more than 10,000 parts, which is the limit\.$/,
    ],
    ["more parts than it has", () => zipFile(written(good), MOST_PARTS), damaged],
    [
      "a zip file in it instead of a workbook",
      () => zipFile([{ name: "a.xlsx", content: zipped(good) }]),
      /is a zip file but not a workbook\.$/,
    ],
  ])("is rejected with %s", async (_what, bytes, sentence) => {
    await expectRefused(bytes(), sentence);
  });

  it("may have the fields of large files, and may contain a zip file", async () => {
    const parts = written(good, { isLarge: true });
    const inner = { name: "xl/media/inner.zip", content: zipped(good) };
    const bytes = zipFile([...parts, inner], parts.length + 1);
    expect((await expectRecalculated(bytes)).value(1)).toBe(8);
  });

  it("is rejected when incomplete, and with any byte changed is rejected or calculated correctly", async () => {
    const whole = readFileSync(await goodWorkbook());
    for (let part = 0; part < 50; part += 1) {
      const at = Math.floor((whole.length * part) / 50);
      await expectRefused(whole.subarray(0, at), part === 0 ? /is empty\.$/ : damaged);
    }
    const changes = runLength(25, 1_000);
    let refused = 0;
    for (let change = 0; change < changes; change += 1) {
      const bytes = Uint8Array.from(whole);
      const at = Math.floor((whole.length * (change + 0.5)) / changes);
      bytes[at] = (bytes[at] ?? 0) ^ (1 + (change % 255));
      try {
        await expectRefused(bytes, /\.$|read as a workbook/);
        refused += 1;
      } catch {
        expect((await expectRecalculated(bytes)).value(1)).toBe(8);
      }
    }
    tell(`${String(refused)} of ${String(changes)} workbooks with a byte changed were refused`);
    expect(refused).toBeGreaterThan(changes / 2);
  });
});

describe("a workbook", () => {
  const connect = vi.spyOn(net.Socket.prototype, "connect");
  const fetched = vi.spyOn(globalThis, "fetch");
  beforeAll(() => {
    connect.mockClear();
    fetched.mockClear();
  });
  afterAll(() => {
    connect.mockRestore();
    fetched.mockRestore();
  });

  const missing = /lists a sheet that is missing or cannot be read\.$/;
  const target = "worksheets/sheet1.xml";
  const declared = (document: string, part = WORKBOOK): Parts =>
    replaced(good, part, "?>\n<", `?>\n<!DOCTYPE x [${document}]><`);
  const laughs = Array.from(
    { length: 9 },
    (_level, index) => `<!ENTITY l${String(index + 1)} "${`&l${String(index)};`.repeat(10)}">`
  );

  it.each<[what: string, parts: Parts, sentence: RegExp]>([
    ["whose sheet is not there", without(good, SHEET), missing],
    ["without a list of its parts", without(good, RELATIONS), missing],
    ["without a sheet", workbookParts({}), /has no sheet\.$|could not be read as a workbook/],
    [
      "whose sheet lies outside it",
      replaced(good, RELATIONS, target, "../../../../etc/passwd"),
      missing,
    ],
    [
      "whose sheet is somewhere else",
      replaced(good, RELATIONS, target, 'http://example.invalid/x" TargetMode="External'),
      missing,
    ],
    [
      "that is cut short in a part",
      replaced(good, SHEET, "</sheetData></worksheet>", ""),
      /unclosed tag/,
    ],
    ["nested without end", { ...good, [SHEET]: "<worksheet>".repeat(5_000) }, /nesting depth/],
    [
      "that names an entity of its own",
      replaced(declared('<!ENTITY l "x">'), WORKBOOK, 'name="Sheet"', 'name="&l;"'),
      /undefined entity/,
    ],
    [
      "that names a file as an entity",
      replaced(
        declared('<!ENTITY l SYSTEM "file:///etc/passwd">'),
        WORKBOOK,
        'name="Sheet"',
        'name="&l;"'
      ),
      /undefined entity/,
    ],
    [
      "that multiplies an entity",
      replaced(
        declared(`<!ENTITY l0 "ha">${laughs.join("")}`, SHEET),
        SHEET,
        "EXT.DOUBLE(4)",
        "&l9;"
      ),
      /undefined entity/,
    ],
    [
      "in another encoding",
      { ...good, [SHEET]: "\ufffe\u0000<\u0000w" },
      /could not be read as a workbook/,
    ],
  ])("%s is rejected", async (_what, parts, sentence) => {
    await expectRefused(zipped(parts), sentence);
  });

  it.each<[what: string, parts: Parts]>([
    ["without content types", without(good, "[Content_Types].xml")],
    [
      "with wrong content types",
      replaced(good, "[Content_Types].xml", "worksheet+xml", "chartsheet+xml"),
    ],
    ["without the list that leads to it", without(good, "_rels/.rels")],
    ["with an unused document type", declared('<!ENTITY l "x">')],
    ["with parts named as if outside it", { ...good, "../../outside.xml": "<a/>", "/x": "<a/>" }],
    [
      "with a link to another workbook and to a place",
      {
        ...good,
        "xl/externalLinks/externalLink1.xml": "<externalLink/>",
        "xl/externalLinks/_rels/externalLink1.xml.rels": (good[RELATIONS] ?? "").replace(
          target,
          "http://example.invalid/x"
        ),
      },
    ],
  ])("%s is calculated", async (_what, parts) => {
    const { value, isComplete, parts: made } = await expectRecalculated(zipped(parts));
    expect(value(1)).toBe(8);
    expect(isComplete).toBe(true);
    expect(Object.keys(made).filter((name) => /^\/|\.\.|__/.test(name))).toEqual([]);
  });

  it("never makes the program request anything", () => {
    expect(connect).not.toHaveBeenCalled();
    expect(fetched).not.toHaveBeenCalled();
  });
});
