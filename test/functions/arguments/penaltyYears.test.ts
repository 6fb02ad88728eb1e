import { describe, expect, it } from "vitest";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { lateYears, penaltyYears } from "../../../src/functions/arguments/penaltyYears";
import { ErrorCell } from "../../../src/functions/cells/hostError";
import { fiscalYear } from "../../calculation/given";
import { written } from "../../../src/calendar/calendarDate";
import { reading, sentenceOf } from "./reading";

const earlier = { taxYear: calendarTaxYear(2025) };
const penaltiesOf = (range: unknown): readonly string[] =>
  reading(penaltyYears, "penaltyYears")(range, earlier).map(
    ({ taxYear, kind }) => `${written(taxYear.lastDay)} ${kind}`
  );
const lateYearsOf = (range: unknown): readonly string[] =>
  reading(lateYears, "otherLateYears")(range, earlier).map(({ lastDay }) => written(lastDay));

describe("years with a penalty", () => {
  it.each([
    ["left out", null],
    ["a blank cell", [[""]]],
    ["a 0, which some hosts send for a blank cell", [[0]]],
    [
      "blank rows",
      [
        [null, ""],
        [0, 0],
      ],
    ],
  ])("are none: %s", (_what, range) => {
    expect(penaltiesOf(range)).toEqual([]);
  });

  it("are one column, or one cell, of unreversed penalties", () => {
    const both = ["2022-12-31 unreversed penalty", "2023-12-31 unreversed penalty"];
    expect(penaltiesOf([[2022], ["2023"]])).toEqual(both);
    expect(penaltiesOf([[""], [2022], [null], [2023]])).toEqual(both);
    expect(penaltiesOf(2022)).toEqual(both.slice(0, 1));
  });

  it.each([
    ["", "unreversed penalty"],
    [0, "unreversed penalty"],
    [" Penalty", "unreversed penalty"],
    ["Failure-to-file penalty", "unreversed penalty"],
    ["estimated tax penalty", "estimated tax penalty"],
    ["ESTIMATED  TAX", "estimated tax penalty"],
    ["reversed", "reversed penalty"],
    ["reasonable cause", "reversed penalty"],
    ["clean-history relief", "clean-history relief"],
    ["first-time abatement", "clean-history relief"],
    ["automatic exemption", "clean-history relief"],
  ])("have a kind in the second column: %j is %s", (word, kind) => {
    expect(penaltiesOf([[2023, word]])).toEqual([`2023-12-31 ${kind}`]);
  });

  it("may be the last dates of fiscal years", () => {
    const taxYear = fiscalYear("2026-06-30");
    const read = reading(penaltyYears, "penaltyYears");
    expect(read([["6/30/2025"]], { taxYear })[0]?.taxYear).toEqual(fiscalYear("2025-06-30"));
    expect(sentenceOf(() => read([[2025]], { taxYear }))).toBe(
      "penaltyYears row 1: 2025 is not before the tax year, which begins on 7/1/2025. Enter earlier years only."
    );
  });

  it.each([
    [
      [[2024], [2025]],
      "penaltyYears row 2: 2025 is not before the tax year, which begins on 1/1/2025. Enter earlier years only.",
    ],
    [
      [["2026", "reversed"]],
      'penaltyYears row 1: "2026" is not before the tax year, which begins on 1/1/2025. Enter earlier years only.',
    ],
    [
      [[2023, "accuracy"]],
      'penaltyYears row 1: "accuracy" is not a kind of penalty. Enter penalty, estimated tax penalty, reversed or clean-history relief, or leave the cell blank.',
    ],
    [
      [[2022, 2023]],
      "penaltyYears row 1: 2023 is not a kind of penalty. Enter penalty, estimated tax penalty, reversed or clean-history relief, or leave the cell blank.",
    ],
    [
      [["", "penalty"]],
      "penaltyYears row 1: The cell is blank. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.",
    ],
    [
      [["last year"]],
      'penaltyYears row 1: "last year" is not a tax year. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.',
    ],
    [
      [[2022, "penalty", 100]],
      "penaltyYears: The range has 3 columns. Select one column of tax years, or two, tax year and kind of penalty.",
    ],
  ])("are refused: %j", (range, sentence) => {
    expect(sentenceOf(() => penaltiesOf(range))).toBe(sentence);
  });

  it("pass an error cell through", () => {
    expect(() => penaltiesOf([[{ type: "Error", basicValue: "#REF!" }]])).toThrow(ErrorCell);
  });
});

describe("other late years", () => {
  it("are every cell that is not blank, each year once", () => {
    expect(
      lateYearsOf([
        [2023, ""],
        [0, 2026],
        ["2023", null],
      ])
    ).toEqual(["2023-12-31", "2026-12-31"]);
    expect(lateYearsOf(null)).toEqual([]);
    expect(lateYearsOf([[""]])).toEqual([]);
    expect(lateYearsOf(2024)).toEqual(["2024-12-31"]);
  });

  it.each([
    [
      [[2023], [2025]],
      "otherLateYears row 2: 2025 is the tax year itself. Enter other years only.",
    ],
    [
      [["late"]],
      'otherLateYears row 1: "late" is not a tax year. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.',
    ],
  ])("are refused: %j", (range, sentence) => {
    expect(sentenceOf(() => lateYearsOf(range))).toBe(sentence);
  });
});
