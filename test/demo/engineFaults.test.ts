import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  BY_CONDITION,
  COUNTS_TEXT_IN_CELLS,
  MAY_DIFFER,
  ONE_VALUE,
  ONE_VALUE_AT,
  SEVEN_DIGITS,
} from "../../src/demo/workbook/engineFaults";
import { FIFTEEN_DIGITS, NativeCorrections } from "../../src/demo/workbook/nativeCorrections";
import { formula, recalculated, workbookFile } from "./workbookFixture";

async function answers(
  texts: readonly string[],
  cells: Readonly<Record<string, number | string | boolean>>
) {
  const path = await workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Sheet");
    for (const [address, value] of Object.entries(cells)) sheet.getCell(address).value = value;
    for (const [index, text] of texts.entries()) sheet.getCell(index + 1, 1).value = formula(text);
  });
  const { value, report } = await recalculated(path);
  return { values: texts.map((_text, index) => value("Sheet", `A${index + 1}`)), report };
}

/**
 * Results of Excel. Those marked E are values that Excel saved in test workbooks of other projects. Those marked D are examples from the
 * documentation of the function (memory). All others were noted where this library differed from LibreOffice.
 */
const IN_EXCEL: readonly (readonly [formula: string, result: unknown])[] = [
  ["SUM(Z1,Z2)", 5], // E
  ["SUM(Sheet!Z1,Z3,2)", 2], // E
  ['SUM("3",Z2)', 8], // D
  ["MAX(Z1,Z2)", 5],
  ["MIN(Z1,Z2)", 5],
  ["AVERAGE(Z1,Z2)", 5],
  ["PRODUCT(Z1,Z2)", 5],
  ["COUNT(Z1,Z2,Z3)", 1],
  ["AND(Z4,TRUE)", true],
  ["ROUND(1.005,2)", 1.01],
  ["ROUND(0.285,2)", 0.29],
  ["ROUND(-1.005,2)", -1.01],
  ["ROUND(0.049999999999999975,1)", 0.1], // E
  ["ROUND(1234.5,-2)", 1200],
  ["ROUND(2.5,0)", 3],
  ['VALUE("$1,000")', 1000], // D
  ['VALUE("(5)")', -5],
  ['VALUE("4/15/2026")', 46127],
  ['VALUE("7.5%")', 0.075],
  ['VALUE("6:00 PM")', 0.75],
  ['TEXT(46127,"d\\ mmm\\ yyyy")', "15 Apr 2026"],
  ['TEXT(1234.5,"#,##0.00_)")', "1,234.50 "], // E
  ["XLOOKUP(5,{1;5;9},{1;2;3},0,0,2)", 2],
  ["CEILING(-23.5,1)", -23], // E
  ["FLOOR(-23.5,1)", -24], // E
  ["CEILING(-2.5,-2)", -4], // D
  ["FLOOR(-2.5,-2)", -2], // D
  ["FLOOR(0,0)", 0],
  ["CEILING(2.5,1)", 3], // D
  ["FLOOR(3.7,2)", 2], // D
  ["FV(0,0,0)", 0],
  ["ROUND(FV(0.06/12,10,-200,-500,1),2)", 2581.4], // D
  ["ROUND(NPER(0.01,1,10),2)", -9.58], // E
  ["ROUND(NPER(0.12/12,-100,-1000,10000,1),4)", 59.6739], // D
  ["NETWORKDAYS.INTL(DATE(2006,1,1),DATE(2006,1,31))", 22], // D
  ['NETWORKDAYS.INTL(DATE(2006,1,1),DATE(2006,2,1),"0010001",{38719;38733})', 20], // D
  ["NETWORKDAYS.INTL(DATE(2006,1,1),DATE(2006,2,1),7,{38719;38733})", 22], // D
  ["WORKDAY.INTL(DATE(2012,1,1),90,11)", 41013], // D
  ["WORKDAY.INTL(DATE(2012,1,1),30,17)", 40944], // D
  ["0.1+0.2=0.3", true],
  ["0.1+0.2>0.3", false],
  ["IF(0.1+0.2<>0.3,1,2)", 2],
  ['"$1,000"+1', 1001], // D
  ["INT(-8.9)", -9], // D
  ["MOD(-3,2)", 1], // D
  ["MOD(3,-2)", -1], // D
  ["ROUNDDOWN(-3.14159,1)", -3.1], // D
  ["ROUNDDOWN(31415.92654,-2)", 31400], // D
  ["ROUNDUP(-3.14159,1)", -3.2], // D
  ["ROUNDUP(31415.92654,-2)", 31500], // D
  ["TRUNC(-8.9)", -8], // D
  ["Z1=Z5", false],
  ["Z5=0", true],
  ["UNIQUE(Z5)", 0], // E
  ["DAY(0)", 0], // E
  ["MONTH(0)", 1], // E
  ["YEAR(1)", 1900],
  ["DAY(59)", 28], // D
  ["DAY(60)", 29], // D
  ["MONTH(61)", 3], // D
  ["DATE(1900,1,1)", 1], // D
  ["DATE(108,1,2)", 39449], // D
  ["DATE(2008,14,2)", 39846], // D
  ["DATE(2008,1,-15)", 39432], // D
  ["WEEKDAY(39492)", 5], // D
  ["WEEKDAY(39492,2)", 4], // D
  ["WEEKDAY(39492,3)", 3], // D
  ["WEEKDAY(1)", 1],
];

