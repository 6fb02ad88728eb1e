/**
 * Compares LEDGER, called as a sheet calls it, with a payment history whose rows are calculated month by month and day by day from the
 * statute (accountRows.ts), without code from src. All columns except the source are compared.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { accountRows, lastDayOf, type AccountRow } from "./accountRows";
import { answerOfCall } from "./answerOfCall";
import { unpaidAfter } from "./monthByMonth";
import { Corners } from "./corners";
import { payNoticeBy } from "./noticeDays";
import { returnsPaidInParts, type Drawn } from "./randomReturns";
import { RETURN_CORNERS } from "./returnCorners";
import { clientArguments, yearArgument } from "./returnArguments";
import { dollars, serialOfDay, typedFormula, type Call } from "./typedFormula";
import { orNothing, worked, type Worked } from "./workedReturn";

const CASES = runLength(300, 20_000);

/** A return with the rows of its payment history. Undefined where a figure is not published. */
interface Kept extends Worked {
  readonly rows: readonly AccountRow[] | undefined;
}

const last = ({ rows }: Kept): AccountRow | undefined => rows?.at(-1);
const noticeRow = ({ rows = [] }: Kept): AccountRow | undefined =>
  rows.find(({ event }) => event.startsWith("Notice"));
/** Cents of a notice that are paid on a day counted from the last day to pay it. */
const paidBeside = ({ given, rows }: Kept, days: number): number => {
  const { noticeOn } = given;
  const demanded = noticeRow({ given, rows } as Kept)?.amount ?? 0;
  if (noticeOn === undefined || demanded === 0) return 0;
  const day = payNoticeBy(noticeOn, demanded, given.state) + days;
  const paid = given.payments.filter((payment) => payment.day === day);
  return paid.reduce((sum, { cents }) => sum + cents, 0);
};
const isLargeNotice = (one: Kept): boolean => (noticeRow(one)?.amount ?? 0) >= 10_000_000;
/** Each row with the row after it. */
const pairs = ({ rows = [] }: Kept): readonly (readonly [AccountRow, AccountRow])[] =>
  rows.slice(1).flatMap((row, index) => {
    const before = rows[index];
    return before ? [[before, row] as const] : [];
  });
const late = ({ given, dates }: Kept): Drawn["payments"] =>
  given.payments.filter(({ day }) => day > dates.paidWithRequest.last);
const daysOf = (payments: Drawn["payments"]): number =>
  new Set(payments.map(({ day }) => day)).size;

const corners = new Corners<Kept>({
  ...RETURN_CORNERS,
  "several payments before the tax is due": ({ given, dates }) =>
    given.payments.filter(({ day }) => day < dates.paidWithRequest.last).length > 1,
  "partial payments on two late dates": (one) => daysOf(late(one)) === 2,
  "partial payments on three or more late dates": (one) => daysOf(late(one)) > 2,
  "two payments on one date": ({ given }) => daysOf(given.payments) < given.payments.length,
  "unpaid tax at the end": (one) => (last(one)?.taxLeft ?? 0) > 0,
  "the tax paid, penalties or interest unpaid": (one) =>
    last(one)?.taxLeft === 0 && (last(one)?.chargesLeft ?? 0) > 0,
  "penalties and interest partly paid by the amount above the tax": (one) =>
    (last(one)?.chargesLeft ?? 0) > 0 && (last(one)?.chargesLeft ?? 0) < (last(one)?.charged ?? 0),
  "an overpayment after penalties and interest": (one) =>
    (last(one)?.overpaid ?? 0) > 0 && (last(one)?.charged ?? 0) > 0,
  "an overpayment without penalties and interest": (one) =>
    (last(one)?.overpaid ?? 0) > 0 && last(one)?.charged === 0,
  "the failure-to-file penalty paid beyond the tax in part, then more interest": (one) =>
    pairs(one).some(([before, after]) => {
      const beyond = before.charged - before.chargesLeft;
      const penalties = before.failureToFile + before.failureToPay;
      return (
        before.taxLeft === 0 &&
        beyond > before.failureToPay &&
        beyond < penalties &&
        after.failureToFile === before.failureToFile &&
        after.interest > before.interest
      );
    }),
  "the penalties paid beyond the tax, interest unpaid, and no more interest": (one) =>
    pairs(one).some(
      ([before, after]) =>
        before.failureToFile > 0 &&
        before.chargesLeft > 0 &&
        before.chargesLeft <= before.interest &&
        after.day > before.day &&
        after.interest === before.interest
    ),
  "all paid, and a payment after it": (one) =>
    pairs(one).some(
      ([before, after]) =>
        before.failureToFile > 0 &&
        before.taxLeft + before.chargesLeft === 0 &&
        after.event === "Payment, applied to the tax first" &&
        after.day > before.day
    ),
  "months of failure to pay on decreasing amounts": ({ months }) =>
    new Set(months.map(({ amount, share }) => amount / share)).size > 2,
  "a payment between the filing and the end": ({ given }) =>
    given.payments.some(({ day }) => day > given.filed),
  "the 1% after a levy notice": ({ months }) => months.some(({ share }) => share === 100n),
  "the 0.25% of an agreement, then the 1% after a levy notice": ({ months }) =>
    months.some(({ share }) => share === 25n) && months.at(-1)?.share === 100n,
  "the maximum of 25% reached at 1%": ({ months }) =>
    months.reduce((sum, { share }) => sum + share, 0n) === 2_500n &&
    months.some(({ share }) => share === 100n),
  "a notice with nothing unpaid": (one) => noticeRow(one)?.amount === 0,
  "a notice of less than $100,000, paid on the last day": (one) =>
    !isLargeNotice(one) && paidBeside(one, 0) > 0,
  "a notice of less than $100,000, paid a day late": (one) =>
    !isLargeNotice(one) && paidBeside(one, 1) > 0,
  "a notice of $100,000 or more, paid on the tenth business day": (one) =>
    isLargeNotice(one) && paidBeside(one, 0) > 0,
  "a notice of $100,000 or more, paid a day late": (one) =>
    isLargeNotice(one) && paidBeside(one, 1) > 0,
  "a notice where the 90% test excuses failure to pay": (one) =>
    one.outcome.presumed && (noticeRow(one)?.amount ?? 0) > 0,
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
  const notices = [given.noticeOn, given.levyNoticeOn].map((day) =>
    day === undefined ? undefined : { day }
  );
  return { name: "LEDGER", values: [...values, ...clientArguments(given), ...notices] };
}

const inCells = (row: AccountRow): readonly unknown[] => [
  serialOfDay(row.day),
  row.event,
  row.amount === undefined ? "" : dollars(row.amount),
  ...[row.taxLeft, row.failureToFile, row.failureToPay, row.interest].map(dollars),
  ...[row.charged, row.chargesLeft, row.overpaid].map(dollars),
];

/** The rows of a result below the headings, without the source. */
const withoutSource = (answer: unknown): unknown =>
  Array.isArray(answer) ? (answer as unknown[][]).slice(1).map((row) => row.slice(0, -1)) : answer;

describe("LEDGER against the statute", () => {
  it(`is the same to the cent, row by row, for ${String(CASES)} random payment histories`, () => {
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
