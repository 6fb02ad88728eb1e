import { addMonths, earlierDate, type CalendarDate } from "../../calendar/calendarDate";
import { dateFromSerial } from "../../calendar/dateSerial";
import { shortDate } from "../../calendar/writtenDate";
import { readDate } from "../../functions/arguments/date";
import { cellValue, isBlankOrZero } from "../../functions/cells/cellValue";
import { hostError, isHostError } from "../../functions/cells/hostError";
import { costsOn, numberFrom, type Cost, type CostCurveInput, type CostPoint } from "./costOnDate";

/** The cost of waiting by the date of filing and paying. All dates are worksheet dates. */
export interface CostCurve {
  /** The client, for the costs on a date between two points. */
  readonly input: CostCurveInput;
  /**
   * Points by date, with one on each side of every step of a penalty. Between two points that are more than a day apart only interest
   * grows.
   */
  readonly points: readonly CostPoint[];
  readonly regularDue: number;
  readonly extendedDue: number;
  /** `undefined` if it is not among the dates of the curve. */
  readonly asOf: number | undefined;
  /** Last date of the published interest rates. */
  readonly publishedThrough: number;
  /** Fraction per year for the later dates; `undefined` if the curve has none. */
  readonly assumedRate: number | undefined;
  /** Dollars more, paid by the regular due date, that meet the 90% test; 0 if it is met. */
  readonly neededForTest: number;
}

/** A curve, or a sentence that says why there is none. */
export type CostCurveAnswer = { readonly curve: CostCurve } | { readonly sentence: string };

const MONTHS_SHOWN = 12;
/** Days in which the second month of a penalty begins. */
const LONGEST_MONTH = 31;

const sameState = (one: Cost, other: Cost): boolean =>
  one.failureToPay === other.failureToPay &&
  one.failureToFile === other.failureToFile &&
  one.isExcused === other.isExcused &&
  one.isMinimum === other.isMinimum;

/** Whether a penalty changes between two points. */
export function isStep(from: CostPoint, to: CostPoint): boolean {
  return !sameState(from.extended, to.extended) || !sameState(from.notExtended, to.notExtended);
}

/**
 * The points after a first one through a last one: halves the time between them until each step is between two days. Penalties only
 * rise with the date, so equal ends have no step between them.
 */
function pointsBetween(input: CostCurveInput, from: CostPoint, to: CostPoint): CostPoint[] {
  if (to.date - from.date <= 1 || !isStep(from, to)) return [to];
  const middle = costsOn(input, Math.floor((from.date + to.date) / 2));
  return [...pointsBetween(input, from, middle), ...pointsBetween(input, middle, to)];
}

const dateOf = (serial: number): CalendarDate => {
  const date = dateFromSerial(serial);
  if (date === undefined) throw new RangeError(`${String(serial)} is not a worksheet date`);
  return date;
};

/**
 * The dates around the beginning of each month of a penalty, so far as the first such date after the due date tells. They only save
 * time: a step that is elsewhere is found by {@link pointsBetween}.
 */
function likelySteps(input: CostCurveInput, regularDue: number, last: number): number[] {
  if (regularDue >= last) return [];
  const late = costsOn(input, regularDue + 1);
  const monthLate = costsOn(input, Math.min(late.date + LONGEST_MONTH, last));
  const step = dateOf(
    pointsBetween(input, late, monthLate).find((point) => isStep(late, point))?.date ?? late.date
  );
  return Array.from({ length: MONTHS_SHOWN + 1 }, (_month, months) =>
    addMonths(step, months)
  ).flatMap((date) => [date - 1, date]);
}

function made(input: CostCurveInput): CostCurveAnswer {
  const { taxYear, totalTax, payments, state, filerType } = input;
  const client = [taxYear, state, filerType, input.postponementBegins, input.postponementEnds];
  const regularDue = numberFrom("DUE", ...client);
  const payBy = numberFrom("PAYBY", ...client);
  const extendedDue = numberFrom("EXTENDED", ...client);
  if (numberFrom("SHORTFALL", totalTax, payments) === 0)
    return { sentence: "There is no balance due, so waiting causes no penalties or interest." };
  const publishedThrough = numberFrom("KNOWNTHROUGH", "underpayment rate");
  const hasRate = !isBlankOrZero(cellValue(input.assumedRate));
  const first = earlierDate(dateOf(payBy), dateOf(regularDue));
  const year = addMonths(dateOf(first), MONTHS_SHOWN);
  const last = hasRate ? year : Math.min(year, publishedThrough);
  if (last <= first)
    return {
      sentence: `Interest rates are published through ${shortDate(dateOf(publishedThrough))}. Enter an assumed rate to see the cost of waiting.`,
    };
  const asOf = readDate(cellValue(input.asOf));
  const isShown = (date: number): boolean => date > first && date < last;
  const ends = [publishedThrough, publishedThrough + 1, regularDue, extendedDue, asOf ?? first];
  const known = [...ends, ...likelySteps(input, regularDue, last)];
  const points = [...new Set([first, ...known.filter(isShown), last])]
    .toSorted((one, other) => one - other)
    .map((date) => costsOn(input, date))
    .flatMap((point, index, all) => {
      const before = all[index - 1];
      return before ? pointsBetween(input, before, point) : [point];
    });
  return {
    curve: {
      input,
      points,
      regularDue,
      extendedDue,
      asOf: asOf !== undefined && asOf >= first && asOf <= last ? asOf : undefined,
      publishedThrough,
      assumedRate:
        last > publishedThrough ? numberFrom("UNDERPAYRATE", last, input.assumedRate) : undefined,
      neededForTest: numberFrom("SUGGEST", totalTax, payments, "reasonable cause"),
    },
  };
}

/**
 * Penalties and interest by the date on which a client files and pays, with and without the extension, from the due date to a year
 * later. Every figure is an answer of the worksheet functions.
 *
 * @param input - The client.
 * @returns The curve; a sentence if a cell cannot be read, no tax is unpaid, or no rate is published.
 */
export function costCurve(input: CostCurveInput): CostCurveAnswer {
  try {
    return made(input);
  } catch (thrown) {
    const error: unknown = isHostError(thrown) ? thrown : hostError(thrown);
    const { code, message = "" } = error as { readonly code: string; readonly message?: string };
    return { sentence: message === "" ? `A cell of the client shows ${code}.` : message };
  }
}
