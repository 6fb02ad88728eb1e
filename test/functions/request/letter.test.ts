import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { charges } from "../../../src/functions/penalty/charges";
import { extended, payBy } from "../../../src/functions/dueDate/returnDates";
import { memo } from "../../../src/functions/request/letter";
import { shortfall } from "../../../src/functions/request/balanceDue";
import { RUNS } from "../../calculation/arbitrary";
import { badInput, down, inCell, notInTable, type Refusal, serial } from "../sheet";

/** The arguments of MEMO in order: tax of $20,000, $15,000 paid. */
const PLAIN = {
  taxYear: 2025,
  totalTax: 20000,
  payments: 15000,
  paidWithRequest: "",
  length: "",
  requestedOn: "",
  plannedFilingDate: "",
  stillNeeded: "",
  state: "",
  filerType: "",
  assumedRate: "",
  postponementBegins: "",
  postponementEnds: "",
};
type Cells = Partial<Record<keyof typeof PLAIN, unknown>>;
const written = (cells: Cells): unknown => inCell(memo, ...Object.values({ ...PLAIN, ...cells }));
/** The sentences one by one: each ends with a full stop before a capital, or at the end. */
const sentences = (cells: Cells): string[] => String(written(cells)).split(/(?<=\.) (?=[A-Z])/);

const REQUESTING =
  "We are requesting an extension of time, until October 15, 2026, to file your 2025 federal income tax return.";
const NOT_TO_PAY = "An extension of time to file is not an extension of time to pay.";
const CAUTION = [
  "These amounts are estimates based on the information we have now.",
  "They are not a bill, and the return may show different amounts.",
];
const INTEREST_FROM_APRIL = "Interest accrues on any amount not paid by April 15, 2026.";
const REQUESTED =
  "On April 3, 2026, we requested an extension of time, until October 15, 2026, to file your 2025 federal income tax return.";

const BEFORE_THE_YEAR_ENDS =
  "12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.";
const tooLate = (requestedOn: string, lastDay: string): Refusal =>
  badInput(
    `requestedOn: ${requestedOn} is after the deadline to request the extension, ${lastDay}. A late request gives no extension, so there is no letter.`
  );

