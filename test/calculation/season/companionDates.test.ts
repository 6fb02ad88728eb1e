import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { Circumstances } from "../../../src/calculation/dueDate/dueDate";
import type { FilerType } from "../../../src/calculation/filerType";
import { companionDates } from "../../../src/calculation/season/companionDates";
import type { SeasonDate } from "../../../src/calculation/season/seasonDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { CALENDAR_SUBJECTS, type CalendarSubject } from "../../../src/rules/calendarWords";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { filers, heldTaxYears, RUNS, states } from "../arbitrary";
import { earlierRules } from "../earlierRules";
import { written } from "../../../src/calendar/calendarDate";
import { day, fiscalYear } from "../given";

interface Asked {
  readonly filerType?: FilerType;
  readonly circumstances?: Circumstances;
  readonly rules?: typeof rulebook;
}

const datesOf = (year: number, subject: CalendarSubject | "all", asked: Asked = {}) =>
  companionDates(
    calendarTaxYear(year),
    asked.filerType ?? "resident",
    asked.circumstances ?? {},
    subject,
    asked.rules ?? rulebook
  );

/** The one deadline whose label has these words. */
function deadline(dates: readonly SeasonDate[], words: string): SeasonDate {
  const [found, ...others] = dates.filter(({ label }) => label.includes(words));
  if (!found || others.length > 0) throw new RangeError(`${words}: not one deadline`);
  return found;
}

describe("retirement plans and accounts", () => {
  // Published example MOVED-2025: 26 U.S.C. 404(a)(6), (h)(1)(B), (m)(2)(B), 401(b)(2), 219(f)(3), 223(d)(4)(B), 530, 529A, 402(g),
  // 408(d)(4), (p)(5)(A), 408A(d)(6); computed from the sections.
  it.each([
    ["Contribute to a SEP", "2026-10-15", "moved", "2026-04-15"],
    ["employer contribution to a qualified plan", "2026-10-15", "moved", "2026-04-15"],
    ["employer contribution to a SIMPLE", "2026-10-15", "moved", "2026-04-15"],
    ["Adopt a new qualified plan", "2026-10-15", "moved", "2026-04-15"],
    ["elective deferral for the first year", "2026-04-15", "not moved", "2026-04-15"],
    ["Contribute to an IRA, Roth IRA, HSA", "2026-04-15", "not moved", "2026-04-15"],
    ["Contribute to an ABLE", "2025-12-31", "not moved", "2025-12-31"],
    ["Withdraw an IRA", "2026-10-15", "automatic", "2026-10-15"],
    ["Recharacterize", "2026-10-15", "automatic", "2026-10-15"],
    ["excess HSA", "2026-10-15", "moved", "2026-04-15"],
    ["excess ABLE", "2026-10-15", "moved", "2026-04-15"],
    ["Withdraw 401(k) or 403(b) deferrals", "2026-04-15", "not moved", "2026-04-15"],
    ["deferral into a SIMPLE", "2026-01-30", "not moved", "2026-01-30"],
    // before June 1: May 31 is the last date
    ["excess Coverdell", "2026-05-31", "not moved", "2026-05-31"],
  ])("of 2025: %s by %s, %s", (words, date, extension, dateWithoutExtension) => {
    expect(deadline(datesOf(2025, "retirement"), words)).toMatchObject({
      date: day(date),
      extension,
      dateWithoutExtension: day(dateWithoutExtension),
    });
  });

  // investopedia.com, excess contributions, John and Betty (2005): October 15, 2005 filed on time in April or extended in August. The
  // article prints the Saturday that the law names.
  it("of 2004: an IRA contribution comes out by October 15, 2005", () => {
    const { date, moves, extension } = deadline(
      datesOf(2004, "retirement", { rules: earlierRules() }),
      "Withdraw an IRA"
    );
    expect(moves[0]?.from).toBe(day("2005-10-15"));
    expect(written(date)).toBe("2005-10-17");
    expect(extension).toBe("automatic");
  });

  // Pub. L. 116-94, section 201: plans for years from 2020. SECURE 2.0 Act, section 317: plan years from 2023. 529A: years from 2015.
  it.each([
    ["Adopt a new qualified plan", 2019, 2020],
    ["elective deferral for the first year", 2022, 2023],
    ["Contribute to an ABLE", 2014, 2015],
    ["excess ABLE", 2014, 2015],
    // Pub. L. 114-41, section 2006(b)(11): years from 2016, June 30 before. Section 6038D: years from 2011 (Form 8938).
    ["FinCEN Form 114", 2015, 2016],
    ["FBAR with its automatic", 2015, 2016],
    ["Form 8938", 2010, 2011],
  ])("%s is not in %i, but in %i", (words, before, first) => {
    const has = (year: number): boolean =>
      datesOf(year, "all").some(({ label }) => label.includes(words));
    expect([has(before), has(first)]).toEqual([false, true]);
  });

  // 26 U.S.C. 219(f)(3) and 6072(a): the contribution is due with the return of most clients, so that it is listed with the return too.
  it("have the IRA contribution among the dates of the return", () => {
    const [only, ...others] = datesOf(2025, "return").map(({ label }) => label);
    expect(only).toMatch(/^Contribute to an IRA/);
    expect(others).toEqual([]);
  });

  // 26 U.S.C. 219(f)(3): the two months out of the country are an extension too; 404(h)(1)(B) counts them.
  it("out of the country: the SEP by June 15 without a request, the IRA by April 15", () => {
    const dates = datesOf(2025, "retirement", { filerType: "out of country" });
    expect(written(deadline(dates, "SEP").dateWithoutExtension)).toBe("2026-06-15");
    expect(written(deadline(dates, "Contribute to an IRA").date)).toBe("2026-04-15");
  });
});

