import { bench, describe } from "vitest";
import { interest } from "../../src/functions/penalty/interest";
import { ratePeriods } from "../../src/calculation/penalty/ratePeriods";
import { rulebook } from "../../src/rules/rulebook";
import { calendarDate } from "../../src/calendar/calendarDate";
import { answers } from "../secondOpinion/sheet";

/** Fewer than the different formulas that the workbook library keeps. */
const ROWS = 2_000;
const DUE = 46_127; // 2026-04-15
const LAST = "2026-12-31";

const periods = ratePeriods(calendarDate("2026-04-15"), calendarDate(LAST), {
  table: rulebook.underpaymentRate,
});
const starts = periods.map(({ from }) => from);
const ends = periods.map(({ to }) => to);
const daily = periods.map(({ rate, divisor }) => Math.log(1 + rate.toNumber() / divisor));
const rows = String(periods.length);
const [start, end, logarithm] = ["H", "I", "J"].map((column) => `${column}1:${column}${rows}`);

const amounts = Array.from({ length: ROWS }, (_, row) => 1_000 + row * 3.11);
const paid = amounts.map((_, row) => DUE + 1 + (row % 250));

/** The same interest as one ordinary formula per row, with a table of rate periods beside it. */
const formulas = amounts.map((amount, row) => {
  const until = `IF(${end}<${paid[row]},${end},${paid[row]})`;
  const days = `IF(${until}>${start},${until}-${start},0)`;
  return `ROUND(${amount}*(EXP(SUMPRODUCT(${days},${logarithm}))-1),2)`;
});

const column = (values: readonly number[]): unknown[][] => values.map((value) => [value]);
const ours = (): unknown[][] => interest(column(amounts), [[DUE]], column(paid));
const theirs = (): readonly number[] => answers(formulas, [starts, ends, daily]);

const different = theirs().filter((value, row) => value !== ours()[row]?.[0]);
if (different.length > 0) throw new Error("the worksheet formula does not give the same interest");

describe(`interest on ${String(ROWS)} rows`, () => {
  bench("EXT.INTEREST, one call for the column", () => {
    ours();
  });
  bench("an ordinary worksheet formula per row, by the workbook library", () => {
    theirs();
  });
});
