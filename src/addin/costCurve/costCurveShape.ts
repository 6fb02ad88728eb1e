import type { Cost, CostPart, CostPoint } from "./costOnDate";
import { COST_PARTS } from "./costOnDate";

/** Which of the two costs of a point a chart shows. */
export type Scenario = "extended" | "notExtended";

/** Size of a chart in units of its drawing; the page scales it to the width that there is. */
export const SIZE = { width: 264, height: 186, left: 46, right: 6, top: 40, bottom: 18 };
/** Width of a character of a label in a wide font, in the same units. */
const WIDEST_CHARACTER = 6.2;

/** Places of dates and dollars in a chart. */
export interface Scale {
  readonly x: (date: number) => number;
  readonly y: (dollars: number) => number;
}

/**
 * The scale that both charts share, so that they can be compared.
 *
 * @param first - The first date shown.
 * @param last - The last date shown.
 * @param most - The highest amount of the axis, in dollars.
 */
export function scaleOf(first: number, last: number, most: number): Scale {
  const { width, height, left, right, top, bottom } = SIZE;
  const rounded = (place: number): number => Math.round(place * 10) / 10;
  return {
    x: (date) => rounded(left + ((date - first) / (last - first)) * (width - left - right)),
    y: (dollars) => rounded(height - bottom - (dollars / most) * (height - top - bottom)),
  };
}

/**
 * Amounts for the axis, from 0 to at least the highest cost, in steps of 1, 2 or 5 times a power of ten.
 *
 * @example
 * ticksTo(4441.69) //=> [0, 1000, 2000, 3000, 4000, 5000]
 */
export function ticksTo(highest: number): readonly number[] {
  const rough = Math.max(highest, 1) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * power).find((one) => one >= rough) ?? rough;
  const steps = Math.max(1, Math.ceil(highest / step));
  return Array.from({ length: steps + 1 }, (_tick, index) => Number((index * step).toFixed(2)));
}

/**
 * An amount on the axis: dollars, or thousands or millions of dollars if the steps are as large.
 *
 * @example
 * axisAmount(1_500_000, 500_000) //=> "$1.5M"
 */
export function axisAmount(dollars: number, step: number): string {
  if (dollars === 0) return "$0";
  const [unit, letter] = step >= 200_000 ? [1e6, "M"] : step >= 10_000 ? [1e3, "K"] : [1, ""];
  const decimals = step < 1 ? 2 : 0;
  const shown = (dollars / unit).toLocaleString("en-US", { minimumFractionDigits: decimals });
  return `$${shown}${letter}`;
}

/** The place of a label whose middle should be at a place: beside the edge of the chart where it would not fit. */
export function labelPlace(
  text: string,
  middle: number
): { readonly x: number; readonly anchor: "start" | "middle" | "end" } {
  const half = (text.length * WIDEST_CHARACTER) / 2;
  if (middle - half < 1) return { x: 1, anchor: "start" };
  if (middle + half > SIZE.width - 1) return { x: SIZE.width - 1, anchor: "end" };
  return { x: middle, anchor: "middle" };
}

const stackedTo = (cost: Cost, part: CostPart): number =>
  COST_PARTS.slice(0, COST_PARTS.indexOf(part) + 1).reduce((sum, one) => sum + cost[one], 0);

/** The upper edge of a part of the stack. The edge rises at once from one day to the next, and slowly over longer times. */
function edge(
  points: readonly CostPoint[],
  { x, y }: Scale,
  heightOf: (point: CostPoint) => number
): string[] {
  const place = (date: number, height: number): string => `${String(x(date))},${String(y(height))}`;
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    const isNextDay = before !== undefined && point.date - before.date === 1;
    const corner = isNextDay ? [place(point.date, heightOf(before))] : [];
    return [...corner, place(point.date, heightOf(point))];
  });
}

/** The outline of a part of the stack, which lies on the parts below it. */
export function partPath(
  points: readonly CostPoint[],
  scale: Scale,
  scenario: Scenario,
  part: CostPart
): string {
  if (points.length < 2) return "";
  const below = COST_PARTS[COST_PARTS.indexOf(part) - 1];
  const top = edge(points, scale, (point) => stackedTo(point[scenario], part));
  const bottom = edge(points, scale, (point) => (below ? stackedTo(point[scenario], below) : 0));
  return `M${[...top, ...bottom.toReversed()].join(" ")}Z`;
}

/** The line of the total. */
export function totalPath(points: readonly CostPoint[], scale: Scale, scenario: Scenario): string {
  return points.length < 2
    ? ""
    : `M${edge(points, scale, (point) => point[scenario].total).join(" ")}`;
}