describe("the gift tax return", () => {
  const RETURN = "File the gift tax return";
  const EXTENDED = "File the extended gift tax return";

  // 26 U.S.C. 6075(b); 26 CFR 25.6081-1: GIFT-RULE-2025.
  it("of 2025 is extended with the income tax return, its payment is not", () => {
    const dates = datesOf(2025, "gift");
    expect(deadline(dates, RETURN)).toMatchObject({
      date: day("2026-04-15"),
      extension: "not moved",
    });
    expect(deadline(dates, "Pay the gift tax")).toMatchObject({
      date: day("2026-04-15"),
      extension: "not moved",
    });
    expect(deadline(dates, EXTENDED)).toMatchObject({
      date: day("2026-10-15"),
      extension: "moved",
      dateWithoutExtension: day("2026-04-15"),
    });
  });

  // currentfederaltaxdevelopments.com, April 14, 2021, quoting the IRS page: GIFT-2021. Notice 2021-21 did not postpone Form 709.
  it.each([
    ["2021-04-15", true],
    ["2021-04-16", false],
    ["2021-05-17", false],
  ])(
    "of 2020: a request of %s extends it: %j; it extends the income tax return",
    (on, extends_) => {
      const { regular, extended } = clientDates(calendarTaxYear(2020), "resident", {}, rulebook);
      expect(day(on) <= regular.lastDay).toBe(true);
      expect(written(extended.lastDay)).toBe("2021-10-15");
      expect(day(on) <= deadline(datesOf(2020, "gift"), RETURN).date).toBe(extends_);
    }
  );

  // Notice 2020-20 and Notice 2020-23: gift tax returns and payments to July 15, 2020; helsell.com, March 30, 2020.
  it("of 2019 was postponed to July 15, 2020 with its payment", () => {
    const dates = datesOf(2019, "gift");
    expect(dates.map(({ date }) => date)).toEqual([
      day("2020-07-15"),
      day("2020-07-15"),
      day("2020-10-15"),
    ]);
  });

  // 26 CFR 25.6081-1(a), 1.6081-5(a): two months out of the country, within the six; 25.6081-1(c): not for the payment.
  it("out of the country is due in June and paid in April", () => {
    const dates = datesOf(2025, "gift", { filerType: "out of country" });
    expect(written(deadline(dates, RETURN).date)).toBe("2026-06-15");
    expect(written(deadline(dates, "Pay the gift tax").date)).toBe("2026-04-15");
    expect(deadline(dates, EXTENDED)).toMatchObject({
      date: day("2026-10-15"),
      dateWithoutExtension: day("2026-06-15"),
    });
  });

  // 26 U.S.C. 6075(b)(1): the fourth month for a nonresident too, whatever the month of the income tax return.
  it("of a nonresident is due in April", () => {
    expect(datesOf(2025, "gift", { filerType: "nonresident" })).toEqual(datesOf(2025, "gift"));
  });

  // 26 U.S.C. 7508A(a), 7508(a)(1)(A), (B): a disaster postponement is of gift tax returns and gift tax too.
  it.each(["resident", "out of country"] as const)(
    "of a %s is postponed in a disaster",
    (filerType) => {
      const postponement = { begins: day("2026-01-01"), ends: day("2026-11-02") };
      const dates = datesOf(2025, "gift", { filerType, circumstances: { postponement } });
      expect(dates.map(({ date }) => date)).toEqual([
        day("2026-11-02"),
        day("2026-11-02"),
        day("2026-11-02"),
      ]);
    }
  );

  // 26 U.S.C. 6075(b)(2) speaks of a taxpayer on a calendar year.
  it("is not tied to a fiscal year", () => {
    expect(companionDates(fiscalYear("2026-06-30"), "resident", {}, "gift", rulebook)).toEqual([]);
    expect(companionDates(fiscalYear("2025-12-27"), "resident", {}, "gift", rulebook)).toEqual([]);
    const abroad = "out of country";
    expect(companionDates(fiscalYear("2026-06-30"), abroad, {}, "gift", rulebook)).toEqual([]);
  });
});

