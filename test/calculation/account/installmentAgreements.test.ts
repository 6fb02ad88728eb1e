import { describe, expect, it } from "vitest";
import {
  installmentAgreements,
  type AgreementInput,
  type InstallmentAgreements,
} from "../../../src/calculation/account/installmentAgreements";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { written } from "../../../src/calendar/calendarDate";
import { day, usd } from "../given";

function agreements(owed: string, given: Partial<AgreementInput> = {}): InstallmentAgreements {
  const input = {
    owed: usd(owed),
    unpaidTax: usd(owed),
    agreementOn: day("2026-07-01"),
    months: undefined,
    ...given,
  };
  return installmentAgreements(input, rulebook);
}

const isOpen = (kind: string, { choices }: InstallmentAgreements): boolean | undefined =>
  choices.find((choice) => choice.kind.kind === kind && !choice.kind.isContradicted)?.isOpen;

describe("the kinds of agreement open to a balance", () => {
  // The example IA-THRESHOLDS: IRS pages as reported; 26 U.S.C. 6159(c) for the guaranteed agreement
  it.each([
    ["short-term plan", "99999", true],
    ["short-term plan", "99999.99", true],
    ["short-term plan", "100000", false],
    ["simple payment plan", "50000", true],
    ["simple payment plan", "50001", false],
    ["form 9465", "50000", true],
    ["form 9465", "50000.01", false],
    ["guaranteed agreement", "10000", true],
    ["guaranteed agreement", "10001", false],
  ])("%s of $%s: %s", (kind, owed, expected) => {
    expect(isOpen(kind, agreements(owed))).toBe(expected);
  });

  it("limit a guaranteed agreement by the tax alone, and the others by all that is owed", () => {
    const found = agreements("51000", { unpaidTax: usd("10000") });
    expect(isOpen("guaranteed agreement", found)).toBe(true);
    expect(isOpen("simple payment plan", found)).toBe(false);
  });

  // irs.gov, payment plans, June 28, 2026, and Form 9465 instructions (July 2024): tax, penalties and interest together
  it("limit a short-term plan by all that is owed, in both texts", () => {
    const { choices } = agreements("100001", { unpaidTax: usd("90000") });
    const short = choices.filter(({ kind }) => kind.kind === "short-term plan");
    expect(short.map(({ isOpen: open }) => open)).toEqual([false, false]);
  });

  // The same texts: 180 days. September 1, 2026 plus 180 days is February 28, 2027; the sixth payment is due on the next day.
  it("end a short-term plan within 180 days", () => {
    const { choices } = agreements("5000", { agreementOn: day("2026-09-01") });
    const short = choices.filter(({ kind }) => kind.kind === "short-term plan");
    expect(short.map(({ months }) => months)).toEqual([5, 5]);
  });

  it("show the text that contradicts the limit of the short-term plan", () => {
    const { choices } = agreements("100000");
    const short = choices.filter(({ kind }) => kind.kind === "short-term plan");
    expect(short.map(({ isOpen: open, kind }) => [open, kind.isContradicted])).toEqual([
      [false, false],
      [true, true],
    ]);
  });

  it("have the number of payments that ends within the longest term", () => {
    const months = ({ choices }: InstallmentAgreements): readonly unknown[] =>
      choices.map((choice) => [choice.kind.kind, choice.months, choice.isOpen]);
    // July 1 plus 180 days is December 28: five monthly payments. 6159(c)(4): three years.
    expect(months(agreements("5000"))).toEqual([
      ["short-term plan", 5, true],
      ["short-term plan", 5, true],
      ["guaranteed agreement", 36, true],
      ["simple payment plan", 120, true],
      ["form 9465", 72, true],
    ]);
    expect(months(agreements("5000", { months: 37 }))).toEqual([
      ["short-term plan", 37, false],
      ["short-term plan", 37, false],
      ["guaranteed agreement", 37, false],
      ["simple payment plan", 37, true],
      ["form 9465", 37, true],
    ]);
  });

  it("had 72 months online until March 4, 2025, and have ten years from the next day", () => {
    const term = (on: string): readonly (string | undefined)[] => {
      const { choices } = agreements("5000", { agreementOn: day(on) });
      const kind = choices.find((choice) => choice.kind.kind === "simple payment plan")?.kind;
      return [kind?.term.toFixed(), kind?.termUnit];
    };
    expect(term("2025-03-04")).toEqual(["72", "months"]);
    expect(term("2025-03-05")).toEqual(["120", "months"]);
  });

  // The date of each text, so that the preparer sees its age: the pages and instructions as copied or reported; the statute as of July 2026
  it.each([
    ["2017-01-01", ["guaranteed agreement 2026-07-18"]],
    ["2024-06-30", ["guaranteed agreement 2026-07-18"]],
    [
      "2024-07-01",
      [
        "short-term plan 2026-06-28",
        "short-term plan 2024-07-01",
        "guaranteed agreement 2026-07-18",
        "simple payment plan 2025-04-07",
        "form 9465 2026-06-28",
      ],
    ],
    [
      "2026-12-31",
      [
        "short-term plan 2026-06-28",
        "short-term plan 2024-07-01",
        "guaranteed agreement 2026-07-18",
        "simple payment plan 2025-04-07",
        "form 9465 2026-06-28",
      ],
    ],
  ])("of %s are those of the texts %j", (on, expected) => {
    const { choices } = agreements("5000", { agreementOn: day(on) });
    expect(choices.map(({ kind }) => `${kind.kind} ${written(kind.textDated)}`)).toEqual(expected);
  });

  it("are agreements under section 6159, except the short-term plan", () => {
    for (const on of ["2024-07-01", "2026-07-01"])
      expect(
        agreements("5000", { agreementOn: day(on) }).choices.map(({ kind }) =>
          kind.isInstallmentAgreement ? kind.limitOf : "none"
        )
      ).toEqual([
        "none",
        "none",
        "tax",
        "tax, penalties and interest",
        "tax, penalties and interest",
      ]);
  });

  it("limited the plan before March 5, 2025 to $50,000 as well", () => {
    const at = (owed: string): boolean | undefined =>
      isOpen("simple payment plan", agreements(owed, { agreementOn: day("2025-03-04") }));
    expect([at("50000"), at("50000.01")]).toEqual([true, false]);
  });

  it("are refused for a date outside the tables", () => {
    for (const on of ["2016-12-31", "2027-01-01"])
      expect(() => agreements("5000", { agreementOn: day(on) })).toThrow(NotInTableError);
  });
});

