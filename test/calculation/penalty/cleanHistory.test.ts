import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, yearOf } from "../../../src/calendar/calendarDate";
import { cleanHistory } from "../../../src/calculation/penalty/cleanHistory";
import { PENALTY_KINDS, type PenaltyKind } from "../../../src/calculation/penalty/pastPenalty";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/clean-history.json";
import { RUNS } from "../arbitrary";
import { fiscalYear } from "../given";

type Given = readonly (readonly [year: number, kind: string])[];

function historyOf(year: number, penalties: Given = [], otherLateYears: readonly number[] = []) {
  return cleanHistory(
    {
      taxYear: calendarTaxYear(year),
      penalties: penalties.map(([penalized, kind]) => ({
        taxYear: calendarTaxYear(penalized),
        kind: kind as PenaltyKind,
      })),
      otherLateYears: otherLateYears.map(calendarTaxYear),
    },
    rulebook
  );
}

const isLikely = (...given: Parameters<typeof historyOf>): boolean => historyOf(...given).isLikely;

describe("relief for a clean history", () => {
  it.each(published.lookBackYears)("$case", ({ inputs, expected }) => {
    const years = historyOf(inputs.taxYear).years;
    expect(years.map(({ taxYear }) => yearOf(taxYear.lastDay))).toEqual(expected);
  });

  it.each(published.histories)("$case", ({ inputs, expected }) => {
    expect(isLikely(inputs.taxYear, inputs.penalties as unknown as Given)).toBe(expected.likely);
  });

  // IRM 20.1.1.3.3.2.1: the three tax periods before the penalized one.
  it.each([
    [2021, true],
    [2022, false],
    [2023, false],
    [2024, false],
  ])("for 2025 with a penalty in %d is likely: %s", (year, likely) => {
    expect(isLikely(2025, [[year, "unreversed penalty"]])).toBe(likely);
  });

  // IRM 20.1.1.3.3.2.1(3), copy: of two or more periods, the earliest that meets the conditions has the relief, and no other.
  it.each([
    ["an earlier one in the years looked at", [], [2023], false],
    ["an earlier one before them", [], [2021], false],
    ["a later one", [], [2026], true],
    ["an earlier one whose own history is not clean", [[2020, "unreversed penalty"]], [2021], true],
    [
      "an earlier one in the years looked at that has no relief itself",
      [[2021, "unreversed penalty"]],
      [2023],
      false,
    ],
  ] as [string, Given, number[], boolean][])(
    "goes to the earliest of several late years: 2025 and %s",
    (_which, penalties, others, likely) => {
      expect(isLikely(2025, penalties, others)).toBe(likely);
    }
  );

  it("looks at three fiscal years of a fiscal-year client, and at a calendar year that ended in one", () => {
    const input = {
      taxYear: fiscalYear("2026-06-30"),
      penalties: [
        { taxYear: calendarTaxYear(2022), kind: "unreversed penalty" as const },
        { taxYear: fiscalYear("2022-06-30"), kind: "unreversed penalty" as const },
      ],
      otherLateYears: [],
    };
    const { isLikely: likely, years } = cleanHistory(input, rulebook);
    expect(likely).toBe(false);
    expect(
      years.map(({ taxYear, counts }) => `${written(taxYear.lastDay)} ${String(counts)}`)
    ).toEqual(["2022-12-31 true", "2024-06-30 false", "2025-06-30 false", "2022-06-30 false"]);
  });

  const kinds = fc.constantFrom(...PENALTY_KINDS);
  const past = fc.array(fc.tuple(fc.integer({ min: 2018, max: 2024 }), kinds), { maxLength: 4 });
  const others = fc.uniqueArray(fc.constantFrom(2019, 2020, 2021, 2022, 2023, 2024, 2026, 2027));

  it("is likely exactly where no year counts against it", () => {
    fc.assert(
      fc.property(past, others, (penalties, late) => {
        const { isLikely: likely, years } = historyOf(2025, penalties, late);
        expect(likely).toBe(years.every(({ counts }) => !counts));
      }),
      RUNS
    );
  });

  it("goes to one of several late years at most", () => {
    fc.assert(
      fc.property(past, fc.uniqueArray(fc.integer({ min: 2019, max: 2026 })), (penalties, late) => {
        const likely = late.filter((year) =>
          isLikely(
            year,
            penalties,
            late.filter((other) => other !== year)
          )
        );
        expect(likely.length).toBeLessThanOrEqual(1);
      }),
      RUNS
    );
  });

  it("is never made likely by one more penalty", () => {
    fc.assert(
      fc.property(past, fc.integer({ min: 2018, max: 2024 }), kinds, (penalties, year, kind) => {
        if (isLikely(2025, [...penalties, [year, kind]]))
          expect(isLikely(2025, penalties)).toBe(true);
      }),
      RUNS
    );
  });
});
