import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { charges } from "../../../src/functions/penalty/charges";
import { issueCount } from "../../../src/functions/request/issues";
import { due, extended } from "../../../src/functions/dueDate/returnDates";
import { mailTo } from "../../../src/functions/request/mailing";
import { method } from "../../../src/functions/request/methods";
import { stateRule } from "../../../src/functions/stateReturn/stateDates";
import { shortfall, suggest } from "../../../src/functions/request/balanceDue";
import { roster } from "../../../src/functions/season/roster";
import {
  CLIENT_LIST_HEADINGS,
  type ClientListField,
} from "../../../src/functions/arguments/clientListHeadings";
import { daysLeft, nextDate, stage } from "../../../src/functions/season/status";
import { plannedCost } from "./plannedCost";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { afterTable, answerOf, badInput, inCell, serial } from "../sheet";

const ANSWERS = [
  "Client",
  "Regular due date",
  "Extended due date",
  "Balance due",
  "Suggested payment",
  "Penalties and interest (planned)",
  "Method",
  "Status",
  "Days left",
  "Next deadline",
  "Issues",
  "Confirm first",
  "Unreadable",
];
const FIELDS = Object.keys(CLIENT_LIST_HEADINGS) as ClientListField[];

type Client = Partial<Record<ClientListField, unknown>>;

/** A client list with one heading a field. */
const listOf = (fields: readonly ClientListField[], ...clients: Client[]): unknown[][] => [
  fields.map((field) => CLIENT_LIST_HEADINGS[field][0]),
  ...clients.map((client) => fields.map((field) => client[field] ?? "")),
];
const answersOf = (asOf: unknown, ...clients: Client[]): unknown[][] =>
  roster(listOf(FIELDS, ...clients), 2025, asOf).slice(1);

const ALDER: Client = { client: "Alder", totalTax: 20000, payments: 15000 };
const answerFor = (asOf: string, client: Client): Readonly<Record<string, unknown>> => {
  const [row = []] = answersOf(asOf, { ...ALDER, ...client });
  return Object.fromEntries(ANSWERS.map((heading, index) => [heading, row[index]]));
};

const PAPER = "mailing address: secondary source";
const NO_ADDRESS = "mailing address: not in the rule tables";

