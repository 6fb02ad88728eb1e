/**
 * Compares REQUIREDPAYMENT and ESTPENALTY, called as a sheet calls them, with the unpaid amount of each day (estimateByDay.ts) under
 * sections 6654 and 6621(b)(2)(B), rounded line by line as on Form 2210, without code from src.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { answerOfCall } from "./answerOfCall";
import { civil, dayNumber } from "./civilDays";
import { Corners } from "./corners";
import {
  estimateByDay,
  isEarlyReturn,
  priorShare,
  type EstimateLine,
  type Estimates,
} from "./estimateByDay";
import { NoFigure } from "./noFigure";
import { percentOn, RATES_END } from "./quarterlyRates";
import { yearsOfEstimates, type DrawnEstimates } from "./randomEstimates";
import { typedBlock } from "./randomPeriods";
import { yearArgument } from "./returnArguments";
import { fifteenthOfFourthMonth, installmentDates, type ActDate } from "./statuteDates";
import { dollars, typedFormula, type Call, type Typed } from "./typedFormula";
import { orNothing } from "./workedReturn";

const CASES = runLength(300, 20_000);

/** A year with the lines of its penalty. Undefined where a rate is not published. */
interface Year extends DrawnEstimates {
  readonly lines: readonly EstimateLine[] | undefined;
}
type Reaches = (one: Year) => boolean;

const late = ({ lines }: Year): readonly number[] => [
  ...new Set((lines ?? []).map(({ installment }) => installment)),
];
const dues = ({ given }: Year): readonly ActDate[] =>
  installmentDates(given.yearEnd, given.postponement, given.isNonresident).slice(
    given.farmerOrFisherman ? -1 : 0
  );
const paid = ({ given }: Year): number =>
  given.payments.reduce((sum, { cents }) => sum + cents, given.withheld);
const isPostponed =
  (to: number): Reaches =>
  (one) =>
    !one.given.postponement &&
    dues(one).some(({ last }) => last === to) &&
    (one.lines?.length ?? 0) > 0;
const endOf = ({ given }: Year): number => fifteenthOfFourthMonth(given.yearEnd);

/** Whether an early return takes the last installment out of the penalty. */
const isEnded =
  (isFarmer: boolean): Reaches =>
  ({ given, lines }) => {
    if (given.farmerOrFisherman !== isFarmer || !isEarlyReturn(given)) return false;
    const late = orNothing(() => estimateByDay({ ...given, filedOn: undefined }));
    return (late?.length ?? 0) > (lines?.length ?? Infinity);
  };

