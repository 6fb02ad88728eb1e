import { describe, expect, it } from "vitest";
import { stateTerms } from "../../../src/calculation/stateReturn/stateTerms";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { ruleOf } from "./givenState";

const terms = (state: string, year: number) => stateTerms(calendarTaxYear(year), ruleOf(state));
const textsOf = (state: string, effect: string, year = 2025): readonly string[] =>
  terms(state, year)
    .filter((term) => term.effect === effect)
    .map(({ text }) => text);

describe("every term in the published texts", () => {
  it.each(published.cases)("$case ($source.mark, $source.section)", ({ inputs, expected }) => {
    const { terms: found } = ruleOf(inputs.state);
    expect(found.map((term) => [term.effect, term.sourceTaxYear ?? null, term.text])).toEqual(
      expected.terms.map(([effect, taxYear, words]) => [
        effect,
        taxYear,
        expect.stringContaining(String(words)) as unknown,
      ])
    );
  });
});

describe("the electronic due dates", () => {
  // OAC 710:50-3-3 (2024): the 20th; NMSA 7-2-12: the last day of the month; SCDOR, January 2026: May 1
  it.each([
    ["OK", 2024, "04-20"],
    ["NM", 2024, "04-30"],
    ["SC", 2025, "05-01"],
  ])("of %s for %d is %s", (state, year, day) => {
    const electronic = terms(state, year).filter(({ effect }) => effect === "electronic due date");
    expect(electronic.map((term) => term.day)).toEqual([day]);
  });

  // The statement of January 2026 is for tax year 2025.
  it("of South Carolina is not among the terms for 2024", () => {
    expect(textsOf("SC", "electronic due date", 2024)).toEqual([]);
    expect(textsOf("SC", "electronic due date", 2026)).toHaveLength(1);
  });

  it("of no other state", () => {
    const states = rulebook.stateExtensions.rows.filter(({ terms: all }) =>
      all.some(({ effect }) => effect === "electronic due date")
    );
    expect(states.map(({ state }) => state)).toEqual(["NM", "OK", "SC"]);
  });
});

describe("terms that only avoid a penalty", () => {
  it.each([
    // A.R.S. 42-1107(A)
    ["AZ", /^No extension underpayment penalty if at least 90%/],
    // 1 CCR 201-2, Rule 39-22-621.2(j)
    ["CO", /^No late-payment penalty if 90%.*by April 15.*extended due date/],
    // 45 IAC 15-1-2
    ["IN", /^No late-payment penalty.*90%/],
    // ksrevenue.gov, FAQ: 90%, return and balance by the extended date
    ["KS", /90%.*return and the balance.*extended due date/],
    // nd.gov, FAQ on extensions
    [
      "ND",
      /^No penalty, only interest, if the return is filed and the tax is paid by the extended/,
    ],
    // S.C. Code 12-54-70
    ["SC", /90%/],
    // incometax.utah.gov, Extensions and Prepayments
    ["UT", /90% of the current-year tax or 100% of the prior-year tax/],
  ])("of %s", (state, text) => {
    expect(textsOf(state, "avoids a penalty").some((one) => text.test(one))).toBe(true);
    for (const { effect, by, percentPaid } of terms(state, 2025))
      if (effect === "avoids a penalty") expect([by, percentPaid]).toEqual([undefined, undefined]);
  });

  // incometax.utah.gov: first-year and no-tax filers have only the 90% test
  it("of Utah say which test a first-year filer has", () => {
    expect(textsOf("UT", "avoids a penalty")[1]).toMatch(/only the test of 90%/);
  });
});

describe("terms for a filer out of the country", () => {
  // Neb. Admin. Code 316-22-014: the 15th day of the sixth month; DR 0158-I; NCDOR; Md. Tax-General 10-823; Idaho Code 63-3033(c)
  it.each([
    ["NE", /^Automatic to June 15/],
    ["CO", /^June 15, then October 15/],
    ["NC", /^4 months automatic, 2 more/],
    ["MD", /^Up to one year/],
    ["ID", /^June 15/],
  ])("of %s", (state, text) => {
    expect(textsOf(state, "out of the country")).toEqual([expect.stringMatching(text)]);
  });

  it("of Nebraska have a date", () => {
    const abroad = terms("NE", 2025).find(({ effect }) => effect === "out of the country");
    expect(abroad?.day).toBe("06-15");
  });
});

describe("terms about the return", () => {
  // ncdor.gov, FAQ; the federal copy: ksrevenue.gov, 110 CSR 21-57, dor.georgia.gov, 61 Pa. Code 117.14, 316 NAC 22-014, 280-RICR-20-55-2.6
  it.each([
    ["NC", /Federal Extension circle/],
    ["KS", /copy of Form 4868/],
    ["WV", /copy of the federal request/],
    ["GA", /copy of Form 4868/],
    ["PA", /federal form/],
    ["NE", /copy of the federal request/],
    ["RI", /federal copy/],
    // tax.nd.gov: no copy with the return
    ["ND", /^No copy/],
  ])("of %s", (state, text) => {
    expect(textsOf(state, "with the return")).toEqual([expect.stringMatching(text)]);
  });
});

describe("terms that limit the extension", () => {
  // Ala. Admin. Code 810-3-27-.03
  it("of Alabama name the filer who missed the year before", () => {
    expect(textsOf("AL", "limits the extension")[0]).toMatch(/missed the extended due date/);
    expect(textsOf("AL", "payment form").join()).toContain("$25,000");
  });
});

describe("forms on which the sources differ", () => {
  // a report for 2026 names 502E, the comptroller PV in 2021; a list for tax year 2025 has 80-106A
  it.each([
    ["MD", /PV .*502E.*differ/],
    ["MS", /80-106 or 80-106A: the sources differ/],
  ])("are both shown: %s", (state, text) => {
    expect(textsOf(state, "request form")).toEqual([expect.stringMatching(text)]);
  });
});
