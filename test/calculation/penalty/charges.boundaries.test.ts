import { describe, expect, it } from "vitest";
import { paid } from "../given";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { chargesOf, parts, type GivenReturn } from "./givenReturn";

// Interest amounts are calculated day by day from the published rates; penalties by hand from the shares in the statute.
const nothing = {
  failureToFile: "0.00",
  failureToPay: "0.00",
  interestOnTax: "0.00",
  interestOnPenalty: "0.00",
  total: "0.00",
};

describe("due on a Saturday: tax year 2022, April 15, 2023 moved to the 18th", () => {
  const given = { taxYear: 2022, totalTax: "10000", paidOnTime: "0" };

  // 26 U.S.C. 7503 and the interest manual as the Service quoted it: paid in full by the next workday, no interest.
  it("filed and paid on the Tuesday costs nothing", () => {
    const payments = [paid("2023-04-18", "10000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2023-04-18" }))).toEqual(nothing);
  });

  it("filed on the Tuesday and paid on Wednesday costs a month and interest from the 15th", () => {
    const payments = [paid("2023-04-19", "10000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2023-04-18" }))).toEqual({
      ...nothing,
      failureToPay: "50.00",
      interestOnTax: "7.67",
      total: "57.67",
    });
  });

  it("filed and paid on Wednesday costs both penalties and interest on both from the 15th", () => {
    const payments = [paid("2023-04-19", "10000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2023-04-19" }))).toEqual({
      failureToFile: "450.00",
      failureToPay: "50.00",
      interestOnTax: "7.67",
      interestOnPenalty: "0.35",
      total: "508.02",
    });
  });

  it("calculated through a date on which payment would still be timely, nothing is charged yet", () => {
    for (const through of ["2023-04-14", "2023-04-15", "2023-04-17", "2023-04-18"])
      expect(parts(chargesOf({ ...given, through, filedOn: "2023-04-14" }))).toEqual(nothing);
  });
});

describe("90% paid by April 15, 2026, the balance with the extended return on October 15", () => {
  // 26 CFR 301.6651-1(c)(3)
  it.each([
    ["89.99%", "17998", { failureToPay: "60.06", interestOnTax: "67.19", total: "127.25" }],
    ["90%", "18000", { failureToPay: "0.00", interestOnTax: "67.12", total: "67.12" }],
    ["90.01%", "18002", { failureToPay: "0.00", interestOnTax: "67.06", total: "67.06" }],
  ])("%s: %s of $20,000", (_share, paidOnTime, expected) => {
    const rest = 20000 - Number(paidOnTime);
    const payments = [paid("2026-10-15", rest)];
    const given = { taxYear: 2025, totalTax: "20000", paidOnTime, validExtension: true, payments };
    const charged = chargesOf({ ...given, filedOn: "2026-10-15" });
    expect(parts(charged)).toEqual({ ...nothing, ...expected });
    expect(charged.excused !== undefined).toBe(expected.failureToPay === "0.00");
  });
});

describe("nothing owed", () => {
  const filedVeryLate: Pick<GivenReturn, "taxYear" | "filedOn"> = {
    taxYear: 2024,
    filedOn: "2026-12-31",
  };

  it.each([
    ["no tax", "0", "0"],
    ["a refund", "8000", "9500"],
    ["tax paid to the cent", "8000", "8000"],
  ])("%s costs nothing however late", (_case, totalTax, paidOnTime) => {
    expect(parts(chargesOf({ ...filedVeryLate, totalTax, paidOnTime }))).toEqual(nothing);
  });

  it("a cent of tax makes a cent of minimum, for the hundred percent is less than the amount", () => {
    const charged = chargesOf({ ...filedVeryLate, totalTax: "8000.01", paidOnTime: "8000" });
    expect(charged.failureToFile.amount.toFixed(2)).toBe("0.01");
  });
});

