import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addMonths, written, yearOf, type CalendarDate } from "../../../src/calendar/calendarDate";
import { refundClaimDate } from "../../../src/calculation/dueDate/refundClaimDate";
import type { FilerType } from "../../../src/calculation/filerType";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook, type Rulebook } from "../../../src/rules/rulebook";
import { daysFrom, filers, heldTaxYears, RUNS, states } from "../arbitrary";
import { earlierRules } from "../earlierRules";
import { day } from "../given";

interface Asked {
  readonly filedOn?: string;
  readonly validExtension?: boolean;
  readonly filerType?: FilerType;
  readonly postponement?: readonly [string, string];
  readonly rules?: Rulebook;
}

function claimedBy(year: number, asked: Asked = {}): string {
  const { filedOn, validExtension = false, filerType = "resident", postponement } = asked;
  const [begins, ends] = postponement ?? [];
  return written(
    refundClaimDate(
      calendarTaxYear(year),
      filerType,
      begins && ends ? { postponement: { begins: day(begins), ends: day(ends) } } : {},
      filedOn === undefined ? undefined : day(filedOn),
      validExtension,
      asked.rules ?? rulebook
    )
  );
}

describe("the last day to claim a refund", () => {
  // Rev. Rul. 2003-41. Situation 1: due Saturday, April 15, 1995, filed March 1; the claim of April 17, 1998 is late. Situation 3: filed
  // on Monday, April 17, 1995; the claim of April 17, 1998 is in time.
  it.each([
    ["situation 1", "1995-03-01", "1998-04-15"],
    ["situation 3", "1995-04-17", "1998-04-17"],
  ])("of the ruling, %s: filed %s, by %s", (_situation, filedOn, lastDay) => {
    expect(claimedBy(1994, { filedOn, rules: earlierRules() })).toBe(lastDay);
  });

  // Situation 2: extended four months to Saturday, August 15, 1998; the return of August 17, 2001 is a claim two days late.
  it("of the ruling, situation 2: the weekend is no part of the extension", () => {
    const rules = earlierRules({ extensionMonths: 4 });
    const asked = { filedOn: "2001-08-17", validExtension: true, rules };
    expect(claimedBy(1997, asked)).toBe("2001-08-15");
  });

  // newdayadvisory.com, tax year 2019, before Notice 2023-21: April 15, 2023, or October 15 with Form 4868: LB-2019.
  it("of 2019, as it was before the postponement of 2020 counted", () => {
    const { nationwidePostponements } = rulebook;
    const rules = {
      ...rulebook,
      nationwidePostponements: { ...nationwidePostponements, rows: [] },
    };
    expect(claimedBy(2019, { rules })).toBe("2023-04-15");
    expect(claimedBy(2019, { rules, validExtension: true })).toBe("2023-10-15");
  });

  // Notice 2023-21: April 15 to July 15, 2020 and to May 17, 2021 are disregarded; they end within the six months of Form 4868.
  it.each([
    [2019, false, "2023-07-15"],
    [2019, true, "2023-10-15"],
    [2020, false, "2024-05-17"],
    [2020, true, "2024-10-15"],
  ])("of %i, extension %j, is %s", (year, validExtension, lastDay) => {
    expect(claimedBy(year, { validExtension })).toBe(lastDay);
  });

  // 26 CFR 301.7508A-1(b)(4): the return of 2017 was postponed to April 18, 2018, and the claim still counts from April 15, 2018.
  it("of 2017 does not count the postponement of 2018", () => {
    expect(claimedBy(2017)).toBe("2021-04-15");
  });

  // 26 CFR 301.7508A-1(b)(4): before Notice 2023-21 no postponement counted. The postponement of 2016 is invented.
  it("of 2015 would not count a nationwide postponement", () => {
    const { nationwidePostponements } = rulebook;
    const rows = nationwidePostponements.rows.map((row) => ({
      ...row,
      dueFrom: day("2016-04-01"),
      dueThrough: day("2016-05-01"),
      postponementEnds: day("2016-07-15"),
    }));
    const rules = {
      ...rulebook,
      nationwidePostponements: { ...nationwidePostponements, rows },
    };
    expect(claimedBy(2015, { rules })).toBe("2019-04-15");
  });

  // 26 U.S.C. 6511(a), (b)(2)(A), 6513(a), (b): computed.
  it.each([
    ["not filed", {}, "2028-04-15"],
    ["not filed, extended", { validExtension: true }, "2028-10-15"],
    ["filed early", { filedOn: "2025-02-10" }, "2028-04-15"],
    ["filed on the date", { filedOn: "2025-04-15" }, "2028-04-15"],
    ["filed in the extension", { filedOn: "2025-09-01", validExtension: true }, "2028-09-01"],
    ["filed after it", { filedOn: "2025-10-16", validExtension: true }, "2028-10-15"],
    ["filed late", { filedOn: "2025-04-16" }, "2028-04-15"],
    // 1.6081-5(a): two months out of the country are an extension; 6513(b)(3): withholding of a nonresident counts on June 15.
    ["out of the country", { filerType: "out of country" }, "2028-06-15"],
    ["nonresident", { filerType: "nonresident" }, "2028-06-15"],
    ["nonresident, early", { filerType: "nonresident", filedOn: "2025-04-01" }, "2028-06-15"],
  ] as const)("of 2024, %s, is as computed", (_what, asked, lastDay) => {
    expect(claimedBy(2024, asked)).toBe(lastDay);
  });

  // 26 U.S.C. 7508A(f), Pub. L. 119-64: claims after December 26, 2025. IRS release: Los Angeles County, January 7 to October 15, 2025.
  it("counts a disaster postponement as an extension, and an overlap once", () => {
    const postponement = ["2025-01-07", "2025-10-15"] as const;
    expect(claimedBy(2024, { postponement })).toBe("2028-10-15");
    expect(claimedBy(2024, { postponement, validExtension: true })).toBe("2028-10-15");
  });

  // 26 CFR 301.7508A-1(b)(4), in force for claims through December 26, 2025: a postponement was no extension.
  it.each([
    [["2022-01-01", "2022-12-26"], "2025-04-15"],
    [["2022-01-01", "2022-12-27"], "2025-12-27"],
  ] as const)("of 2021 with a postponement of %j is %s", (postponement, lastDay) => {
    expect(claimedBy(2021, { postponement })).toBe(lastDay);
  });

  it("is between three years and three years and a half after the law's date, earlier only if filed earlier", () => {
    const lags = daysFrom("2025-01-01", "2029-12-31");
    fc.assert(
      fc.property(
        heldTaxYears,
        filers,
        states,
        fc.boolean(),
        lags,
        (taxYear, filer, state, isExtended, on) => {
          const of = (filedOn?: CalendarDate) =>
            refundClaimDate(taxYear, filer, { state }, filedOn, isExtended, rulebook);
          const notFiled = of();
          expect(notFiled >= addMonths(taxYear.lastDay, 39)).toBe(true);
          expect(notFiled <= addMonths(taxYear.lastDay, 36 + 12)).toBe(true);
          const shifted = addMonths(on, (yearOf(taxYear.lastDay) - 2024) * 12);
          // A return filed on the workday after a weekend keeps its own three years: at most a few days more.
          expect(of(shifted) <= notFiled || of(shifted) === addMonths(shifted, 36)).toBe(true);
        }
      ),
      RUNS
    );
  });
});
