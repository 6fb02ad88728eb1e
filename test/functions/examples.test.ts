import { describe, expect, it } from "vitest";
import { formulaCall } from "../../src/addin/answers/formulaCall";
import { catalog } from "../../src/functions/catalog";
import { withFormattedNumbers } from "../../src/functions/cells/numberFormats";
import { version } from "../../src/rules/version";
import { answerToFormula } from "./fromCatalog";

const shortDate = new Intl.DateTimeFormat("en-US", {
  year: "numeric",
  month: "numeric",
  day: "numeric",
  timeZone: "UTC",
});
/** Digits after the decimal point of each number format, and what a format multiplies by. */
const NUMBER_FORMATS: Readonly<Record<string, { digits: number; isPercent?: boolean }>> = {
  "#,##0.00": { digits: 2 },
  "#,##0": { digits: 0 },
  "0.00%": { digits: 2, isPercent: true },
};

/** A date of the 1900 system, in which 25569 is 1/1/1970. */
const dateText = (serial: number): string => shortDate.format((serial - 25_569) * 86_400_000);

/** The text that a cell shows by its number format, without the mark that the date of an older rule has. */
function shown(cell: unknown): unknown {
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  if (typeof cell !== "object" || cell === null) return String(cell);
  const { basicValue, numberFormat } = cell as { basicValue?: unknown; numberFormat?: string };
  if (typeof basicValue !== "number" || numberFormat === undefined) return cell;
  if (/^m\/d\/yyyy(" \([^)]*\)")?$/.test(numberFormat)) return dateText(basicValue);
  const format = NUMBER_FORMATS[numberFormat];
  return format
    ? basicValue.toLocaleString("en-US", {
        style: format.isPercent === true ? "percent" : "decimal",
        minimumFractionDigits: format.digits,
        maximumFractionDigits: format.digits,
      })
    : cell;
}

/** The texts that an answer shows, row by row. */
function shownBy(formula: string): unknown[][] {
  const answer = withFormattedNumbers("double", () => answerToFormula(formula));
  return (Array.isArray(answer) ? (answer as unknown[][]) : [[answer]]).map((row) =>
    row.map(shown)
  );
}

const examples = Object.entries(catalog).flatMap(([id, { examples: given }]) =>
  given.map((example) => ({ id, ...example }))
);

/** The table of the first example of a function. */
const tableOf = (id: string): unknown[][] => shownBy(catalog[id]?.examples[0]?.formula ?? "");
const columnOf = (table: readonly unknown[][], heading: string): unknown[] =>
  table.slice(1).map((row) => row[table[0]?.indexOf(heading) ?? -1]);

describe("the examples", () => {
  it.each(examples)("$formula shows $answer", ({ formula, answer }) => {
    expect(shownBy(formula).flat()).toContain(answer);
  });

  it.each(Object.entries(catalog))("of %s call that function", (id, { examples: given }) => {
    expect(given.map(({ formula }) => formulaCall(formula).id)).toEqual(given.map(() => id));
    expect(given).not.toEqual([]);
  });

  it.each(examples.filter(({ id }) => catalog[id]?.form !== "table"))(
    "$formula returns one cell",
    ({ formula }) => {
      expect(shownBy(formula).flat()).toHaveLength(1);
    }
  );
});

