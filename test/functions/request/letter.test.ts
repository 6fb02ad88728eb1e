import { describe, expect, it } from "vitest";
import { memo, memoLines } from "../../../src/functions/request/letter";
import { badInput, beforeTable, down, inCell, notInTable, serial } from "../sheet";

/** The arguments of MEMO in order: tax of $20,000, $15,000 paid, ten days into April. */
const PLAIN = {
  taxYear: 2025,
  totalTax: 20000,
  payments: 15000,
  paidWithRequest: "",
  asOf: "2026-04-10",
  requestedOn: "",
  confirmedOn: "",
  rejectedOn: "",
  filedOn: "",
  paidOn: "",
  plannedFilingDate: "",
  plannedPaymentDate: "",
  length: "",
  stillNeeded: "",
  state: "",
  filerType: "",
  assumedRate: "",
  postponementBegins: "",
  postponementEnds: "",
};
type Cells = Partial<Record<keyof typeof PLAIN, unknown>>;
const written = (cells: Cells): unknown => inCell(memo, ...Object.values({ ...PLAIN, ...cells }));
/** The sentences one by one: each ends with a period before a capital, or at the end. */
const sentences = (cells: Cells): string[] => String(written(cells)).split(/(?<=\.) (?=[A-Z])/);
/** The sentences on the return and the extension, which come before those on the payment. */
function onReturn(cells: Cells): string[] {
  const all = sentences({ ...cells, payments: 20000 });
  const end = all.findIndex((one) =>
    /your payments cover|is not an extension of time to pay/.test(one)
  );
  return all.slice(0, end);
}

const PLANNING = [
  "We plan to request, by April 15, 2026, an extension of time to file your 2025 federal income tax return.",
  "With the extension, the return will be due October 15, 2026.",
];
const REQUESTED =
  "On April 3, 2026, we requested an extension of time to file your 2025 federal income tax return.";
const NOT_TO_PAY = "An extension of time to file is not an extension of time to pay.";
const CAUTION = [
  "These amounts are estimates based on the information we have now.",
  "They are not a bill, and the return may show different amounts.",
];
const INTEREST_FROM_APRIL = "Interest accrues on any amount not paid by April 15, 2026.";
const LATE = "The return is late and should be filed as soon as possible.";
const GROWS = "Penalties and interest increase until the return is filed and the tax is paid.";
const WAS_DUE = "Your 2025 federal income tax return was due April 15, 2026";

