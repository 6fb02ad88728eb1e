/**
 * DUE, INTEREST, LATEFILE, LATEPAY and CHARGES against ordinary worksheet formulas (ordinaryFormulas.ts), calculated by a third-party spreadsheet
 * engine ("@cj-tech-master/excelts"), with the holidays of a third-party package.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runLength, tell } from "../soak/runLength";
import { answerOfCall } from "./answerOfCall";
import { dayNumber } from "./civilDays";
import {
  figureIn,
  formulaOf,
  rowOf,
  tables,
  type Figure,
  type OrdinaryReturn,
} from "./ordinaryFormulas";
import { RATES_END } from "./quarterlyRates";
import { serialOfDay, typedFormula, type Call, type Typed } from "./typedFormula";
import { workbookRows } from "./workbookRows";

const ROWS = runLength(100, 2_000);
/** The engine is slow on sheets with many different formulas. */
const ROWS_A_SHEET = 250;

const LAST = serialOfDay(RATES_END);

/** Dates near the limits of the law: around April, June and October 15, sixty days later, and years later. */
const days = fc.record({
  month: fc.constantFrom(4, 4, 5, 6, 7, 8, 10, 11, 12, 15, 52),
  days: fc.oneof(fc.integer({ min: -2, max: 4 }), fc.integer({ min: 0, max: 300 })),
});

const returns: fc.Arbitrary<OrdinaryReturn> = fc
  .record({
    taxYear: fc.integer({ min: 2009, max: 2025 }),
    totalCents: fc.oneof(
      fc.integer({ min: 0, max: 80_000 }),
      fc.integer({ min: 0, max: 9_000_000 })
    ),
    tenths: fc.constantFrom(0, 5, 9, 9, 10, 11),
    more: fc.constantFrom(-1, 0, 0, 1),
    paidOn: days,
    filedOn: fc.oneof(days, fc.constant(undefined)),
    extended: fc.constantFrom("yes" as const, "" as const),
    state: fc.constantFrom("", "TX", "ME", "MA"),
    filerType: fc.constantFrom("", "", "out of country", "nonresident"),
  })
  .map(({ totalCents, tenths, more, paidOn, filedOn, ...drawn }) => {
    const dayAt = ({ month, days: after }: typeof paidOn): number =>
      Math.min(
        LAST,
        serialOfDay(
          dayNumber(drawn.taxYear + 1 + Math.floor((month - 1) / 12), ((month - 1) % 12) + 1, 15)
        ) + after
      );
    const paid = Math.max(0, Math.floor((totalCents * tenths) / 10) + more);
    return {
      ...drawn,
      totalTax: totalCents / 100,
      paidOnTime: paid / 100,
      paidOn: dayAt(paidOn),
      filedOn: dayAt(filedOn ?? paidOn),
    };
  });

const given = fc.sample(returns, { numRuns: ROWS, seed: 4868 });

/** The figures of every row, sheet by sheet. */
const answered = Array.from({ length: Math.ceil(ROWS / ROWS_A_SHEET) }, (_, sheet) =>
  given.slice(sheet * ROWS_A_SHEET, (sheet + 1) * ROWS_A_SHEET)
).flatMap((part) =>
  workbookRows({ ...tables, Returns: part.map((one, index) => rowOf(one, index + 1)) }, "Returns")
);

const onDay = (serial: number): Typed => ({ day: serial - serialOfDay(0) });
const word = (text: string): Typed => (text === "" ? undefined : text);
const numberIn = (row: number, figure: Figure): number => {
  const found = figureIn(answered[row] ?? [], figure);
  if (typeof found !== "number")
    throw new TypeError(`=${formulaOf(figure, (row % ROWS_A_SHEET) + 1)} returns ${String(found)}`);
  return found;
};

interface Compared {
  readonly name: string;
  readonly figure: Figure;
  /** The arguments, from the return and its row. */
  readonly values: (one: OrdinaryReturn, row: number) => readonly Typed[];
  /** The smallest percent of rows with a result above zero. */
  readonly telling: number;
}

const COMPARED: readonly Compared[] = [
  {
    name: "DUE",
    figure: "filingLast",
    values: ({ taxYear, state, filerType }) => [taxYear, word(state), word(filerType)],
    telling: 100,
  },
  {
    name: "PAYBY",
    figure: "payingLast",
    values: ({ taxYear, state, filerType }) => [taxYear, word(state), word(filerType)],
    telling: 100,
  },
  {
    name: "EXTENDED",
    figure: "extendedLast",
    values: ({ taxYear, state, filerType }) => [taxYear, word(state), word(filerType)],
    telling: 100,
  },
  {
    name: "INTEREST",
    figure: "interestOnTax",
    values: ({ paidOn }, row) => {
      const from = numberIn(row, "payingFrom");
      return [numberIn(row, "late"), onDay(from), onDay(Math.max(from, paidOn))];
    },
    telling: 35,
  },
  {
    name: "LATEFILE",
    figure: "lateFileAlone",
    values: ({ taxYear, filedOn, extended, state, filerType }, row) => [
      taxYear,
      numberIn(row, "netTax"),
      onDay(filedOn),
      word(extended),
      word(state),
      word(filerType),
    ],
    telling: 20,
  },
  {
    name: "LATEPAY",
    figure: "latePay",
    values: ({ taxYear, paidOn, state, filerType }, row) => [
      taxYear,
      // The 90% test, which this function does not know, removes the penalty.
      numberIn(row, "presumed") === 1 ? 0 : numberIn(row, "netTax"),
      onDay(paidOn),
      word(state),
      word(filerType),
    ],
    telling: 30,
  },
  {
    name: "CHARGES",
    figure: "charges",
    values: ({ taxYear, totalTax, paidOnTime, paidOn, filedOn, extended, state, filerType }) => [
      taxYear,
      totalTax,
      paidOnTime,
      onDay(paidOn),
      onDay(filedOn),
      word(extended),
      word(state),
      word(filerType),
    ],
    telling: 35,
  },
];

describe(`${String(ROWS)} returns in ordinary worksheet formulas`, () => {
  it.each(COMPARED)("have the same results as $name", ({ name, figure, values, telling }) => {
    const differences: string[] = [];
    let more = 0;
    given.forEach((one, row) => {
      const call: Call = { name, values: values(one, row) };
      // A sum of four amounts in cents may differ by some billionths in binary.
      const theirs = Math.round(numberIn(row, figure) * 100) / 100;
      const ours = answerOfCall(call);
      if (theirs > 0) more++;
      if (ours !== theirs)
        differences.push(
          `${typedFormula(call)} is ${String(ours)}, =${formulaOf(figure, (row % ROWS_A_SHEET) + 1)} is ${String(theirs)}`
        );
    });
    expect(differences).toEqual([]);
    expect(more).toBeGreaterThanOrEqual((telling * ROWS) / 100);
    tell(`${name}: ${String(ROWS)} rows the same, ${String(more)} of them more than zero`);
  });
});
