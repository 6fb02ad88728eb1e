import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { charges } from "../../src/functions/charges";
import { extended, payBy } from "../../src/functions/dueDates";
import { memo } from "../../src/functions/memo";
import { shortfall } from "../../src/functions/request";
import { RUNS } from "../calculation/arbitrary";
import { badInput, down, inCell, notHeld, serial, type Refusal } from "./sheet";

/** The arguments of MEMO in order: tax of $20,000, $15,000 paid. */
const PLAIN = {
  ...{
    taxYear: 2025,
    totalTax: 20000,
    payments: 15000,
    paidWithRequest: "",
    length: "",
    requestedOn: "",
  },
  ...{ plannedFilingDate: "", missing: "", state: "", filerType: "", assumedRate: "" },
  ...{ postponementBegins: "", postponementEnds: "" },
};
type Cells = Partial<Record<keyof typeof PLAIN, unknown>>;
const written = (cells: Cells): unknown => inCell(memo, ...Object.values({ ...PLAIN, ...cells }));
/** The sentences one by one: each ends with a full stop before a capital, or at the end. */
const sentences = (cells: Cells): string[] => String(written(cells)).split(/(?<=\.) (?=[A-Z])/);

const ASKED =
  "We are asking for more time to file your 2025 federal income tax return, until October 15, 2026.";
const NOT_TO_PAY = "The extension gives more time to file, not more time to pay.";
const CAUTION =
  "These figures are estimates from what we have so far, not a bill; the return may show others.";

const BEFORE_THE_YEAR_ENDS =
  "2025-12-31 is not after the tax year ends, 2025-12-31; check the year, and that the workbook does not count dates from 1904";
const tooLate = (requestedOn: string, lastDay: string): Refusal =>
  badInput(
    `askedOn: ${requestedOn} is after the last day to ask, ${lastDay}; a late request gives no extension to write about`
  );

