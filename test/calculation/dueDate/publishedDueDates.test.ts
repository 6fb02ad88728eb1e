import { describe, expect, it } from "vitest";
import type { DueDate } from "../../../src/calculation/dueDate/dueDate";
import { extendedDueDate } from "../../../src/calculation/dueDate/extendedDueDate";
import { installmentDueDate } from "../../../src/calculation/dueDate/installmentDueDate";
import { paymentDueDate } from "../../../src/calculation/dueDate/paymentDueDate";
import { returnDueDate } from "../../../src/calculation/dueDate/returnDueDate";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import dueDates from "../../fixtures/published/due-dates.json";
import installments from "../../fixtures/published/installments.json";
import { written } from "../../../src/calendar/calendarDate";
import { state } from "../given";

/** The last day before a nationwide postponement moved it. */
const beforePostponement = ({ lastDay, moves }: DueDate): string =>
  written(moves.find((move) => move.because === "nationwide postponement")?.from ?? lastDay);

const numbers = [1, 2, 3, 4] as const;

describe("due dates of 2010 to 2028", () => {
  it.each(dueDates.cases)("$case ($source.mark)", ({ inputs, expected, postponed }) => {
    const year = calendarTaxYear(inputs.taxYear);
    const found: Readonly<Record<string, DueDate[]>> = {
      regular: [
        returnDueDate(year, "resident", {}, rulebook),
        returnDueDate(year, "resident", { state: state("NY") }, rulebook),
        paymentDueDate(year, "resident", {}, rulebook),
        paymentDueDate(year, "out of country", {}, rulebook),
      ],
      "Maine and Massachusetts": ["ME", "MA"].flatMap((code) => [
        returnDueDate(year, "resident", { state: state(code) }, rulebook),
        paymentDueDate(year, "resident", { state: state(code) }, rulebook),
      ]),
      "out of country": [
        returnDueDate(year, "out of country", {}, rulebook),
        returnDueDate(year, "nonresident", {}, rulebook),
        paymentDueDate(year, "nonresident", {}, rulebook),
      ],
      extended: [
        extendedDueDate(year, "resident", {}, rulebook),
        extendedDueDate(year, "out of country", {}, rulebook),
        extendedDueDate(year, "resident", { state: state("MA") }, rulebook),
      ],
    };
    const dates = found[inputs.date] ?? [];
    expect(dates.length).toBeGreaterThan(0);
    for (const date of dates) {
      expect(beforePostponement(date)).toBe(expected);
      expect(written(date.lastDay)).toBe(postponed?.to ?? expected);
    }
  });
});

describe("estimated tax installments of 2019 to 2028", () => {
  it.each(installments.cases)("$case ($source.mark)", ({ inputs, expected }) => {
    const number = numbers.find((known) => known === inputs.number) ?? 1;
    const year = calendarTaxYear(inputs.taxYear);
    const due = installmentDueDate(year, "resident", number, undefined, rulebook);
    expect(number).toBe(inputs.number);
    expect(written(due.lastDay)).toBe(expected);
  });
});
