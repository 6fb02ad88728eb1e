import fc from "fast-check";
import type { PeriodOfForm, YearOfForm } from "./annualizedByForm";
import { civil, dayNumber, daysInMonth } from "./civilDays";
import { seldom } from "./randomReturns";
import { dollars, type Day, type Typed } from "./typedFormula";

/** Cents of each part of the year: nothing, a little, usual amounts or much. */
const parts = fc.array(
  fc.oneof(
    { weight: 2, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: fc.integer({ min: 0, max: 4_000_000 }) },
    { weight: 2, arbitrary: fc.integer({ min: 0, max: 60_000_000 }) }
  ),
  { minLength: 4, maxLength: 4 }
);
const through = (amounts: readonly number[]): readonly number[] =>
  amounts.map((_, index) => amounts.slice(0, index + 1).reduce((sum, one) => sum + one, 0));
const rising = parts.map(through);
const withLosses = fc
  .tuple(parts, fc.array(fc.constantFrom(1, 1, 1, -1), { minLength: 4, maxLength: 4 }))
  .map(([amounts, signs]) => through(amounts.map((one, index) => one * (signs[index] ?? 1))));
const sometimes = <Value>(arbitrary: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.option(arbitrary, { freq: 2, nil: undefined });
const given = fc.array(fc.integer({ min: 1, max: 9_000_000 }), { minLength: 4, maxLength: 4 });

/** The rows of a block in cents. A row that is undefined is left out. */
export interface Block {
  readonly AGI: readonly number[];
  readonly "itemized deductions": readonly number[] | undefined;
  readonly "business income deduction": readonly number[] | undefined;
  readonly "net self-employment earnings": readonly number[] | undefined;
  readonly wages: readonly number[] | undefined;
  readonly "other taxes": readonly number[] | undefined;
  readonly credits: readonly number[] | undefined;
  readonly "standard deduction": readonly number[] | undefined;
  readonly "tax on the annualized income": readonly number[] | undefined;
}

/** Random amounts of four periods. */
export const blocks: fc.Arbitrary<Block> = fc.record({
  AGI: fc.oneof({ weight: 3, arbitrary: rising }, { weight: 1, arbitrary: withLosses }),
  "itemized deductions": sometimes(rising),
  "business income deduction": sometimes(rising),
  "net self-employment earnings": sometimes(withLosses),
  wages: sometimes(rising),
  "other taxes": sometimes(given),
  credits: sometimes(given),
  "standard deduction": seldom(given),
  "tax on the annualized income": seldom(given),
});

/** The year of the form for a block. */
export function yearOfForm(
  block: Block,
  yearEnd: number,
  status: string,
  isNonresident: boolean
): YearOfForm {
  const { year, month } = civil(yearEnd);
  const at = (row: readonly number[] | undefined, index: number): number => row?.[index] ?? 0;
  const periods = [0, 1, 2, 3].map((index): PeriodOfForm => ({
    income: at(block.AGI, index),
    itemized: at(block["itemized deductions"], index),
    business: at(block["business income deduction"], index),
    earnings: at(block["net self-employment earnings"], index),
    wages: at(block.wages, index),
    otherTaxes: at(block["other taxes"], index),
    credits: at(block.credits, index),
    standard: block["standard deduction"]?.[index],
    tax: block["tax on the annualized income"]?.[index],
  }));
  return { year: month === 12 ? year : year - 1, status, isNonresident, periods };
}

/** The block as a user types it, each period headed by its last date. */
export function typedBlock(block: Block, yearEnd: number): Typed {
  const { year, month } = civil(yearEnd);
  const headings = [9, 7, 4, 0].map((before): Day => {
    const count = year * 12 + month - 1 - before;
    const [itsYear, itsMonth] = [Math.floor(count / 12), (count % 12) + 1];
    return { day: dayNumber(itsYear, itsMonth, daysInMonth(itsYear, itsMonth)) };
  });
  const rows = Object.entries(block)
    .filter((row): row is [string, readonly number[]] => row[1] !== undefined)
    .map(([label, amounts]) => [label, ...amounts.map(dollars)]);
  return [["", ...headings], ...rows];
}
