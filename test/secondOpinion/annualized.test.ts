/**
 * Compares ANNUALIZED, called as a sheet calls it, with Schedule AI line by line in whole numbers (annualizedByForm.ts), for calendar
 * and fiscal years, residents and nonresidents.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inCell } from "../functions/sheet";
import { fromCatalog } from "../functions/fromCatalog";
import published from "../fixtures/published/annualized-installments.json";
import { runLength, tell } from "../soak/runLength";
import { annualizedByForm, columnByForm, installmentsByForm } from "./annualizedByForm";
import { dayNumber, daysInMonth } from "./civilDays";
import { Corners } from "./corners";
import { blocks, typedBlock, yearOfForm } from "./randomPeriods";
import { yearArgument } from "./returnArguments";
import { cellsOf, dollars, typedFormula, type Call } from "./typedFormula";

const CASES = runLength(400, 20_000);
const LINES = [3, 6, 7, 8, 10, 11, 13, 14, 17, 19, 21];

const cases = fc.record({
  block: blocks,
  year: fc.integer({ min: 2022, max: 2026 }),
  month: fc.oneof(fc.constant(12), fc.integer({ min: 1, max: 12 })),
  status: fc.constantFrom("single", "joint", "separate", "head", "survivor"),
  isNonresident: fc.constantFrom(false, false, false, true),
  required: fc.integer({ min: 1, max: 20_000_000 }),
});
type Case = typeof cases extends fc.Arbitrary<infer Value> ? Value : never;

interface Drawn extends Case {
  readonly columns: readonly Readonly<Record<number, number>>[];
  /** Twelfths of a cent. */
  readonly installments: readonly number[];
}

const regularOf = ({ required, isNonresident }: Case): readonly number[] =>
  (isNonresident ? [6, 3, 3] : [3, 3, 3, 3]).map((part) => part * required);
const some =
  (test: (column: Readonly<Record<number, number>>, one: Drawn) => boolean) =>
  (one: Drawn): boolean =>
    one.columns.some((column) => test(column, one));
const at = (column: Readonly<Record<number, number>>, number: number): number =>
  column[number] ?? NaN;

const corners = new Corners<Drawn>({
  "an installment below the regular one": (one) =>
    one.installments.some((amount, index) => amount < (regularOf(one)[index] ?? 0)),
  "an installment that recaptures": (one) =>
    one.installments.some((amount, index) => amount > (regularOf(one)[index] ?? 0)),
  "all installments regular": (one) => String(one.installments) === String(regularOf(one)),
  "no installment at all": ({ installments }) => installments.every((amount) => amount === 0),
  "itemized deductions": some((column) => at(column, 6) > at(column, 7)),
  "a loss": some((column) => at(column, 3) < 0),
  "taxable income of zero": some((column) => at(column, 11) < 0),
  "tax from the table": some((column) => at(column, 13) > 0 && at(column, 13) < 100_000),
  "tax from the worksheet": some((column) => at(column, 13) >= 100_000),
  "the limit on itemized deductions": some(
    (column, { year, block }) =>
      year === 2026 && at(column, 3) > 700_000 && block["itemized deductions"] !== undefined
  ),
  "self-employment tax": some((column) => at(column, 36) > 0),
  "credits above the tax": some((column) => at(column, 19) === 0 && at(column, 17) > 0),
  "a given tax": ({ block }) => block["tax on the annualized income"] !== undefined,
  "a given standard deduction": ({ block }) => block["standard deduction"] !== undefined,
  "a nonresident": ({ isNonresident }) => isNonresident,
  "a fiscal year": ({ month }) => month !== 12,
});

/** The tax year that begins in a year and ends with a month. */
const yearEndOf = ({ year, month }: Case): number => {
  const ends = month === 12 ? year : year + 1;
  return dayNumber(ends, month, daysInMonth(ends, month));
};
const cents = (twelfths: number): number => Math.floor((twelfths + 6) / 12);

describe("Schedule AI by the form against published installments", () => {
  it.each(published.schedules)("$case", ({ inputs, expected }) => {
    const quarter = Number(inputs.requiredAnnualPayment) / 4;
    const found = installmentsByForm(expected.dueThrough.map(Number), Array(4).fill(quarter));
    expect(found.map(String)).toEqual(expected.installments);
  });
});

describe("ANNUALIZED against the lines of the form", () => {
  it(`is the same for ${String(CASES)} random years`, () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const yearEnd = yearEndOf(drawn);
        const form = yearOfForm(drawn.block, yearEnd, drawn.status, drawn.isNonresident);
        const indices = drawn.isNonresident ? [1, 2, 3] : [0, 1, 2, 3];
        const columns = indices.map((index) => columnByForm(form, index));
        const installments = annualizedByForm(form, drawn.required);
        corners.look({ ...drawn, columns, installments });
        const call: Call = {
          name: "ANNUALIZED",
          values: [
            yearArgument(yearEnd),
            drawn.status,
            typedBlock(drawn.block, yearEnd),
            dollars(drawn.required),
            drawn.isNonresident ? "nonresident" : undefined,
          ],
        };
        const rows = inCell(fromCatalog("ANNUALIZED"), ...cellsOf(call)) as unknown[][];
        const row = (number: number): readonly unknown[] =>
          rows.find(([first]) => first === number)?.slice(2, -1) ?? [];
        const found = Object.fromEntries([...LINES, 27].map((number) => [number, row(number)]));
        const opinion = Object.fromEntries(
          LINES.map((number) => [number, columns.map((column) => at(column, number))])
        );
        const required = installments.map((amount) => dollars(cents(amount)));
        if (JSON.stringify(found) !== JSON.stringify({ ...opinion, 27: required }))
          throw new Error(
            `${typedFormula(call)} has ${JSON.stringify(found)}, by the form ${JSON.stringify({ ...opinion, 27: required })}`
          );
      }),
      { numRuns: CASES, seed: 2210 }
    );
    tell(`ANNUALIZED: ${String(CASES)} years the same; cases of each kind:`);
    corners.lines().forEach(tell);
    expect(corners.missed()).toEqual([]);
  });
});