describe("a function of Excel", () => {
  it("returns what it returns in Excel", async () => {
    const cells = { Z1: "n/a", Z2: 5, Z3: "3", Z4: "yes" };
    const { values, report } = await answers(
      IN_EXCEL.map(([text]) => text),
      cells
    );
    const found = IN_EXCEL.map(([text], index) => [text, values[index]]);
    expect(report.notCalculated).toEqual([]);
    expect(found).toEqual(IN_EXCEL.map(([text, result]) => [text, result]));
  });

  it("returns the error of Excel", async () => {
    const texts = [
      "FLOOR(2.5,-2)",
      "CEILING(2.5,-2)",
      "FLOOR(1,0)",
      'VALUE("soon")',
      "ROUND(Z1,2)",
    ];
    const { values } = await answers(texts, { Z1: "n/a" });
    expect(values).toEqual(
      ["#NUM!", "#NUM!", "#DIV/0!", "#VALUE!", "#VALUE!"].map((error) => ({ error }))
    );
  });

  it("is among these examples if it is calculated here", () => {
    const examples = IN_EXCEL.map(([text]) => text).join(" ");
    const own = [...new NativeCorrections().functions().keys()];
    const missing = own.filter((name) => !examples.includes(`${name}(`));
    expect(missing).toEqual([FIFTEEN_DIGITS]);
  });

  it("ignores text in single cells", async () => {
    const names = [...COUNTS_TEXT_IN_CELLS].filter((name) => name !== "UNIQUE");
    const { values } = await answers(
      names.flatMap((name) => [`${name}(Z1,Z2,Z6)`, `${name}(Z2,Z6)`]),
      { Z1: "n/a", Z2: 5, Z6: 3 }
    );
    for (const [index, name] of names.entries())
      expect([name, values[2 * index]]).toEqual([name, values[2 * index + 1]]);
  });
});

describe("a result that may differ from Excel", () => {
  const differing = async (texts: readonly string[], cells = {}): Promise<readonly number[]> => {
    const { report } = await answers(texts, { Z1: 1, Z2: 2, Z3: 3, Z4: 0.3, ...cells });
    return [...report.mayDiffer, ...report.notCalculated]
      .map(({ row }) => row)
      .sort((a, b) => a - b);
  };
  const all = (texts: readonly string[]): number[] => texts.map((_text, index) => index + 1);

  it("is listed for each function that is known for it", async () => {
    const names = [...Object.keys(MAY_DIFFER), ...SEVEN_DIGITS];
    const texts = names.map((name) => `${name}(1,Z1:Z3)`);
    expect(await differing(texts)).toEqual(all(texts));
  });

  it("is listed where a function would read the first of several cells", async () => {
    const whole = [...ONE_VALUE].map((name) => `SUMPRODUCT(${name}(Z1:Z3))`);
    const some = Object.entries(ONE_VALUE_AT).map(([name, isAt]) => {
      const last = [0, 1, 2].find(isAt) ?? 0;
      return `SUMPRODUCT(${name}(${"Z1,".repeat(last)}Z1:Z3))`;
    });
    const { report } = await answers([...whole, ...some], { Z1: 1, Z2: 2, Z3: 3 });
    expect(report.notCalculated.map(({ row }) => row)).toEqual(all([...whole, ...some]));
  });

  it("is listed for a number that is nearly whole or 0", async () => {
    const near = [
      "0.1+0.2-Z4",
      "0.1+0.2-Z4=0",
      "INT(0.29*100)",
      "TRUNC(4.35*100)",
      "ROUNDDOWN(4.35*100,0)",
      "ROUNDUP(1.1*1.1*100,0)",
      "MOD(0.3,0.1)",
    ];
    const clear = ["Z3-Z1", "Z3-Z1=0", "Z1-Z1", "INT(4.5)", "MOD(10,3)", "ROUNDUP(1.21,1)"];
    expect(await differing([...near, ...clear])).toEqual(all(near));
  });

  it("is listed where a cell has a number as text", async () => {
    const counted = [...BY_CONDITION].map((name) => `${name}(Z1:Z9,Z1:Z9,1)`);
    const texts = [...counted, "Z9*2", "SUM(Z1:Z9)", "Z1*2"];
    expect(await differing(texts, { Z9: "$1,000" })).toEqual(all([...counted, "Z9*2"]));
  });

  it("is listed for other forms of a formula", async () => {
    const texts = [
      "TEXT(1,Z1)",
      "SUBTOTAL(9,Z1,Z2)",
      "SUM(Z1:INDEX(Z1:Z3,2))",
      "Z1:Z3 A2:Z2",
      "OFFSET(Z1:Z2,1,0)",
    ];
    expect(await differing([...texts, "1+1", "OFFSET(Z1,1,0)"])).toEqual(all(texts));
  });

  it("is measured with the version of the library that is installed", () => {
    const library = new URL(
      "../../node_modules/@cj-tech-master/excelts/package.json",
      import.meta.url
    );
    // With another version, examine each entry of src/demo/workbook/engineFaults.ts again.
    expect(JSON.parse(readFileSync(library, "utf8"))).toMatchObject({ version: "10.2.0" });
  });
});

describe("a table", () => {
  it("may name its columns without its own name in the total row", async () => {
    const path = await workbookFile((workbook) => {
      const sheet = workbook.addWorksheet("Sheet");
      sheet.addTable({
        name: "Grid",
        ref: "A1",
        headerRow: true,
        totalsRow: true,
        columns: [{ name: "Name" }, { name: "Amount" }],
        rows: [
          ["a", 3],
          ["b", 4],
        ],
      });
      sheet.getCell("B4").value = formula("SUM([Amount])");
    });
    const { report, part } = await recalculated(path);
    expect(report.notCalculated).toEqual([]);
    expect(part("xl/worksheets/sheet1.xml")).toContain("<f>SUM([Amount])</f><v>7</v>");
  });
});
