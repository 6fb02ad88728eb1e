import { describe, expect, it } from "vitest";
import { installment } from "../../../src/functions/dueDate/otherDates";
import { calendar } from "../../../src/functions/season/calendar";
import { afterTable, answerOf, badInput, down, inCell, serial } from "../sheet";

const HEADINGS = [
  "Deadline",
  "Date",
  "Weekday",
  "Original date",
  "Reason moved",
  "Extension",
  "Without extension",
  "Source",
];

/** The row of the regular due date: filing the return, or requesting the extension. */
const regularRow = (table: unknown[][]): unknown[] | undefined =>
  table.find((row) => row[0] === "File or request an extension");

describe("CALENDAR", () => {
  const table = calendar([[2025]]);

  it("is a table of one width, headings first, with the law behind each date", () => {
    expect(table[0]).toEqual(HEADINGS);
    expect(new Set(table.map((row) => row.length))).toEqual(new Set([HEADINGS.length]));
    for (const row of table.slice(1)) expect(row[7]).toMatch(/\d/);
  });

  it("is in order of date", () => {
    const dates = table.slice(1).map((row) => row[1] as number);
    expect(dates).toEqual(dates.toSorted((one, other) => one - other));
  });

  // 26 U.S.C. 7503; Rev. Rul. 2015-13: Emancipation Day of 2022 kept on Friday, April 15, Patriots' Day on Monday, April 18.
  it("shows the weekday, the original date and why it moved", () => {
    expect(regularRow(calendar(2021, "MA"))).toEqual([
      "File or request an extension",
      serial("2022-04-19"),
      "Tuesday",
      serial("2022-04-15"),
      expect.stringMatching(/^Emancipation Day.*Saturday, Sunday, Patriots' Day/),
      "not moved",
      serial("2022-04-19"),
      expect.stringContaining("IRC section 7503"),
    ]);
  });

  it.each([
    ["out of country", "2026-06-15"],
    ["nonresident", "2026-06-15"],
    ["resident", "2026-04-15"],
  ])("shows the date to file for filer type %s", (filerType, day) => {
    expect(regularRow(calendar(2025, null, filerType))?.[1]).toBe(serial(day));
  });

  it("shows a disaster postponement", () => {
    const relieved = calendar(2023, "CA", "", "2024-01-21", "2024-06-17"); // IR-2024-146
    expect(regularRow(relieved)).toEqual([
      "File or request an extension",
      serial("2024-06-17"),
      "Monday",
      serial("2024-04-15"),
      "disaster postponement",
      "not moved",
      serial("2024-06-17"),
      expect.stringContaining("IRC section 7508A"),
    ]);
  });

  // 26 U.S.C. 6075(b)(2); Regulations section 25.6081-1(a), (c): the return moves, the payment does not.
  it("shows what the extension moves on a subject, and the date without it", () => {
    const gift = calendar(2025, null, null, null, null, "gift");
    expect(gift.map((row) => [row[0], row[1], row[5], row[6]])).toEqual([
      ["Deadline", "Date", "Extension", "Without extension"],
      [
        "File the gift tax return (Form 709), or request an extension (Form 4868 or 8892)",
        serial("2026-04-15"),
        "not moved",
        serial("2026-04-15"),
      ],
      [
        "Pay the gift tax (Form 8892 carries a payment with an extension)",
        serial("2026-04-15"),
        "not moved",
        serial("2026-04-15"),
      ],
      [
        "File the extended gift tax return (Form 709)",
        serial("2026-10-15"),
        "moved",
        serial("2026-04-15"),
      ],
    ]);
  });

  it.each([
    [2025, 2026],
    ["2026-06-30", "2027-06-30"],
    ["2025-02-28", "2026-02-28"],
    ["2024-02-29", "2025-02-28"],
    ["2023-02-28", "2024-02-29"],
  ])(
    "has the estimated tax installments of the year after the one that ends %j",
    (year, newYear) => {
      const estimates = calendar(year).filter((row) => String(row[0]).includes("estimate"));
      expect(estimates.map((row) => row[1])).toEqual(
        [1, 2, 3, 4].map((number) => inCell(installment, newYear, number))
      );
    }
  );

  it.each([
    [
      [2025, "ZZ"],
      badInput(
        'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
      ),
    ],
    [
      [2025, null, null, null, null, "state"],
      badInput(
        'subject: "state" is not a subject. Enter return, retirement, gift, foreign, elections or all.'
      ),
    ],
    [
      ["6/30/2026", null, null, null, null, "gift"],
      badInput(
        "subject: A fiscal year has no deadlines on the subject gift, which follows the calendar year. Enter a year such as 2025 as taxYear."
      ),
    ],
    [[2099], afterTable("return-due-date", "12/31/2099", "12/31/2027")],
    [[down(2024, 2025)], badInput("taxYear: The range has 2 cells. Select one cell.")],
    [[{ code: "#N/A" }], { code: "#N/A" }],
  ])("refuses %j", (values, refusal) => {
    const [year, ...rest] = values;
    expect(answerOf(() => calendar(year, ...rest))).toEqual(refusal);
  });
});
