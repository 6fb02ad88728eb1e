import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { STAGES } from "../../src/calculation/season/requestStage";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { formulaPieces } from "../../src/host/formulaPieces";
import { ENTERED_COLUMNS } from "../../src/addin/list/clientList";
import { currentExcelFile } from "../../src/demo/season/currentExcelFile";
import { readClients, type SampleClient } from "../../src/demo/season/clients";
import { FIRST_ANSWERS, LAST_ANSWERS } from "../../src/demo/season/sampleColumns";
import { GLANCE_SHEET } from "../../src/demo/season/glanceSheet";
import { fromCatalog } from "../functions/fromCatalog";
import { worksheetDate } from "../../src/demo/season/sheetStyle";
import { sampleClients } from "../../src/demo/terminal/sampleClients";
import { seasonReport } from "../../src/demo/terminal/seasonReport";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sealedHost } from "../../src/host/sealedHost";
import { type StandInHost } from "../../src/host/standInHost";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { Workbook } from "@cj-tech-master/excelts";

const clients = sampleClients();

function formulasOf(workbook: Workbook): string[] {
  const formulas: string[] = [];
  for (const sheet of workbook.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.formula) formulas.push(cell.formula);
      });
    });
  }
  return formulas;
}

/** What a function returns other than 1 for each row of its first argument. */
const table = (rows: number): string =>
  `() => Array.from({ length: ${rows} }, () => Array(8).fill(1))`;
const ANSWERS = new Map([
  ["PAYMENTSTOTAL", "() => [[1]]"],
  ["ROSTER", "(list, year, asOf, rate, columns) => list.map(() => columns[0].map(() => 1))"],
  ["METHODLINES", table(4)],
  ...["CALENDAR", "LINES", "MEMOLINES", "STATERULE"].map((name) => [name, table(7)] as const),
]);

/** A host with every function that the sample calls, each of which returns 1 for each row. */
function hostForSample(): StandInHost {
  const pieces = formulasOf(seasonWorkbook(clients)).flatMap(formulaPieces);
  const calls = pieces.filter((piece) => piece.text.startsWith("EXT.")).map((piece) => piece.text);
  const names = [...new Set(calls.map((call) => call.slice("EXT.".length)))];
  const parameters = Array.from({ length: 20 }, (_entry, index) => ({
    name: `argument${index}`,
    dimensionality: "matrix",
    type: "any",
    optional: true,
  }));
  const result = { dimensionality: "matrix", type: "any" };
  return sealedHost({
    bundle: names
      .map(
        (name) =>
          `CustomFunctions.associate("${name}", ${ANSWERS.get(name) ?? "(first) => (first ?? [[1]]).map(() => [1])"});`
      )
      .join("\n"),
    metadata: JSON.stringify({
      functions: names.map((name) => ({ id: name, name, parameters, result })),
    }),
  });
}

async function calculated(host: StandInHost): Promise<Workbook> {
  const { bytes } = await recalculateWorkbook(seasonWorkbook(clients), host);
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  return workbook;
}

