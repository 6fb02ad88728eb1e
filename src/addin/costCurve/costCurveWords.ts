import { dateFromSerial } from "../../calendar/dateSerial";
import { longDate, shortDate } from "../../calendar/writtenDate";
import { writtenDollars } from "../../functions/cells/writtenDollars";
import type { CostCurve } from "./costCurveData";
import type { Scenario } from "./costCurveShape";
import type { CostPart, CostPoint } from "./costOnDate";

/** The names of the parts. */
export const PART_NAMES: Readonly<Record<CostPart, string>> = {
  interest: "Interest",
  failureToPay: "Failure-to-pay penalty",
  failureToFile: "Failure-to-file penalty",
};

/** The same beside figures, where there is little room. */
export const SHORT_PART_NAMES: Readonly<Record<CostPart, string>> = {
  interest: "Interest",
  failureToPay: "Failure to pay",
  failureToFile: "Failure to file",
};

/** The names of the two costs. */
export const SCENARIO_NAMES: Readonly<Record<Scenario, string>> = {
  extended: "With the extension",
  notExtended: "Without the extension",
};

/** A worksheet date as cells show it: 4/15/2026. */
export function inCell(serial: number): string {
  const date = dateFromSerial(serial);
  return date === undefined ? String(serial) : shortDate(date);
}

/** A worksheet date as sentences write it: April 15, 2026. */
export function inSentence(serial: number): string {
  const date = dateFromSerial(serial);
  return date === undefined ? String(serial) : longDate(date);
}

/** A fraction as a percent. */
export function percent(fraction: number): string {
  return `${(fraction * 100).toFixed(2)}%`;
}

/** Days after which a penalty that still rises by the month has risen again. */
const LONGEST_MONTH = 31;

/** What differs between the costs of a date and the date before it, in a few words; empty if only interest does. */
function changeAt(points: readonly CostPoint[], index: number, scenario: Scenario): string {
  const [before, after] = [points[index - 1]?.[scenario], points[index]?.[scenario]];
  if (!before || !after) return "";
  const rises = (part: CostPart): boolean => after[part] > before[part];
  const last = points.at(-1);
  const isHighest =
    last !== undefined &&
    last[scenario].failureToFile === after.failureToFile &&
    last.date - (points[index]?.date ?? 0) > LONGEST_MONTH;
  const words = [
    ...(before.isExcused && !after.isExcused ? ["90% test no longer met"] : []),
    ...(after.isMinimum && !before.isMinimum ? ["minimum failure-to-file penalty"] : []),
    ...(rises("failureToFile") && after.isMinimum === before.isMinimum
      ? [`failure-to-file penalty ${isHighest ? "reaches its maximum" : "rises"}`]
      : []),
    ...(rises("failureToPay") ? ["failure-to-pay penalty rises"] : []),
  ];
  const text = words.join(", ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A row of the table of a curve. */
export interface CostRow {
  readonly point: CostPoint;
  /** What the date is, or what changes on it. */
  readonly remark: string;
}

/**
 * The dates of one cost that are worth a row: the ends, the due dates, the as-of date, the end of the published rates, and both sides
 * of every step.
 */
export function costRows(curve: CostCurve, scenario: Scenario): readonly CostRow[] {
  const { points, regularDue, extendedDue, asOf, publishedThrough, assumedRate } = curve;
  const named = new Map<number | undefined, string>([
    ...(assumedRate === undefined
      ? []
      : [[publishedThrough, "Last date of the published interest rates"] as const]),
    [asOf, "As-of date"],
    [extendedDue, "Extended due date"],
    [regularDue, "Regular due date"],
  ]);
  const changes = points.map((_point, index) => changeAt(points, index, scenario));
  return points.flatMap((point, index) => {
    const change = changes[index] ?? "";
    const isEnd = index === 0 || index === points.length - 1;
    const name = named.get(point.date) ?? "";
    const isShown = isEnd || name !== "" || change !== "" || (changes[index + 1] ?? "") !== "";
    return isShown ? [{ point, remark: [name, change].filter(Boolean).join(": ") }] : [];
  });
}

/** One sentence for who cannot see the chart. */
export function summary(curve: CostCurve, scenario: Scenario): string {
  const { points, extendedDue } = curve;
  const [first, last] = [points[0], points.at(-1)];
  const onDate = (point: CostPoint | undefined): string =>
    point ? `${writtenDollars(point[scenario].total)} on ${inSentence(point.date)}` : "";
  const places = [first, points.find(({ date }) => date === extendedDue), last];
  const shown = [...new Set(places)].map(onDate).filter(Boolean);
  return `${SCENARIO_NAMES[scenario]}, penalties and interest rise from ${shown.join(" to ")}.`;
}

/** What the 90% test does for the client. */
export function testSentence(curve: CostCurve): string {
  const { points, extendedDue, regularDue, neededForTest, asOf = 0 } = curve;
  if (neededForTest > 0)
    return `The 90% test is not met: another ${writtenDollars(neededForTest)} ${asOf > regularDue ? "had" : "has"} to be paid by ${inCell(regularDue)}.`;
  return points.some(({ extended }) => extended.isExcused)
    ? `The 90% test is met: with the extension, there is no failure-to-pay penalty if the client files and pays by ${inCell(extendedDue)}.`
    : "";
}