describe("the setup fees", () => {
  const KINDS = [
    "direct debit, online",
    "direct debit, phone or mail",
    "other payments, online",
    "other payments, phone or mail",
    "low income, other payments",
    "change, online",
    "change, phone or mail",
  ];
  const fees = (on: string): readonly unknown[] => {
    const found = agreements("5000", { agreementOn: day(on) }).fees;
    return KINDS.map((payment) =>
      found.find((fee) => fee.payment === payment && !fee.isContradicted)?.fee.toNumber()
    );
  };

  // The example IA-FEES: T.D. 9798 (81 FR 86955); a copy of the IRS page of August 25, 2022; its report of 2026
  it.each([
    ["2017-01-01", [31, 107, 149, 225, 43, undefined, 89]],
    ["2020-10-31", [31, 107, 149, 225, 43, undefined, 89]],
    ["2020-11-01", [31, 107, undefined, 225, 43, undefined, 89]],
    ["2022-08-25", [31, 107, 130, 225, 43, 10, 89]],
    ["2024-06-30", [31, 107, 130, 225, 43, 10, 89]],
    ["2024-07-01", [22, 107, 69, 178, 43, 10, 89]],
    ["2026-12-31", [22, 107, 69, 178, 43, 10, 89]],
  ])("of %s are %j", (on, expected) => {
    expect(fees(on)).toEqual(expected);
  });

  it("are none for low income by direct debit and for a short-term plan", () => {
    // 26 U.S.C. 6159(f)(2)(A); the IRS page as reported
    const free = (on: string): readonly string[] =>
      agreements("5000", { agreementOn: day(on) })
        .fees.filter(({ fee }) => fee.isZero())
        .map(({ payment }) => payment);
    expect(free("2026-07-01")).toEqual(["short-term plan", "low income, direct debit"]);
    // the fees of the page are those from July 1, 2024 on
    expect(free("2024-07-01")).toEqual(["short-term plan", "low income, direct debit"]);
    expect(free("2024-06-30")).toEqual(["low income, direct debit"]);
  });

  it.each([
    ["2017-01-01", Array<string>(6).fill("2016-12-02")],
    ["2022-08-24", Array<string>(5).fill("2016-12-02")],
    [
      "2022-08-25",
      [
        "2016-12-02",
        "2016-12-02",
        "2022-08-25",
        "2016-12-02",
        "2026-07-18",
        "2016-12-02",
        "2022-08-25",
        "2016-12-02",
      ],
    ],
    [
      "2026-03-03",
      [
        "2026-06-28",
        "2026-06-28",
        "2026-03-03",
        "2026-06-28",
        "2026-06-28",
        "2026-06-28",
        "2026-07-18",
        "2026-06-28",
        "2026-06-28",
        "2026-06-28",
      ],
    ],
  ])("of %s are from texts of the dates %j", (on, expected) => {
    const { fees: found } = agreements("5000", { agreementOn: day(on) });
    expect(found.map(({ textDated }) => written(textDated))).toEqual(expected);
  });

  it("show the fee of $29 that one text names, from the date of its page", () => {
    const contradicted = (on: string): readonly number[] =>
      agreements("5000", { agreementOn: day(on) })
        .fees.filter(({ isContradicted }) => isContradicted)
        .map(({ fee }) => fee.toNumber());
    expect([contradicted("2026-03-02"), contradicted("2026-03-03")]).toEqual([[], [29]]);
  });
});
