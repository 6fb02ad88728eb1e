import { describe, expect, it } from "vitest";
import { ledger } from "../../../src/functions/account/ledger";
import { afterTable, answerOf, badInput, NONE, serial } from "../sheet";

const PAYMENTS = [
  ["2026-10-15", 3000],
  ["2026-04-15", 15_000],
  ["", ""],
  [serial("2026-06-20"), "$2,000.00"],
];

describe("LEDGER", () => {
  it("spills a header and a row an event, whatever the order of the payments", () => {
    const table = ledger(2025, 20_000, PAYMENTS, "2026-10-15", "yes");
    const due = "IRC sections 6072(a), (c) and 6151(a); Regulations section 1.6081-5(a)";
    const extension = "IRC section 6081(a); Regulations section 1.6081-4(a)";
    const paid = "Payment, applied to the tax first";
    const order: unknown = expect.stringMatching(/page 9$/);
    // failure to pay: three months on 5,000, three on 3,000; interest: 66 days on 5,000 and 10 on 3,000 at 6%, 107 at 7%, compounded
    expect(table).toEqual([
      [
        "Date",
        "Event",
        "Amount",
        "Unpaid tax",
        "Failure-to-file penalty to date",
        "Failure-to-pay penalty to date",
        "Interest to date",
        "Penalties and interest to date",
        "Penalties and interest unpaid",
        "Overpayment",
        "Source",
      ],
      [serial("2026-04-15"), paid, 15_000, 5000, 0, 0, 0, 0, 0, 0, order],
      [serial("2026-04-15"), "Tax due", 20_000, 5000, 0, 0, 0, 0, 0, 0, due],
      [serial("2026-06-20"), paid, 2000, 3000, 0, 75, 54.54, 129.54, 129.54, 0, order],
      [serial("2026-10-15"), paid, 3000, 0, 0, 120, 122.99, 242.99, 242.99, 0, order],
      [serial("2026-10-15"), "Return due", "", 0, 0, 120, 122.99, 242.99, 242.99, 0, extension],
      [serial("2026-10-15"), "Return filed", "", 0, 0, 120, 122.99, 242.99, 242.99, 0, extension],
    ]);
  });

  it("takes no payments at all", () => {
    for (const none of [null, undefined]) {
      const table = ledger(2025, 100, none as unknown as unknown[][], "2026-04-15");
      expect(table.slice(1).map((row) => row[1])).toEqual([
        "Tax due",
        "Return due",
        "Return filed",
      ]);
    }
  });

  const refusals: readonly (readonly [string, unknown[], string])[] = [
    [
      "text for a day",
      ["Day", 100],
      'payments row 2: "Day" is not a date. Enter a date such as 4/15/2026.',
    ],
    ["no day", ["", 100], "payments row 2: The cell is blank. Enter a date such as 4/15/2026."],
    [
      "text for an amount",
      ["2026-04-15", "some"],
      'payments row 2: "some" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      "no amount",
      ["2026-04-15", ""],
      "payments row 2: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      "a negative amount",
      ["2026-04-15", -5],
      "payments row 2: -5 is negative. Enter zero or a positive dollar amount.",
    ],
    [
      "a day before the tax year",
      ["2024-12-31", 100],
      "payments row 2: 12/31/2024 is before the tax year begins on 1/1/2025. Check the date and the year.",
    ],
  ];
  it.each(refusals)("refuses %s in a row of payments", (_what, row, sentence) => {
    const payments = [["2026-04-15", 1], row];
    expect(answerOf(() => ledger(2025, 20_000, payments, "2026-10-15"))).toEqual(
      badInput(sentence)
    );
  });

  it("refuses payments three columns wide, and takes a range without a payment as none", () => {
    const given = (payments: unknown[][]): unknown =>
      answerOf(() => ledger(2025, 20_000, payments, "2026-10-15"));
    expect(given([["2026-04-15", 100, "check"]])).toEqual(
      badInput("payments: The range has 3 columns. Select two columns, date and amount.")
    );
    expect(
      given([
        ["", ""],
        [null, null],
        [0, 0],
      ])
    ).toEqual(ledger(2025, 20_000, NONE, "2026-10-15"));
  });

  it("refuses a day of filing before the year ends, and a column where one cell is wanted", () => {
    expect(answerOf(() => ledger(2025, 20_000, PAYMENTS, "2025-12-31"))).toEqual(
      badInput(
        "filedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      )
    );
    expect(answerOf(() => ledger([[2024], [2025]], 20_000, PAYMENTS, "2026-10-15"))).toEqual(
      badInput("taxYear: The range has 2 cells. Select one cell.")
    );
  });

  it("passes an error cell through, and says which table does not reach", () => {
    const broken = [["2026-04-15", { code: "#DIV/0!" }]];
    expect(answerOf(() => ledger(2025, 20_000, broken, "2026-10-15"))).toEqual({ code: "#DIV/0!" });
    expect(answerOf(() => ledger(2025, 20_000, [["2027-02-01", 1]], "2026-10-15"))).toEqual(
      afterTable("underpayment-rate", "1/1/2027", "12/31/2026")
    );
    const assumed = ledger(2025, 20_000, [["2027-02-01", 1]], "2026-10-15", "", "", "", "latest");
    expect(assumed).toHaveLength(5);
  });
});
