import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import { requestMethods } from "../../../src/calculation/request/requestMethods";
import { calendarTaxYear, type TaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { METHODS } from "../../../src/rules/requestWords";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, dollarsUpTo, filers, RUNS } from "../arbitrary";
import { day, fiscalYear, usd } from "../given";

interface Given {
  readonly taxYear?: TaxYear;
  readonly paidWithRequest?: string;
  readonly asOf?: string;
  readonly rejectedOn?: string;
  readonly postponement?: readonly [begins: string, ends: string];
}

function methodsOf({ taxYear = calendarTaxYear(2025), paidWithRequest = "0", ...given }: Given) {
  const { rejectedOn } = given;
  const postponement = given.postponement && {
    begins: day(given.postponement[0]),
    ends: day(given.postponement[1]),
  };
  return requestMethods(
    {
      taxYear,
      dates: clientDates(taxYear, "resident", { postponement }, rulebook),
      paidWithRequest: usd(paidWithRequest),
      asOf: day(given.asOf ?? "2026-04-10"),
      rejectedOn: rejectedOn === undefined ? undefined : day(rejectedOn),
    },
    rulebook
  );
}

const shown = (given: Given) =>
  methodsOf(given).map(({ method, closedBecause }) => `${method}: ${closedBecause ?? "open"}`);
const late = "the deadline has passed";

// Form 4868 (2025), how to file: an electronic payment marked as an extension payment, e-file, paper; fiscal years on paper only.
describe("the methods to make a request", () => {
  it("are all available with a payment, the payment itself first", () => {
    const open = ["electronic payment: open", "e-file: open", "paper: open"];
    expect(shown({ paidWithRequest: "1500" })).toEqual(open);
    expect(shown({ paidWithRequest: "0.01" })).toEqual(open);
  });

  // 26 U.S.C. 6081(a), 7508A(a): both due dates are the end of the postponement.
  it("are not needed where a postponement leaves a request no more time to give", () => {
    const given = { taxYear: calendarTaxYear(2024), paidWithRequest: "100" };
    const postponement = ["2025-01-07", "2025-10-15"] as const;
    const none = "a request gives no more time";
    for (const asOf of ["2025-04-01", "2025-10-15"])
      expect(shown({ ...given, asOf, postponement })).toEqual([
        `electronic payment: ${none}`,
        `e-file: ${none}`,
        `paper: ${none}`,
      ]);
    expect(shown({ ...given, asOf: "2025-10-16", postponement })).toContain(`paper: ${late}`);
    const shorter = ["2025-01-07", "2025-10-14"] as const;
    expect(shown({ ...given, asOf: "2025-04-01", postponement: shorter })[0]).toBe(
      "electronic payment: open"
    );
  });

  it("without a payment begin with e-file", () => {
    expect(shown({})).toEqual([
      "e-file: open",
      "paper: open",
      "electronic payment: no payment with the request",
    ]);
  });

  it("of a fiscal year are paper alone, with payment and without", () => {
    const taxYear = fiscalYear("2025-06-30");
    const closed = ["electronic payment", "e-file"].map(
      (method) => `${method}: fiscal-year filers must use paper`
    );
    for (const paidWithRequest of ["0", "1500"])
      expect(shown({ taxYear, paidWithRequest, asOf: "2025-10-15" })).toEqual([
        "paper: open",
        ...closed,
      ]);
  });

  // 26 CFR 1.6081-4(b)(2): by the due date of the return.
  it("are available on the deadline and not after it", () => {
    expect(shown({ paidWithRequest: "1", asOf: "2026-04-15" })).toContain("paper: open");
    expect(shown({ paidWithRequest: "1", asOf: "2026-04-16" })).toEqual(
      METHODS.map((method) => `${method}: ${late}`)
    );
  });

  it("each say what they need, the proof to keep and the source", () => {
    for (const method of methodsOf({ paidWithRequest: "1" })) {
      expect(written(method.deadline)).toBe("2026-04-15");
      expect(method.how).not.toBe("");
      expect(method.proof).not.toBe("");
      expect(method.source.citation).toContain("Form 4868");
    }
  });
});