const made = { requestedOn: "2026-04-03" };
const proven = { ...made, confirmedOn: "2026-04-03" };
const rejected = { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" };
const JUNE_1 = "2026-06-01";
/** The disaster postponement of California to October 15, 2025 (memory: IR-2025-10). */
const CALIFORNIA = {
  taxYear: 2024,
  state: "CA",
  postponementBegins: "2025-01-07",
  postponementEnds: "2025-10-15",
};

const BEFORE_THE_YEAR_ENDS =
  "12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.";

// 26 CFR 1.6081-4 and Pub. 1345 (the status), 26 U.S.C. 6151(a) and 6601(a) (payment and interest); the wording is our own.
describe("MEMO on the return and its extension", () => {
  it.each<[what: string, cells: Cells, sentences: string[]]>([
    ["not yet requested", {}, PLANNING],
    ["not yet requested, the last day", { asOf: "2026-04-15" }, PLANNING],
    ["requested later than the as-of date", { requestedOn: "2026-04-11" }, PLANNING],
    [
      "requested",
      made,
      [
        REQUESTED,
        "We have not yet received proof of the request.",
        "Once we have it, you will have until October 15, 2026, to file.",
      ],
    ],
    [
      "unconfirmed after the deadline",
      { ...made, asOf: "2026-04-16" },
      [
        REQUESTED.replace(/\.$/, ", but we have not received proof of the request."),
        "Please do not rely on the extension until we confirm it.",
        "If the request was received on time, the return is due October 15, 2026.",
      ],
    ],
    [
      "extended",
      proven,
      [REQUESTED, "We have proof of the request.", "You have until October 15, 2026, to file."],
    ],
    [
      "rejected by the deadline",
      { ...rejected, asOf: "2026-04-15" },
      [
        "The IRS rejected the request of April 14, 2026, for an extension of time to file your 2025 federal income tax return.",
        "You do not have an extension now.",
        "We plan to correct the request and resend it by April 20, 2026.",
        "If the IRS accepts it, the return will be due October 15, 2026.",
        "Otherwise, the return is due April 15, 2026.",
      ],
    ],
    [
      "resent",
      { ...rejected, confirmedOn: "2026-04-18", asOf: JUNE_1 },
      [
        "On April 14, 2026, we requested an extension of time to file your 2025 federal income tax return.",
        "The IRS rejected it, we resent it by April 18, 2026, and we have proof of that request.",
        "You have until October 15, 2026, to file.",
      ],
    ],
    [
      "not requested",
      { asOf: "2026-04-16" },
      [`${WAS_DUE}, and no extension was requested by then.`, LATE],
    ],
    [
      "requested late",
      { requestedOn: "2026-04-20", confirmedOn: "2026-04-20", asOf: JUNE_1 },
      [
        `${WAS_DUE}.`,
        "Our request for an extension was made on April 20, 2026, and a late request gives no extension.",
        LATE,
      ],
    ],
    [
      "rejected and not resent",
      { ...rejected, asOf: "2026-04-21" },
      [
        `${WAS_DUE}.`,
        "The IRS rejected the request for an extension that we made on April 14, 2026, and no corrected request was made by April 20, 2026.",
        "You do not have an extension.",
        LATE,
      ],
    ],
    [
      "the extended date missed",
      { ...proven, asOf: "2026-10-16" },
      [
        "Your 2025 federal income tax return was due October 15, 2026, the extended due date.",
        LATE,
      ],
    ],
    [
      "the extended date missed, without proof",
      { ...made, asOf: "2026-10-16" },
      [
        REQUESTED.replace(/\.$/, ", but we have not received proof of the request."),
        "Even with the extension, the return was due October 15, 2026.",
        LATE,
      ],
    ],
    [
      "filed by the due date",
      { filedOn: "2026-04-15", asOf: "2026-04-15" },
      ["Your 2025 federal income tax return was filed on April 15, 2026, on time."],
    ],
    [
      "filed with the extension",
      { ...proven, filedOn: "2026-10-15", asOf: "2026-11-01" },
      [
        "Your 2025 federal income tax return was filed on October 15, 2026, by the extended due date, October 15, 2026.",
      ],
    ],
    [
      "filed after the extended due date",
      { ...proven, filedOn: "2026-10-16", asOf: "2026-11-01" },
      [
        "Your 2025 federal income tax return was filed on October 16, 2026, after the extended due date, October 15, 2026.",
      ],
    ],
    [
      "filed without proof of the request",
      { ...made, filedOn: JUNE_1, asOf: JUNE_1 },
      [
        "Your 2025 federal income tax return was filed on June 1, 2026.",
        "We have not received proof of the request for an extension that we made on April 3, 2026.",
        "If it was received on time, the return was on time.",
      ],
    ],
    [
      "filed late, without proof of the request",
      { ...made, filedOn: "2026-10-16", asOf: "2026-10-16" },
      [
        "Your 2025 federal income tax return was filed on October 16, 2026, late even with an extension to October 15, 2026.",
        "We have not received proof of the request for an extension that we made on April 3, 2026.",
      ],
    ],
    [
      "filed without a request",
      { filedOn: "2026-04-16", asOf: "2026-04-16" },
      [
        "Your 2025 federal income tax return was filed on April 16, 2026, after its due date, April 15, 2026.",
        "No extension was requested by then.",
      ],
    ],
    [
      "filed after a late request",
      { requestedOn: "2026-04-16", filedOn: JUNE_1, asOf: JUNE_1 },
      [
        "Your 2025 federal income tax return was filed on June 1, 2026, after its due date, April 15, 2026.",
        "The extension was requested after that date, and a late request gives no extension.",
      ],
    ],
    [
      "filed after a rejection",
      { ...rejected, filedOn: "2026-04-17", asOf: "2026-04-17" },
      [
        "Your 2025 federal income tax return was filed on April 17, 2026, after its due date, April 15, 2026.",
        "The request for an extension was rejected, so the return had no extension.",
      ],
    ],
    [
      "no time to give",
      { ...CALIFORNIA, asOf: "2025-04-01" },
      [
        "A disaster postponement moves the due date of your 2024 federal income tax return to October 15, 2025.",
        "An extension would give no more time, so we are not requesting one.",
      ],
    ],
    [
      "no time to give, requested",
      { ...CALIFORNIA, asOf: "2025-06-01", requestedOn: "2025-04-10", confirmedOn: "2025-04-10" },
      [
        "A disaster postponement moves the due date of your 2024 federal income tax return to October 15, 2025.",
        "An extension gives no more time, so our request of April 10, 2025, does not change this date.",
      ],
    ],
    [
      "no time to give, missed",
      { ...CALIFORNIA, asOf: "2025-10-16" },
      [
        "Your 2024 federal income tax return was due October 15, 2025, the end of the disaster postponement.",
        LATE,
      ],
    ],
    [
      "a fiscal year",
      { taxYear: "2025-06-30", asOf: "2025-10-01" },
      [
        "We plan to request, by October 15, 2025, an extension of time to file your federal income tax return for the year ending June 30, 2025.",
        "With the extension, the return will be due April 15, 2026.",
      ],
    ],
    [
      "out of the country, between April and June",
      { filerType: "out of country", asOf: "2026-05-01" },
      [
        "We plan to request, by June 15, 2026, an extension of time to file your 2025 federal income tax return.",
        "With the extension, the return will be due October 15, 2026.",
      ],
    ],
  ])("knows a client: %s", (_what, cells, expected) => {
    expect(onReturn(cells)).toEqual(expected);
  });
});

describe("MEMO on the payment", () => {
  it.each<[what: string, cells: Cells, sentences: string[]]>([
    [
      "still to be made with the request",
      { paidWithRequest: 5000 },
      [
        "Please pay $5,000.00 by April 15, 2026.",
        "If you can, pay electronically and mark it as an extension payment.",
        "Based on our estimate, that payment covers the tax.",
      ],
    ],
    [
      "in part",
      { paidWithRequest: 4999.99 },
      [
        "Please pay $4,999.99 by April 15, 2026.",
        "If you can, pay electronically and mark it as an extension payment.",
        "Based on our estimate, a balance of $0.01 remains after that payment.",
        INTEREST_FROM_APRIL,
      ],
    ],
    ["not planned", {}, ["Based on our estimate, $5,000.00 is still unpaid.", INTEREST_FROM_APRIL]],
    [
      "with the request made",
      { ...made, paidWithRequest: 2000 },
      [
        "The request assumes that $2,000.00 is paid by April 15, 2026.",
        "Based on our estimate, a balance of $3,000.00 remains after that payment.",
        INTEREST_FROM_APRIL,
      ],
    ],
    [
      "with the request, in summer",
      { ...proven, paidWithRequest: 2000, asOf: JUNE_1 },
      [
        "Our figures assume that $2,000.00 was paid by April 15, 2026.",
        "Based on our estimate, $3,000.00 is unpaid, and the payment due date was April 15, 2026.",
        "Interest accrues on it until it is paid.",
      ],
    ],
    [
      "made with a late request",
      { requestedOn: "2026-04-20", paidWithRequest: 5000, asOf: JUNE_1 },
      [
        "Our figures assume that $5,000.00 was paid with the request on April 20, 2026.",
        "Based on our estimate, that payment covers the tax.",
      ],
    ],
    [
      "never made, because nothing was requested",
      { paidWithRequest: 5000, asOf: JUNE_1 },
      [
        "Based on our estimate, $5,000.00 is unpaid, and the payment due date was April 15, 2026.",
        "Interest accrues on it until it is paid.",
        GROWS,
      ],
    ],
    [
      "made",
      { ...proven, paidOn: "2026-05-29", asOf: JUNE_1 },
      ["The balance of $5,000.00 was paid on May 29, 2026."],
    ],
    [
      "planned for a date that has passed",
      { ...proven, plannedPaymentDate: "2026-05-29", asOf: JUNE_1 },
      ["Our figures assume that the balance of $5,000.00 was paid on May 29, 2026, as planned."],
    ],
    [
      "with the return that was filed",
      { ...proven, filedOn: "2026-05-29", asOf: JUNE_1 },
      [
        "Our figures assume that the balance of $5,000.00 was paid on May 29, 2026, with the return.",
      ],
    ],
    [
      "not needed",
      { payments: 25000 },
      ["Based on our estimate, your payments cover the tax, and you do not owe anything now."],
    ],
    [
      "not needed, filed",
      { payments: 25000, filedOn: "2026-04-09" },
      ["Based on our figures, your payments cover the tax."],
    ],
    [
      "under a postponement that leaves a request no time to give",
      { ...CALIFORNIA, asOf: "2025-04-01", paidWithRequest: 5000 },
      [
        "Please pay $5,000.00 by October 15, 2025.",
        "Based on our estimate, that payment covers the tax.",
      ],
    ],
    [
      "of a large amount",
      { totalTax: 12345678.9, payments: 0 },
      ["Based on our estimate, $12,345,678.90 is still unpaid.", INTEREST_FROM_APRIL],
    ],
    [
      "in Maine",
      { taxYear: 2023, state: "ME", asOf: "2024-04-01" },
      [
        "Based on our estimate, $5,000.00 is still unpaid.",
        "Interest accrues on any amount not paid by April 17, 2024.",
      ],
    ],
  ])("knows a payment %s", (_what, cells, expected) => {
    const all = sentences(cells).slice(0, -2);
    expect(all.slice(-expected.length)).toEqual(expected);
  });
});

// The clients of the sample firm on June 1, 2026. The amounts are those of its client list (ROSTER), which CHARGES gives too.
describe("MEMO to a client of the sample firm", () => {
  it.each<[client: string, cells: Cells, cost: string, not: RegExp]>([
    [
      "Celandine, rejected and never resent",
      {
        totalTax: 33750,
        payments: 31000,
        requestedOn: "2026-04-15",
        rejectedOn: "2026-04-16",
        plannedFilingDate: "2026-10-15",
        state: "MA",
      },
      "If you file and pay the balance on October 15, 2026, we expect about $814.31 in penalties and interest.",
      /have until|will be due|92\.29/,
    ],
    [
      "Bramble, not requested",
      { totalTax: 27600, payments: 20000, plannedFilingDate: "2026-07-20", state: "NY" },
      "If you file and pay the balance on July 20, 2026, we expect about $1,667.63 in penalties and interest.",
      /have until|will be due|October|277\.11/,
    ],
    [
      "Oxlip, not requested",
      { totalTax: 980, payments: 300, plannedFilingDate: "2026-07-06", state: "NC" },
      "If you file and pay the balance on July 6, 2026, we expect about $551.75 in penalties and interest.",
      /have until|will be due|October|19\.54/,
    ],
    [
      "Hornbeam, requested late",
      {
        totalTax: 16300,
        payments: 9000,
        requestedOn: "2026-04-20",
        plannedFilingDate: "2026-10-15",
        state: "GA",
      },
      "If you file and pay the balance on October 15, 2026, we expect about $2,161.62 in penalties and interest.",
      /have until|will be due/,
    ],
    [
      "Larch, extended, with a payment planned in August",
      {
        totalTax: 24800,
        payments: 20000,
        paidWithRequest: 2400,
        requestedOn: "2026-03-26",
        confirmedOn: "2026-03-26",
        plannedFilingDate: "2026-10-15",
        plannedPaymentDate: "2026-08-14",
        state: "PA",
      },
      "If you pay the balance on August 14, 2026, and file on October 15, 2026, we expect about $51.23 in penalties and interest.",
      /late/,
    ],
  ])("%s", (_client, cells, cost, not) => {
    const text = String(written({ ...cells, asOf: JUNE_1, length: "full", assumedRate: "latest" }));
    expect(text).toContain(cost);
    expect(text).not.toMatch(not);
  });
});

describe("MEMO in full", () => {
  // 317.81: six months of the failure-to-pay penalty and interest, as CHARGES calculates them.
  it("adds the estimate, the cost and the other deadlines", () => {
    expect(sentences({ length: "full" })).toEqual([
      ...PLANNING,
      NOT_TO_PAY,
      "We estimate your total tax at $20,000.00 and your payments so far at $15,000.00.",
      "Based on our estimate, $5,000.00 is still unpaid.",
      INTEREST_FROM_APRIL,
      "With the extension, if you file and pay the balance on October 15, 2026, we expect about $317.81 in penalties and interest.",
      "Paying earlier reduces this amount.",
      "Estimated tax payments and IRA contributions have their own deadlines, and an extension does not change them.",
      "Your state return has its own rules.",
      ...CAUTION,
    ]);
  });

  it("ends differently for a filed return", () => {
    const filed = { ...proven, filedOn: "2026-05-29", paidOn: "2026-04-10", asOf: JUNE_1 };
    expect(sentences({ ...filed, length: "full" }).slice(-3)).toEqual([
      "With these dates, we expect no penalties or interest.",
      CAUTION[0],
      "They are not a bill, and the IRS may calculate different amounts.",
    ]);
  });

  it.each([
    ["2026-10-15", false],
    ["2026-10-16", true],
  ])("with a filing date of %s says that the return is late: %s", (plannedFilingDate, isLate) => {
    const text = String(
      written({ ...proven, length: "full", plannedFilingDate, assumedRate: "latest" })
    );
    const late =
      "A return filed after October 15, 2026, is late, and the cost increases each month.";
    expect(text.includes(late)).toBe(isLate);
    expect(text.includes("Filing and paying earlier reduces this amount.")).toBe(isLate);
  });

  const FAR = { taxYear: 2026, asOf: "2027-04-10", plannedFilingDate: "2027-10-15" };
  it("is not calculated where the rate is not published and none is assumed", () => {
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

  it("is short unless it is asked for in full", () => {
    for (const length of ["", 0, null, " Short "])
      expect(written({ length })).toBe(written({ length: "short" }));
    expect(written({ length: "FULL" })).toBe(written({ length: "full" }));
  });
});

describe("MEMO on what is still needed", () => {
  it.each([
    [" K-1 of the partnership ", "K-1 of the partnership."],
    ["K-1 of the partnership. ", "K-1 of the partnership."],
    [" K-1, 1099-B... ", "K-1, 1099-B."],
    ["K-1 (approx. two)", "K-1 (approx. two)."],
    [1099, "1099."],
  ])("of %j", (stillNeeded, end) => {
    expect(sentences({ stillNeeded })).toContain(`We still need the following from you: ${end}`);
  });

  it("is silent where nothing is needed", () => {
    for (const stillNeeded of ["", " ", 0, null, ".", " ... "])
      for (const length of ["short", "full"])
        expect(written({ stillNeeded, length })).toBe(written({ length }));
    expect(written({})).not.toMatch(/following from you/);
  });
});

describe("MEMO", () => {
  it.each<[cells: Cells, refusal: unknown]>([
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
    [{ asOf: "" }, badInput("asOf: The cell is blank. Enter a date such as 4/15/2026.")],
    [{ length: "long" }, badInput('length: "long" is not a length. Enter short or full.')],
    [
      { requestedOn: "soon" },
      badInput('requestedOn: "soon" is not a date. Enter a date such as 4/15/2026.'),
    ],
    [
      { confirmedOn: "2026-04-10" },
      badInput(
        "requestedOn: The cell is blank, but confirmedOn is 4/10/2026. Enter the date the request was made."
      ),
    ],
    [
      { ...made, rejectedOn: "2026-04-02" },
      badInput(
        "rejectedOn: 4/2/2026 is before the request date, 4/3/2026. Correct one of the two dates."
      ),
    ],
    [{ stillNeeded: { code: "#N/A" } }, { code: "#N/A" }],
    [{ plannedFilingDate: "2025-12-31" }, badInput(`plannedFilingDate: ${BEFORE_THE_YEAR_ENDS}`)],
    [{ plannedPaymentDate: "2025-12-31" }, badInput(`plannedPaymentDate: ${BEFORE_THE_YEAR_ENDS}`)],
    [{ requestedOn: "2025-12-31" }, badInput(`requestedOn: ${BEFORE_THE_YEAR_ENDS}`)],
    [{ filedOn: "2025-12-31" }, badInput(`filedOn: ${BEFORE_THE_YEAR_ENDS}`)],
    [{ assumedRate: "high" }, { code: "#VALUE!" }],
    [
      { taxYear: 2021, asOf: "2022-04-15", requestedOn: "2022-04-14", rejectedOn: "2022-04-15" },
      beforeTable("perfection-period", "4/18/2022", "1/1/2023"),
    ],
  ])("refuses %j", (cells, refusal) => {
    expect(written(cells)).toMatchObject(refusal as object);
  });

  it("takes dates as worksheet dates", () => {
    expect(written({ asOf: serial("2026-04-10"), requestedOn: serial("2026-04-03") })).toBe(
      written(made)
    );
  });

  it("answers a client list, a bad row with its own error", () => {
    const answers = memo(
      down(2025, 2025, 0),
      down(20000, "x", ""),
      down(20000, 0, ""),
      down(0, 0, ""),
      down("2026-04-10", "2026-04-10", "")
    );
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

describe("MEMOLINES", () => {
  const paragraphs = (cells: Cells): unknown =>
    inCell(memoLines, ...Object.values({ ...PLAIN, ...cells }));

  it.each([
    [{}],
    [{ ...made, length: "full" }],
    [{ ...proven, length: "full", plannedPaymentDate: "2026-08-14" }],
    [{ ...rejected, asOf: JUNE_1, length: "full", stillNeeded: "Form 1095-A" }],
    [{ ...proven, asOf: JUNE_1, filedOn: "2026-05-28" }],
  ])("has the sentences of MEMO in its paragraphs: %j", (cells) => {
    const [headings, ...rows] = paragraphs(cells) as string[][];
    expect(headings).toEqual(["Topic", "Paragraph"]);
    expect(rows.map(([, paragraph]) => paragraph).join(" ")).toBe(written(cells));
    expect(rows.length).toBeGreaterThan(2);
    for (const [topic, paragraph] of rows) expect([topic, paragraph]).not.toContain("");
  });

  it("rejects what MEMO rejects, with the same sentence", () => {
    expect(paragraphs({ totalTax: "soon" })).toEqual(written({ totalTax: "soon" }));
    expect(paragraphs({ asOf: "" })).toEqual(written({ asOf: "" }));
  });
});