describe("out of the country, tax year 2025", () => {
  const given = {
    taxYear: 2025,
    totalTax: "12000",
    paidOnTime: "7000",
    filerType: "out of country",
  } as const;

  // 26 CFR 1.6081-5(a): time to file and to pay runs to June 15; section 6601(b)(1): interest does not wait.
  it("paid between April and June costs interest alone", () => {
    const payments = [paid("2026-06-10", "5000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2026-06-15" }))).toEqual({
      ...nothing,
      interestOnTax: "46.24",
      total: "46.24",
    });
  });

  it("paid the day after the June day costs a month as well", () => {
    const payments = [paid("2026-06-16", "5000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2026-06-15" }))).toEqual({
      ...nothing,
      failureToPay: "25.00",
      interestOnTax: "51.22",
      total: "76.22",
    });
  });
});

describe("an extended return filed October 16, a day late", () => {
  const given = { taxYear: 2025, totalTax: "20000", paidOnTime: "16000", validExtension: true };

  // 26 U.S.C. 6651(a)(1), (c)(1): one month at 5%, less half a percent of the same month; seven months of half a percent.
  it("and paid with it costs one month of one penalty and seven of the other", () => {
    const payments = [paid("2026-10-16", "4000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2026-10-16" }))).toEqual({
      failureToFile: "180.00",
      failureToPay: "140.00",
      interestOnTax: "135.04",
      interestOnPenalty: "0.03",
      total: "455.07",
    });
  });

  // 26 U.S.C. 6651(b)(1): a payment after April 15 does not shrink the base of failure to file.
  it("though paid in July still costs the whole 5% of what was unpaid in April", () => {
    const payments = [paid("2026-07-01", "4000")];
    expect(parts(chargesOf({ ...given, payments, filedOn: "2026-10-16" }))).toEqual({
      failureToFile: "200.00",
      failureToPay: "60.00",
      interestOnTax: "51.06",
      interestOnPenalty: "0.04",
      total: "311.10",
    });
  });

  it("though 90% was paid loses the 90% test", () => {
    const payments = [paid("2026-10-16", "2000")];
    const charged = chargesOf({ ...given, paidOnTime: "18000", payments, filedOn: "2026-10-16" });
    expect(charged.excused).toBeUndefined();
    expect(charged.failureToPay.amount.toFixed(2)).toBe("70.00");
  });
});

describe("ordinary year, no request: tax year 2023, filed and paid May 16, 2024", () => {
  it("costs two months begun of both and interest on both from April 15", () => {
    const payments = [paid("2024-05-16", "10000")];
    const given = { taxYear: 2023, totalTax: "10000", paidOnTime: "0", payments };
    expect(parts(chargesOf({ ...given, filedOn: "2024-05-16" }))).toEqual({
      failureToFile: "900.00",
      failureToPay: "100.00",
      interestOnTax: "67.98",
      interestOnPenalty: "6.12",
      total: "1074.10",
    });
  });
});

// Counsel advice 2008101610383052 (not precedent): where the extended due date is Saturday, October 15, interest on a penalty runs from
// Monday, October 17, if the return is filed on that Monday. Such a return is on time, so that the add-in has no penalty for it.
describe("extended to a Saturday: tax year 2021, due October 15, 2022, nothing paid on time", () => {
  const at = (filedOn: string): ReturnType<typeof chargesOf> =>
    chargesOf({
      taxYear: 2021,
      totalTax: "10000",
      paidOnTime: "0",
      payments: [],
      filedOn,
      validExtension: true,
      through: "2022-10-31",
    });

  it("and filed on Monday, October 17, has no failure-to-file penalty that could have interest", () => {
    const { failureToFile, interestOnPenalty } = at("2022-10-17");
    expect([failureToFile.amount.toFixed(2), interestOnPenalty.amount.toFixed(2)]).toEqual([
      "0.00",
      "0.00",
    ]);
  });

  // No authority is known for a return filed later: the date that the law names is the cautious reading (section 6601(e)(2)(B)).
  it("and filed on Tuesday has interest on the penalty from October 15", () => {
    const { interestOnPenalty } = at("2022-10-18");
    expect(interestOnPenalty.periods()[0]?.period.from).toBe(calendarDate("2022-10-15"));
    expect(interestOnPenalty.periods().reduce((sum, { period }) => sum + period.days, 0)).toBe(16);
  });
});
