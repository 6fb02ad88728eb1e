import { describe, expect, it } from "vitest";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import type { FilerType } from "../../../src/calculation/filerType";
import { methodDeadline } from "../../../src/calculation/request/methodDeadline";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { METHODS } from "../../../src/rules/requestWords";
import { rulebook } from "../../../src/rules/rulebook";
import { day, state } from "../given";

interface Given {
  readonly taxYear: number;
  readonly postponement?: readonly [begins: string, ends: string];
  readonly filerType?: FilerType;
  readonly home?: string;
}

/** The deadlines for electronic payment, e-file and paper. */
function deadlines({ taxYear, postponement, filerType = "resident", home }: Given) {
  const circumstances = {
    state: home === undefined ? undefined : state(home),
    postponement: postponement && {
      begins: day(postponement[0]),
      ends: day(postponement[1]),
    },
  };
  const regular = returnDueDate(calendarTaxYear(taxYear), filerType, circumstances, rulebook);
  return METHODS.map((method) => methodDeadline(method, regular, rulebook));
}

describe("the deadline for a method", () => {
  // IR-2025-41 (April 4, 2025), as reported: requests from April 15 to May 1, 2025, only on paper.
  it("is the end of a disaster postponement for paper only", () => {
    expect(deadlines({ taxYear: 2024, postponement: ["2024-09-24", "2025-05-01"] })).toEqual([
      day("2025-04-15"),
      day("2025-04-15"),
      day("2025-05-01"),
    ]);
  });

  // 26 CFR 1.6081-4(b)(2): the due date of the return.
  it.each([
    ["without a postponement", { taxYear: 2024 }, "2025-04-15"],
    [
      "under one that ends before the due date",
      { taxYear: 2024, postponement: ["2024-09-24", "2025-04-14"] },
      "2025-04-15",
    ],
    // Notice 2021-21: e-file stayed open.
    ["in a nationwide postponement", { taxYear: 2020 }, "2021-05-17"],
  ] as const)("is the same for all methods %s", (_what, given, deadline) => {
    expect(new Set(deadlines(given))).toEqual(new Set([day(deadline)]));
  });

  // IR-2025-41; the dates without the client's postponement: section 7503, Rev. Rul. 2015-13, 26 CFR 1.6081-5, Notice 2021-21.
  it.each([
    [
      "a weekend and Patriots' Day",
      { taxYear: 2018, home: "ME", postponement: ["2019-04-01", "2019-06-03"] },
      ["2019-04-17", "2019-06-03"],
    ],
    [
      "June for a taxpayer out of the country",
      { taxYear: 2023, filerType: "out of country", postponement: ["2024-05-01", "2024-09-03"] },
      ["2024-06-17", "2024-09-03"],
    ],
    [
      "a nationwide postponement",
      { taxYear: 2020, postponement: ["2021-02-11", "2021-06-15"] },
      ["2021-05-17", "2021-06-15"],
    ],
    [
      "a postponement that begins within the days after a Saturday",
      { taxYear: 2022, postponement: ["2023-04-16", "2023-06-30"] },
      ["2023-04-18", "2023-06-30"],
    ],
  ] as const)("counts %s for the electronic methods", (_what, given, [electronic, paper]) => {
    expect(deadlines(given)).toEqual([day(electronic), day(electronic), day(paper)]);
  });
});
