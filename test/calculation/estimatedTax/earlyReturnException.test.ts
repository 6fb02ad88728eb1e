import { describe, expect, it } from "vitest";
import {
  earlyReturnException,
  type EarlyReturnInput,
} from "../../../src/calculation/estimatedTax/earlyReturnException";
import { written } from "../../../src/calendar/calendarDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { fiscalYear } from "../given";
import { day, paid, usd } from "./givenEstimates";

const FILED_AND_PAID: EarlyReturnInput = {
  taxYear: calendarTaxYear(2024),
  withholding: usd(5_000),
  payments: [],
  filedOn: day("2025-01-31"),
  paidOn: day("2025-01-31"),
};
const of = (given: Partial<EarlyReturnInput>): string | undefined => {
  const date = earlyReturnException({ ...FILED_AND_PAID, ...given }, rulebook);
  return date === undefined ? undefined : written(date);
};

// 26 U.S.C. 6654(h): files and pays in full on or before January 31.
describe("an early return", () => {
  it("counts when filed and paid in full by January 31", () => {
    expect(of({})).toBe("2025-01-31");
    expect(of({ filedOn: day("2025-02-01") })).toBeUndefined();
    expect(of({ paidOn: day("2025-02-01") })).toBeUndefined();
    expect(of({ filedOn: undefined })).toBeUndefined();
  });

  it("needs the payment: a blank date is paid in full only where payments by then reach the tax", () => {
    const unpaid = { paidOn: undefined, currentYearTax: usd(8_000) };
    expect(of({ paidOn: undefined })).toBeUndefined();
    expect(of(unpaid)).toBeUndefined();
    expect(of({ ...unpaid, payments: [paid("2025-01-31", 3_000)] })).toBe("2025-01-31");
    expect(of({ ...unpaid, payments: [paid("2025-01-31", "2999.99")] })).toBeUndefined();
    expect(of({ ...unpaid, payments: [paid("2025-02-01", 3_000)] })).toBeUndefined();
    expect(of({ ...unpaid, withholding: usd(8_000) })).toBe("2025-01-31");
  });

  // Section 7503. January 31, 2026 is a Saturday. "March 3, 2025": IRS reminder to farmers of that year, as reported; March 1 a Saturday.
  it("may be filed on the workday after a weekend", () => {
    const year = { taxYear: calendarTaxYear(2025) };
    const monday = day("2026-02-02");
    expect(of({ ...year, filedOn: monday, paidOn: monday })).toBe("2026-02-02");
    expect(of({ ...year, filedOn: day("2026-02-03"), paidOn: monday })).toBeUndefined();
  });

  // Section 6654(i)(1)(D): March 1 in place of January 31.
  it("of farmers and fishermen is due March 1", () => {
    const farmer = { farmerOrFisherman: true };
    const on = (date: string) => ({ ...farmer, filedOn: day(date), paidOn: day(date) });
    expect(of(on("2025-03-03"))).toBe("2025-03-03");
    expect(of(on("2025-03-04"))).toBeUndefined();
    const year = { taxYear: calendarTaxYear(2023) };
    expect(of({ ...year, ...on("2024-03-01") })).toBe("2024-03-01");
    expect(of({ ...year, ...on("2024-03-02") })).toBeUndefined();
  });

  // "until May 1, 2025, to file and pay": the same IRS reminder, for disaster areas, as reported.
  it("follows a disaster postponement", () => {
    const postponement = { begins: day("2024-09-25"), ends: day("2025-05-01") };
    const late = { farmerOrFisherman: true, filedOn: day("2025-05-01"), paidOn: day("2025-05-01") };
    expect(of(late)).toBeUndefined();
    expect(of({ ...late, postponement })).toBe("2025-05-01");
  });

  // Notice 2020-23: returns and payments due from April 1 to July 14, 2020 were due July 15.
  it("follows the nationwide postponement of 2020", () => {
    const taxYear = fiscalYear("2020-03-31");
    const on = (date: string) => ({ taxYear, filedOn: day(date), paidOn: day(date) });
    expect(of(on("2020-07-15"))).toBe("2020-07-15");
    expect(of(on("2020-07-16"))).toBeUndefined();
  });

  // Section 6654(k)(1). Pub. 505 (2016), farmers with a fiscal year, as quoted: "by the 1st day of the 3rd month after the end of your
  // tax year". April has no 31st.
  it("follows a fiscal year, in a shorter month on its last day", () => {
    const taxYear = fiscalYear("2025-03-31");
    const on = (date: string) => ({ taxYear, filedOn: day(date), paidOn: day(date) });
    expect(of(on("2025-04-30"))).toBe("2025-04-30");
    expect(of(on("2025-05-01"))).toBeUndefined();
    const farmer = { ...on("2025-06-02"), farmerOrFisherman: true };
    expect(of(farmer)).toBe("2025-06-02");
    expect(of({ ...farmer, filedOn: day("2025-06-03") })).toBeUndefined();
  });
});
