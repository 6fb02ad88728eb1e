import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { ledgerOf, paid, type GivenAccount } from "./givenAccount";

/** Failure to pay so far on the day of each event. */
const failureToPay = (given: GivenAccount): readonly (readonly string[])[] =>
  ledgerOf(given).map((row) => [written(row.date), row.event, row.failureToPay.toString()]);

// Whether failure to pay is excused, and at which rate it runs, depends on how the return is filed in the end: every row is to be
// judged on that, so that none shows what a later one takes back.
describe("an account seen from its end", () => {
  const ninetyPercent = [
    paid("2026-04-15", 18_500),
    paid("2026-05-20", 500),
    paid("2026-07-01", 1_000),
  ];

  it("shows no failure to pay in any row where 90% was paid and the return keeps the extension", () => {
    // 26 CFR 301.6651-1(c)(3)
    const rows = failureToPay({
      payments: ninetyPercent,
      filedOn: "2026-10-15",
      validExtension: true,
    });
    expect(rows.map(([, , amount]) => amount)).toEqual(["0", "0", "0", "0", "0", "0"]);
  });

  it("shows it in every row where the return comes after the extended date", () => {
    // 0.5% of 1,500 for two months begun by May 20; of 1,000 for the one more begun by July 1
    const rows = failureToPay({
      payments: ninetyPercent,
      filedOn: "2026-11-01",
      validExtension: true,
    });
    expect(rows).toEqual([
      ["2026-04-15", "payment", "0"],
      ["2026-04-15", "tax due", "0"],
      ["2026-05-20", "payment", "15"],
      ["2026-07-01", "payment", "20"],
      ["2026-10-15", "return due", "20"],
      ["2026-11-01", "return filed", "20"],
    ]);
  });

  it("shows the whole rate in every row where the return is too late for an agreement's half", () => {
    // 6651(h): only where the return is filed by its due date, extensions included
    const given = {
      payments: [paid("2026-04-15", 10_000), paid("2026-06-10", 1_000)],
      validExtension: true,
      agreementOn: "2026-04-16",
    };
    const rows = (filedOn: string): readonly string[] =>
      failureToPay({ ...given, filedOn }).map(([, , amount]) => amount ?? "");
    // two months on 10,000 and four on 9,000 by October 15, at 0.25%; at 0.5% with one more by November 1
    expect(rows("2026-10-15")).toEqual(["0", "0", "25", "50", "140", "140"]);
    expect(rows("2026-11-01")).toEqual(["0", "0", "50", "100", "280", "325"]);
  });

  it("shows no interest for days on which what is left was still paid on time", () => {
    // April 15, 2022 was a holiday: a payment on Saturday and the rest on Monday, the last day, are both on time (section 7503)
    const rows = ledgerOf({
      taxYear: 2021,
      payments: [paid("2022-04-16", 10_000), paid("2022-04-18", 10_000)],
      filedOn: "2022-04-18",
    });
    expect(rows.map(({ date: day, interest }) => [written(day), interest.toString()])).toEqual([
      ["2022-04-16", "0"],
      ["2022-04-18", "0"],
      ["2022-04-18", "0"],
      ["2022-04-18", "0"],
      ["2022-04-18", "0"],
    ]);
    const open = ledgerOf({ taxYear: 2021, payments: [], filedOn: "2022-04-18" });
    expect(open.map(({ interest }) => interest.toString())).toEqual(["0", "0", "0"]);
  });
});