// IR-2025-41 (April 4, 2025), as reported: from April 15 to May 1, 2025, only on paper Form 4868.
describe("under a disaster postponement", () => {
  const georgia = {
    taxYear: calendarTaxYear(2024),
    postponement: ["2024-09-24", "2025-05-01"],
  } as const;

  it("all methods are available on the regular due date without the postponement", () => {
    expect(shown({ ...georgia, asOf: "2025-04-15", paidWithRequest: "100" })).toEqual([
      "electronic payment: open",
      "e-file: open",
      "paper: open",
    ]);
  });

  it.each([
    ["2025-04-16", "open"],
    ["2025-05-01", "open"],
    ["2025-05-02", late],
  ])("only paper is available after it, on %s: %s", (asOf, paper) => {
    const methods = shown({ ...georgia, asOf, paidWithRequest: "100" });
    expect(methods).toHaveLength(3);
    expect(methods).toContain(`paper: ${paper}`);
    expect(methods).toContain(`electronic payment: ${late}`);
    expect(methods).toContain(`e-file: ${late}`);
  });

  // Pub. 1345: five days from the due date, which for e-file the postponement does not move.
  it.each([
    ["2025-04-20", ["e-file: open", "paper: open"]],
    ["2025-04-21", ["paper: open"]],
  ])("a rejected request can be resent on %s by %s", (asOf, open) => {
    const methods = shown({ ...georgia, asOf, rejectedOn: "2025-04-15" });
    expect(methods.filter((method) => method.endsWith("open"))).toEqual(open);
  });
});

// Pub. 1345: a request resent within five calendar days after the due date is on time; tax professionals count from the rejection.
describe("after a rejection", () => {
  it.each([
    ["2026-04-15", "2026-04-14", "e-file: open", "2026-04-15"],
    ["2026-04-15", "2026-04-15", "e-file: open", "2026-04-20"],
    ["2026-04-15", "2026-04-20", "e-file: open", "2026-04-20"],
    ["2026-04-15", "2026-04-21", `e-file: ${late}`, "2026-04-20"],
    ["2026-04-16", "2026-04-20", "e-file: open", "2026-04-20"],
    ["2026-04-16", "2026-04-21", `e-file: ${late}`, "2026-04-20"],
    ["2026-04-14", "2026-04-14", "e-file: open", "2026-04-19"],
    ["2026-04-14", "2026-04-19", "e-file: open", "2026-04-19"],
    ["2026-04-14", "2026-04-20", `e-file: ${late}`, "2026-04-19"],
    ["2026-04-11", "2026-04-16", "e-file: open", "2026-04-16"],
    ["2026-04-11", "2026-04-17", `e-file: ${late}`, "2026-04-16"],
    ["2026-04-10", "2026-04-15", "e-file: open", "2026-04-15"],
    ["2026-04-10", "2026-04-16", `e-file: ${late}`, "2026-04-15"],
    ["2026-04-01", "2026-04-15", "e-file: open", "2026-04-15"],
    ["2026-04-01", "2026-04-16", `e-file: ${late}`, "2026-04-15"],
  ])("on %s, e-file on %s is %s until %s", (rejectedOn, asOf, standing, lastDay) => {
    const given = { asOf, rejectedOn };
    expect(shown(given)).toContain(standing);
    for (const { method, deadline: found } of methodsOf(given))
      expect(found).toBe(method === "e-file" ? day(lastDay) : day("2026-04-15"));
  });

  it("only e-file is available after the deadline, and the payment is still late", () => {
    expect(
      shown({ paidWithRequest: "1500", asOf: "2026-04-17", rejectedOn: "2026-04-15" })
    ).toEqual(["e-file: open", `electronic payment: ${late}`, `paper: ${late}`]);
  });

  it("a rejection after the as-of date does not count, one on it does", () => {
    expect(shown({ asOf: "2026-04-16", rejectedOn: "2026-04-17" })).toContain(`e-file: ${late}`);
    expect(shown({ asOf: "2026-04-16", rejectedOn: "2026-04-16" })).toContain("e-file: open");
  });

  it("a fiscal-year filer still uses paper, with the same deadline", () => {
    const taxYear = fiscalYear("2025-06-30");
    const given = { taxYear, asOf: "2025-10-17", rejectedOn: "2025-10-14" };
    expect(shown(given)).toContain("e-file: fiscal-year filers must use paper");
    expect(shown(given)).toContain(`paper: ${late}`);
  });

  it("has no answer from the rejection on if the perfection period is not in its table", () => {
    const taxYear = calendarTaxYear(2021);
    const rejectedOn = "2022-04-15";
    expect(shown({ taxYear, asOf: "2022-04-14", rejectedOn })).toContain("e-file: open");
    for (const asOf of ["2022-04-15", "2022-04-18", "2022-04-19"])
      expect(() => shown({ taxYear, asOf, rejectedOn })).toThrow(
        "There is no figure for 4/18/2022. The table begins on 1/1/2023 (rules/perfection-period.json)"
      );
  });
});

