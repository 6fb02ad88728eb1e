import type { CalendarDate } from "../../calendar/calendarDate";
import { isMoreThanZero, toCents, ZERO, type Decimal } from "../../money/dollars";
import type { Source } from "../../rules/source";
import type { UnderpaymentInterest } from "./underpaymentInterest";
import type { Charges } from "./charges";

/** What one line of the calculation shows. */
export type ChargeKind =
  | "failure-to-file penalty"
  | "less failure-to-pay penalty"
  | "increase to minimum penalty"
  | "failure-to-pay penalty"
  | "reasonable cause"
  | "interest on tax"
  | "interest on failure-to-file penalty";

/** One line of the calculation. */
export interface ChargeLine {
  readonly kind: ChargeKind;
  /** First and last date the line covers, if it covers a period. */
  readonly from?: CalendarDate;
  readonly to?: CalendarDate;
  readonly months?: number;
  readonly days?: number;
  /** Fraction per month for penalties, per year for interest. */
  readonly rate?: Decimal;
  readonly base?: Decimal;
  /** Dollars and cents. */
  readonly amount: Decimal;
  /** `undefined` if the rate is assumed. */
  readonly source: Source | undefined;
}

/** Rounds the sum to date at each line, in cents, so that the lines of a part add up to the part, which is rounded once. */
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
    kind: "failure-to-file penalty",
    ...span,
    rate: monthlyRate,
    base,
    amount: cents(gross),
    source,
  });
  if (isMoreThanZero(reduction)) {
    const off = cents(reduction.negated());
    lines.push({ kind: "less failure-to-pay penalty", ...span, amount: off, source });
  }
  const topUp = amount.minus(gross).plus(reduction);
  if (minimum && isMoreThanZero(topUp)) {
    lines.push({
      kind: "increase to minimum penalty",
      base: minimum.amount,
      amount: cents(topUp),
      source: minimum.source,
    });
  }
  return lines;
}

function interestLines(
  kind: "interest on tax" | "interest on failure-to-file penalty",
  interest: UnderpaymentInterest
): ChargeLine[] {
  const cents = inCents();
  return interest
    .periods()
    .map(({ period: { from, to, days, rate, source }, base, interest: step }) => {
      return { kind, from, to, days, rate, base: toCents(base), amount: cents(step), source };
    });
}

/**
 * The calculation of penalties and interest, line by line.
 *
 * @param charged - The penalties and interest.
 * @returns Lines whose amounts in dollars and cents add up to the total; empty if there are no penalties or interest.
 */
export function chargeLines(charged: Charges): readonly ChargeLine[] {
  const { failureToPay, excused, interestOnTax, interestOnPenalty } = charged;
  const cents = inCents();
  const failureToPayLines = failureToPay.periods.map(
    ({ from, to, months, monthlyRate: rate, base, amount, source }): ChargeLine => ({
      kind: "failure-to-pay penalty",
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
    ? [{ kind: "reasonable cause", amount: ZERO, source: excused }]
    : [];
  return [
    ...failureToFileLines(charged),
    ...failureToPayLines,
    ...excusedLines,
    ...interestLines("interest on tax", interestOnTax),
    ...interestLines("interest on failure-to-file penalty", interestOnPenalty),
  ];
}
