import { describe, expect, it } from "vitest";
import { ledger } from "../../../src/functions/account/ledger";
import { answerOf, badInput, serial } from "../sheet";

/** Tax of 2025, half of it paid on time. */
function ledgerWith(
  filedOn: string,
  agreementOn: string,
  noticeOn = "",
  levyNoticeOn = ""
): unknown {
  const payments = [["4/15/2026", 10_000]];
  const after = ["", "", noticeOn, levyNoticeOn] as const;
  return answerOf(() =>
    ledger(2025, 20_000, payments, filedOn, "yes", "", "", "", agreementOn, ...after)
  );
}

describe("LEDGER after notice", () => {
  it("shows the agreement, the notice with its amount and date to pay, and the levy notice", () => {
    const rows = ledgerWith("4/15/2026", "6/10/2026", "6/2/2026", "8/5/2026") as unknown[][];
    // 26 U.S.C. 6651(h): 0.5% in the first month, 0.25% in that of the agreement; section 6601(a): 48 days at 6%
    const interest = Number((10_000 * ((1 + 0.06 / 365) ** 48 - 1)).toFixed(2));
    expect(rows.slice(-4, -1).map((row) => row.slice(0, 3))).toEqual([
      [serial("2026-06-02"), "Notice and demand, pay by 6/23/2026", 10_075 + interest],
      [serial("2026-06-10"), "Installment agreement accepted", ""],
      [serial("2026-08-05"), "Levy notice", ""],
    ]);
  });

  it.each([
    [
      ["4/15/2026", "4/15/2026"],
      "agreementOn: 4/15/2026 is not after the payment due date, 4/15/2026. Enter a date after it, or leave the cell blank.",
    ],
    [
      ["10/1/2026", "9/30/2026"],
      "agreementOn: 9/30/2026 is before the return is filed on 10/1/2026. Correct one of the two dates.",
    ],
    [
      ["4/1/2026", "", "4/10/2026"],
      "noticeOn: 4/10/2026 is not after the payment due date, 4/15/2026. Enter a date after it, or leave the cell blank.",
    ],
    [
      ["10/1/2026", "", "5/1/2026"],
      "noticeOn: 5/1/2026 is before the return is filed on 10/1/2026. Correct one of the two dates.",
    ],
    [
      ["4/15/2026", "", "", "8/5/2026"],
      "noticeOn: The cell is blank, but levyNoticeOn has a date. Enter the date of the first notice of the balance due.",
    ],
    [
      ["4/15/2026", "", "6/2/2026", "6/2/2026"],
      "levyNoticeOn: 6/2/2026 is not after the first notice of 6/2/2026. Correct one of the two dates.",
    ],
    [
      ["4/15/2026", "", "6/2/2025"],
      "noticeOn: 6/2/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.",
    ],
  ] as const)("refuses %j", (given, sentence) => {
    expect(ledgerWith(...(given as unknown as [string, string, string?, string?]))).toEqual(
      badInput(sentence)
    );
  });
});
