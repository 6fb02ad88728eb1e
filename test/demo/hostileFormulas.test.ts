import { describe, expect, it } from "vitest";
import { runLength } from "../soak/runLength";
import {
  expectRecalculated,
  expectRefused,
  formulaRow,
  formulas,
  oneSheet,
  type Parts,
  sheetPart,
  workbookParts,
  zipped,
} from "./hostileWorkbook";

const nested = (name: string, depth: number): string =>
  `${`${name}(`.repeat(depth)}1${")".repeat(depth)}`;
const sumOf = (count: number): string => `1${"+1".repeat(count - 1)}`;

/** A formula that is not calculated keeps 777 of the file, and the one below it is calculated. */
async function expectLeftOut(formula: string, reason: string): Promise<void> {
  const { value, printed, isComplete } = await expectRecalculated(zipped(formulas(formula, "1+1")));
  expect([value(1), value(2), isComplete]).toEqual([777, 2, false]);
  expect(printed).toContain("1 formula was NOT calculated");
  expect(printed).toContain(reason);
  expect(Math.max(...printed.split("\n").map((line) => line.length))).toBeLessThan(400);
}

describe("a formula", () => {
  it("with 100 nested parentheses, or with 1,000 terms, is calculated", async () => {
    const { value } = await expectRecalculated(
      zipped(formulas(nested("", 100), nested("ABS", 100), sumOf(900), nested("EXT.DOUBLE", 50)))
    );
    expect([1, 2, 3, 4].map((row) => value(row))).toEqual([1, 1, 900, 2 ** 50]);
  });

  it.each([
    ["5,000 brackets", nested("", 5_000), "it could not be read"],
    ["5,000 calls", nested("ABS", 5_000), "it could not be read"],
    ["5,000 calls of ours", nested("EXT.DOUBLE", 5_000), "it could not be read"],
    ["5,000 signs", `${"-".repeat(5_000)}1`, "it could not be read"],
    ["4,000 parts of a sum", sumOf(4_000), "nested too deeply"],
    ["50,000 parts of a sum", sumOf(50_000), "nested too deeply"],
    ["too large a block", "SUM(B1:XFD1048576)", "it reads more than 5,000,000 cells"],
    ["a program of the computer", "cmd|'/C calc'!A0", "it could not be read"],
    ["a call of a library of the computer", 'CALL("kernel32","x")', "CALL is not supported"],
    [
      "an address to be asked",
      'WEBSERVICE("http://example.invalid/")',
      "WEBSERVICE is not supported",
    ],
  ])("of %s is listed as not calculated", async (_what, formula, reason) => {
    if (reason.includes("not supported")) {
      const { printed, isComplete } = await expectRecalculated(zipped(formulas(formula)));
      expect(printed).toContain(reason);
      expect(isComplete).toBe(false);
    } else await expectLeftOut(formula, reason);
  });

  it("of more than 8,192 characters is calculated", async () => {
    const { value } = await expectRecalculated(
      zipped(formulas(`LEN("${"x".repeat(9_000)}")`, `SUM({${"1,".repeat(5_000)}1})`))
    );
    expect([value(1), value(2)]).toEqual([9_000, 5_001]);
  });

  it("that needs more than a cell or a sheet can have shows an error", async () => {
    const { value } = await expectRecalculated(
      zipped(
        formulas(
          'REPT(REPT("x",32767),32767)',
          "SUM(_xlfn.SEQUENCE(1048576,16384))",
          "FACT(1E9)",
          'LEN(REPT("x",1E9))'
        )
      )
    );
    expect([1, 2, 3, 4].map((row) => value(row))).toEqual([
      { error: "#VALUE!" },
      { error: "#NUM!" },
      { error: "#NUM!" },
      { error: "#VALUE!" },
    ]);
  });

  it("that depends on itself is listed, and every other formula is calculated", async () => {
    const { printed, value } = await expectRecalculated(
      zipped(formulas("A2+1", "A3", "A1", "2*2"))
    );
    expect(printed).toContain("3 formulas were NOT calculated");
    expect(printed).toContain("circular reference: Sheet!A1, Sheet!A2, Sheet!A3");
    expect(value(4)).toBe(4);
  });

  it("may use names that refer to names many times", async () => {
    const names = Array.from({ length: 18 }, (_name, index) => {
      const text = index === 0 ? "1" : `N_${String(index - 1)}+N_${String(index - 1)}`;
      return `<definedName name="N_${String(index)}">${text}</definedName>`;
    });
    const sheet = sheetPart(formulaRow(1, "N_17"));
    const { value } = await expectRecalculated(zipped(workbookParts({ S: sheet }, names.join(""))));
    expect(value(1)).toBe(2 ** 17);
  });
});

describe("a text", () => {
  it("that looks like a formula remains text", async () => {
    const texts = ["=cmd|'/C calc'!A0", "=1+1", "+1+1", "-1+1", "@SUM(1)", "\t=1+1", "{=1+1}"];
    const rows = texts.map(
      (text, row) =>
        `<row r="${String(row + 1)}"><c r="A${String(row + 1)}" t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c></row>`
    );
    const last = texts.length + 1;
    const { value, parts, printed } = await expectRecalculated(
      zipped(oneSheet(`${rows.join("")}${formulaRow(last, "A1")}`))
    );
    expect(texts.map((_text, row) => value(row + 1))).toEqual(texts);
    expect(value(last)).toBe(texts[0]);
    expect(printed).toContain("1 formula:");
    expect(parts["xl/worksheets/sheet1.xml"]?.match(/<f[ >]/g)).toHaveLength(1);
  });
});

describe("a sheet", () => {
  const one = formulaRow(1, "1+1");
  const beyond = /has cells beyond the last row or column of a sheet\.$/;
  const blocks =
    /has merged cells or array formulas over more than 100,000 cells, which is the limit/;
  const array = (attributes: string): string =>
    `<row r="1"><c r="A1"${attributes}><f t="array" ref="A1:XFD1048576">1+1</f><v>2</v></c></row>`;
  const name = '<definedName name="All">Sheet!$A$1:$XFD$1048576</definedName>';
  const table =
    '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="T" ref="A1:XFD1048576"/>';

  it.each<[what: string, parts: Parts, sentence: RegExp]>([
    ["a row beyond the last", oneSheet(`${one}<row r="99999999"/>`), beyond],
    ["a row beyond the last, told otherwise", oneSheet(`${one}<row r='&#57;999999'/>`), beyond],
    ["more rows than a sheet has", oneSheet(`<row r="1048575"/>${"<row/>".repeat(2)}`), beyond],
    ["a cell in a row beyond the last", oneSheet('<row r="1"><c r="A1048577"/></row>'), beyond],
    ["a column beyond the last", oneSheet('<row r="1"><c r="XFE1"/></row>'), beyond],
    [
      "widths beyond the last column",
      oneSheet(one, '<cols><col min="1" max="99999999" width="3"/></cols>'),
      beyond,
    ],
    [
      "all its cells merged",
      oneSheet(one, "", '<mergeCells><mergeCell ref="A2:XFD1048576"/></mergeCells>'),
      blocks,
    ],
    ["an array formula all over it", oneSheet(array("")), blocks],
    ["a spilled formula all over it", oneSheet(array(' cm="1"')), blocks],
    [
      "a name for all its cells",
      workbookParts({ Sheet: sheetPart(one) }, name),
      /has names for more than 5,000,000 cells/,
    ],
    [
      "a table all over it",
      {
        ...formulas("1+1"),
        "xl/tables/table1.xml": table,
        "xl/worksheets/_rels/sheet1.xml.rels":
          '<Relationships><Relationship Id="rId1" Type="x/table" Target="../tables/table1.xml"/></Relationships>',
      },
      /has tables of more than 500,000 cells/,
    ],
    [
      "more cells than are taken",
      oneSheet(`<row>${"<c/>".repeat(10_000)}</row>`.repeat(51)),
      /has more than 500,000 cells, which is the limit\.$/,
    ],
    [
      "a row that is no number",
      oneSheet('<row r="x"><c r="?"><v>1</v></c></row>'),
      /could not be read/,
    ],
    [
      "a text that is not there",
      oneSheet('<row r="1"><c r="A1" t="s"><v>99</v></c></row>'),
      /the content of Sheet!A1 cannot be read\.$/,
    ],
    [
      "a number that is none",
      oneSheet('<row r="1"><c r="A1"><v>five</v></c></row>'),
      /the content of Sheet!A1 cannot be read\.$/,
    ],
    [
      "a day that is none",
      oneSheet('<row r="1"><c r="A1" t="d"><v>x</v></c></row>'),
      /the content of Sheet!A1 cannot be read\.$/,
    ],
    ["no name", workbookParts({ "": sheetPart(one) }), /could not be read/],
    [
      "a name of controls and brackets",
      workbookParts({ "c\u001b[2J": sheetPart(one) }),
      /could not be read/,
    ],
    [
      "the name of another",
      workbookParts({ A: sheetPart(one), a: sheetPart(one) }),
      /could not be read/,
    ],
  ])("with %s is rejected", async (_what, parts, sentence) => {
    await expectRefused(zipped(parts), sentence);
  });

  it.each<[what: string, parts: Parts]>([
    ["a million rows by its own account", oneSheet(one, '<dimension ref="A1:XFD1048576"/>')],
    [
      "styles that are not there",
      oneSheet('<row r="1"><c r="A1" s="999"><f>1+1</f></c><c r="B1" s="-1"/></row>'),
    ],
    [
      "a shared formula all over it",
      oneSheet('<row r="1"><c r="A1"><f t="shared" si="0" ref="A1:XFD1048576">1+1</f></c></row>'),
    ],
    [
      "a name that objects have",
      workbookParts(
        { constructor: sheetPart(one) },
        '<definedName name="constructor">6</definedName>'
      ),
    ],
    ["breaks far out", oneSheet(one, "", '<rowBreaks><brk id="99999999" man="1"/></rowBreaks>')],
    [
      "links and rules all over it",
      oneSheet(
        one,
        "",
        '<hyperlinks><hyperlink ref="A2:XFD1048576" location="Sheet!A1"/></hyperlinks>'
      ),
    ],
    [
      "a name of quotes and brackets, written as numbers",
      workbookParts({ 'It\'s "q" & <b>': sheetPart(one), ["__proto__"]: sheetPart(one) }),
    ],
  ])("with %s is calculated", async (_what, parts) => {
    const { value, isComplete, printed } = await expectRecalculated(zipped(parts));
    expect(printed).toContain("Every formula was calculated");
    expect([value(1), isComplete]).toEqual([2, true]);
  });

  it("may be one of many, each of which depends on the one before", async () => {
    const count = runLength(200, 1_000);
    const sheets = Array.from({ length: count }, (_sheet, index) => [
      `S${String(index + 1)}`,
      sheetPart(formulaRow(1, index === 0 ? "1" : `S${String(index)}!A1+1`)),
    ]);
    const parts = workbookParts(Object.fromEntries(sheets) as Parts);
    expect((await expectRecalculated(zipped(parts))).value(1, `S${String(count)}`)).toBe(count);
  });
});
