/**
 * LEDGER, called as a sheet calls it, against an account whose every row is worked out month by month and day by day from the words of
 * the statute (accountRows.ts), no code in common with src. Compared are all columns but the source.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { accountRows, lastDayOf, type AccountRow } from "./accountRows";
import { answerOfCall } from "./answerOfCall";
import { unpaidAfter } from "./monthByMonth";
import { Corners } from "./corners";
import { returnsPaidInParts, type Drawn } from "./randomReturns";
import { RETURN_CORNERS } from "./returnCorners";
import { clientArguments, yearArgument } from "./returnArguments";
import { dollars, serialOfDay, typedFormula, type Call } from "./typedFormula";
import { orNothing, worked, type Worked } from "./workedReturn";

const CASES = runLength(300, 20_000);

/** A return with the rows of its account; none where a figure is not published. */
interface Kept extends Worked {
  readonly rows: readonly AccountRow[] | undefined;
}

const last = ({ rows }: Kept): AccountRow | undefined => rows?.at(-1);
const late = ({ given, dates }: Kept): Drawn["payments"] =>
  given.payments.filter(({ day }) => day > dates.paidWithRequest.last);
const daysOf = (payments: Drawn["payments"]): number =>
  new Set(payments.map(({ day }) => day)).size;

const corners = new Corners<Kept>({
  ...RETURN_CORNERS,
  "several payments before the tax is due": ({ given, dates }) =>
    given.payments.filter(({ day }) => day < dates.paidWithRequest.last).length > 1,
  "part payments on two late days": (one) => daysOf(late(one)) === 2,
  "part payments on three late days and more": (one) => daysOf(late(one)) > 2,
  "two payments on one day": ({ given }) => daysOf(given.payments) < given.payments.length,
  "tax left at the end": (one) => (last(one)?.taxLeft ?? 0) > 0,
  "the tax paid, charges left": (one) =>
    last(one)?.taxLeft === 0 && (last(one)?.chargesLeft ?? 0) > 0,
  "charges paid in part by what goes beyond the tax": (one) =>
    (last(one)?.chargesLeft ?? 0) > 0 && (last(one)?.chargesLeft ?? 0) < (last(one)?.charged ?? 0),
  "a refund after charges": (one) =>
    (last(one)?.overpaid ?? 0) > 0 && (last(one)?.charged ?? 0) > 0,
  "a refund of a return without charges": (one) =>
    (last(one)?.overpaid ?? 0) > 0 && last(one)?.charged === 0,
  "months of failure to pay on falling amounts": ({ months }) =>
    new Set(months.map(({ amount, share }) => amount / share)).size > 2,
  "a payment between the filing and the end": ({ given }) =>
    given.payments.some(({ day }) => day > given.filed),
  "filed with tax unpaid": ({ given }) => unpaidAfter(given.filed, given) > 0,
});

function callOf(given: Drawn): Call {
  const payments = given.payments.map(({ day, cents }) => [{ day }, dollars(cents)]);
  const values = [
    yearArgument(given.yearEnd),
    dollars(given.taxCents),
    payments,
    { day: given.filed },
  ];
  return { name: "LEDGER", values: [...values, ...clientArguments(given)] };
}

const inCells = (row: AccountRow): readonly unknown[] => [
  serialOfDay(row.day),
  row.event,
  row.amount === undefined ? "" : dollars(row.amount),
  ...[row.taxLeft, row.failureToFile, row.failureToPay, row.interest].map(dollars),
  ...[row.charged, row.chargesLeft, row.overpaid].map(dollars),
];

/** The rows of an answer below the headings without the source, which only tells the law. */
const withoutSource = (answer: unknown): unknown =>
  Array.isArray(answer) ? (answer as unknown[][]).slice(1).map((row) => row.slice(0, -1)) : answer;

describe("LEDGER against the words of the statute", () => {
  it(`is the same to the cent, row by row, for ${String(CASES)} random accounts`, () => {
    let rows = 0;
    fc.assert(
      fc.property(returnsPaidInParts, (drawn) => {
        const one = {
          ...worked({ ...drawn, through: lastDayOf(drawn) }),
          rows: orNothing(() => accountRows(drawn)),
        };
        corners.look(one);
        rows += one.rows?.length ?? 0;
        const call = callOf(drawn);
        const opinion = JSON.stringify(one.rows?.map(inCells) ?? "#N/A");
        const answer = JSON.stringify(withoutSource(answerOfCall(call)));
        if (answer !== opinion)
          throw new Error(
            `${typedFormula(call)} is\n${answer}\nby the words of the statute\n${opinion}`
          );
      }),
      { numRuns: CASES, seed: 6601 }
    );
    tell(
      `LEDGER: ${String(CASES)} accounts of ${String(rows)} rows the same to the cent; cases at each corner:`
    );
    corners.lines().forEach(tell);
    expect(isLongRun ? corners.missed() : []).toEqual([]);
  });
});
