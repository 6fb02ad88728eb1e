import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { ledger, type LedgerRow } from "../../../src/calculation/account/ledger";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { lastOf, ledgerInput, ledgerOf, paid, usd } from "./givenAccount";

/** Rows as text: day, event, amount, tax left, overpaid, failure to file, failure to pay. */
const texts = (rows: readonly LedgerRow[]): readonly string[] =>
  rows.map((row) =>
    [
      written(row.date),
      row.event,
      row.amount?.toString() ?? "-",
      row.unpaidTax.toString(),
      row.overpayment.toString(),
      row.failureToFile.toString(),
      row.failureToPay.toString(),
    ].join(" | ")
  );

const interest = (rows: readonly LedgerRow[]): readonly string[] =>
  rows.map((row) => row.interest.toFixed(2));

/** Interest of a dollar over days at a rate, in binary numbers: no code of src. */
const growth = (percent: number, days: number): number => (1 + percent / 36_500) ** days;

describe("the account of a return paid in parts", () => {
  const inParts = (): readonly LedgerRow[] =>
    ledgerOf({
      payments: [paid("2026-04-15", 15_000), paid("2026-06-20", 2_000), paid("2026-10-15", 3_000)],
      filedOn: "2026-10-15",
      validExtension: true,
    });

  it("shows each event in order of dates, the payment of a day before what is due on it", () => {
    // 26 U.S.C. 6651(a)(2), (b)(2): 0.5% a month of what is unpaid as it begins: three months on 5,000, three on 3,000
    expect(texts(inParts())).toEqual([
      "2026-04-15 | payment | 15000 | 5000 | 0 | 0 | 0",
      "2026-04-15 | tax due | 20000 | 5000 | 0 | 0 | 0",
      "2026-06-20 | payment | 2000 | 3000 | 0 | 0 | 75",
      "2026-10-15 | payment | 3000 | 0 | 0 | 0 | 120",
      "2026-10-15 | return due | - | 0 | 0 | 0 | 120",
      "2026-10-15 | return filed | - | 0 | 0 | 0 | 120",
    ]);
  });

  it("lets a payment reduce the tax, so that interest accrues on the unpaid tax and on the interest to date", () => {
    // 26 U.S.C. 6601(a), 6622; 6% in the second quarter of 2026, 7% in the third and fourth (the revenue rulings)
    const toJune = 5000 * (growth(6, 66) - 1);
    const toOctober = (3000 + toJune) * growth(6, 10) * growth(7, 107) - 3000;
    expect(interest(inParts())).toEqual([
      "0.00",
      "0.00",
      toJune.toFixed(2),
      ...Array<string>(3).fill(toOctober.toFixed(2)),
    ]);
  });

  it("names the law of each row", () => {
    expect([
      ...new Set(inParts().map(({ event, source }) => `${event}: ${source.citation}`)),
    ]).toEqual([
      expect.stringMatching(/^payment: .*page 9/),
      expect.stringMatching(/^tax due: IRC sections? 6072/),
      expect.stringMatching(/^return due: IRC sections? 6081/),
      expect.stringMatching(/^return filed: IRC sections? 6081/),
    ]);
    const unextended = ledgerOf({ payments: [], filedOn: "2026-04-15" });
    expect(unextended.map(({ event, source }) => `${event}: ${source.citation}`)).toEqual([
      expect.stringMatching(/^tax due: IRC sections? 6072/),
      expect.stringMatching(/^return due: IRC sections? 6072/),
      expect.stringMatching(/^return filed: IRC sections? 6072/),
    ]);
  });

  it("is refused if the table has no order of payments", () => {
    const input = ledgerInput({ payments: [], filedOn: "2026-04-15" });
    const without = { ...rulebook, orderOfPayments: { ...rulebook.orderOfPayments, rows: [] } };
    expect(() => ledger(input, without)).toThrow(
      new NotInTableError(
        { title: "Order in which a payment is applied" },
        "There is no order for an undesignated payment (rules/order-of-payments.json)."
      )
    );
  });

  it("charges failure to file only for the months begun by each row, and none after the filing", () => {
    const rows = ledgerOf({
      payments: [paid("2026-04-15", 10_000), paid("2026-05-10", 1_000), paid("2026-08-20", 9_000)],
      filedOn: "2026-06-20",
    });
    // 6651(a)(1), (b)(1), (c)(1): 5% a month of 10,000, less 0.5% of 10,000, then of 9,000
    expect(texts(rows)).toEqual([
      "2026-04-15 | payment | 10000 | 10000 | 0 | 0 | 0",
      "2026-04-15 | tax due | 20000 | 10000 | 0 | 0 | 0",
      "2026-04-15 | return due | - | 10000 | 0 | 0 | 0",
      "2026-05-10 | payment | 1000 | 9000 | 0 | 450 | 50",
      "2026-06-20 | return filed | - | 9000 | 0 | 1360 | 140",
      "2026-08-20 | payment | 9000 | 0 | 0 | 1360 | 230",
    ]);
  });

  it("reaches the minimum on the sixty-first day after the due date", () => {
    // 6651(a), last sentence: the lesser of $525 and the tax, for returns due in 2026
    const at = (filedOn: string): string => {
      const rows = ledgerOf({ payments: [paid("2026-04-15", 19_000)], filedOn });
      return lastOf(rows).failureToFile.toString();
    };
    expect(at("2026-06-14")).toBe("90");
    expect(at("2026-06-15")).toBe("525");
  });

  it.each([
    // Emancipation Day was observed on Friday, April 15, 2022: Monday was the last day (IR-2022-8, as reported elsewhere)
    ["2022-04-18", "0", "0"],
    ["2022-04-19", "25", "1.64"],
  ])("of 2021, paid on %s: failure to pay %s, interest %s", (on, failureToPay, charged) => {
    const rows = ledgerOf({
      taxYear: 2021,
      totalTax: 5000,
      payments: [paid(on, 5000)],
      filedOn: on,
      validExtension: true,
    });
    const row = rows.find(({ event }) => event === "payment");
    expect(row?.failureToPay.toString()).toBe(failureToPay);
    // four days from the 15th at 4%
    expect(row?.interest.toString()).toBe(
      usd(charged)
        .plus(charged === "0" ? 0 : "0.55")
        .toString()
    );
  });

  it("shows what is paid beyond the tax, and charges nothing where all was paid on time", () => {
    const rows = ledgerOf({
      payments: [paid("2025-06-16", 15_000), paid("2026-04-15", 6_000)],
      filedOn: "2026-12-01",
    });
    expect(texts(rows)).toEqual([
      "2025-06-16 | payment | 15000 | 5000 | 0 | 0 | 0",
      "2026-04-15 | payment | 6000 | 0 | 1000 | 0 | 0",
      "2026-04-15 | tax due | 20000 | 0 | 1000 | 0 | 0",
      "2026-04-15 | return due | - | 0 | 1000 | 0 | 0",
      "2026-12-01 | return filed | - | 0 | 1000 | 0 | 0",
    ]);
    expect(interest(rows)).toEqual(Array<string>(5).fill("0.00"));
  });

  it("ends with its last event where the payments do not reach the tax", () => {
    const rows = ledgerOf({ payments: [], filedOn: "2026-06-15" });
    expect(texts(rows).at(-1)).toBe("2026-06-15 | return filed | - | 20000 | 0 | 1800 | 200");
  });

  it("counts interest from April and the penalties from June for a taxpayer out of the country", () => {
    // 26 CFR 1.6081-5(a); section 6601(b)(1)
    const rows = ledgerOf({
      payments: [paid("2026-06-15", 20_000)],
      filedOn: "2026-06-15",
      filerType: "out of country",
    });
    expect(texts(rows).at(-1)).toBe("2026-06-15 | return filed | - | 0 | 0 | 0 | 0");
    expect(interest(rows).at(-1)).toBe((20_000 * (growth(6, 61) - 1)).toFixed(2));
  });

  it("is refused beyond the published rates unless one is assumed", () => {
    const given = { payments: [paid("2027-02-01", 20_000)], filedOn: "2026-10-15" };
    expect(() => ledgerOf(given)).toThrow(NotInTableError);
    const at = (assumedRate: "latest" | ReturnType<typeof usd>): string =>
      lastOf(ledgerOf({ ...given, assumedRate })).interest.toString();
    expect(at("latest")).toBe(at(usd("0.07")));
    expect(at(usd("0.09"))).not.toBe(at(usd("0.07")));
    expect(() => ledgerOf({ taxYear: 2008, payments: [], filedOn: "2009-04-15" })).toThrow(
      NotInTableError
    );
  });
});
