import { describe, expect, it } from "vitest";
import { charges } from "../../../src/functions/penalty/charges";
import { lateFile, latePay } from "../../../src/functions/penalty/singlePenalties";
import { afterTable, badInput, down, inCell, serial } from "../sheet";

const RELIEF = ["2026-01-22", "2026-06-08"];

// 26 U.S.C. 6651(a)(1): 5% a month or part of one from the day after the due date; (j): at least 525 for returns due in 2026.
describe("LATEFILE", () => {
  it.each([
    ["two months begun", [2025, 2000, "2026-05-20"], 200],
    ["a month to the day", [2025, 2000, "2026-05-15"], 100],
    ["the last day", [2025, 2000, "2026-04-15"], 0],
    ["over 60 days late", [2025, 2000, "2026-07-01"], 525],
    ["over 60 days late, little unpaid", [2025, 300, "2026-07-01"], 300],
    ["a request in time", [2025, 2000, "2026-05-20", "yes"], 0],
    ["a request in time, filed after it", [2025, 2000, "2026-10-16", "x"], 100],
    ["a state with a holiday", [2023, 2000, "2024-04-17", "no", "ME"], 0],
    ["out of country", [2025, 2000, "2026-06-15", "", "", "out of country"], 0],
    ["postponement", [2025, 2000, "2026-06-08", "", "", "", ...RELIEF], 0],
    ["relief, filed after it", [2025, 2000, "2026-06-09", "", "", "", ...RELIEF], 100],
    ["nothing unpaid", [2025, 0, "2026-12-31"], 0],
    // due 2025-10-15, with the extension 2026-04-15: the minimum is the 510 of returns due in 2025
    ["the year of the minimum", ["2025-06-30", 2000, "2026-07-01", "yes"], 510],
  ])("knows %s", (_what, values, dollars) => {
    expect(inCell(lateFile, ...values)).toBe(dollars);
  });

  it("answers a client list, year and day of each row", () => {
    expect(
      lateFile(down(2025, 2024, 0), down(2000, 2000, 0), down("2026-05-20", "2025-05-15", 0))
    ).toEqual([[200], [100], [""]]);
  });
});

describe("LATEFILE and LATEPAY", () => {
  it("refuse a day before the tax year has ended, where a workbook that counts from 1904 shows", () => {
    const sentence = (argument: string) =>
      `${argument}: 5/19/2022 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.`;
    const shifted = serial("2026-05-20") - 1462;
    expect(inCell(lateFile, 2025, 2000, shifted)).toEqual(badInput(sentence("filedOn")));
    expect(inCell(latePay, 2025, 2000, shifted)).toEqual(badInput(sentence("paidOn")));
  });
});

// 26 U.S.C. 6651(a)(2): 0.5% a month or part of one; (h): 0.25% under an installment agreement.
describe("LATEPAY", () => {
  it.each([
    ["two months begun", [2025, 1000, "2026-06-01"], 10],
    ["the last day", [2025, 1000, "2026-04-15"], 0],
    ["a state with a holiday", [2023, 1000, "2024-04-17", "ME"], 0],
    ["out of country", [2025, 1000, "2026-06-16", "", "out of country"], 5],
    ["an agreement", [2025, 1000, "2026-06-01", "", "", "2026-05-20"], 7.5],
    ["postponement", [2025, 1000, "2026-06-09", "", "", "", ...RELIEF], 5],
    ["the maximum", [2019, 1000, "2026-04-15"], 250],
  ])("knows %s", (_what, values, dollars) => {
    expect(inCell(latePay, ...values)).toBe(dollars);
  });
});