describe("the sample workbook", () => {
  it("has only formulas that can be calculated, without an error", async () => {
    const workbook = seasonWorkbook(clients);
    const count = formulasOf(workbook).length;
    const { report } = await recalculateWorkbook(workbook, hostForSample());
    expect(report.formulas).toBe(count);
    expect(report.notCalculated).toEqual([]);
    expect(report.errors).toEqual([]);
    expect(report.spills).toBeGreaterThanOrEqual(9);
  });

  it("has clients of every kind, each of them once", () => {
    const has = (test: (client: SampleClient) => boolean) => clients.some(test);
    const amount = (client: SampleClient, heading: string) => Number(client.get(heading));
    expect(clients.length).toBeGreaterThanOrEqual(40);
    expect(new Set(clients.map((client) => client.get("Client"))).size).toBe(clients.length);
    expect(
      has((client) => amount(client, "Total payments") > amount(client, "Estimated total tax"))
    ).toBe(true);
    expect(has((client) => client.get("Tax year or fiscal year end") instanceof Date)).toBe(true);
    for (const [heading, value] of [
      ["Estimated total tax", 0],
      ["Filer type", "out of country"],
      ["Filer type", "nonresident"],
      ["State", "ME"],
      ["State", "MA"],
      ["State", null],
      ["Valid extension", "no"],
      ["Tax year or fiscal year end", 2023],
      ["Tax year or fiscal year end", 2024],
      ["Postponement ends", worksheetDate("2026-07-31")],
    ] as const)
      expect(clients.map((client) => client.get(heading))).toContainEqual(value);
  });

  it("has the columns of the client list in their order, and no others", () => {
    const headings = ENTERED_COLUMNS.map(({ heading }) => heading);
    for (const client of clients) expect([...client.keys()]).toEqual(headings);
    expect(() => readClients("Client,State\nAlder,OH\n")).toThrow(/Tax year/);
  });

  it("has charts of the requests by week, the statuses and the cost of waiting on its first sheet", async () => {
    const { bytes } = await recalculateWorkbook(seasonWorkbook(clients), hostForSample());
    const parts = unzipSync(bytes);
    const chart = (number: number): string =>
      strFromU8(parts[`xl/charts/chart${number}.xml`] ?? new Uint8Array()).replaceAll(
        "&apos;",
        "'"
      );
    expect(chart(1)).toContain("<c:barChart>");
    expect(chart(1)).toContain("Totals!$K$5:$K$20");
    expect(chart(1)).toContain("Totals!$M$5:$M$20");
    expect(chart(2)).toContain("'Season at a glance'!$B$7:$B$12");
    expect(chart(3)).toContain("<c:lineChart>");
    expect(chart(3)).toContain("'Cost of waiting'!$C$");
    expect(seasonWorkbook(clients).worksheets[0]?.name).toBe(GLANCE_SHEET);
  });

  it("counts every client under one status and one severity, and the requests by week", async () => {
    const workbook = await calculated(hostOfBuiltAddIn("null"));
    const glance = workbook.getWorksheet(GLANCE_SHEET);
    const sum = (from: number, rows: number) =>
      Array.from({ length: rows }, (_row, index) =>
        Number(glance?.getCell(from + index, 2).result)
      ).reduce((total, count) => total + count);
    expect(sum(7, STAGES.length)).toBe(clients.length);
    expect(sum(15, 4)).toBe(clients.length);
    const weeks = Array.from({ length: 16 }, (_week, index) =>
      Number(workbook.getWorksheet("Totals")?.getCell(5 + index, 13).result)
    );
    expect(weeks.reduce((total, count) => total + count)).toBeGreaterThan(25);
  });

  it("has headings that the add-in reads as they are meant, and does not confuse with its own answers", () => {
    const headings = seasonWorkbook(clients).getWorksheet("Clients")?.getRow(1);
    const answered = [...FIRST_ANSWERS, ...LAST_ANSWERS].map(({ heading }) => heading);
    const row = Array.from(
      { length: headings?.cellCount ?? 0 },
      (_heading, index) => headings?.getCell(index + 1).value
    ).filter((heading) => typeof heading === "string");
    const [, ...read] = fromCatalog("ROSTERHEADINGS")(
      [[...row, ...answered], [...row, ...answered].map(() => 1)],
      [[2025]]
    ) as string[][];
    expect(row).toEqual(ENTERED_COLUMNS.map(({ heading }) => heading));
    const used = read.filter(([, as]) => as !== "not used").map(([heading]) => heading);
    expect(used).toEqual(row.filter((heading) => !["Still needed", "Notes"].includes(heading)));
  });

  it("uses no formula that depends on the current date", () => {
    for (const formula of formulasOf(seasonWorkbook(clients))) {
      expect(formula).not.toMatch(/\b(TODAY|NOW)\(/);
    }
  });

  it("is printed in lines of at most the requested width, with every client", async () => {
    const lines = seasonReport(await calculated(hostForSample()), 100);
    expect(lines.filter((line) => line.length > 100)).toEqual([]);
    for (const client of clients) {
      expect(lines.some((line) => line.startsWith(`${String(client.get("Client"))} `))).toBe(true);
    }
    expect(lines.some((line) => line.includes("18,250.00"))).toBe(true);
    expect(lines.some((line) => line.includes("10/15/2026"))).toBe(true);
  });
});

describe("the file of the sample workbook", () => {
  it("is of the calculation of a current Excel, which keeps its results when it opens the file", async () => {
    const { bytes } = await recalculateWorkbook(seasonWorkbook(clients), hostForSample());
    const parts = unzipSync(currentExcelFile(bytes));
    expect(Object.keys(parts)).toEqual(Object.keys(unzipSync(bytes)));
    const text = strFromU8(parts["xl/workbook.xml"] ?? new Uint8Array());
    // 191029 is what Excel 2019 and later write (memory).
    expect(text.match(/calcId="\d+"/g)).toEqual(['calcId="191029"']);
  });

  it("asks for the add-in at the top of its first sheet, the icon first", () => {
    const [first] = seasonWorkbook(clients).worksheets;
    const texts: string[] = [];
    first?.eachRow((row) => texts.push(row.getCell(1).text));
    const asks = texts.findIndex((text) => text.includes("open the add-in before this workbook"));
    expect(texts[asks]).toContain("select its icon under Home, Add-ins");
    expect(texts[asks + 1]).toContain("Recalculate this workbook");
    expect(asks).toBeLessThan(6);
  });
});
