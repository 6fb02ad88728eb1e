import { describe, expect, it } from "vitest";
import {
  mailingAddress,
  type MailingResidence,
  type PaperAddress,
} from "../../../src/calculation/request/mailingAddress";
import { isState, STATES } from "../../../src/calculation/state";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/mailing-addresses.json";
import { fiscalYear } from "../given";

function residence(written: string): MailingResidence {
  if (written === "estate" || written === "nonresident" || isState(written)) return written;
  throw new RangeError(`${written} is no residence`);
}

const to = (
  year: TaxYear,
  written: string,
  paidWithRequest: boolean,
  byDeliveryService = false
): PaperAddress =>
  mailingAddress(year, residence(written), paidWithRequest, byDeliveryService, rulebook);

const EDITIONS = [2022, 2023, 2024, 2025];
const RESIDENCES = [...STATES, "estate", "nonresident"];
/** Every address asked for, with the chart's own row if it has one. */
const everyCase = EDITIONS.flatMap((edition) =>
  RESIDENCES.flatMap((written) =>
    [true, false].map((paidWithRequest) => ({
      edition,
      written,
      paidWithRequest,
      row: published.cases.find(
        ({ inputs }) =>
          inputs.taxYear === edition &&
          inputs.residences.includes(written) &&
          inputs.paidWithRequest === paidWithRequest
      ),
    }))
  )
);

const KANSAS_CITY = [
  "Internal Revenue Submission Processing Center",
  "333 W. Pershing",
  "Kansas City, MO 64108",
];

describe("where a paper request goes", () => {
  it.each(published.cases)("$case ($source.mark)", ({ inputs, expected, source }) => {
    expect(inputs.residences.length).toBeGreaterThan(0);
    for (const written of inputs.residences) {
      const found = to(calendarTaxYear(inputs.taxYear), written, inputs.paidWithRequest);
      expect(found.lines).toEqual(expected);
      expect(found.source.confidence).toBe(source.mark);
      expect(found.source.citation).toContain(`Form 4868 (${String(inputs.taxYear)})`);
    }
  });

  it("is what the chart says or is refused, for every filer", () => {
    for (const { edition, written, paidWithRequest, row } of everyCase) {
      const ask = () => to(calendarTaxYear(edition), written, paidWithRequest).lines;
      if (row) expect(ask()).toEqual(row.expected);
      else expect(ask).toThrow(NotInTableError);
    }
  });

  it("is known for every state and the District, in each edition", () => {
    const missing = everyCase.filter(({ row }) => !row).map(({ written }) => written);
    expect([...new Set(missing)].toSorted()).toEqual(["MP"]);
  });

  it("with payment is a post office box, without one a center", () => {
    for (const { edition, written, paidWithRequest, row } of everyCase)
      if (row)
        expect(
          /P\.O\. Box/.test(to(calendarTaxYear(edition), written, paidWithRequest).lines.join())
        ).toBe(paidWithRequest);
  });

  it("has an error for a residence that the chart does not name", () => {
    expect(() => to(calendarTaxYear(2025), "MP", true)).toThrow(
      "The chart of 2025 has no address for MP (rules/mailing-addresses.json)"
    );
  });

  it.each([
    [2021, "There is no figure for 12/31/2021. The table begins on 12/31/2022"],
    [2026, "There is no figure for 12/31/2026. The table covers dates through 12/31/2025"],
  ])("is not in the table for the form of %d", (year, sentence) => {
    for (const written of RESIDENCES)
      for (const byDeliveryService of [false, true])
        expect(() => to(calendarTaxYear(year), written, true, byDeliveryService)).toThrow(sentence);
  });

  // Form 4868 is for the tax year beginning in its year: common practice, no source.
  it("uses the form of the year in which a fiscal year begins", () => {
    const cincinnati = "Cincinnati, OH 45280-2503";
    expect(to(fiscalYear("2025-06-30"), "CA", true).lines).toContain(cincinnati);
    expect(to(fiscalYear("2026-06-30"), "CA", true).lines).toContain("Louisville, KY 40293-1300");
    expect(() => to(fiscalYear("2022-06-30"), "CA", true)).toThrow("12/31/2021");
  });
});

// Form 4868 (2025), private delivery services: a carrier does not reach a post office box.
describe("where a private carrier brings it", () => {
  it("is the street of the center that the chart names without payment", () => {
    const year = calendarTaxYear(2025);
    expect(to(year, "NY", true, true).lines).toEqual(KANSAS_CITY);
    expect(to(year, "NY", false, true).lines).toEqual(KANSAS_CITY);
    expect(to(year, "CA", true, true).lines).toEqual([
      "Internal Revenue Submission Processing Center",
      "1973 Rulon White Blvd.",
      "Ogden, UT 84201",
    ]);
    // the street in Austin from memory
    expect(to(year, "TX", true, true).lines).toEqual([
      "Internal Revenue Submission Processing Center",
      "3651 S IH35",
      "Austin, TX 78741",
    ]);
  });

  it("is never a post office box, and the same with payment and without", () => {
    for (const { edition, written, row } of everyCase) {
      if (!row) continue;
      const year = calendarTaxYear(edition);
      const street = to(year, written, true, true).lines;
      expect(street.join()).not.toMatch(/P\.?\s*O\.?\s*Box/i);
      expect(street).toEqual(to(year, written, false, true).lines);
      const center = to(year, written, false).lines.join();
      const city = street.at(-1)?.split(",")[0] ?? "no city";
      expect(center).toContain(city);
    }
  });

  it("rests on the weaker of the two sources", () => {
    const year = calendarTaxYear(2025);
    // The street in Austin is from memory, those of the other centers were seen.
    expect(to(year, "TX", false, true).source.confidence).toBe("memory");
    expect(to(year, "NY", false, true).source.confidence).toBe("secondary");
    expect(to(year, "NY", false, true).source.document).toBe("irs-street-addresses");
    // The chart of 2022 without payment is from memory, the street in Ogden is not.
    const old = to(calendarTaxYear(2022), "CA", true, true).source;
    expect(old.confidence).toBe("memory");
    expect(old.citation).toContain("Form 4868 (2022)");
  });

  it("is a fault of the rules where a center has no street", () => {
    const rules = {
      ...rulebook,
      serviceCenterStreets: { ...rulebook.serviceCenterStreets, rows: [] },
    };
    const year = calendarTaxYear(2025);
    expect(() => mailingAddress(year, residence("NY"), false, true, rules)).toThrow(RangeError);
  });
});

describe("the chart in the table", () => {
  it("has one row at most for a residence", () => {
    for (const { edition, written, paidWithRequest } of everyCase) {
      const rows = rulebook.mailingAddresses.rows.filter(
        (row) =>
          row.edition === edition &&
          row.residences.includes(written) &&
          row.paidWithRequest === paidWithRequest
      );
      expect(rows.length).toBeLessThanOrEqual(1);
    }
  });
});