describe("CHARGES", () => {
  const OCTOBER = ["2026-10-15", "2026-10-15"] as const;
  // 1,500 x ((1+0.06/365)^76 (1+0.07/365)^107 - 1) = 50.34; 90% of 20,000 was paid (26 CFR 301.6651-1(c)(3)).
  // Abroad: 100 x ((1+0.06/365)^61 - 1) = 1.01.
  it.each([
    ["interest only, 90% paid", [2025, 20000, 18500, ...OCTOBER, "yes"], 50.34],
    ["paid and filed in time", [2025, 20000, 20000, "2026-04-15", "2026-04-15"], 0],
    ["overpaid", [2025, 20000, 25000, "2026-12-01", "2026-12-01"], 0],
    ["paid in time, filed before", [2025, 20000, 0, "2026-04-15", "2026-04-01"], 0],
    [
      "abroad: interest from April all the same",
      [2025, 100, 0, "2026-06-15", "2026-06-15", "", "", "out of country"],
      1.01,
    ],
    ["a state with a holiday", [2023, 20000, 0, "2024-04-17", "2024-04-17", "", "ME"], 0],
    [
      "postponement",
      [2025, 20000, 0, "2026-06-08", "2026-06-08", "", "", "", "", "", ...RELIEF],
      0,
    ],
  ])("know %s", (_what, values, dollars) => {
    expect(inCell(charges, ...values)).toBe(dollars);
  });

  it("grow with each thing that is late, so that every argument counts", () => {
    const extendedAndPaid = inCell(charges, 2025, 20000, 18500, ...OCTOBER, "yes");
    const notExtended = inCell(charges, 2025, 20000, 18500, ...OCTOBER, "no");
    const lessPaid = inCell(charges, 2025, 20000, 10000, ...OCTOBER, "yes");
    const agreement = inCell(
      charges,
      2025,
      20000,
      10000,
      ...OCTOBER,
      "yes",
      "",
      "",
      "",
      "2026-05-01"
    );
    expect(notExtended).toBeGreaterThan(extendedAndPaid as number);
    expect(lessPaid).toBeGreaterThan(extendedAndPaid as number);
    expect(agreement).toBeLessThan(lessPaid as number);
  });

  it("take a return filed before its tax is paid", () => {
    expect(inCell(charges, 2025, 20000, 18000, "2026-08-01", "2026-04-10")).toBeGreaterThan(0);
  });

  const AFTER_THE_LAST = afterTable("underpayment-rate", "1/1/2027", "12/31/2026");
  const not1904 =
    "is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.";
  it.each([
    [[2025, 100, 0, "2027-01-15", "2027-01-15"], AFTER_THE_LAST],
    [
      [2025, -100, 0, ...OCTOBER],
      badInput("totalTax: -100 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      [2025, 100, null, ...OCTOBER],
      badInput("paidOnTime: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [[2025, 100, 0, "2025-04-15", "2026-10-15"], badInput(`paidOn: 4/15/2025 ${not1904}`)],
    [[2025, 100, 0, "2026-10-15", "2025-12-31"], badInput(`filedOn: 12/31/2025 ${not1904}`)],
    // 46310 is 2026-10-15 counted from 1900; a workbook that counts from 1904 holds 1,462 less.
    [[2025, 100, 0, 46310 - 1462, 46310 - 1462], badInput(`paidOn: 10/14/2022 ${not1904}`)],
    [
      [2025, 100, 0, "4/15", "2026-10-15"],
      badInput('paidOn: "4/15" is not a date. Enter a date such as 4/15/2026.'),
    ],
    [
      [2025, 100, 0, ...OCTOBER, "maybe"],
      badInput('validExtension: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.'),
    ],
    [
      [2025, 100, 0, ...OCTOBER, "", "ZZ"],
      badInput(
        'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
      ),
    ],
  ])("refuse %j", (values, refusal) => {
    expect(inCell(charges, ...values)).toEqual(refusal);
  });

  it("take an assumed rate for days to come", () => {
    const late = [2025, 20000, 0, "2027-04-15", "2026-04-15", "", "", ""] as const;
    expect(inCell(charges, ...late, "7%")).toBe(inCell(charges, ...late, "latest"));
    expect(inCell(charges, ...late, "8%")).toBeGreaterThan(
      inCell(charges, ...late, "7%") as number
    );
  });
});