// 26 U.S.C. 6081 (time to file), 6151(a) and 6601(a) (payment and interest); the wording is our own.
describe("MEMO", () => {
  it("says what is asked until when, what it does not do, what to pay by when, and that it is an estimate", () => {
    expect(sentences({ paidWithRequest: 5000 })).toEqual([
      ASKED,
      NOT_TO_PAY,
      "Please pay $5,000.00 by April 15, 2026, electronically if you can, marked as an extension payment.",
      "By our estimate that covers the tax.",
      CAUTION,
    ]);
  });

  // 317.81 and 67.12: additions of six months begun and interest, as CHARGES works them out.
  it("in full adds what was estimated, what waiting costs and what else has its own date", () => {
    expect(sentences({ length: "full" })).toEqual([
      ASKED,
      NOT_TO_PAY,
      "We estimate the total tax at $20,000.00 and your payments so far at $15,000.00.",
      "By our estimate $5,000.00 is still unpaid; whatever is not paid by April 15, 2026 bears interest.",
      "If the rest is paid only on October 15, 2026, interest and additions come to about $317.81; paying earlier lowers that.",
      "The first estimate of the new year, contributions to an IRA and your state return have dates of their own, which this extension does not move.",
      CAUTION,
    ]);
  });

  it.each([
    [
      "part of what is short",
      { paidWithRequest: 2000 },
      "By our estimate $3,000.00 then remains unpaid and bears interest from April 15, 2026.",
    ],
    ["all of it", { paidWithRequest: 5000 }, "By our estimate that covers the tax."],
    ["more than it", { paidWithRequest: 6000 }, "By our estimate that covers the tax."],
    [
      "a cent less",
      { paidWithRequest: 4999.99 },
      "By our estimate $0.01 then remains unpaid and bears interest from April 15, 2026.",
    ],
    [
      "nothing due",
      { payments: 20000 },
      "By our estimate your payments cover the tax, and nothing is due now.",
    ],
    [
      "an overpayment",
      { payments: 25000, paidWithRequest: 0 },
      "By our estimate your payments cover the tax, and nothing is due now.",
    ],
    [
      "what is missing",
      { missing: " K-1 of the partnership " },
      "We still need from you: K-1 of the partnership.",
    ],
    [
      "what is missing, its full stop dropped",
      { missing: "K-1 of the partnership. " },
      "We still need from you: K-1 of the partnership.",
    ],
    [
      "what is missing, its dots dropped",
      { missing: " K-1, 1099-B... " },
      "We still need from you: K-1, 1099-B.",
    ],
    [
      "what is missing, a stop inside it kept",
      { missing: "K-1 (approx. two)" },
      "We still need from you: K-1 (approx. two).",
    ],
    ["what is missing as a number", { missing: 1099 }, "We still need from you: 1099."],
    [
      "a day it was asked on",
      { requestedOn: "2026-04-03" },
      "On April 3, 2026 we asked for more time to file your 2025 federal income tax return, until October 15, 2026.",
    ],
    [
      "a day as worksheet date",
      { requestedOn: serial("2026-04-03") },
      "On April 3, 2026 we asked for more time to file your 2025 federal income tax return, until October 15, 2026.",
    ],
    [
      "a payment that went with a request made",
      { requestedOn: "2026-04-03", paidWithRequest: 5000 },
      "The request counts on $5,000.00 being paid by April 15, 2026.",
    ],
    [
      "a fiscal year",
      { taxYear: "2025-06-30" },
      "We are asking for more time to file your 2025 federal income tax return, until April 15, 2026.",
    ],
    [
      "the state's holiday",
      { taxYear: 2023, state: "ME" },
      "By our estimate $5,000.00 is still unpaid; whatever is not paid by April 17, 2024 bears interest.",
    ],
    [
      "the payment in April of who lives abroad",
      { filerType: "out of country" },
      "By our estimate $5,000.00 is still unpaid; whatever is not paid by April 15, 2026 bears interest.",
    ],
    [
      "the dates of a nonresident",
      { filerType: "nonresident" },
      "By our estimate $5,000.00 is still unpaid; whatever is not paid by June 15, 2026 bears interest.",
    ],
    [
      "postponement",
      { postponementBegins: "2026-01-22", postponementEnds: "2026-06-08" },
      "By our estimate $5,000.00 is still unpaid; whatever is not paid by June 8, 2026 bears interest.",
    ],
    [
      "large amounts with their commas",
      { totalTax: 12345678.9, payments: 0 },
      "By our estimate $12,345,678.90 is still unpaid; whatever is not paid by April 15, 2026 bears interest.",
    ],
  ])("knows %s", (_what, cells, sentence) => {
    expect(sentences(cells)).toContain(sentence);
  });

  it("says nothing of what is not missing, nor of a payment where nothing is due", () => {
    const text = String(written({ payments: 20000, length: "full" }));
    expect(text).not.toMatch(/need from you|Please pay|bears interest/);
    expect(text).toContain(
      "Filed and paid by October 15, 2026, no addition or interest is expected."
    );
    for (const missing of ["", " ", 0, null, ".", " ... "])
      for (const length of ["short", "full"])
        expect(written({ missing, length })).toBe(written({ length }));
    expect(written({})).not.toMatch(/need from you/);
  });

  it("asks for no payment once the request is made, but says that it counts on one", () => {
    expect(sentences({ requestedOn: "2026-04-03", paidWithRequest: 2000 })).toEqual([
      "On April 3, 2026 we asked for more time to file your 2025 federal income tax return, until October 15, 2026.",
      NOT_TO_PAY,
      "The request counts on $2,000.00 being paid by April 15, 2026.",
      "By our estimate $3,000.00 then remains unpaid and bears interest from April 15, 2026.",
      CAUTION,
    ]);
  });

  it.each([
    [{ requestedOn: "2026-01-01" }, "On January 1, 2026 we asked"],
    [{ requestedOn: "2026-04-15" }, "On April 15, 2026 we asked"],
    [{ requestedOn: "2026-06-15", filerType: "out of country" }, "On June 15, 2026 we asked"],
    [
      {
        requestedOn: "2026-06-08",
        postponementBegins: "2026-01-22",
        postponementEnds: "2026-06-08",
      },
      "On June 8, 2026 we asked",
    ],
    [{ taxYear: "2025-06-30", requestedOn: "2025-07-01" }, "On July 1, 2025 we asked"],
    [{ taxYear: "2025-06-30", requestedOn: "2025-10-15" }, "On October 15, 2025 we asked"],
    [{ plannedFilingDate: "2026-01-01" }, "We are asking"],
    [{ plannedFilingDate: "2026-01-01", length: "full" }, "We are asking"],
  ])("takes the first and the last day: %j", (cells, beginning) => {
    expect(String(written(cells)).startsWith(`${beginning} for more time`)).toBe(true);
  });

  it.each([
    ["2026-10-15", false],
    ["2026-10-16", true],
  ])("planned on %s, says that the return is late: %s", (plannedFilingDate, isLate) => {
    const text = String(written({ length: "full", plannedFilingDate, assumedRate: "latest" }));
    const late = "A return filed after October 15, 2026 is late and costs more each month.";
    expect(text.includes(late)).toBe(isLate);
  });

  it("is short unless it is asked for in full", () => {
    for (const length of ["", 0, null, " Short "])
      expect(written({ length })).toBe(written({ length: "short" }));
    expect(written({ length: "FULL" })).toBe(written({ length: "full" }));
  });

  it.each([
    [{ totalTax: "" }, badInput("totalTax: is empty; give dollars, 0 if there is nothing")],
    [{ payments: "x" }, badInput('payments: "x" is not an amount in dollars')],
    [{ paidWithRequest: -1 }, badInput("paying: -1 is negative; give dollars, zero or more")],
    [{ length: "long" }, badInput('length: "long" is neither short nor full')],
    [
      { requestedOn: "soon" },
      badInput('askedOn: "soon" is not a date; give a worksheet date, or text such as 2026-04-15'),
    ],
    [
      { plannedFilingDate: "soon" },
      badInput(
        'plannedOn: "soon" is not a date; give a worksheet date, or text such as 2026-04-15'
      ),
    ],
    [{ missing: { code: "#N/A" } }, { code: "#N/A" }],
    [{ plannedFilingDate: "2025-12-31" }, badInput(`plannedOn: ${BEFORE_THE_YEAR_ENDS}`)],
    [
      { plannedFilingDate: "2025-12-31", length: "full" },
      badInput(`plannedOn: ${BEFORE_THE_YEAR_ENDS}`),
    ],
    [{ requestedOn: "2025-12-31" }, badInput(`askedOn: ${BEFORE_THE_YEAR_ENDS}`)],
    [
      { taxYear: "2025-06-30", requestedOn: "2025-06-30" },
      badInput(`askedOn: ${BEFORE_THE_YEAR_ENDS.replaceAll("2025-12-31", "2025-06-30")}`),
    ],
    [{ requestedOn: "2026-04-16" }, tooLate("2026-04-16", "2026-04-15")],
    [{ requestedOn: "2026-04-16", length: "full" }, tooLate("2026-04-16", "2026-04-15")],
    [
      { requestedOn: "2026-06-16", filerType: "out of country" },
      tooLate("2026-06-16", "2026-06-15"),
    ],
    [
      {
        requestedOn: "2026-06-09",
        postponementBegins: "2026-01-22",
        postponementEnds: "2026-06-08",
      },
      tooLate("2026-06-09", "2026-06-08"),
    ],
    [{ taxYear: "2025-06-30", requestedOn: "2025-10-16" }, tooLate("2025-10-16", "2025-10-15")],
  ])("refuses %j", (cells, refusal) => {
    expect(written(cells)).toEqual(refusal);
  });

  const FAR = { taxYear: 2026, plannedFilingDate: "2027-10-15" };
  it("in full is not worked out where the rate is not published and none is assumed", () => {
    expect(written({ ...FAR, length: "full" })).toEqual(
      notHeld(
        expect.stringMatching(/^.*: no figure for 2027-\d\d-\d\d; known only through/) as string
      )
    );
    expect(written({ ...FAR, length: "full", assumedRate: "latest" })).toMatch(/come to about \$/);
    expect(written({ ...FAR, length: "short" })).toMatch(/bears interest/);
  });

  it("reads the assumed rate in full alone", () => {
    expect(written({ length: "full", assumedRate: "high" })).toMatchObject({ code: "#VALUE!" });
  });

  it("answers a client list, a bad row with its own error", () => {
    const answers = memo(down(2025, 2025, 0), down(20000, "x", ""), down(20000, 0, ""));
    expect(answers).toEqual([
      [expect.stringMatching(/nothing is due now/)],
      [badInput('totalTax: "x" is not an amount in dollars')],
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
  missing: fc.constantFrom("", "K-1", "1099-B, W-2"),
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
            ...[
              cells.taxYear,
              cells.totalTax,
              inTime,
              until,
              until,
              "yes",
              cells.state,
              cells.filerType,
            ]
          )
        );
        expect(text).toContain(`, until ${inWords(until)}.`);
        expect(text).toContain(`the total tax at ${dollars(cells.totalTax)} and`);
        expect(text).toContain(`payments so far at ${dollars(cells.payments)}.`);
        expect(text.includes("nothing is due now")).toBe(short === 0);
        if (short > 0 && cells.paidWithRequest === 0)
          expect(text).toContain(
            `${dollars(short)} is still unpaid; whatever is not paid by ${pay}`
          );
        if (short > 0 && cells.paidWithRequest > 0)
          expect(text).toContain(`Please pay ${dollars(cells.paidWithRequest)} by ${pay},`);
        if (cost > 0) expect(text).toContain(`come to about ${dollars(cost)};`);
        else expect(text).toContain(`by ${inWords(until)}, no addition or interest is expected.`);
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
          expect(told[0]).toMatch(/^We are asking for more time/);
          expect(told[1]).toBe(NOT_TO_PAY);
          expect(told.at(-1)).toBe(CAUTION);
        }
      }),
      RUNS
    );
  });

  it("neither threatens nor shouts", () => {
    const late = fc.constantFrom("", "2026-01-01", "2026-12-01");
    const harsh = /\b(must|penalt\w*|immediately|fines?|enforce\w*|warn\w*|urgent\w*|fail\w*)\b|!/i;
    fc.assert(
      fc.property(clients, late, (cells, plannedFilingDate) => {
        const text = written({
          ...cells,
          plannedFilingDate,
          length: "full",
          assumedRate: "latest",
        });
        expect(text).toMatch(/^We are asking/);
        expect(text).not.toMatch(harsh);
      }),
      RUNS
    );
  });
});
