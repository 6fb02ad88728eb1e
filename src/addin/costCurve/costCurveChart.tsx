import type { CostCurve } from "./costCurveData";
import {
  axisAmount,
  labelPlace,
  partPath,
  SIZE,
  totalPath,
  type Scale,
  type Scenario,
} from "./costCurveShape";
import { inCell, percent, summary } from "./costCurveWords";
import { COST_PARTS } from "./costOnDate";

/** What {@link CostCurveChart} shows. */
interface CostCurveChartProps {
  /** A part of the names that differs from chart to chart of a page. */
  readonly id: string;
  readonly curve: CostCurve;
  readonly scenario: Scenario;
  readonly scale: Scale;
  /** The amounts on the axis, from 0 up. */
  readonly ticks: readonly number[];
  /** The date whose figures are read, and the cost on it. */
  readonly date: number;
  readonly total: number;
  readonly choose: (date: number) => void;
}

/** Where the lines across the chart end. */
const RIGHT = SIZE.width - 1;

/** The patterns of the parts, which tell them apart without their colors. */
export function PartPatterns({ id }: { readonly id: string }) {
  return (
    <defs>
      {COST_PARTS.map((part) => (
        <pattern id={`${id}-${part}`} width="6" height="6" patternUnits="userSpaceOnUse">
          <rect class={part} width="6" height="6" />
          {part === "failureToPay" && <path class="mark" d="M-1,1 l2,-2 M0,6 l6,-6 M5,7 l2,-2" />}
          {part === "failureToFile" && <circle class="mark" cx="3" cy="3" r="0.9" />}
        </pattern>
      ))}
    </defs>
  );
}

function Label({ text, middle, y }: { text: string; middle: number; y: number }) {
  const { x, anchor } = labelPlace(text, middle);
  return (
    <text x={x} y={y} text-anchor={anchor}>
      {text}
    </text>
  );
}

/** A vertical line on a date, with its words in one of the lines above the chart. */
function Mark({ x, line, text, kind }: { x: number; line: number; text: string; kind: string }) {
  const row = 12 * line + 9;
  return (
    <>
      <line class={kind} x1={x} x2={x} y1={row + 3} y2={SIZE.height - SIZE.bottom} />
      <Label text={text} middle={x} y={row} />
    </>
  );
}

/** The amounts of the axis, each with a line across the chart. */
function Amounts({ ticks, y }: { readonly ticks: readonly number[]; readonly y: Scale["y"] }) {
  return (
    <>
      {ticks.map((tick, index) => (
        <>
          <line class="grid" x1={SIZE.left} x2={RIGHT} y1={y(tick)} y2={y(tick)} />
          {(ticks.length < 5 || index % 2 === 0) && (
            <text x={SIZE.left - 4} y={y(tick) + 3.5} text-anchor="end">
              {axisAmount(tick, ticks[1] ?? tick)}
            </text>
          )}
        </>
      ))}
    </>
  );
}

/** The stack of penalties and interest in one of the two cases, drawn as a picture with a sentence that says what it shows. */
export function CostCurveChart(props: CostCurveChartProps) {
  const { id, curve, scenario, scale, ticks, date, total, choose } = props;
  const { points, extendedDue, asOf, publishedThrough, assumedRate } = curve;
  const { x, y } = scale;
  const [first = 0, last = 0] = [points[0]?.date, points.at(-1)?.date];
  const bottom = SIZE.height - SIZE.bottom;
  const published = points.filter((point) => point.date <= publishedThrough);
  const assumed = points.filter((point) => point.date >= publishedThrough);
  const assumedText = assumedRate === undefined ? "" : `${percent(assumedRate)} assumed`;
  const lastExcused = points.findLast(({ extended }) => extended.isExcused);
  const middle = Math.round((first + last) / 2);
  return (
    <svg
      class="chart"
      viewBox={`0 0 ${String(SIZE.width)} ${String(SIZE.height)}`}
      role="img"
      aria-label={summary(curve, scenario)}
      onPointerDown={({ currentTarget, clientX }) => {
        const { left, width } = currentTarget.getBoundingClientRect();
        const place = ((clientX - left) / width) * SIZE.width - SIZE.left;
        const share = place / (SIZE.width - SIZE.left - SIZE.right);
        choose(Math.round(first + Math.min(1, Math.max(0, share)) * (last - first)));
      }}
    >
      <PartPatterns id={id} />
      <Amounts ticks={ticks} y={y} />
      {COST_PARTS.toReversed().map((part) => {
        const fill = `url(#${id}-${part})`;
        return (
          <>
            <path class="part" d={partPath(published, scale, scenario, part)} fill={fill} />
            <path class="part later" d={partPath(assumed, scale, scenario, part)} fill={fill} />
          </>
        );
      })}
      <path class="total" d={totalPath(published, scale, scenario)} />
      <path class="total later" d={totalPath(assumed, scale, scenario)} />
      <line class="axis" x1={SIZE.left} x2={RIGHT} y1={bottom} y2={bottom} />
      {extendedDue <= last && (
        <Mark
          x={x(extendedDue)}
          line={0}
          text={`Extended due date ${inCell(extendedDue)}`}
          kind="due"
        />
      )}
      {asOf !== undefined && (
        <Mark x={x(asOf)} line={1} text={`As of ${inCell(asOf)}`} kind="as-of" />
      )}
      {assumedText !== "" && (
        <Mark
          x={x(Math.max(first, publishedThrough))}
          line={asOf !== undefined && asOf > middle ? 2 : 1}
          text={assumedText}
          kind="assumed"
        />
      )}
      {[first, middle, last].map((one) => (
        <>
          <line class="axis" x1={x(one)} x2={x(one)} y1={bottom} y2={bottom + 3} />
          <Label text={inCell(one)} middle={x(one)} y={SIZE.height - 4} />
        </>
      ))}
      {lastExcused && scenario === "extended" && (
        <path
          class="test"
          d={`M${String(x(lastExcused.date) - 4)},${String(y(lastExcused.extended.total))} l4,-4 4,4 -4,4z`}
        />
      )}
      <line class="cursor" x1={x(date)} x2={x(date)} y1={SIZE.top} y2={bottom} />
      <circle class="cursor" cx={x(date)} cy={y(total)} r="3.5" />
    </svg>
  );
}