// rules/request-methods.json; deadlines: test/fixtures/published/due-dates.json.
describe("the tax years covered", () => {
  it.each([
    [2016, "2017-04-18"],
    [2025, "2026-04-15"],
  ])("include %d", (year, lastDay) => {
    const taxYear = calendarTaxYear(year);
    expect(methodsOf({ taxYear, asOf: lastDay })[0]).toMatchObject({
      method: "e-file",
      deadline: day(lastDay),
    });
  });

  it.each([
    [2015, "There is no figure for 12/31/2015. The table begins on 12/31/2016"],
    [2012, "There is no figure for 12/31/2012. The table begins on 12/31/2016"],
    [2027, "There is no figure for 12/31/2027. The table covers dates through 12/31/2025"],
  ])("do not include %d", (year, sentence) => {
    const methods = () =>
      methodsOf({ taxYear: calendarTaxYear(year), asOf: `${String(year + 1)}-04-01` });
    expect(methods).toThrow(NotInTableError);
    expect(methods).toThrow(`${sentence} (rules/request-methods.json)`);
  });
});

describe("the methods, for any filer on any date", () => {
  const years = fc.integer({ min: 2022, max: 2025 }).map(calendarTaxYear);
  const rejections = fc.option(daysFrom("2023-01-01", "2026-12-31"), { nil: undefined });

  it("are all told, the open ones first, each kind in the order of the form", () => {
    fc.assert(
      fc.property(
        years,
        filers,
        dollarsUpTo(5),
        daysFrom("2023-04-01", "2026-07-01"),
        rejections,
        (taxYear, filerType, paidWithRequest, asOf, rejectedOn) => {
          const dates = clientDates(taxYear, filerType, {}, rulebook);
          const input = { taxYear, dates, paidWithRequest, asOf, rejectedOn };
          const methods = requestMethods(input, rulebook);
          const places = methods.map(({ method }) => METHODS.indexOf(method));
          const isOpen = methods.map(({ closedBecause }) => closedBecause === undefined);
          expect(places.toSorted()).toEqual([0, 1, 2]);
          expect(isOpen).toEqual(isOpen.toSorted((one, other) => Number(other) - Number(one)));
          const open = places.filter((_place, index) => isOpen[index]);
          expect(open).toEqual(open.toSorted());
        }
      ),
      RUNS
    );
  });

  it("close and do not open again as days go by, but for e-file after a rejection", () => {
    fc.assert(
      fc.property(
        years,
        filers,
        dollarsUpTo(5),
        fc.integer({ min: -10, max: 10 }),
        fc.integer({ min: -10, max: 10 }),
        (taxYear, filerType, paidWithRequest, days, rejected) => {
          const dates = clientDates(taxYear, filerType, {}, rulebook);
          const { lastDay } = dates.regular;
          const asOf = addDays(lastDay, days);
          const openOn = (rejectedOn: typeof asOf | undefined) =>
            requestMethods({ taxYear, dates, paidWithRequest, asOf, rejectedOn }, rulebook)
              .filter(({ closedBecause }) => closedBecause === undefined)
              .map(({ method }) => method);
          expect(openOn(undefined).length > 0).toBe(days <= 0);
          const again = rejected > days ? 0 : Math.max(0, Math.min(5, rejected + 5));
          const open = openOn(addDays(lastDay, rejected));
          expect(open.includes("e-file")).toBe(days <= again);
          expect(open.includes("paper")).toBe(days <= 0);
        }
      ),
      RUNS
    );
  });
});