const corners = new Corners<Year>({
  ...Object.fromEntries(
    Array.from({ length: 19 }, (_, index) => 2009 + index).map((year): [string, Reaches] => [
      `a year that ends in ${String(year)}, something charged`,
      ({ given, lines }) => civil(given.yearEnd).year === year && (lines?.length ?? 0) > 0,
    ])
  ),
  "a fiscal year": ({ given, lines }) =>
    civil(given.yearEnd).month !== 12 && (lines?.length ?? 0) > 0,
  "nothing required": ({ given }) => given.required === 0,
  "no penalty on a required payment": ({ given, lines }) =>
    given.required > 0 && lines?.length === 0,
  ...Object.fromEntries(
    [1, 2, 3, 4].map((number): [string, Reaches] => [
      `installment ${String(number)} alone late`,
      (one) => !one.given.farmerOrFisherman && late(one).length === 1 && late(one)[0] === number,
    ])
  ),
  "two or three installments late": (one) => [2, 3].includes(late(one).length),
  "all four late": (one) => late(one).length === 4,
  overpaid: (one) => one.given.required > 0 && paid(one) > one.given.required,
  "late for a time, overpaid at the end": (one) =>
    (one.lines?.length ?? 0) > 0 && paid(one) > one.given.required,
  "nothing paid at all": (one) =>
    (one.lines?.length ?? 0) > 0 && paid(one) === 0 && one.given.restOn === undefined,
  "an installment paid in several parts": ({ lines }) =>
    (lines ?? []).some(
      (line, index) =>
        lines?.[index + 1]?.installment === line.installment && lines[index + 1]?.from === line.from
    ),
  "covered by withholding": ({ given, lines }) =>
    given.required > 0 && given.withheld >= given.required && lines?.length === 0,
  ...Object.fromEntries(
    [1, 2, 3].map((number): [string, Reaches] => [
      `a nonresident, installment ${String(number)} late`,
      (one) =>
        one.given.isNonresident === true &&
        !one.given.farmerOrFisherman &&
        late(one).includes(number),
    ])
  ),
  "a nonresident farmer with a penalty": ({ given, lines }) =>
    given.isNonresident === true && given.farmerOrFisherman && (lines?.length ?? 0) > 0,
  "a nonresident's withholding that is not divisible by three": ({ given, lines }) =>
    given.isNonresident === true && given.withheld % 3 !== 0 && (lines?.length ?? 0) > 0,
  "an installment that is not in whole cents": ({ given, lines }) =>
    given.required % 4 !== 0 && (lines?.length ?? 0) > 0,
  "a farmer with a penalty": ({ given, lines }) =>
    given.farmerOrFisherman && (lines?.length ?? 0) > 0,
  "a farmer without a penalty": ({ given, lines }) =>
    given.farmerOrFisherman && given.required > 0 && lines?.length === 0,
  "the balance paid before April 15": (one) =>
    (one.lines?.length ?? 0) > 0 && (one.given.restOn ?? Infinity) < endOf(one),
  "the balance paid after April 15": (one) =>
    (one.lines?.length ?? 0) > 0 && (one.given.restOn ?? 0) > endOf(one),
  "paid on the date to which a weekend or holiday moved the installment": (one) =>
    !one.given.postponement &&
    dues(one).some(
      ({ named, last }) =>
        last > named && one.given.payments.some(({ day, cents }) => day === last && cents > 0)
    ),
  "paid a day after that date": (one) =>
    !one.given.postponement &&
    dues(one).some(
      ({ named, last }) =>
        last > named && one.given.payments.some(({ day, cents }) => day === last + 1 && cents > 0)
    ),
  "the additional day of 2018": isPostponed(dayNumber(2018, 4, 18)),
  "July 15, 2020": isPostponed(dayNumber(2020, 7, 15)),
  "disaster postponement of an installment": (one) =>
    one.given.postponement !== undefined &&
    (one.lines?.length ?? 0) > 0 &&
    dues(one).some(({ last }) => last === one.given.postponement?.until),
  "withholding that meets an earlier installment on a postponed due date": (one) =>
    dues(one).some(
      ({ fifteenth, named }) =>
        named > fifteenth && (one.lines ?? []).some(({ to }) => to === fifteenth)
    ),
  "disaster postponement beyond the end of the penalty": (one) =>
    (one.given.postponement?.until ?? 0) >= endOf(one) &&
    dues(one).some(({ last }) => last === one.given.postponement?.until),
  "lines by 365 and by 366": ({ lines }) =>
    new Set((lines ?? []).map(({ divisor }) => divisor)).size > 1,
  "lines at several rates": ({ lines }) =>
    new Set((lines ?? []).map(({ points }) => points)).size > 1,
  "the rate of the first quarter in April, where the second has another": (one) => {
    const end = endOf(one);
    const isOpen = (one.lines ?? []).some(({ to }) => to > end - 15);
    return isOpen && end <= RATES_END && percentOn(end) !== percentOn(end - 15);
  },
  "one line over quarters of the same rate": ({ lines }) =>
    (lines ?? []).some(({ from, to }) => to - from > 92),
  "at an assumed rate": ({ given, lines }) =>
    given.assumed !== undefined && (lines ?? []).some(({ to }) => to > RATES_END),
  "#N/A without a rate": ({ lines }) => lines === undefined,
  "less than $1,000 after withholding": ({ given, lines }) =>
    given.tax !== undefined &&
    given.tax - given.withheld < 100_000 &&
    given.required > 0 &&
    lines?.length === 0,
  "exactly $1,000 after withholding": ({ given, lines }) =>
    given.tax !== undefined && given.tax - given.withheld === 100_000 && (lines?.length ?? 0) > 0,
  "90% of the current year's tax": ({ harbors, given }) =>
    !harbors.farmerOrFisherman &&
    given.required > 0 &&
    given.required === Math.round(harbors.tax * 0.9),
  "100% of the prior year's tax": ({ harbors, given }) =>
    !harbors.farmerOrFisherman && given.required > 0 && given.required === harbors.priorYearTax,
  "110% of the prior year's tax": ({ harbors, given }) =>
    priorShare(harbors) === 110 &&
    given.required > 0 &&
    given.required < Math.round(harbors.tax * 0.9),
  "110% at the threshold for married filing separately": ({ harbors, given }) =>
    harbors.status === "separate" &&
    harbors.priorIncome <= 15_000_000 &&
    priorShare(harbors) === 110 &&
    given.required > 0 &&
    given.required < Math.round(harbors.tax * 0.9),
  "income exactly at the threshold": ({ harbors }) =>
    harbors.priorIncome === (harbors.status === "separate" ? 7_500_000 : 15_000_000),
  "no return for the prior year": ({ harbors }) => harbors.priorYearTax === undefined,
  "no tax for the prior year": ({ harbors }) => harbors.priorYearTax === 0,
  "annualized installments with a penalty": ({ given, lines }) =>
    given.annualized !== undefined && (lines?.length ?? 0) > 0,
  "annualized installments of a nonresident with a penalty": ({ given, lines }) =>
    given.annualized !== undefined && given.isNonresident === true && (lines?.length ?? 0) > 0,
  "a penalty that annualized installments lower": ({ given, lines }) => {
    if (given.annualized === undefined || lines === undefined) return false;
    const regular = orNothing(() => estimateByDay({ ...given, annualized: undefined })) ?? [];
    const total = (of: readonly EstimateLine[]): number =>
      of.reduce((sum, { cents }) => sum + cents, 0);
    return total(lines) > 0 && total(lines) < total(regular);
  },
  "periods without rates": ({ isWithoutRates }) => isWithoutRates,
  "an early return that leaves earlier installments": ({ given, lines }) =>
    !given.farmerOrFisherman && isEarlyReturn(given) && (lines?.length ?? 0) > 0,
  "an early return that ends the penalty on the last installment": isEnded(false),
  "an early return of farmers and fishermen": isEnded(true),
  "an early return of a nonresident": (one) =>
    one.given.isNonresident === true && isEnded(false)(one),
  "a return too late to be early": ({ given, lines }) =>
    given.filedOn !== undefined && !isEarlyReturn(given) && (lines?.length ?? 0) > 0,
  "66⅔% of a farmer's tax": ({ harbors, given }) =>
    harbors.farmerOrFisherman &&
    given.required > 0 &&
    given.required < (harbors.priorYearTax ?? Infinity),
});