describe("the tables of the examples", () => {
  it("LINES has lines 4 to 7 in whole dollars", () => {
    const table = tableOf("LINES");
    expect(columnOf(table, "Line").slice(0, 4)).toEqual(["4", "5", "6", "7"]);
    expect(columnOf(table, "Amount").slice(0, 4)).toEqual(["18,250", "15,000", "3,250", "3,000"]);
  });

  it("CHARGELINES has the 90% test and three rate periods", () => {
    expect(columnOf(tableOf("CHARGELINES"), "Item")).toEqual([
      "No failure-to-pay penalty: 90% paid, reasonable cause",
      "Interest on the tax",
      "Interest on the tax",
      "Interest on the tax",
    ]);
  });

  it("CALENDAR begins with paying the tax on Wednesday, 4/15/2026", () => {
    const [, first = []] = tableOf("CALENDAR");
    expect(first[0]).toMatch(/^Pay the tax/);
    expect(first.slice(1, 3)).toEqual(["4/15/2026", "Wednesday"]);
  });

  it("LEDGER ends with penalties and interest of 317.81", () => {
    expect(columnOf(tableOf("LEDGER"), "Penalties and interest to date").at(-1)).toBe("317.81");
  });

  it("WHATIF has a row for each payment and a column for each date", () => {
    expect(tableOf("WHATIF")).toEqual([
      ["Extra payment", "4/15/2026", "10/15/2026"],
      ["0.00", "0.00", "317.81"],
      ["3,000.00", "0.00", "67.12"],
    ]);
  });

  it("ESTPENALTYLINES has one line: 2,000 of the fourth installment for 90 days, 34.52", () => {
    const table = tableOf("ESTPENALTYLINES").slice(0, -1);
    expect(table).toHaveLength(2);
    expect(columnOf(table, "Installment")).toEqual(["4"]);
    expect(columnOf(table, "Amount")).toEqual(["2,000.00"]);
    expect(columnOf(table, "Days")).toEqual(["90"]);
    expect(columnOf(table, "Penalty")).toEqual(["34.52"]);
  });

  it("ESTPENALTYLINES ends with what is not calculated", () => {
    const last = tableOf("ESTPENALTYLINES").at(-1) ?? [];
    expect(last[0]).toMatch(/^Not calculated: waivers for casualty.* short tax years/);
    expect(last.slice(1)).toEqual([
      "",
      "",
      "",
      "",
      "",
      "",
      "IRC section 6654(e)(3), (g)(1), (k)(2)",
    ]);
  });

  it("LIABILITYLINES has taxable income of 60,000 and total tax of 8,120", () => {
    const table = tableOf("LIABILITYLINES");
    expect(table).toContainEqual(["Taxable income", "60,000", ""]);
    expect(table).toContainEqual(["Total tax", "8,120", ""]);
  });

  it("METHODLINES begins with electronic payment", () => {
    expect(tableOf("METHODLINES")[1]?.slice(0, 3)).toEqual([
      "electronic payment",
      "yes",
      "4/15/2026",
    ]);
  });

  it("ISSUES begins with paying less than 90%: 2,000.00 is still needed", () => {
    const table = tableOf("ISSUES");
    expect(table[1]?.[1]).toMatch(/^Less than 90%/);
    expect(columnOf(table, "Amount")[0]).toBe("2,000.00");
  });

  it("STATERULE says that the state needs its own request, Form IT-370", () => {
    expect(columnOf(tableOf("STATERULE"), "Text")).toEqual(
      expect.arrayContaining(["New York: on the state's own request", "IT-370"])
    );
  });

  it("ROSTER has a balance due of 5,000.00", () => {
    expect(columnOf(tableOf("ROSTER"), "Balance due")).toEqual(["5,000.00"]);
  });

  it("RULETABLES begins with the version of the add-in", () => {
    expect(tableOf("RULETABLES")[1]?.slice(0, 2)).toEqual(["add-in", `version ${version}`]);
  });
});

describe("reading a formula", () => {
  it.each([
    ["=EXT.RULETABLES()", "RULETABLES", []],
    ['=EXT.DUE(2023,,"out of country")', "DUE", [2023, undefined, "out of country"]],
    ["=EXT.SUGGEST(1.5,-2,,5%,TRUE)", "SUGGEST", [1.5, -2, undefined, 0.05, true]],
    ['=EXT.DUE("say ""ME"", please",1)', "DUE", ['say "ME", please', 1]],
    ["=EXT.DUE(2025,)", "DUE", [2025, undefined]],
  ])("%s", (formula, id, values) => {
    expect(formulaCall(formula)).toEqual({ id, values });
  });

  it.each([["=DUE(2025)"], ["=EXT.DUE(A1)"], ['=EXT.DUE("open)']])("refuses %s", (formula) => {
    expect(() => formulaCall(formula)).toThrow(SyntaxError);
  });
});
