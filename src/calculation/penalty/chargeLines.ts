import type { CalendarDate } from "../../calendar/calendarDate";
import { toCents, ZERO, type Decimal } from "../../money/dollars";
import type { Source } from "../../rules/source";
import type { UnderpaymentInterest } from "./underpaymentInterest";
import type { Charges } from "./charges";

/** What one line of the working stands for. */
export type ChargeKind =
  | "failure to file"
  | "reduction for failure to pay"
  | "minimum for failure to file"
  | "failure to pay"
  | "failure to pay excused"
  | "interest on tax"
  | "interest on failure to file";

/** One line of the working. */
export interface ChargeLine {
  readonly kind: ChargeKind;
  /** First and last day, where the line has a span. */
  readonly from?: CalendarDate;
  readonly to?: CalendarDate;
  readonly months?: number;
  readonly days?: number;
  /** Fraction a month for additions, a year for interest. */
  readonly rate?: Decimal;
  readonly base?: Decimal;
  /** Dollars and cents. */
  readonly amount: Decimal;
  /** `undefined` where the rate is assumed. */
  readonly source: Source | undefined;
}

/** Rounds running sums rather than steps, so that the lines of a part add up to the part, which rounds once. */
function inCents(): (step: Decimal) => Decimal {
  let exact = ZERO;
  let shown = ZERO;
  return (step) => {
    exact = exact.plus(step);
    const line = toCents(exact).minus(shown);
    shown = shown.plus(line);
    return line;
  };
}

function failureToFileLines({ failureToFile }: Charges): ChargeLine[] {
  const { months, from, to, monthlyRate, base, gross, reduction, minimum, amount, source } =
    failureToFile;
  const cents = inCents();
  const lines: ChargeLine[] = [];
  if (months === 0) return lines;
  const span = { from, to, months };
  lines.push({
    kind: "failure to file",
    ...span,
    rate: monthlyRate,
    base,
    amount: cents(gross),
    source,
  });
  if (reduction.greaterThan(0)) {
    const off = cents(reduction.negated());
    lines.push({ kind: "reduction for failure to pay", ...span, amount: off, source });
  }
  const topUp = amount.minus(gross).plus(reduction);
  if (minimum && topUp.greaterThan(0)) {
    lines.push({
      kind: "minimum for failure to file",
      base: minimum.amount,
      amount: cents(topUp),
      source: minimum.source,
    });
  }
  return lines;
}

function interestLines(
  kind: "interest on tax" | "interest on failure to file",
  interest: UnderpaymentInterest
): ChargeLine[] {
  const cents = inCents();
  return interest.periods.map(
    ({ period: { from, to, days, rate, source }, base, interest: step }) => {
      return { kind, from, to, days, rate, base: toCents(base), amount: cents(step), source };
    }
  );
}

/**
 * The working of the charges, line by line, in the order in which they are worked out.
 *
 * @param charged - The charges.
 * @returns Lines whose amounts add up to the total to the cent; none where nothing is charged.
 */
export function chargeLines(charged: Charges): readonly ChargeLine[] {
  const { failureToPay, excused, interestOnTax, interestOnAddition } = charged;
  const cents = inCents();
  const failureToPayLines = failureToPay.charged.map(
    ({ from, to, months, monthlyRate: rate, base, amount, source }): ChargeLine => ({
      kind: "failure to pay",
      from,
      to,
      months,
      rate,
      base,
      amount: cents(amount),
      source,
    })
  );
  const excusedLines: ChargeLine[] = excused
    ? [{ kind: "failure to pay excused", amount: ZERO, source: excused }]
    : [];
  return [
    ...failureToFileLines(charged),
    ...failureToPayLines,
    ...excusedLines,
    ...interestLines("interest on tax", interestOnTax),
    ...interestLines("interest on failure to file", interestOnAddition),
  ];
}
