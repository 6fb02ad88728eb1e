import { describe, expect, it } from "vitest";
import {
  CLIENT_LIST_HEADINGS,
  PAYMENT_PARTS,
  type ClientListField,
} from "../../../src/functions/arguments/clientListHeadings";
import { ownHeadingsOf } from "../../../src/functions/arguments/ownHeadings";
import { readHeadings } from "../../../src/functions/arguments/readHeadings";
import { InputError } from "../../../src/functions/cells/inputError";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { messyLists } from "../../fixtures/invented/messyLists";

const NEEDED = ["Total tax", "Total payments"];
const readingOf = (
  headings: readonly unknown[],
  taxYear = 2025
): (ClientListField | undefined)[] => {
  const read = readHeadings("clientList", headings, taxYear);
  return headings.map((_heading, index) => read.find((one) => one.index === index)?.field);
};
/** How a heading is read beside the two that a list must have. */
const oneOf = (heading: string, ...others: readonly string[]): ClientListField | undefined =>
  readingOf([heading, ...others])[0];

const refuses = (headings: readonly unknown[], sentences: string): void => {
  expect(() => readHeadings("clientList", headings, 2025)).toThrow(
    new InputError("clientList", sentences)
  );
};

describe("the headings of a client list", () => {
  it.each([...inventedLists, ...keptLists, ...messyLists])(
    "are read: $title",
    ({ cells: [headings = []], reading }) => {
      expect(readingOf(headings)).toEqual(reading);
    }
  );

  const own = Object.entries(CLIENT_LIST_HEADINGS).flatMap(([field, headings]) =>
    headings.map((heading) => [heading, field as ClientListField] as const)
  );
  it.each(own)("%s is %s", (heading, field) => {
    const others = NEEDED.filter(
      (one) => !(CLIENT_LIST_HEADINGS[field] as readonly string[]).includes(one)
    );
    expect(oneOf(heading, ...others)).toBe(field);
  });

  it.each(PAYMENT_PARTS)("%s is a part of the payments", (heading) => {
    expect(oneOf(heading, "Total tax")).toBe("payments");
    expect(oneOf(heading, ...NEEDED)).toBeUndefined();
  });

  it.each([
    ["Est. tax", "totalTax"],
    ["2025 total tax (est.)", "totalTax"],
    ["Federal tax liability ($)", "totalTax"],
    ["2024 total tax", "priorYearTax"],
    ["2023 total tax", undefined],
    ["State tax", undefined],
    ["Balance due", undefined],
    ["Extended due date", undefined],
    ["Date of birth", undefined],
  ])("%s is %s", (heading, field) => {
    const others = field === "totalTax" ? ["Total payments"] : NEEDED;
    expect(oneOf(heading, ...others)).toBe(field);
  });

  it("are read by the tax year of the list", () => {
    expect(readingOf(["2024 total tax", "2024 payments"], 2024)).toEqual(["totalTax", "payments"]);
  });

  it("can be replaced by the user's own", () => {
    const read = readHeadings(
      "clientList",
      ["Fed 1040 liab", "Pd in", "Who"],
      2025,
      ownHeadingsOf([
        { heading: "fed 1040 liab", means: "Total tax", place: "headings row 1" },
        { heading: "Pd  In", means: "Total payments", place: "headings row 2" },
      ])
    );
    expect(read.map(({ field }) => field)).toEqual(["totalTax", "payments", undefined]);
  });

  it.each([
    ["90% paid", undefined],
    ["% paid", undefined],
    ["Paid (percent)", undefined],
    ["90% of total tax", undefined],
    ["Cushion %", "cushion"],
    ["Target (% of tax)", undefined],
    ["Target %", "target"],
  ])("with a percent are no amount: %s", (heading, field) => {
    expect(oneOf(heading, ...NEEDED)).toBe(field);
  });

  it("that mean the same column are refused", () => {
    refuses(
      ["Est. tax", "Total tax", "Total payments"],
      'The headings "Est. tax" and "Total tax" mean the same column. Keep one of them.'
    );
  });

  it("that may say the same money twice are refused", () => {
    refuses(
      ["Total tax", "Payments", "W/H"],
      '"Payments" may include "W/H". Change the first heading to "Total payments" or to "Other payments".'
    );
  });

  it("without a required column are refused with the nearest heading", () => {
    refuses(
      ["Client", "Totl tax", "Total payments", "Fee"],
      'The first row has no heading for estimated total tax. The nearest is "Totl tax". Add that column.'
    );
    refuses(
      ["Client"],
      "The first row has no heading for estimated total tax and total payments. Add those columns."
    );
  });
});
