import { describe, expect, it } from "vitest";
import { yearOf } from "../../../src/calendar/calendarDate";
import { historyYears } from "../../../src/calculation/penalty/historyYears";
import { PENALTY_KINDS } from "../../../src/calculation/penalty/pastPenalty";
import { calendarTaxYear, yearsBefore } from "../../../src/calculation/taxYear";

const taxYear = calendarTaxYear(2025);
const lookedAt = yearsBefore(taxYear, 3);

function written(input: Partial<Parameters<typeof historyYears>[0]>): readonly string[] {
  const given = { taxYear, lookedAt, penalties: [], otherLateYears: [], takesRelief: taxYear };
  return historyYears({ ...given, ...input }).map(({ taxYear: year, finding, counts }) =>
    [yearOf(year.lastDay), finding, counts ? "counts" : ""].join(" ").trim()
  );
}

describe("the years that relief depends on", () => {
  it("are the years looked at where nothing else is given", () => {
    expect(written({})).toEqual(["2022 no penalty", "2023 no penalty", "2024 no penalty"]);
  });

  // IRM 20.1.1.3.3.2.1(2), (5)(c)
  it("have a row for each penalty, several in one year too", () => {
    const penalties = PENALTY_KINDS.map((kind) => ({ taxYear: calendarTaxYear(2023), kind }));
    expect(written({ penalties }).slice(1, -1)).toEqual([
      "2023 unreversed penalty counts",
      "2023 estimated tax penalty",
      "2023 reversed penalty",
      "2023 clean-history relief counts",
    ]);
  });

  it("end with the years outside, the earliest first", () => {
    const before = calendarTaxYear(2021);
    const penalties = [{ taxYear: before, kind: "unreversed penalty" as const }];
    const otherLateYears = [2026, 2020, 2024].map(calendarTaxYear);
    expect(written({ penalties, otherLateYears }).slice(2)).toEqual([
      "2024 late as well counts",
      "2020 before the years looked at",
      "2021 before the years looked at",
      "2026 late in a later year",
    ]);
  });

  it.each([2023, 2020])("name the earlier late year that takes the relief: %d", (year) => {
    const takesRelief = calendarTaxYear(year);
    expect(written({ otherLateYears: [takesRelief], takesRelief })).toContain(
      `${String(year)} late and takes the relief counts`
    );
  });
});
