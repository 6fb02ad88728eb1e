import { strFromU8, strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { outputBeside } from "../../src/demo/terminal/outputFile";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { recalculateBytes } from "../../src/demo/workbook/workbook";
import { fixtureHost } from "../host/fixtureAddIn";
import {
  formulas,
  oneSheet,
  type Parts,
  replaced,
  sheetPart,
  workbookParts,
} from "./hostileWorkbook";

const WORKBOOK = "xl/workbook.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";
const SHEET = "xl/worksheets/sheet1.xml";
const TYPES = "[Content_Types].xml";
const DOUBLED = '<row r="1"><c r="A1"><f>_xldudf_EXT_DOUBLE(4)</f><v>777</v></c>';

function written(given: Parts | Record<string, Uint8Array>) {
  const parts = Object.entries(given).map(([name, part]: [string, string | Uint8Array]) => [
    name,
    typeof part === "string" ? strToU8(part) : part,
  ]);
  const bytes = zipSync(Object.fromEntries(parts) as Record<string, Uint8Array>);
  const { bytes: made, report } = recalculateBytes("given.xlsx", bytes, fixtureHost());
  const after = unpackedParts(made);
  const text = (name: string): string => strFromU8(after.get(name) ?? new Uint8Array());
  return { report, after, text };
}

/** The same parts with another. */
const withPart = (parts: Parts, name: string, text: string): Parts => ({ ...parts, [name]: text });

describe("a file comes back with its answer", () => {
  const keeps = (given: Parts, part = SHEET): void => {
    const { text, after } = written(given);
    expect(text(part)).toMatch(/<(?:x:)?v>8<\/(?:x:)?v>/);
    for (const [name, content] of Object.entries(given))
      if (name !== part)
        expect([name, strFromU8(after.get(name) ?? new Uint8Array())]).toEqual([name, content]);
  };

  it("and every part that was not known", () => {
    const more = {
      "xl/vbaProject.bin": "macros",
      "xl/comments1.xml": "<comments/>",
      "custom/x.bin": "x",
    };
    keeps({ ...oneSheet(`${DOUBLED}</row>`), ...more });
  });

  it("where the sheet has another name, and relationships a prefix", () => {
    const parts = oneSheet(`${DOUBLED}</row>`);
    const { [SHEET]: sheet = "", ...others } = parts;
    const moved = replaced(others, RELATIONS, "worksheets/sheet1.xml", "/xl/pages/sheet.xml");
    const prefixed = (moved[RELATIONS] ?? "")
      .replace("<Relationships xmlns=", "<r:Relationships xmlns:r=")
      .replace("<Relationship ", "<r:Relationship ")
      .replace("</Relationships>", "</r:Relationships>");
    keeps({ ...moved, [RELATIONS]: prefixed, "xl/pages/sheet.xml": sheet }, "xl/pages/sheet.xml");
  });

  it("where the format is the strict one, and the rows have a prefix", () => {
    const parts = oneSheet(`${DOUBLED}</row>`);
    const strict = Object.entries(parts).map(([name, text]) => [
      name,
      text
        .replaceAll(
          "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
          "http://purl.oclc.org/ooxml/spreadsheetml/main"
        )
        .replaceAll(
          "http://schemas.openxmlformats.org/officeDocument/2006",
          "http://purl.oclc.org/ooxml/officeDocument"
        ),
    ]);
    const given = Object.fromEntries(strict) as Parts;
    const sheet = (given[SHEET] ?? "")
      .replace("xmlns=", "xmlns:x=")
      .replace(/<(\/?)(worksheet|sheetData|row|c|f|v)\b/g, "<$1x:$2");
    keeps({ ...given, [SHEET]: sheet });
  });

  it("where comments and quoted sections are among the cells", () => {
    const cell = '<c r="B1" t="str"><v><![CDATA[a<b]]></v></c><!-- <c r="C1"/> -->';
    const parts = oneSheet(`${DOUBLED}${cell}</row>`);
    keeps(parts);
    expect(written(parts).text(SHEET)).toContain(cell);
  });

  it("where a part is encoded in two bytes per letter", () => {
    const parts = oneSheet(`${DOUBLED}</row>`);
    const text = (parts[SHEET] ?? "").replace("UTF-8", "UTF-16");
    const wide = new Uint8Array(Buffer.from(`\ufeff${text}`, "utf16le"));
    const all = Object.entries(parts).map(([name, part]) => [
      name,
      name === SHEET ? wide : strToU8(part),
    ]);
    const made = written(Object.fromEntries(all) as Record<string, Uint8Array>).text(SHEET);
    expect(made).toContain('encoding="UTF-8"');
    expect(made).toContain("<v>8</v>");
  });

  it("where a shared text is empty, and a shared formula is among the cells", () => {
    const rows = `<row r="1"><c r="A1"><f t="shared" si="0" ref="A1:A2">EXT.DOUBLE(B1)</f></c><c r="B1"><v>4</v></c><c r="C1" t="s"><v>0</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/></c><c r="B2"><v>5</v></c></row>`;
    const shared = replaced(
      oneSheet(rows),
      RELATIONS,
      "</Relationships>",
      '<Relationship Id="rId9" Type="x/sharedStrings" Target="sharedStrings.xml"/></Relationships>'
    );
    const { text } = written({ ...shared, "xl/sharedStrings.xml": "<sst><si/></sst>" });
    expect(text(SHEET)).toContain(">_xldudf_EXT_DOUBLE(B1)</f><v>8</v>");
    expect(text(SHEET)).toContain(">_xldudf_EXT_DOUBLE(B2)</f><v>10</v>");
    expect(text(SHEET)).toContain('<c r="C1" t="s"><v>0</v></c>');
  });
});

describe("a file keeps", () => {
  it("the values of formulas that do not depend on the add-in, and of a what-if data table", () => {
    const rows = `${DOUBLED}<c r="B1"><f>1+1</f><v>777</v></c><c r="C1"><f>A1+1</f><v>777</v></c><c r="D1"><f t="dataTable" ref="D1:D2" dt2D="0" r1="A9"/><v>777</v></c></row>`;
    const parts = replaced(oneSheet(rows), WORKBOOK, '<calcPr fullCalcOnLoad="1"/>', "");
    const { text, report } = written(parts);
    const values = [...text(SHEET).matchAll(/<v>(\d+)<\/v>/g)].map(([, value]) => value);
    expect(values).toEqual(["8", "777", "9", "777"]);
    expect([report.kept, report.notCalculated]).toEqual([2, []]);
  });

  it("the good value of a formula that cannot be calculated, which is listed", () => {
    const { text, report } = written(formulas("FROBNICATE(1)"));
    expect(text(SHEET)).toContain("<v>777</v>");
    expect(report.notCalculated).toHaveLength(1);
  });

  it("the list of formulas, unless a cell becomes a dynamic array", () => {
    const chain =
      '<Relationship Id="rId8" Type="x/calcChain" Target="calcChain.xml"/></Relationships>';
    const type = '<Override PartName="/xl/calcChain.xml" ContentType="x"/></Types>';
    const listed = (sheet: Parts): Parts => ({
      ...replaced(replaced(sheet, RELATIONS, "</Relationships>", chain), TYPES, "</Types>", type),
      "xl/calcChain.xml": "<calcChain/>",
    });
    const kept = written(listed(oneSheet(`${DOUBLED}</row>`)));
    expect(kept.after.has("xl/calcChain.xml")).toBe(true);
    const spilled = written(listed(formulas("EXT.STEPS(1)")));
    expect(spilled.after.has("xl/calcChain.xml")).toBe(false);
    expect(spilled.text(RELATIONS) + spilled.text(TYPES)).not.toContain("calcChain");
  });

  it("no digital signature, and says so", () => {
    const origin =
      '<Relationship Id="rId7" Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/></Relationships>';
    const parts = replaced(oneSheet(`${DOUBLED}</row>`), "_rels/.rels", "</Relationships>", origin);
    const { after, text, report } = written(withPart(parts, "_xmlsignatures/origin.sigs", "x"));
    expect(report.lostSignature).toBe(true);
    expect([...after.keys()].filter((name) => name.includes("signature"))).toEqual([]);
    expect(text("_rels/.rels")).not.toContain("signature");
  });

  it("the ending of its name", () => {
    expect(outputBeside("/a/clients.xlsm")).toBe("/a/clients.recalculated.xlsm");
  });
});

it("a sheet that has no cells keeps its place among the others", () => {
  const parts = workbookParts({ Chart: "<chartsheet/>", Sheet: sheetPart(`${DOUBLED}</row>`) });
  const given = replaced(
    parts,
    RELATIONS,
    'relationships/worksheet" Target="worksheets/sheet1.xml"',
    'relationships/chartsheet" Target="worksheets/sheet1.xml"'
  );
  const { text, report } = written(given);
  expect(text("xl/worksheets/sheet2.xml")).toContain("<v>8</v>");
  expect(text(SHEET)).toBe("<chartsheet/>");
  expect(report.notCalculated).toEqual([]);
});

describe("the mark of a dynamic array", () => {
  const SPILL = '<row r="1"><c r="A1"><f>EXT.DOUBLE({1,2})</f><v>777</v></c></row>';
  const inside = (text: string, name: string): string =>
    new RegExp(`<${name} .*</${name}>`).exec(text)?.[0] ?? "";
  const order = (text: string): string[] =>
    [...text.matchAll(/<(metadataTypes|futureMetadata|cellMetadata|valueMetadata)\b/g)].map(
      ([, name = ""]) => name
    );

  it("is added to a file without metadata, with its relationship and content type", () => {
    const { text } = written(oneSheet(SPILL));
    const metadata = text("xl/metadata.xml");
    expect(order(metadata)).toEqual(["metadataTypes", "futureMetadata", "cellMetadata"]);
    expect(inside(metadata, "cellMetadata")).toBe(
      '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata>'
    );
    expect(text(RELATIONS)).toContain('/sheetMetadata" Target="/xl/metadata.xml"/>');
    expect(text(TYPES)).toContain('<Override PartName="/xl/metadata.xml"');
    expect(text(SHEET)).toMatch(/<c r="A1" cm="1"><f t="array" ref="A1(?::B1)?">/);
  });

  it("is added to metadata of another kind, in the order of the format", () => {
    const rich =
      '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk><extLst><ext uri="{x}"/></extLst></bk></futureMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>';
    const parts = replaced(
      withPart(oneSheet(SPILL), "xl/metadata.xml", rich),
      RELATIONS,
      "</Relationships>",
      '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>'
    );
    const metadata = written(parts).text("xl/metadata.xml");
    expect(order(metadata)).toEqual([
      "metadataTypes",
      "futureMetadata",
      "futureMetadata",
      "cellMetadata",
      "valueMetadata",
    ]);
    expect(inside(metadata, "cellMetadata")).toContain('<rc t="2" v="0"/>');
    expect(inside(metadata, "metadataTypes")).toMatch(/count="2".*XLRICHVALUE.*XLDAPR/);
  });
});
