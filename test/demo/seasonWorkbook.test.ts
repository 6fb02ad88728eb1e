import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { STAGES } from "../../src/calculation/season/requestStage";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { formulaPieces } from "../../src/demo/workbook/formulaPieces";
import { SEASON_CLIENTS } from "../../src/demo/season/clients";
import { seasonReport } from "../../src/demo/terminal/seasonReport";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sealedHost } from "../../src/host/sealedHost";
import { type StandInHost } from "../../src/host/standInHost";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { Workbook } from "@cj-tech-master/excelts";

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

/** Functions that give one answer whatever block they are given. */
const ONE_ANSWER = new Set(["PAYMENTSTOTAL"]);

/** Every function the sample calls, answering 1 for each row it is given. */
function hostForSample(): StandInHost {
  const pieces = formulasOf(seasonWorkbook()).flatMap(formulaPieces);
  const calls = pieces.filter((piece) => piece.text.startsWith("EXT.")).map((piece) => piece.text);
  const names = [...new Set(calls.map((call) => call.slice("EXT.".length)))];
  const parameters = Array.from({ length: 12 }, (_entry, index) => ({
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
          `CustomFunctions.associate("${name}", (first) => ${ONE_ANSWER.has(name) ? "[[1]]" : "(first ?? [[1]]).map(() => [1])"});`
      )
      .join("\n"),
    metadata: JSON.stringify({
      functions: names.map((name) => ({ id: name, name, parameters, result })),
    }),
  });
}

describe("the sample workbook", () => {
  it("holds formulas that all can be calculated, without an error", async () => {
    const workbook = seasonWorkbook();
    const count = formulasOf(workbook).length;
    const { report } = await recalculateWorkbook(workbook, hostForSample());
    expect(report.formulas).toBe(count);
    expect(report.notCalculated).toEqual([]);
    expect(report.errors).toEqual([]);
    expect(report.spills).toBeGreaterThanOrEqual(9);
  });

  it("shows clients of every kind, each once", () => {
    const has = (test: (client: (typeof SEASON_CLIENTS)[number]) => boolean) =>
      SEASON_CLIENTS.some(test);
    expect(SEASON_CLIENTS.length).toBeGreaterThanOrEqual(40);
    expect(new Set(SEASON_CLIENTS.map((client) => client.client)).size).toBe(SEASON_CLIENTS.length);
    expect(has((client) => client.payments > client.totalTax)).toBe(true);
    expect(has((client) => client.totalTax === 0)).toBe(true);
    expect(has((client) => client.filerType === "out of country")).toBe(true);
    expect(has((client) => client.filerType === "nonresident")).toBe(true);
    expect(has((client) => client.state === "ME" && client.taxYear === 2018)).toBe(true);
    expect(has((client) => client.state === "MA")).toBe(true);
    expect(has((client) => typeof client.taxYear === "string")).toBe(true);
    expect(has((client) => client.postponementBegins !== undefined)).toBe(true);
    expect(has((client) => client.extended === "no")).toBe(true);
    expect(has((client) => client.taxYear === 2023)).toBe(true);
    expect(has((client) => client.taxYear === 2024)).toBe(true);
  });

  it("draws the requests of each week in a chart of the workbook", async () => {
    const { bytes } = await recalculateWorkbook(seasonWorkbook(), hostForSample());
    const parts = unzipSync(bytes);
    const chart = strFromU8(parts["xl/charts/chart1.xml"] ?? new Uint8Array());
    expect(chart).toContain("<c:barChart>");
    expect(chart).toContain("Season!$D$4:$D$19");
    expect(chart).toContain("Season!$F$4:$F$19");
  });

  it("counts every client of the board in one stage", async () => {
    const { bytes } = await recalculateWorkbook(seasonWorkbook(), hostOfBuiltAddIn("null"));
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    const board = workbook.getWorksheet("Season");
    const counts = STAGES.map((_stage, index) => Number(board?.getCell(4 + index, 2).result));
    expect(counts.reduce((sum, count) => sum + count)).toBe(SEASON_CLIENTS.length);
    const weeks = Array.from({ length: 16 }, (_week, index) =>
      Number(board?.getCell(4 + index, 6).result)
    );
    expect(weeks.reduce((sum, count) => sum + count)).toBeGreaterThan(25);
  });

  it("asks no clock", () => {
    for (const formula of formulasOf(seasonWorkbook())) {
      expect(formula).not.toMatch(/\b(TODAY|NOW)\(/);
    }
  });

  it("is shown in lines of at most the width asked for, naming every client", async () => {
    const { bytes } = await recalculateWorkbook(seasonWorkbook(), hostForSample());
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    const lines = seasonReport(workbook, 100);
    expect(lines.filter((line) => line.length > 100)).toEqual([]);
    for (const { client } of SEASON_CLIENTS) {
      expect(lines.some((line) => line.startsWith(`${client} `))).toBe(true);
    }
    expect(lines.some((line) => line.includes("18,250.00"))).toBe(true);
    expect(lines.some((line) => line.includes("2026-10-15"))).toBe(true);
  });
});