describe("foreign accounts, trusts and residence", () => {
  // FinCEN statement of March 6, 2019; Pub. L. 114-41, section 2006(b)(11); irstaxlitigation.com for 2016: FBAR-2016, FBAR-2022-2026.
  it.each([
    [2016, "2017-04-18", "2017-10-16"],
    [2022, "2023-04-18", "2023-10-16"],
    [2023, "2024-04-15", "2024-10-15"],
    [2024, "2025-04-15", "2025-10-15"],
    [2025, "2026-04-15", "2026-10-15"],
  ])("the FBAR of %i is due %s and automatically %s", (year, due, automatic) => {
    const dates = datesOf(year, "foreign");
    expect(written(deadline(dates, "FinCEN Form 114").date)).toBe(due);
    expect(deadline(dates, "automatic extension")).toMatchObject({
      date: day(automatic),
      extension: "automatic",
    });
  });

  // A disaster postponement of the IRS moves the FBAR only if FinCEN follows it.
  it("do not move with a disaster postponement, except the return and what goes with it", () => {
    const postponement = { begins: day("2026-01-01"), ends: day("2026-11-02") };
    const dates = datesOf(2025, "foreign", { circumstances: { postponement } });
    expect(written(deadline(dates, "automatic extension").date)).toBe("2026-10-15");
    expect(written(deadline(dates, "FinCEN Form 114").date)).toBe("2026-04-15");
    expect(written(deadline(dates, "Form 8938").date)).toBe("2026-11-02");
    for (const filerType of ["resident", "out of country"] as const) {
      const reports = datesOf(2025, "foreign", { filerType, circumstances: { postponement } });
      const form3520 = reports.find(({ label }) => label === "File Form 3520");
      expect(form3520?.date).toBe(day("2026-10-15"));
    }
    expect(written(deadline(dates, "File Form 3520-A").date)).toBe("2026-03-16");
  });

  // FinCEN did not follow Notice 2020-23, which postponed returns.
  it("keep the dates of the FBAR of 2019", () => {
    const dates = datesOf(2019, "foreign");
    expect(written(deadline(dates, "FinCEN Form 114").date)).toBe("2020-04-15");
    expect(written(deadline(dates, "FBAR with its automatic").date)).toBe("2020-10-15");
  });

  // 26 CFR 1.911-7(a)(2): the election is made on a timely return.
  it("have the election of the exclusion, as the elections have", () => {
    const [ofForeign, ofElections] = (["foreign", "elections"] as const).map((subject) =>
      deadline(datesOf(2025, subject), "Elect the foreign earned income exclusion")
    );
    expect(ofForeign).toEqual(ofElections);
  });

  // Instructions for Form 3520: the 15th day of the fourth and of the tenth month, whatever the date of the return.
  it.each([
    ["resident", "2026-04-15"],
    ["out of country", "2026-06-15"],
    ["nonresident", "2026-04-15"],
  ] as const)("Form 3520 of a %s is due %s, or October 15", (filerType, without) => {
    const dates = datesOf(2025, "foreign", { filerType });
    const [form3520] = dates.filter(({ label }) => label === "File Form 3520");
    expect(form3520).toMatchObject({
      date: day("2026-10-15"),
      extension: "moved",
      dateWithoutExtension: day(without),
    });
  });

  // The FBAR: an automatic extension of its own (Pub. L. 114-41, section 2006(b)(11)). 26 U.S.C. 6038D: Form 8938 with the return.
  // Instructions for Form 3520-A: Form 7004 extends it. Pub. 54: Form 2350 and the letter are requests of their own.
  it.each([
    ["resident", "FinCEN Form 114", "not moved"],
    ["resident", "Form 8938", "moved"],
    ["resident", "Form 3520-A", "not moved"],
    ["out of country", "Form 2350", "not moved"],
    ["out of country", "letter that asks", "separate request"],
  ] as const)("of a %s: %s is %s by an extension", (filerType, words, extension) => {
    expect(deadline(datesOf(2025, "foreign", { filerType }), words).extension).toBe(extension);
  });

  // thefreelibrary.com (AICPA, 2006): the letter by Monday, October 16, 2006, extends to December 15: DEC15-2006.
  it("of 2005: two more months by letter", () => {
    const dates = datesOf(2005, "foreign", {
      filerType: "out of country",
      rules: earlierRules(),
    });
    expect(written(deadline(dates, "letter that asks").date)).toBe("2006-10-16");
    expect(deadline(dates, "unless the letter")).toMatchObject({
      date: day("2006-12-15"),
      extension: "separate request",
    });
  });

  // Pub. 54: Form 2350 by the due date, June 15 out of the country; neither is for a resident at home.
  it("Form 2350 and the letter are for clients out of the country", () => {
    const abroad = datesOf(2025, "foreign", { filerType: "out of country" });
    expect(written(deadline(abroad, "Form 2350").date)).toBe("2026-06-15");
    for (const { label } of datesOf(2025, "foreign")) expect(label).not.toMatch(/2350|letter/);
  });
});