/** Section 6654(e)(1): without a penalty nothing is annualized. */
const smallBalance = ({ tax, withheld }: Estimates): boolean =>
  tax !== undefined && tax - withheld < 100_000;

const optional = <Value>(value: Value | undefined, typed: (value: Value) => Typed): Typed =>
  value === undefined ? undefined : typed(value);

function requiredCall({ harbors, given }: DrawnEstimates): Call {
  const { status, tax, priorYearTax, priorIncome, farmerOrFisherman } = harbors;
  const amounts = [dollars(tax), optional(priorYearTax, dollars), dollars(priorIncome)];
  return {
    name: "REQUIREDPAYMENT",
    values: [
      yearArgument(given.yearEnd),
      status,
      ...amounts,
      farmerOrFisherman ? "yes" : undefined,
    ],
  };
}

function chargeCall({ given, harbors, block }: DrawnEstimates): Call {
  const { payments, restOn, assumed, tax, postponement } = given;
  const rows = payments.map(({ day, cents }) => [{ day }, dollars(cents)]);
  const values = [
    yearArgument(given.yearEnd),
    dollars(given.required),
    dollars(given.withheld),
    rows.length > 0 ? rows : undefined,
    optional(restOn, (day) => ({ day })),
    typeof assumed === "number" ? assumed / 10_000 : assumed,
    optional(tax, dollars),
    given.farmerOrFisherman ? "yes" : undefined,
    optional(postponement?.begins, (day) => ({ day })),
    optional(postponement?.until, (day) => ({ day })),
    given.isNonresident === true ? "nonresident" : undefined,
    optional(given.filedOn, (day) => ({ day })),
    block && harbors.status,
    block && typedBlock(block, given.yearEnd),
  ];
  return { name: "ESTPENALTY", values };
}

function expectSame(call: Call, opinion: unknown): void {
  const answer = answerOfCall(call);
  if (answer !== opinion)
    throw new Error(
      `${typedFormula(call)} is ${String(answer)}, by the words of the statute ${String(opinion)}`
    );
}

describe("ESTPENALTY and REQUIREDPAYMENT against the statute", () => {
  it(`are the same to the cent for ${String(CASES)} random years`, () => {
    fc.assert(
      fc.property(yearsOfEstimates, (drawn) => {
        const lines = orNothing(() => {
          const isExcepted = smallBalance(drawn.given);
          if (drawn.isWithoutRates && !isExcepted) throw new NoFigure("no rates for the periods");
          return estimateByDay(drawn.given);
        });
        corners.look({ ...drawn, lines });
        expectSame(requiredCall(drawn), dollars(drawn.given.required));
        const cents = lines?.reduce((sum, line) => sum + line.cents, 0);
        expectSame(chargeCall(drawn), cents === undefined ? "#N/A" : dollars(cents));
      }),
      { numRuns: CASES, seed: 6654 }
    );
    tell(`ESTPENALTY: ${String(CASES)} years the same to the cent; cases of each kind:`);
    corners.lines().forEach(tell);
    expect(isLongRun ? corners.missed() : []).toEqual([]);
  });
});
