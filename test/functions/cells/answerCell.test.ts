import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { Decimal } from "../../../src/money/dollars";
import type { Source } from "../../../src/rules/source";
import { serial } from "../sheet";

/** A host that supports these requirement sets and no other. */
function hostWith(...sets: string[]): { asked: string[] } {
  const asked: string[] = [];
  const isSetSupported = (name: string, version: string) => {
    asked.push(`${name} ${version}`);
    return sets.includes(`${name} ${version}`);
  };
  vi.stubGlobal("Office", { context: { requirements: { isSetSupported } } });
  return { asked };
}

/** What a host takes is decided with the first answer, so that each case needs the module anew. */
const freshAnswerCells = () => import("../../../src/functions/cells/answerCell");
const day = calendarDate("2026-04-15");

beforeEach(() => {
  vi.resetModules();
});
afterEach(() => {
  vi.unstubAllGlobals();
});

// Requirement sets and shapes: Excel.DoubleCellValue.numberFormat (ExcelApi 1.19), Excel.FormattedNumberCellValue
// (CustomFunctionsRuntime 1.4) in @types/office-js.
describe("a number with a format", () => {
  it("is a plain number without a host that says what it takes", async () => {
    const { dateCell, moneyCell } = await freshAnswerCells();
    expect(dateCell(day)).toBe(46127);
    expect(moneyCell(new Decimal("1234.5"))).toBe(1234.5);
  });

  it.each([[undefined], [{}], [{ context: {} }]])(
    "is a plain number where the host is not ready: %j",
    async (office) => {
      vi.stubGlobal("Office", office);
      expect((await freshAnswerCells()).dateCell(day)).toBe(46127);
    }
  );

  it("is a plain number on an old host", async () => {
    hostWith("ExcelApi 1.12", "CustomFunctionsRuntime 1.2");
    expect((await freshAnswerCells()).dateCell(day)).toBe(46127);
  });

  it("is a formatted number on a host of the middle years", async () => {
    hostWith("CustomFunctionsRuntime 1.4");
    expect((await freshAnswerCells()).dateCell(day)).toEqual({
      type: "FormattedNumber",
      basicValue: 46127,
      numberFormat: "m/d/yyyy",
    });
  });

  it("is a double with a format on a host of today", async () => {
    hostWith("ExcelApi 1.19", "CustomFunctionsRuntime 1.4");
    const { dateCell, moneyCell, wholeDollarCell, percentCell } = await freshAnswerCells();
    const double = (basicValue: number, numberFormat: string) => ({
      type: "Double",
      basicValue,
      numberFormat,
    });
    expect(dateCell(day)).toEqual(double(serial("2026-04-15"), "m/d/yyyy"));
    expect(moneyCell(new Decimal("1234.5"))).toEqual(double(1234.5, "#,##0.00"));
    expect(wholeDollarCell(new Decimal(18250))).toEqual(double(18250, "#,##0"));
    expect(percentCell(new Decimal("0.07"))).toEqual(double(0.07, "0.00%"));
  });

  it("keeps one kind: the host is asked once", async () => {
    const { asked } = hostWith("ExcelApi 1.19");
    const { dateCell } = await freshAnswerCells();
    dateCell(day);
    dateCell(day);
    expect(asked).toEqual(["ExcelApi 1.19"]);
  });
});

describe("a cell that a row may lack", () => {
  it("is empty text, which a null would not be", async () => {
    const { cellOrBlank, BLANK, dateCell } = await freshAnswerCells();
    expect(BLANK).toBe("");
    expect(cellOrBlank(undefined, dateCell)).toBe("");
    expect(cellOrBlank(day, dateCell)).toBe(46127);
  });
});

describe("a citation", () => {
  it.each([
    ["official", "26 U.S.C. 6651(a)(1)"],
    ["secondary", "26 U.S.C. 6651(a)(1) (secondary source)"],
    ["memory", "26 U.S.C. 6651(a)(1) (unverified: check the official text)"],
  ] as const)("says how well a figure is known: %s", async (confidence, text) => {
    const source: Source = { document: "usc-26", citation: "26 U.S.C. 6651(a)(1)", confidence };
    expect((await freshAnswerCells()).citation(source)).toBe(text);
  });
});