// 26 U.S.C. 6081 (time to file), 6151(a) and 6601(a) (payment and interest); the wording is our own.
describe("MEMO", () => {
  it("says what is asked until when, what it does not do, what to pay by when, and that it is an estimate", () => {
    expect(sentences({ paidWithRequest: 5000 })).toEqual([
      REQUESTING,
      NOT_TO_PAY,
      "Please pay $5,000.00 by April 15, 2026.",
      "If you can, pay electronically and mark it as an extension payment.",
      "Based on our estimate, that payment covers the tax.",
      ...CAUTION,
    ]);
  });

  // 317.81 and 67.12: additions of six months begun and interest, as CHARGES works them out.
  it("in full adds what was estimated, what waiting costs and what else has its own date", () => {
    expect(sentences({ length: "full" })).toEqual([
      REQUESTING,
      NOT_TO_PAY,
      "We estimate your total tax at $20,000.00 and your payments so far at $15,000.00.",
      "Based on our estimate, $5,000.00 is still unpaid.",
      INTEREST_FROM_APRIL,
      "If you wait until October 15, 2026 to pay the balance, we expect about $317.81 in penalties and interest.",
      "Paying earlier reduces this amount.",
      "Your first estimated tax payment of the new year, IRA contributions and state return have their own deadlines.",
      "This extension does not change them.",
      ...CAUTION,
    ]);
  });

  it.each([
    [
      "part of what is short",
      { paidWithRequest: 2000 },
      "Based on our estimate, $3,000.00 will still be unpaid, and interest accrues from April 15, 2026.",
    ],
    ["all of it", { paidWithRequest: 5000 }, "Based on our estimate, that payment covers the tax."],
    [
      "more than it",
      { paidWithRequest: 6000 },
      "Based on our estimate, that payment covers the tax.",
    ],
    [
      "a cent less",
      { paidWithRequest: 4999.99 },
      "Based on our estimate, $0.01 will still be unpaid, and interest accrues from April 15, 2026.",
    ],
    [
      "nothing due",
      { payments: 20000 },
      "Based on our estimate, your payments cover the tax, and you do not owe anything now.",
    ],
    [
      "an overpayment",
      { payments: 25000, paidWithRequest: 0 },
      "Based on our estimate, your payments cover the tax, and you do not owe anything now.",
    ],
    [
      "what is still needed",
      { stillNeeded: " K-1 of the partnership " },
      "We still need the following from you: K-1 of the partnership.",
    ],
    [
      "what is still needed, its full stop dropped",
      { stillNeeded: "K-1 of the partnership. " },
      "We still need the following from you: K-1 of the partnership.",
    ],
    [
      "what is still needed, its dots dropped",
      { stillNeeded: " K-1, 1099-B... " },
      "We still need the following from you: K-1, 1099-B.",
    ],
    [
      "what is still needed, a stop inside it kept",
      { stillNeeded: "K-1 (approx. two)" },
      "We still need the following from you: K-1 (approx. two).",
    ],
    [
      "what is still needed as a number",
      { stillNeeded: 1099 },
      "We still need the following from you: 1099.",
    ],
    ["a day it was asked on", { requestedOn: "2026-04-03" }, REQUESTED],
    ["a day as worksheet date", { requestedOn: serial("2026-04-03") }, REQUESTED],
    [
      "a payment that went with a request made",
      { requestedOn: "2026-04-03", paidWithRequest: 5000 },
      "The request assumes that $5,000.00 is paid by April 15, 2026.",
    ],
    [
      "a fiscal year",
      { taxYear: "2025-06-30" },
      "We are requesting an extension of time, until April 15, 2026, to file your 2025 federal income tax return.",
    ],
    [
      "the state's holiday",
      { taxYear: 2023, state: "ME" },
      "Interest accrues on any amount not paid by April 17, 2024.",
    ],
    [
      "the payment in April of who lives abroad",
      { filerType: "out of country" },
      "Interest accrues on any amount not paid by April 15, 2026.",
    ],
    [
      "the dates of a nonresident",
      { filerType: "nonresident" },
      "Interest accrues on any amount not paid by June 15, 2026.",
    ],
    [
      "postponement",
      { postponementBegins: "2026-01-22", postponementEnds: "2026-06-08" },
      "Interest accrues on any amount not paid by June 8, 2026.",
    ],
    [
      "large amounts with their commas",
      { totalTax: 12345678.9, payments: 0 },
      "Based on our estimate, $12,345,678.90 is still unpaid.",
    ],
  ])("knows %s", (_what, cells, sentence) => {
    expect(sentences(cells)).toContain(sentence);
  });

  it("says nothing of what is not needed, nor of a payment where nothing is due", () => {
    const text = String(written({ payments: 20000, length: "full" }));
    expect(text).not.toMatch(/following from you|Please pay|interest accrues/i);
    expect(text).toContain(
      "If you file and pay by October 15, 2026, we expect no penalties or interest."
    );
    for (const stillNeeded of ["", " ", 0, null, ".", " ... "])
      for (const length of ["short", "full"])
        expect(written({ stillNeeded, length })).toBe(written({ length }));
    expect(written({})).not.toMatch(/following from you/);
  });

  it("asks for no payment once the request is made, but says that it counts on one", () => {
    expect(sentences({ requestedOn: "2026-04-03", paidWithRequest: 2000 })).toEqual([
      REQUESTED,
      NOT_TO_PAY,
      "The request assumes that $2,000.00 is paid by April 15, 2026.",
      "Based on our estimate, $3,000.00 will still be unpaid, and interest accrues from April 15, 2026.",
      ...CAUTION,
    ]);
  });

  it.each([
    [{ requestedOn: "2026-01-01" }, "On January 1, 2026, we requested"],
    [{ requestedOn: "2026-04-15" }, "On April 15, 2026, we requested"],
    [{ requestedOn: "2026-06-15", filerType: "out of country" }, "On June 15, 2026, we requested"],
    [
      {
        requestedOn: "2026-06-08",
        postponementBegins: "2026-01-22",
        postponementEnds: "2026-06-08",
      },
      "On June 8, 2026, we requested",
    ],
    [{ taxYear: "2025-06-30", requestedOn: "2025-07-01" }, "On July 1, 2025, we requested"],
    [{ taxYear: "2025-06-30", requestedOn: "2025-10-15" }, "On October 15, 2025, we requested"],
    [{ plannedFilingDate: "2026-01-01" }, "We are requesting"],
    [{ plannedFilingDate: "2026-01-01", length: "full" }, "We are requesting"],
  ])("takes the first and the last day: %j", (cells, beginning) => {
    expect(String(written(cells)).startsWith(`${beginning} an extension of time`)).toBe(true);
  });

  it.each([
    ["2026-10-15", false],
    ["2026-10-16", true],
  ])("planned on %s, says that the return is late: %s", (plannedFilingDate, isLate) => {
    const text = String(written({ length: "full", plannedFilingDate, assumedRate: "latest" }));
    const late =
      "A return filed after October 15, 2026 is late, and the cost increases each month.";
    expect(text.includes(late)).toBe(isLate);
  });

  it("is short unless it is asked for in full", () => {
    for (const length of ["", 0, null, " Short "])
      expect(written({ length })).toBe(written({ length: "short" }));
    expect(written({ length: "FULL" })).toBe(written({ length: "full" }));
  });

  it.each([
    [
      { totalTax: "" },
      badInput("totalTax: The cell is blank. Enter a dollar amount, or 0 if there is none."),
    ],
    [
      { payments: "x" },
      badInput(
        'payments: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      ),
    ],
    [
      { paidWithRequest: -1 },
      badInput("paidWithRequest: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [{ length: "long" }, badInput('length: "long" is not a length. Enter short or full.')],
    [
      { requestedOn: "soon" },
      badInput('requestedOn: "soon" is not a date. Enter a date such as 4/15/2026.'),
    ],
    [
      { plannedFilingDate: "soon" },
      badInput('plannedFilingDate: "soon" is not a date. Enter a date such as 4/15/2026.'),
    ],
    [{ stillNeeded: { code: "#N/A" } }, { code: "#N/A" }],
    [{ plannedFilingDate: "2025-12-31" }, badInput(`plannedFilingDate: ${BEFORE_THE_YEAR_ENDS}`)],
    [
      { plannedFilingDate: "2025-12-31", length: "full" },
      badInput(`plannedFilingDate: ${BEFORE_THE_YEAR_ENDS}`),
    ],
    [{ requestedOn: "2025-12-31" }, badInput(`requestedOn: ${BEFORE_THE_YEAR_ENDS}`)],
    [
      { taxYear: "2025-06-30", requestedOn: "2025-06-30" },
      badInput(`requestedOn: ${BEFORE_THE_YEAR_ENDS.replaceAll("12/31/2025", "6/30/2025")}`),
    ],
    [{ requestedOn: "2026-04-16" }, tooLate("4/16/2026", "4/15/2026")],
    [{ requestedOn: "2026-04-16", length: "full" }, tooLate("4/16/2026", "4/15/2026")],
    [{ requestedOn: "2026-06-16", filerType: "out of country" }, tooLate("6/16/2026", "6/15/2026")],
    [
      {
        requestedOn: "2026-06-09",
        postponementBegins: "2026-01-22",
        postponementEnds: "2026-06-08",
      },
      tooLate("6/9/2026", "6/8/2026"),
    ],
    [{ taxYear: "2025-06-30", requestedOn: "2025-10-16" }, tooLate("10/16/2025", "10/15/2025")],
  ])("refuses %j", (cells, refusal) => {
    expect(written(cells)).toEqual(refusal);
  });

  const FAR = { taxYear: 2026, plannedFilingDate: "2027-10-15" };
  it("in full is not worked out where the rate is not published and none is assumed", () => {
    expect(written({ ...FAR, length: "full" })).toEqual(
      notInTable(
        expect.stringMatching(
          /^.*: There is no figure for [1-9]+\/\d+\/2027\. The table covers dates through/
        ) as string
      )
    );
    expect(written({ ...FAR, length: "full", assumedRate: "latest" })).toMatch(
      /we expect about \$/
    );
    expect(written({ ...FAR, length: "short" })).toMatch(/Interest accrues/);
  });

  it("reads the assumed rate in full alone", () => {
    expect(written({ length: "full", assumedRate: "high" })).toMatchObject({ code: "#VALUE!" });
  });

  it("answers a client list, a bad row with its own error", () => {
    const answers = memo(down(2025, 2025, 0), down(20000, "x", ""), down(20000, 0, ""));
    expect(answers).toEqual([
      [expect.stringMatching(/do not owe anything now/)],
      [
        badInput(
          'totalTax: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
        ),
      ],
      [""],
    ]);
  });
});

const inWords = (day: unknown): string =>
  new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }).format(
    (Number(day) - 25_569) * 86_400_000
  );
const dollars = (amount: number): string =>
  new Intl.NumberFormat("en-US", { style: "currency", currency: "USD" }).format(amount);

/** Clients of whom a memo may be asked. */
const clients = fc.record({
  taxYear: fc.constantFrom(2022, 2023, 2024, 2025),
  totalTax: fc.integer({ min: 0, max: 5_000_000 }).map((cents) => cents / 100),
  payments: fc.integer({ min: 0, max: 5_000_000 }).map((cents) => cents / 100),
  paidWithRequest: fc.oneof(
    fc.constant(0),
    fc.integer({ min: 1, max: 5_000_000 }).map((cents) => cents / 100)
  ),
  stillNeeded: fc.constantFrom("", "K-1", "1099-B, W-2"),
  state: fc.constantFrom("", "ME", "CA"),
  filerType: fc.constantFrom("", "out of country"),
});

describe("every MEMO", () => {
  it("states the days and dollars of EXTENDED, PAYBY, SHORTFALL and CHARGES", () => {
    fc.assert(
      fc.property(clients, (cells) => {
        const text = String(written({ ...cells, length: "full" }));
        const until = inCell(extended, cells.taxYear, cells.state, cells.filerType);
        const short = Number(inCell(shortfall, cells.totalTax, cells.payments));
        const pay = inWords(inCell(payBy, cells.taxYear, cells.state, cells.filerType));
        const inTime = Math.round((cells.payments + cells.paidWithRequest) * 100) / 100;
        const cost = Number(
          inCell(
            charges,
            cells.taxYear,
            cells.totalTax,
            inTime,
            until,
            until,
            "yes",
            cells.state,
            cells.filerType
          )
        );
        expect(text).toContain(`, until ${inWords(until)}, to file`);
        expect(text).toContain(`your total tax at ${dollars(cells.totalTax)} and`);
        expect(text).toContain(`payments so far at ${dollars(cells.payments)}.`);
        expect(text.includes("do not owe anything now")).toBe(short === 0);
        if (short > 0 && cells.paidWithRequest === 0)
          expect(text).toContain(
            `${dollars(short)} is still unpaid. Interest accrues on any amount not paid by ${pay}.`
          );
        if (short > 0 && cells.paidWithRequest > 0)
          expect(text).toContain(`Please pay ${dollars(cells.paidWithRequest)} by ${pay}.`);
        if (cost > 0) expect(text).toContain(`we expect about ${dollars(cost)} in penalties`);
        else expect(text).toContain(`by ${inWords(until)}, we expect no penalties or interest.`);
      }),
      RUNS
    );
  });

  it("in short says only what it says in full, begins with what is asked and ends with the caution", () => {
    fc.assert(
      fc.property(clients, (cells) => {
        const full = sentences({ ...cells, length: "full" });
        const short = sentences({ ...cells, length: "short" });
        expect(full.filter((sentence) => short.includes(sentence))).toEqual(short);
        expect(full.length).toBeGreaterThan(short.length);
        for (const told of [short, full]) {
          expect(told[0]).toMatch(/^We are requesting an extension of time/);
          expect(told[1]).toBe(NOT_TO_PAY);
          expect(told.slice(-2)).toEqual(CAUTION);
        }
      }),
      RUNS
    );
  });

  it("neither threatens nor shouts", () => {
    const late = fc.constantFrom("", "2026-01-01", "2026-12-01");
    // The letter names penalties and interest when it states their cost. It does not press.
    const harsh = /\b(must|immediately|fines?|enforce\w*|warn\w*|urgent\w*|fail\w*)\b|!/i;
    fc.assert(
      fc.property(clients, late, (cells, plannedFilingDate) => {
        const text = written({
          ...cells,
          plannedFilingDate,
          length: "full",
          assumedRate: "latest",
        });
        expect(text).toMatch(/^We are requesting/);
        expect(text).not.toMatch(harsh);
      }),
      RUNS
    );
  });
});
