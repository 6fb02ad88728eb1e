import { describe, expect, it } from "vitest";
import type { LedgerRow } from "../../../src/calculation/account/ledger";
import { calendarDate, written } from "../../../src/calendar/calendarDate";
import { lastOf, ledgerOf, paid, type GivenAccount } from "./givenAccount";

/** Interest of a dollar over days at a rate, in binary numbers: no code of src. */
const growth = (percent: number, days: number): number => (1 + percent / 36_500) ** days;
const cents = (amount: number): number => Math.round(amount * 100) / 100;

/** $20,000 of tax, half of it on time, the return filed on time, and a notice on Tuesday, June 2, 2026: 21 days end on June 23. */
const rowsWith = (given: Partial<GivenAccount>): readonly LedgerRow[] =>
  ledgerOf({
    filedOn: "2026-04-15",
    noticeOn: "2026-06-02",
    ...given,
    payments: [paid("2026-04-15", 10_000), ...(given.payments ?? [])],
  });

// 26 U.S.C. 6601(e)(2)(A), (e)(3); 26 CFR 301.6601-1(f)(3) to (5). 6% in the second quarter of 2026, 7% in the third (the rulings).
describe("a payment history after a notice", () => {
  /** Two months begun by June 2 at 0.5% of 10,000, and 48 days of interest. */
  const billed = 10_000 + 100 + cents(10_000 * (growth(6, 48) - 1));

  it("shows what the notice demands, and by when to pay it", () => {
    const notice = rowsWith({}).find(({ event }) => event === "notice and demand");
    expect(notice?.amount?.toNumber()).toBe(billed);
    expect(notice?.payBy).toBe(calendarDate("2026-06-23"));
    expect(notice?.source.citation).toMatch(/6601\(e\)\(2\)\(A\)/);
  });

  it("has no more interest if the notice is paid in time", () => {
    const rows = rowsWith({ payments: [paid("2026-06-23", billed), paid("2026-09-30", 100)] });
    expect(lastOf(rows).interest.toNumber()).toBe(cents(10_000 * (growth(6, 48) - 1)));
    // The month that begins on June 16 is charged: section 6651(b)(2) has no such rule.
    expect(lastOf(rows).failureToPay.toNumber()).toBe(150);
  });

  it("has interest on the tax without a break, and on the penalty from the notice, if it is paid a day late", () => {
    const rows = rowsWith({ payments: [paid("2026-06-24", billed)] });
    const onTax = cents(10_000 * (growth(6, 70) - 1));
    const onPenalty = cents(100 * (growth(6, 22) - 1));
    expect(lastOf(rows).interest.toNumber()).toBe(cents(onTax + onPenalty));
    expect(lastOf(rows).interestOnPenalties.toNumber()).toBe(onPenalty);
  });

  it("has no interest after the notice on a part that is paid in time", () => {
    const rows = rowsWith({ payments: [paid("2026-06-10", 4_000), paid("2026-07-10", 1)] });
    const toNotice = 10_000 * (growth(6, 48) - 1);
    const onTax = cents((6_000 + toNotice) * growth(6, 28) * growth(7, 10) - 6_000);
    const onPenalty = cents(100 * (growth(6, 28) * growth(7, 10) - 1));
    expect(lastOf(rows).interest.toNumber()).toBe(cents(onTax + onPenalty));
  });

  it("has no interest on penalty that accrues after the notice", () => {
    const early = rowsWith({ noticeOn: "2026-05-15", payments: [paid("2026-07-31", 1)] });
    // one month begun by the notice: 50 from May 15, 46 days at 6% and 31 at 7%
    expect(lastOf(early).interestOnPenalties.toNumber()).toBe(
      cents(50 * (growth(6, 46) * growth(7, 31) - 1))
    );
    expect(lastOf(early).failureToPay.toNumber()).toBe(200);
  });

  it("pays the penalty that the notice bills, and the failure-to-file penalty, before penalty that accrues later", () => {
    // Filed on May 10: one month of failure to file, 4.5% of 10,000; all that is billed is paid in time.
    const late = { filedOn: "2026-05-10" };
    const demand = rowsWith(late).find(({ event }) => event === "notice and demand")?.amount;
    const rows = rowsWith({
      ...late,
      payments: [paid("2026-06-20", demand?.toNumber() ?? 0), paid("2026-12-01", 1)],
    });
    const onTax = cents(10_000 * (growth(6, 48) - 1));
    const onPenalty = cents(450 * (growth(6, 48) - 1));
    expect(lastOf(rows).interest.toNumber()).toBe(cents(onTax + onPenalty));
  });

  it("counts ten business days where $100,000 is demanded", () => {
    const large = (on: string): LedgerRow =>
      lastOf(rowsWith({ totalTax: 120_000, payments: [paid(on, 120_000)] }));
    // June 3 to 5, 8 to 12, 15 and 16
    const atNotice = cents(110_000 * (growth(6, 48) - 1));
    expect(large("2026-06-16").interest.toNumber()).toBe(atNotice);
    expect(large("2026-06-17").interest.greaterThan(atNotice)).toBe(true);
  });

  it("shows the agreement and the levy notice as events with their law", () => {
    const rows = rowsWith({ agreementOn: "2026-06-10", levyNoticeOn: "2026-08-05" });
    expect(
      rows
        .slice(-3)
        .map(({ date, event, failureToPay, source }) => [
          written(date),
          event,
          failureToPay.toNumber(),
          source.citation,
        ])
    ).toEqual([
      ["2026-06-02", "notice and demand", 75, expect.stringContaining("6601(e)(2)(A)")],
      ["2026-06-10", "agreement accepted", 75, expect.stringContaining("(h)")],
      ["2026-08-05", "levy notice", 125, "IRC section 6651(d)"],
    ]);
    // The month of August 16 begins after August 15.
    const later = rowsWith({
      agreementOn: "2026-06-10",
      levyNoticeOn: "2026-08-05",
      payments: [paid("2026-08-16", 1)],
    });
    expect(lastOf(later).failureToPay.toNumber()).toBe(225);
  });
});