describe("elections", () => {
  // 26 CFR 301.9100-2(e), Example 1: a corporation's return for 1997, due March 15, 1998; the twelve months run from the due date or the
  // extended one, and end as printed: R9100-EX1.
  it("with an automatic extension of twelve months count from the return", () => {
    const dates = datesOf(1997, "elections", { rules: earlierRules({ regularMonth: 3 }) });
    expect(deadline(dates, "12 months")).toMatchObject({
      date: day("1999-09-15"),
      extension: "moved",
      dateWithoutExtension: day("1999-03-15"),
    });
  });

  // 26 U.S.C. 453(d)(2), 172(b)(3), 1031(a)(3)(B), 170(f)(8)(C); 26 CFR 1.911-7(a)(2), 301.9100-2(b).
  it.each([
    ["installment method", "moved"],
    ["net operating loss", "moved"],
    ["like-kind", "moved"],
    ["acknowledgment", "moved"],
    ["exclusion", "moved"],
    ["amended return", "automatic"],
  ])("%s by October 15, 2026: %s", (words, extension) => {
    expect(deadline(datesOf(2025, "elections"), words)).toMatchObject({
      date: day("2026-10-15"),
      extension,
      dateWithoutExtension: extension === "moved" ? day("2026-04-15") : day("2026-10-15"),
    });
  });
});

describe("companion dates", () => {
  it.each([2008, 2028])("do not cover tax year %i", (year) => {
    expect(() => datesOf(year, "all")).toThrow(NotInTableError);
  });

  // 26 U.S.C. 402(g), 408(p)(5), 529A, 530; the FBAR; the letter to December 15: all by the calendar year.
  it("of the calendar year are left out for a fiscal year", () => {
    const ofFiscal = companionDates(
      fiscalYear("2026-06-30"),
      "out of country",
      {},
      "all",
      rulebook
    ).map(({ label }) => label);
    for (const words of [
      "ABLE account for",
      "SIMPLE IRA$",
      "403",
      "Coverdell.*June",
      "FBAR",
      "FinCEN",
      "unless the letter",
    ])
      expect(ofFiscal.filter((label) => new RegExp(words).test(label))).toEqual(
        words === "SIMPLE IRA$" ? ["Make the employer contribution to a SIMPLE IRA"] : []
      );
    // 26 U.S.C. 404(h)(1)(B): the SEP follows the return of any year.
    expect(ofFiscal).toContain("Contribute to a SEP for the tax year");
  });

  // Instructions for Form 3520-A: the 15th day of the third month.
  it("of Form 3520-A is March 15", () => {
    expect(written(deadline(datesOf(2026, "foreign"), "Form 3520-A").date)).toBe("2027-03-15");
  });

  it.each([2009, 2027])("cover tax year %i", (year) => {
    expect(datesOf(year, "retirement").length).toBeGreaterThan(0);
  });

  it("end where their own table ends, whatever the others cover", () => {
    const ended = {
      ...rulebook,
      companionDates: { ...rulebook.companionDates, knownThrough: day("2024-12-31") },
    };
    expect(() => datesOf(2025, "gift", { rules: ended })).toThrow(NotInTableError);
    expect(datesOf(2024, "gift", { rules: ended })).toHaveLength(3);
  });

  it("move only to later dates, and are the same with and without the extension unless it moves them", () => {
    fc.assert(
      fc.property(
        heldTaxYears,
        filers,
        states,
        fc.constantFrom(...CALENDAR_SUBJECTS),
        (taxYear, filerType, state, subject) => {
          const dates = companionDates(taxYear, filerType, { state }, subject, rulebook);
          expect(dates.length).toBeGreaterThan(0);
          for (const { date, dateWithoutExtension, extension, moves, source } of dates) {
            expect(dateWithoutExtension <= date).toBe(true);
            if (extension !== "moved") expect(dateWithoutExtension).toBe(date);
            expect(moves[0] === undefined || moves[0].from < date).toBe(true);
            expect(source.citation).not.toBe("");
          }
        }
      ),
      RUNS
    );
  });
});
