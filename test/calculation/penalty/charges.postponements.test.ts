import { describe, expect, it } from "vitest";
import type { DisasterPostponement } from "../../../src/calculation/dueDate/disasterPostponement";
import { day, paid } from "../given";
import { chargesOf, parts, type GivenReturn } from "./givenReturn";

const postponement = (
  begins: string,
  postponementEnds: string
): { readonly postponement: DisasterPostponement } => ({
  postponement: { begins: day(begins), ends: day(postponementEnds) },
});

/** $10,000 filed and paid on one day. */
const filedAndPaid = (taxYear: number, on: string, more: Partial<GivenReturn> = {}): string[] => {
  const payments = [paid(on, "10000")];
  const given = { taxYear, totalTax: "10000", paidOnTime: "0", payments, filedOn: on, ...more };
  return Object.values(parts(chargesOf(given)));
};
const NOTHING = ["0.00", "0.00", "0.00", "0.00", "0.00"];

describe("a postponement for everyone", () => {
  it.each([
    [2017, "2018-04-18"],
    [2019, "2020-07-15"],
    [2020, "2021-05-17"],
  ])("of the tax year %i costs nothing through %s", (taxYear, on) => {
    expect(filedAndPaid(taxYear, on)).toEqual(NOTHING);
  });

  // IR-2018-100 (from memory) only moved the last day; Notices 2020-23 and 2021-21 disregard the time:
  // interest begins July 16, 2020 and May 18, 2021.
  it.each([
    [2017, "2018-04-19", "four days", ["450.00", "50.00", "5.48", "0.25", "505.73"]],
    [2019, "2020-07-16", "one day", ["450.00", "50.00", "0.82", "0.04", "500.86"]],
    [2020, "2021-05-18", "one day", ["450.00", "50.00", "0.82", "0.04", "500.86"]],
  ])(
    "of the tax year %i costs, a day after it on %s, %s of interest",
    (taxYear, on, _d, amounts) => {
      expect(filedAndPaid(taxYear, on)).toEqual(amounts);
    }
  );

  it("of 2020 reached the June day out of the country, that of 2021 did not", () => {
    const abroad: Partial<GivenReturn> = { filerType: "out of country" };
    expect(filedAndPaid(2019, "2020-07-15", abroad)).toEqual(NOTHING);
    // May 17, 2021 ended the time for interest, June 15 the time out of the country
    const [failureToFile, failureToPay, interest] = filedAndPaid(2020, "2021-06-15", abroad);
    expect([failureToFile, failureToPay]).toEqual(["0.00", "0.00"]);
    expect(Number(interest)).toBeGreaterThan(0);
  });
});

describe("a disaster postponement", () => {
  // IR-2024-146: San Diego County, January 21 to June 17, 2024.
  const april = { circumstances: postponement("2024-01-21", "2024-06-17") };

  it("over April costs nothing through its last day", () => {
    expect(filedAndPaid(2023, "2024-06-17", april)).toEqual(NOTHING);
  });

  it("over April counts months and interest from its last day", () => {
    expect(filedAndPaid(2023, "2024-06-18", april)).toEqual([
      "450.00",
      "50.00",
      "2.19",
      "0.10",
      "502.29",
    ]);
  });

  // Kentucky, February 14 to November 3, 2025: both the April and the October day.
  it("over April and October moves both: a November return is timely, requested or not", () => {
    const both = { circumstances: postponement("2025-02-14", "2025-11-03") };
    expect(filedAndPaid(2024, "2025-11-03", both)).toEqual(NOTHING);
    expect(filedAndPaid(2024, "2025-11-03", { ...both, validExtension: true })).toEqual(NOTHING);
    expect(filedAndPaid(2024, "2025-11-04", { ...both, validExtension: true })[0]).toBe("450.00");
  });

  // Parts of Texas, July 2, 2025 to February 2, 2026: the October day alone.
  it("over October alone leaves payment due in April and the extended return due at its end", () => {
    const october = {
      circumstances: postponement("2025-07-02", "2026-02-02"),
      validExtension: true,
    };
    const payments = [paid("2026-02-02", "2000")];
    const given = { taxYear: 2024, totalTax: "20000", ...october, payments };
    const charged = chargesOf({ ...given, paidOnTime: "18000", filedOn: "2026-02-02" });
    expect(parts(charged)).toMatchObject({
      failureToFile: "0.00",
      failureToPay: "0.00",
      interestOnTax: "115.59",
    });
    expect(charged.excused).toBeDefined();
    const unextended = chargesOf({
      ...given,
      validExtension: false,
      paidOnTime: "18000",
      filedOn: "2026-02-02",
    });
    expect(unextended.failureToFile.months).toBe(5);
  });

  // GA-2026-03: April 18 to August 20, 2026.
  it("that begins after April changes nothing for a resident", () => {
    const after = { circumstances: postponement("2026-04-18", "2026-08-20") };
    expect(filedAndPaid(2025, "2026-08-20", after)).toEqual(filedAndPaid(2025, "2026-08-20"));
  });
});