// Figures as in the README and in the tests of the functions of the same names.
describe("ROSTER", () => {
  it("answers a client list, a row a client", () => {
    const list = [
      ["Client", "Total tax", "Payments", "State", "FilerType", "Paid with request"],
      ["Alder", 20000, 18500, "OH", "", 0],
      ["Bramble", 20000, 15000, "ME", "", 0],
      ["Cress", 9000, 6000, "CA", "out of country", 3000],
    ];
    const [april, june, october] = ["2026-04-15", "2026-06-15", "2026-10-15"].map(serial);
    expect(roster(list, 2025, "2026-04-10")).toEqual([
      ANSWERS,
      [
        "Alder",
        april,
        october,
        1500,
        1500,
        50.34,
        "e-file",
        "not requested",
        5,
        "request or file, and pay, by 4/15/2026",
        0,
        "Ohio extension: text read on 11/26/2026 shows no tax year",
        "",
      ],
      [
        "Bramble",
        april,
        october,
        5000,
        5000,
        317.81,
        "e-file",
        "not requested",
        5,
        "request or file, and pay, by 4/15/2026",
        1,
        "Maine extension: text for tax year 2019",
        "",
      ],
      [
        "Cress",
        june,
        october,
        3000,
        3000,
        0,
        "electronic payment",
        "not requested",
        5,
        "pay by 4/15/2026",
        0,
        "California extension: text for tax year 2024; text read on 11/26/2026 shows no tax year",
        "",
      ],
    ]);
  });

  // Texts: test/fixtures/published/state-extension-dates.json and mailing-addresses.json.
  it.each([
    ["nothing without a state", {}, ""],
    ["a rule read for the year itself", { state: "IL", taxYear: 2024 }, ""],
    ["no return", { state: "TX" }, ""],
    ["no rule", { state: "PR" }, ""],
    ["a fiscal year", { state: "NY", taxYear: "6/30/2026", paidWithRequest: 0 }, PAPER],
    ["an old rule", { state: "VA" }, "Virginia extension: text for tax year 2021"],
    [
      "an unverified rule",
      { state: "MS" },
      "Mississippi extension: text for tax year 2018; unverified",
    ],
    [
      "sources that disagree",
      { state: "DE" },
      "Delaware extension: secondary source; text read on 11/25/2026 shows no tax year; its sources disagree on the request and the percent to pay",
    ],
    ["a request on paper", { state: "TX", method: "paper" }, PAPER],
    [
      "a request on paper by a private delivery service",
      { state: "TX", method: "paper", carrier: "yes" },
      "mailing address: unverified",
    ],
    [
      "a rule and an address",
      { state: "OH", method: "paper" },
      `Ohio extension: text read on 11/26/2026 shows no tax year. ${PAPER}`,
    ],
    ["an address that the chart does not have", { state: "MP", method: "paper" }, NO_ADDRESS],
    ["paper without a state", { method: "paper" }, ""],
    [
      "a request that was mailed",
      { state: "OH", method: "paper", requestedOn: "2026-04-01" },
      "Ohio extension: text read on 11/26/2026 shows no tax year",
    ],
    ["a filed return", { state: "OH", method: "paper", filedOn: "2026-04-01" }, ""],
    // The methods of 2026 are not in their table, the state rules are.
    [
      "a form not yet covered",
      { state: "VA", taxYear: 2026 },
      "Virginia extension: text for tax year 2021",
    ],
  ])("says what to confirm first: %s", (_what, client, expected) => {
    expect(answerFor("2026-04-10", client)["Confirm first"]).toBe(expected);
  });

  it.each([
    ["the planned date", { plannedFilingDate: "2026-06-01" }, "2026-04-10"],
    [
      "the day of the return",
      { filedOn: "2026-06-01", plannedFilingDate: "2026-09-01" },
      "2026-07-01",
    ],
    ["the day of payment", { paidOn: "2026-06-01", plannedFilingDate: "2026-09-01" }, "2026-07-01"],
    [
      "the day payment is planned",
      { plannedPaymentDate: "2026-06-01", plannedFilingDate: "2026-09-01" },
      "2026-04-10",
    ],
    ["the day payment is planned, no other", { plannedPaymentDate: "2026-06-01" }, "2026-04-10"],
    [
      "the day payment is planned after the return",
      { plannedPaymentDate: "2026-06-01", filedOn: "2026-05-01" },
      "2026-05-10",
    ],
    [
      "the day of payment, whatever was planned",
      { paidOn: "2026-06-01", plannedPaymentDate: "2026-08-01", plannedFilingDate: "2026-09-01" },
      "2026-07-01",
    ],
  ])("charges through %s", (_what, days, asOf) => {
    const asked = { requestedOn: "2026-04-01", confirmedOn: "2026-04-01" };
    const direct = inCell(charges, 2025, 20000, 15000, "2026-06-01", "2026-06-01", "yes");
    expect(answerFor(asOf, { ...asked, ...days })["Penalties and interest (planned)"]).toBe(direct);
  });

  it("charges for a return planned late, whenever payment is planned", () => {
    const asked = {
      requestedOn: "2026-04-01",
      plannedFilingDate: "2026-11-02",
      plannedPaymentDate: "2026-12-01",
    };
    expect(answerFor("2026-04-10", asked)["Penalties and interest (planned)"]).toBe(
      inCell(charges, 2025, 20000, 15000, "2026-12-01", "2026-11-02", "yes")
    );
  });

  it.each([
    ["on the last day to resend", { confirmedOn: "2026-04-17" }, "yes"],
    ["a day late", { confirmedOn: "2026-04-18" }, "no"],
  ])("counts the extension of a rejected request resent %s", (_what, sent, extension) => {
    const record = { requestedOn: "2026-04-11", rejectedOn: "2026-04-12", ...sent };
    const planned = { ...record, plannedFilingDate: "2026-09-01" };
    expect(answerFor("2026-05-01", planned)["Penalties and interest (planned)"]).toBe(
      inCell(charges, 2025, 20000, 15000, "2026-09-01", "2026-09-01", extension)
    );
  });

  it("charges a client without an extension through the as-of date", () => {
    const asOf = "2026-06-10";
    const direct = inCell(charges, 2025, 20000, 15000, asOf, asOf, "no");
    expect(answerFor(asOf, {})["Penalties and interest (planned)"]).toBe(direct);
    const extendedMissed = { requestedOn: "2026-04-01", plannedFilingDate: "2026-11-02" };
    expect(answerFor("2026-10-20", extendedMissed)["Penalties and interest (planned)"]).toBe(
      inCell(charges, 2025, 20000, 15000, "2026-11-02", "2026-11-02", "yes")
    );
  });

  it.each([
    ["2026-04-10", {}, "e-file"],
    ["2026-04-10", { paidWithRequest: 1 }, "electronic payment"],
    ["2026-04-16", {}, ""],
    ["2026-04-10", { requestedOn: "2026-04-09" }, ""],
    ["2026-04-17", { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" }, "e-file"],
    ["2026-04-20", { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" }, "e-file"],
    ["2026-04-21", { requestedOn: "2026-04-14", rejectedOn: "2026-04-15" }, ""],
    ["2026-04-16", { requestedOn: "2026-04-10", rejectedOn: "2026-04-11" }, "e-file"],
    ["2026-04-17", { requestedOn: "2026-04-10", rejectedOn: "2026-04-11" }, ""],
    ["2026-04-10", { filedOn: "2026-04-09" }, ""],
  ])("on %s with %j names the method while a request can be made: %j", (asOf, client, way) => {
    expect(answerFor(asOf, client)["Method"]).toBe(way);
  });

  it("reads the target and the cushion", () => {
    const client = { target: "reasonable cause", cushion: "5%", firstInstallment: 2500 };
    expect(answerFor("2026-04-10", client)["Suggested payment"]).toBe(
      inCell(suggest, 20000, 15000, "reasonable cause", "5%", 2500)
    );
  });

  it.each([
    [[{}, {}], "Suggested payment"],
    [[{ cushion: 0.05 }, { cushion: "5%" }], "Suggested payment (with 5% cushion)"],
    [[{ cushion: 250 }, {}], "Suggested payment (with $250 cushion)"],
    [[{ cushion: 250 }, { cushion: "5%" }], "Suggested payment (with cushion)"],
    [[{ target: "reasonable cause" }, { target: "" }], "Suggested payment (for the 90% test)"],
    [
      [{ target: "95%" }, { target: "reasonable cause", cushion: 0.02 }],
      "Suggested payment (by target, with 2% cushion)",
    ],
    [[{ target: "full", cushion: 0 }, { cushion: "n/a" }], "Suggested payment"],
  ])(
    "says in the heading why a suggested payment is not the balance due: %j",
    (clients, heading) => {
      const list = listOf(FIELDS, ...clients.map((client) => ({ ...ALDER, ...client })));
      expect(roster(list, 2025, "2026-04-10", "", [["Suggested payment"]])[0]).toEqual([heading]);
    }
  );

  // 26 CFR 301.6651-1(c)(3)(i): at least 90 percent of the tax shown, paid by the due date. 18,000 of 20,000 is 90%.
  it.each([
    ["of the payments alone", { payments: 18_000 }, "yes"],
    ["a cent less", { payments: 17_999.99 }, "no"],
    ["with the payment of the request", { paidWithRequest: 3_000 }, "yes"],
    [
      "with the payment of a request on the due date",
      { paidWithRequest: 3_000, requestedOn: "2026-04-15" },
      "yes",
    ],
    [
      "with the payment of a request after the due date",
      { paidWithRequest: 3_000, requestedOn: "2026-04-16" },
      "no",
    ],
    ["with a payment that was not made by the due date", { paidWithRequest: 3_000 }, "no"],
    ["of no tax", { totalTax: 0, payments: 0 }, "yes"],
  ])("says whether 90%% is paid by the due date: %s", (what, client, answer) => {
    const asOf = /was not made|after the due/.test(what) ? "2026-04-20" : "2026-04-10";
    const list = listOf(FIELDS, { ...ALDER, ...client });
    expect(roster(list, 2025, asOf, "", [["90% paid"]])[1]).toEqual([answer]);
  });

  it("uses the assumed rate beside the list", () => {
    const list = listOf(["totalTax", "payments", "plannedFilingDate"], {
      ...ALDER,
      plannedFilingDate: "2027-06-01",
    });
    const chargesCell = (rate?: unknown) => roster(list, 2025, "2026-04-10", rate)[1]?.[5];
    expect(chargesCell()).toMatchObject({ code: "#N/A" });
    expect(chargesCell("7%")).toBe(
      inCell(charges, 2025, 20000, 15000, "2027-06-01", "2027-06-01", "yes", "", "", "7%")
    );
  });
});

describe("the tax year of a client", () => {
  it("is that of its row, and where that is empty that of the list", () => {
    const rows = [
      ["Tax year", "Total tax", "Payments"],
      [2024, 100, 0],
      ["", 100, 0],
      [0, 100, 0],
      ["2025-06-30", 100, 0],
    ];
    const dueDays = roster(rows, 2025, "2025-04-01").map((row) => row[1]);
    expect(dueDays.slice(1)).toEqual(
      ["2025-04-15", "2026-04-15", "2026-04-15", "2025-10-15"].map(serial)
    );
  });

  it("may stand in the rows alone", () => {
    const rows = [
      ["Year", "Total tax", "Payments"],
      [2025, 100, 0],
      ["", 100, 0],
    ];
    const answer = roster(rows, null, "2026-04-01");
    expect(answer[1]?.[1]).toBe(serial("2026-04-15"));
    expect(answer[2]?.[1]).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^taxYear: The cell is blank/) as unknown,
    });
  });
});

describe("a row that cannot be read", () => {
  it("answers what does not depend on it, and its error in the rest", () => {
    const [row = []] = answersOf("2026-04-10", { ...ALDER, totalTax: "" });
    const empty = badInput(
      "totalTax: The cell is blank. Enter a dollar amount, or 0 if there is none."
    );
    expect(row).toEqual([
      "Alder",
      serial("2026-04-15"),
      serial("2026-10-15"),
      empty,
      empty,
      empty,
      "e-file",
      "not requested",
      5,
      "request or file, and pay, by 4/15/2026",
      1,
      "",
      "",
    ]);
  });

  it("leaves the other rows alone", () => {
    const answers = answersOf("2026-04-10", ALDER, { ...ALDER, state: "ZZ" }, ALDER);
    expect(answers[0]).toEqual(answers[2]);
    const wrong = badInput(
      'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
    );
    const [client, dueDay, extendedDay, short, toPay, ...rest] = answers[1] ?? [];
    expect([client, short, toPay]).toEqual(["Alder", 5000, 5000]);
    expect(rest.pop()).toBe('State: "ZZ"');
    for (const cell of [dueDay, extendedDay, ...rest]) expect(cell).toEqual(wrong);
  });

  const NO_DATE = "is not a date. Enter a date such as 4/15/2026.";
  const BEFORE =
    "is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.";
  it.each([
    ["plannedFilingDate", "soon", `"soon" ${NO_DATE}`],
    ["plannedFilingDate", "2025-12-31", `12/31/2025 ${BEFORE}`],
    ["plannedPaymentDate", "soon", `"soon" ${NO_DATE}`],
    ["plannedPaymentDate", "2025-12-31", `12/31/2025 ${BEFORE}`],
    ["plannedPaymentDate", serial("2022-04-14"), `4/14/2022 ${BEFORE}`],
  ] as const)("with %s %j answers all but the charges", (field, cell, sentence) => {
    expect(answerFor("2026-04-10", { [field]: cell })).toEqual({
      ...answerFor("2026-04-10", {}),
      "Penalties and interest (planned)": badInput(`${field}: ${sentence}`),
      Unreadable: `${CLIENT_LIST_HEADINGS[field][0]}: ${typeof cell === "string" ? `"${cell}"` : "4/14/2022"}`,
    });
  });

  it("names each cell that cannot be read, and no date that only has to be after the tax year", () => {
    const row = { taxYear: "20255", plannedFilingDate: "n/a", plannedPaymentDate: "4/10/2026" };
    expect(String(answerFor("2026-04-10", row)["Unreadable"]).split("; ").toSorted()).toEqual([
      'Planned filing date: "n/a"',
      'Tax year: "20255"',
    ]);
  });

  it.each(["plannedFilingDate", "plannedPaymentDate"] as const)(
    "is none with %s on the first day after the tax year: nothing is due yet",
    (field) => {
      const planned = { plannedFilingDate: "2026-04-01", [field]: "2026-01-01" };
      expect(answerFor("2026-04-10", planned)["Penalties and interest (planned)"]).toBe(0);
    }
  );

  it("of a fiscal year is one planned before that year ends", () => {
    const planned = (plannedFilingDate: string) =>
      answerFor("2025-10-01", { taxYear: "2025-06-30", plannedFilingDate })[
        "Penalties and interest (planned)"
      ];
    expect(planned("2025-07-01")).toBe(0);
    expect(planned("2025-06-30")).toEqual(
      badInput(`plannedFilingDate: 6/30/2025 ${BEFORE.replace("12/31/2025", "6/30/2025")}`)
    );
  });

  it.each([
    [
      "priorYearTax",
      "?",
      'priorYearTax: "?" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    ["priorYearTax", -1, "priorYearTax: -1 is negative. Enter zero or a positive dollar amount."],
    ["method", "fax", 'method: "fax" is not a method. Enter electronic payment, e-file or paper.'],
    ["carrier", 5, "carrier: 5 is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0."],
  ] as const)("with %s %j answers all but the issues", (field, cell, sentence) => {
    expect(answerFor("2026-04-10", { [field]: cell })).toEqual({
      ...answerFor("2026-04-10", {}),
      Issues: badInput(sentence),
      ...(field === "method" ? { "Confirm first": badInput(sentence) } : {}),
      Unreadable: `${CLIENT_LIST_HEADINGS[field][0]}: ${typeof cell === "string" ? `"${cell}"` : cell}`,
    });
  });

  // rules/request-methods.json ends with tax year 2026, the return's due dates with 2027.
  it("of a year without methods in the rules answers all but the method", () => {
    const { Method: way, ...rest } = answerFor("2028-04-10", {
      taxYear: 2027,
      plannedFilingDate: "2028-04-10",
    });
    expect(way).toEqual(afterTable("request-methods", "12/31/2027", "12/31/2025"));
    for (const cell of Object.values(rest)) expect(typeof cell).not.toBe("object");
  });

  it("passes an error cell through", () => {
    const [row = []] = answersOf("2026-04-10", { ...ALDER, payments: { code: "#DIV/0!" } });
    expect(row[3]).toEqual({ code: "#DIV/0!" });
    expect(row[1]).toBe(serial("2026-04-15"));
    const [named = []] = answersOf("2026-04-10", { ...ALDER, client: { code: "#N/A" } });
    expect(named[0]).toEqual({ code: "#N/A" });
    expect(named[3]).toBe(5000);
  });

  it("shows in each cell what is wrong beside the list", () => {
    const [, row = []] = roster(listOf(["totalTax", "payments"], ALDER), 2025, "");
    const empty = badInput("asOf: The cell is blank. Enter a date such as 4/15/2026.");
    expect(row.slice(7, -1)).toEqual([empty, empty, empty, empty, empty]);
    expect(row[3]).toBe(5000);
    const [, old = []] = roster(listOf(["totalTax", "payments"], ALDER), 2099, "2026-04-10");
    expect(old[1]).toEqual(afterTable("return-due-date", "12/31/2099", "12/31/2027"));
  });
});

describe("an empty row of the list", () => {
  const blank = ANSWERS.map(() => "");

  it.each([
    ["empty texts", ["", "", "", ""]],
    ["nothing", [null, undefined, null, null]],
    ["zeros, as some hosts send them", [0, 0, 0, 0]],
    ["a remark alone", ["", " ", 0, "see file"]],
    ["a short row", []],
  ])("stays empty: %s", (_what, row) => {
    const list = [["Client", "Total tax", "Payments", "Remarks"], row, ["Alder", 20000, 15000, ""]];
    const answer = roster(list, 2025, "2026-04-10");
    expect(answer[1]).toEqual(blank);
    expect(answer[2]?.[0]).toBe("Alder");
    expect(answer).toHaveLength(3);
  });

  it("is not one with a name, or with one amount", () => {
    for (const row of [
      ["Alder", 0, 0],
      ["", 0, 1],
    ]) {
      const list = [["Client", "Total tax", "Payments"], row];
      expect(roster(list, 2025, "2026-04-10")[1]).not.toEqual(blank);
    }
  });
});

describe("the headings of the list", () => {
  const amounts = [100, 40];

  it.each([
    ["Total tax", "Payments"],
    ["TOTAL TAX", " payments "],
    ["total-tax", "Payments:"],
    ["TotalTax", "Line 5"],
    ["Estimated total tax", "total_payments"],
  ])("are known in any case, spacing and punctuation: %s, %s", (...headings) => {
    expect(roster([headings, amounts], 2025, "2026-04-10")[1]?.[3]).toBe(60);
  });

  it.each([
    [
      ["Client", "State"],
      "clientList: The first row has no heading for estimated total tax and total payments. Add those columns.",
    ],
    [
      ["Total tax", "Settled"],
      'clientList: The first row has no heading for total payments. The nearest is "Settled". Add that column.',
    ],
    [
      ["Fax", "Payments"],
      'clientList: The first row has no heading for estimated total tax. The nearest is "Fax". Add that column.',
    ],
    [
      [2025, 7],
      "clientList: The first row looks like a client, not like headings. Add a row of headings above the clients, and select it with them.",
    ],
    [
      ["Total tax", "Payments", "Line 4"],
      'clientList: The headings "Total tax" and "Line 4" mean the same column. Keep one of them.',
    ],
    [
      ["Payments", "Total tax", "payments"],
      'clientList: The headings "Payments" and "payments" mean the same column. Keep one of them.',
    ],
  ])("%j are refused", (headings, sentence) => {
    const list = [headings, [1, 2, 3]];
    expect(answerOf(() => roster(list, 2025, "2026-04-10"))).toEqual(badInput(sentence));
  });

  it("that hold an error cell pass it on", () => {
    const list = [["Total tax", "Payments", { code: "#REF!" }], amounts];
    expect(answerOf(() => roster(list, 2025, "2026-04-10"))).toMatchObject({ code: "#VALUE!" });
  });

  it.each([[[["Total tax", "Payments"]]], [[]], [[["x"]]]])(
    "without a row below are refused: %j",
    (list) => {
      expect(answerOf(() => roster(list, 2025, "2026-04-10"))).toEqual(
        badInput(
          "clientList: The range has no row below its headings. Select the whole client list."
        )
      );
    }
  );

  it("mean one column each", () => {
    const bare = FIELDS.flatMap((field) =>
      CLIENT_LIST_HEADINGS[field].map((heading) => heading.replace(/[^a-z0-9]/g, ""))
    );
    expect(new Set(bare).size).toBe(bare.length);
  });
});

/** Months after April 1, 2026, told in days. */
const dayFrom = (first: string, last: string): fc.Arbitrary<number> =>
  fc.integer({ min: serial(first), max: serial(last) });
const dollars = fc.integer({ min: 0, max: 4_000_000 }).map((cents) => cents / 100);
const maybe = <Value>(values: fc.Arbitrary<Value>): fc.Arbitrary<Value | ""> =>
  fc.oneof(fc.constant("" as const), values);

const anyClient = fc
  .record({
    client: fc.constantFrom("Alder", "Bramble", "Cress"),
    taxYear: maybe(fc.constantFrom(2025, "2025-12-31")),
    state: fc.constantFrom("", "ME", "NY", "CA", "TX"),
    filerType: fc.constantFrom("", "resident", "out of country", "nonresident"),
    totalTax: dollars,
    payments: dollars,
    paidWithRequest: maybe(dollars),
    target: fc.constantFrom("", "full", "reasonable cause", "95%"),
    cushion: fc.constantFrom("", "5%", 250),
    firstInstallment: maybe(dollars),
    priorYearTax: maybe(dollars),
    requestedOn: maybe(
      fc.oneof(dayFrom("2026-03-20", "2026-06-20"), dayFrom("2026-04-05", "2026-04-15"))
    ),
    confirmedAfter: maybe(fc.integer({ min: 0, max: 12 })),
    rejectedAfter: maybe(fc.integer({ min: 0, max: 8 })),
    filedOn: maybe(dayFrom("2026-03-20", "2026-12-20")),
    paidOn: maybe(dayFrom("2026-03-20", "2026-12-20")),
    plannedFilingDate: maybe(dayFrom("2026-03-20", "2026-12-20")),
    plannedPaymentDate: maybe(dayFrom("2026-03-20", "2026-12-20")),
    method: fc.constantFrom("", "paper", "e-file"),
    carrier: fc.constantFrom("", "yes", "UPS Ground"),
    line8Checked: fc.constantFrom("", "yes", "no"),
    postponement: maybe(fc.constant(["2026-01-22", "2026-06-08"] as const)),
  })
  .map(({ confirmedAfter, rejectedAfter, postponement, ...client }) => {
    const after = (days: number | ""): number | "" =>
      days === "" || client.requestedOn === "" ? "" : client.requestedOn + days;
    return {
      ...client,
      confirmedOn: after(confirmedAfter),
      rejectedOn: after(rejectedAfter),
      postponementBegins: postponement === "" ? "" : postponement[0],
      postponementEnds: postponement === "" ? "" : postponement[1],
    };
  });
type AnyClient = typeof anyClient extends fc.Arbitrary<infer Drawn> ? Drawn : never;

/** What the source column of a table says beyond the source, without what to do about it. */
const caveatsOf = (source: unknown): readonly string[] =>
  / \(([^()]*)\)$/
    .exec(String(source))?.[1]
    ?.replace(/^unverified: .*/, "unverified")
    .split("; ") ?? [];

/** What to confirm first, from the source columns of STATERULE and MAILTO. */
function toConfirm(client: AnyClient, asks: boolean, asOf: number): string {
  const { state, filerType, paidWithRequest, carrier, rejectedOn } = client;
  const year = client.taxYear === "" ? 2025 : client.taxYear;
  const postponement = [client.postponementBegins, client.postponementEnds];
  const rows = state === "" ? [] : stateRule(year, state, "", "", "", "yes");
  const caveats = rows
    .filter(([item]) => item === "Regular due date" || item === "Grants the extension")
    .flatMap((row) => caveatsOf(row[3]));
  const name = String(rows[1]?.[2]).split(":")[0];
  const ofState =
    caveats.length > 0 ? `${String(name)} extension: ${[...new Set(caveats)].join("; ")}` : "";
  const best = inCell(
    method,
    year,
    paidWithRequest || 0,
    asOf,
    rejectedOn,
    state,
    filerType,
    ...postponement
  );
  const isToMail = asks && (client.method || best) === "paper";
  const isKnown = state !== "" || ["out of country", "nonresident"].includes(filerType);
  const by = carrier === "" ? "" : "yes";
  const lines =
    isToMail && isKnown
      ? mailTo(
          [[year]],
          [[state]],
          [[paidWithRequest || 0]],
          [[by]],
          [[filerType]],
          [["yes"]],
          [["yes"]]
        )
      : [];
  const ofAddress = caveatsOf(lines[1]?.[1]).map((caveat) => `mailing address: ${caveat}`);
  return [ofState, ...ofAddress].filter((part) => part !== "").join(". ");
}

/** A client's row by the functions of the same names, one call each. */
function byTheFunctions(client: AnyClient, asOf: number): unknown[] {
  const { totalTax, payments, state, filerType, filedOn, paidOn } = client;
  const year = client.taxYear === "" ? 2025 : client.taxYear;
  const postponement = [client.postponementBegins, client.postponementEnds];
  const who = [state, filerType, ...postponement];
  const record = [client.requestedOn, client.confirmedOn, client.rejectedOn, filedOn];
  const dueDay = Number(inCell(due, year, ...who));
  const extendedDay = Number(inCell(extended, year, ...who));
  const standing = inCell(stage, year, asOf, ...record, ...who);
  const asks = standing === "not requested" || standing === "rejected";
  return [
    client.client,
    dueDay,
    extendedDay,
    inCell(shortfall, totalTax, payments),
    inCell(suggest, totalTax, payments, client.target, client.cushion, client.firstInstallment),
    plannedCost({ ...client, taxYear: year }, asOf),
    asks ? inCell(method, year, client.paidWithRequest || 0, asOf, client.rejectedOn, ...who) : "",
    standing,
    inCell(daysLeft, year, asOf, ...record, paidOn, ...who),
    inCell(nextDate, year, asOf, ...record, paidOn, ...who),
    inCell(
      issueCount,
      year,
      totalTax,
      payments,
      client.paidWithRequest,
      asOf,
      ...record,
      state,
      filerType,
      client.method,
      client.carrier,
      client.line8Checked,
      client.priorYearTax,
      client.firstInstallment,
      ...postponement
    ),
    standing === "filed" ? "" : toConfirm(client, asks, asOf),
    "",
  ];
}

describe("ROSTER beside the functions of the same names", () => {
  const unknown = fc.array(fc.constantFrom("Remarks", "Partner", "", "Fee", 7), { maxLength: 4 });
  const lists = fc.record({
    clients: fc.array(fc.oneof({ weight: 9, arbitrary: anyClient }, fc.constant(undefined)), {
      minLength: 1,
      maxLength: 4,
    }),
    columns: fc
      .tuple(fc.shuffledSubarray(FIELDS, { minLength: FIELDS.length }), unknown)
      .chain(([fields, others]) =>
        fc
          .shuffledSubarray<ClientListField | number>([...fields, ...others.keys()], {
            minLength: fields.length + others.length,
          })
          .map((order) =>
            order.map((column) =>
              typeof column === "number" ? { other: others[column] } : { field: column }
            )
          )
      ),
    synonyms: fc.array(fc.nat(), { minLength: FIELDS.length, maxLength: FIELDS.length }),
    asOf: fc.oneof(dayFrom("2026-03-25", "2026-11-10"), dayFrom("2026-04-10", "2026-04-25")),
  });

  it("agrees cell by cell, over 300 lists with their columns in any order under any of their headings", () => {
    fc.assert(
      fc.property(lists, ({ clients, columns, synonyms, asOf }) => {
        const headings = columns.map((column) => {
          if (!("field" in column)) return column.other;
          const known = CLIENT_LIST_HEADINGS[column.field];
          return known[(synonyms[FIELDS.indexOf(column.field)] ?? 0) % known.length];
        });
        const rows = clients.map((client) =>
          columns.map((column) =>
            "field" in column ? ((client as Client | undefined)?.[column.field] ?? "") : "by hand"
          )
        );
        const expected = clients.map((client) =>
          client ? byTheFunctions(client, asOf) : ANSWERS.map(() => "")
        );
        const [first = [], ...answers] = roster([headings, ...rows], 2025, asOf, "latest");
        expect(answers).toEqual(expected);
        expect(
          first.map((one) => String(one).replace(/^(Suggested payment) \(.+\)$/, "$1"))
        ).toEqual(ANSWERS);
      }),
      { numRuns: 300, seed: 4868 }
    );
  });
});

describe("a list of 5,000 clients", () => {
  it("is answered, each row as it would be alone", () => {
    const states = ["ME", "NY", "CA", "TX", ""];
    const clients = Array.from({ length: 5000 }, (_, index) => ({
      client: `Client ${String(index + 1)}`,
      totalTax: 5000 + (index % 700) * 10,
      payments: 4000 + (index % 300) * 10,
      state: states[index % states.length],
      requestedOn: index % 3 === 0 ? "2026-04-01" : "",
    }));
    const answers = answersOf("2026-04-10", ...clients);
    expect(answers).toHaveLength(5000);
    expect(answers.flat().filter((cell) => typeof cell === "object")).toEqual([]);
    for (const index of [0, 1, 2499, 4999])
      expect(answers[index]).toEqual(answersOf("2026-04-10", clients[index] ?? {})[0]);
  });
});

describe("a list of the preparer's own", () => {
  const HEADINGS = ["Balance due", "Suggested payment", "Status", "Days left", "Next deadline"];

  it.each([...inventedLists, ...keptLists])(
    "has the answers of the same clients under our headings: $title",
    ({ cells, clients }) => {
      const chosen = ["Client", ...HEADINGS].map((heading) => [heading]);
      const own = roster(cells as unknown[][], 2025, "2026-04-20", "latest", chosen);
      const fields = [...new Set(clients.flatMap((client) => Object.keys(client)))];
      const ours = listOf(fields as ClientListField[], ...clients);
      expect(own).toEqual(roster(ours, 2025, "2026-04-20", "latest", chosen));
    }
  );

  it("names the cells that cannot be read under the preparer's headings", () => {
    const list = [
      ["Name", "ST", "Est. total tax", "W/H", "ES paid"],
      ["Abbott", "Texass", "n/a", 6000, "TBD"],
    ];
    expect(
      roster(list, 2025, "2026-04-10", "", [["Client"], ["Regular due date"], ["Unreadable"]])
    ).toEqual([
      ["Client", "Regular due date", "Unreadable"],
      ["Abbott", expect.objectContaining({ code: "#VALUE!" }), expect.any(String)],
    ]);
    const [, [, , unreadable] = []] = roster(list, 2025, "2026-04-10", "", [
      ["Client"],
      ["Regular due date"],
      ["Unreadable"],
    ]);
    expect(unreadable).toContain('ST: "Texass"');
    expect(unreadable).toContain('Est. total tax: "n/a"');
    expect(unreadable).toContain('ES paid: "TBD"');
    expect(unreadable).not.toContain("W/H");
  });

  it("leaves out a row with totals, and says so", () => {
    const list = [
      ["Client", "Total tax", "Total payments"],
      ["Alder", 20000, 15000],
      ["TOTAL", 20000, 15000],
    ];
    expect(
      roster(list, 2025, "2026-04-10", "", [["Client"], ["Balance due"], ["Unreadable"]])[2]
    ).toEqual(["", "", "a total, not a client"]);
  });

  it("takes yes in a column of requests as a plan, and asks for the date once the due date has passed", () => {
    const list = [
      ["Client", "Total tax", "Total payments", "Extension filed", "Planned filing"],
      ["Alder", 20000, 15000, "yes", "2026-10-15"],
      ["Cress", 20000, 15000, "no", "2026-10-15"],
    ];
    const chosen = [["Penalties and interest (planned)"], ["Confirm first"]];
    const [, [extended, toDo] = [], [late] = []] = roster(
      list,
      2025,
      "2026-05-20",
      "latest",
      chosen
    );
    const with_ = (asked: string) =>
      inCell(charges, 2025, 20000, 15000, "2026-10-15", "2026-10-15", asked, "", "", "latest");
    expect(extended).toEqual(with_("yes"));
    expect(late).toEqual(with_("no"));
    expect(toDo).toBe("the extension is entered as yes, without the date of the request");
  });

  it("answers what to pay now: the whole balance without a cushion, less what went with a request", () => {
    const list = [
      ["Client", "Total tax", "Payments", "Paid with request", "Cushion", "Requested", "Paid on"],
      ["Alder", 20000, 15000, 2000, "5%", "", ""],
      ["Cress", 20000, 15000, 2000, "5%", "4/10/2026", ""],
      ["Dill", 20000, 15000, 2000, "5%", "4/10/2026", "4/12/2026"],
    ];
    const at = (asOf: string) =>
      roster(list, 2025, asOf, "", [["Pay now"]])
        .slice(1)
        .flat();
    // SUGGEST with target full and no cushion is the balance due; the payment of a request not yet made is part of it.
    expect(at("2026-04-09")).toEqual([5000, 5000, 5000]);
    expect(at("2026-04-11")).toEqual([5000, 3000, 3000]);
    expect(at("2026-04-12")).toEqual([5000, 3000, 0]);
  });

  it("answers how serious the first issue is, and an error of the state in its own cell", () => {
    const list = [
      ["Client", "Total tax", "Payments", "State"],
      ["Alder", 20000, 15000, "OH"],
      ["Cress", 20000, 15000, ""],
    ];
    const chosen = [["Severity"], ["State due date"], ["Client"]];
    expect(roster(list, 2025, "2026-05-20", "", chosen).slice(1)).toEqual([
      ["problem", serial("2026-04-15"), "Alder"],
      ["problem", expect.objectContaining({ code: "#VALUE!" }), "Cress"],
    ]);
  });

  it("refuses an answer that it does not have, with the closest one", () => {
    const list = [
      ["Client", "Total tax", "Total payments"],
      ["Alder", 20000, 15000],
    ];
    expect(answerOf(() => roster(list, 2025, "2026-04-10", "", [["Balance"]]))).toEqual(
      badInput(
        'columns: "Balance" is not an answer of this function. The closest is "Balance due".'
      )
    );
  });
});
