import { useId, useMemo, useState } from "preact/hooks";
import { writtenDollars } from "../../functions/cells/writtenDollars";
import { CostCurveChart, PartPatterns } from "./costCurveChart";
import { costCurve, isStep, type CostCurve as Curve } from "./costCurveData";
import { scaleOf, ticksTo, type Scenario } from "./costCurveShape";
import { CostCurveTable } from "./costCurveTable";
import {
  inCell,
  inSentence,
  percent,
  SCENARIO_NAMES,
  SHORT_PART_NAMES,
  testSentence,
} from "./costCurveWords";
import { COST_PARTS, costsOn, type CostCurveInput } from "./costOnDate";

const SCENARIOS: readonly Scenario[] = ["extended", "notExtended"];

/** The names of the parts with their patterns, and the figures of one date. */
function Figures({ id, curve, date }: { id: string; curve: Curve; date: number }) {
  const point = useMemo(() => costsOn(curve.input, date), [curve, date]);
  const { extended, notExtended } = point;
  return (
    <>
      <p class="spoken" role="status">
        {`${inSentence(date)}: with the extension ${writtenDollars(extended.total)}, without it ${writtenDollars(notExtended.total)}.`}
      </p>
      <table class="figures">
        <caption>Penalties and interest on {inSentence(date)}</caption>
        <thead>
          <tr>
            <th scope="col">{inCell(date)}</th>
            <th scope="col" class="number">
              Extended
            </th>
            <th scope="col" class="number">
              Not extended
            </th>
          </tr>
        </thead>
        <tbody>
          {COST_PARTS.toReversed().map((part) => (
            <tr>
              <th scope="row">
                <svg class="swatch" viewBox="0 0 14 12" aria-hidden="true">
                  <PartPatterns id={`${id}-${part}-swatch`} />
                  <rect width="14" height="12" fill={`url(#${id}-${part}-swatch-${part})`} />
                </svg>
                {SHORT_PART_NAMES[part]}
              </th>
              <td class="number">{writtenDollars(extended[part])}</td>
              <td class="number">{writtenDollars(notExtended[part])}</td>
            </tr>
          ))}
          <tr class="sum">
            <th scope="row">Total</th>
            <td class="number">{writtenDollars(extended.total)}</td>
            <td class="number">{writtenDollars(notExtended.total)}</td>
          </tr>
        </tbody>
      </table>
    </>
  );
}

/** The dates with a step of a penalty, which the keys Page Up and Page Down go to. */
function stepDates({ points }: Curve): readonly number[] {
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    return before && isStep(before, point) ? [before.date, point.date] : [];
  });
}

/** The slider with which the date of the figures is chosen. */
function DateSlider({
  id,
  curve,
  date,
  choose,
}: {
  readonly id: string;
  readonly curve: Curve;
  readonly date: number;
  readonly choose: (date: number) => void;
}) {
  const { points } = curve;
  return (
    <>
      <label for={`${id}-date`}>Date of filing and paying</label>
      <input
        id={`${id}-date`}
        type="range"
        min={points[0]?.date}
        max={points.at(-1)?.date}
        value={date}
        aria-valuetext={inSentence(date)}
        aria-describedby={`${id}-keys`}
        onInput={({ currentTarget }) => {
          choose(Number(currentTarget.value));
        }}
        onKeyDown={(event) => {
          const steps = stepDates(curve);
          const next =
            event.key === "PageUp"
              ? steps.find((step) => step > date)
              : event.key === "PageDown"
                ? steps.findLast((step) => step < date)
                : undefined;
          if (next === undefined) return;
          event.preventDefault();
          choose(next);
        }}
      />
      <small class="keys" id={`${id}-keys`}>
        Arrow keys move by a day, Page Up and Page Down to the next change of a penalty.
      </small>
    </>
  );
}

/** The two charts, the slider and the figures of the chosen date. */
function Drawn({ curve }: { readonly curve: Curve }) {
  const id = useId();
  const { points, extendedDue, asOf, publishedThrough, assumedRate } = curve;
  const [first = 0, last = 0] = [points[0]?.date, points.at(-1)?.date];
  const [chosen, setChosen] = useState<number>();
  const date = Math.min(Math.max(chosen ?? asOf ?? extendedDue, first), last);
  const ticks = ticksTo(Math.max(...points.map(({ notExtended }) => notExtended.total)));
  const scale = scaleOf(first, last, ticks.at(-1) ?? 1);
  const test = testSentence(curve);
  const at = useMemo(() => costsOn(curve.input, date), [curve, date]);
  return (
    <figure class="cost-curve">
      <figcaption>
        Penalties and interest by the date on which the client files and pays the balance.
      </figcaption>
      <div class="charts">
        {SCENARIOS.map((scenario) => (
          <div>
            <p class="name">{SCENARIO_NAMES[scenario]}</p>
            <CostCurveChart
              id={`${id}-${scenario}`}
              curve={curve}
              scenario={scenario}
              scale={scale}
              ticks={ticks}
              date={date}
              total={at[scenario].total}
              choose={setChosen}
            />
          </div>
        ))}
      </div>
      <DateSlider id={id} curve={curve} date={date} choose={setChosen} />
      <Figures id={id} curve={curve} date={date} />
      {test !== "" && (
        <p>
          {curve.neededForTest === 0 && <span aria-hidden="true">◆ </span>}
          {test}
        </p>
      )}
      {assumedRate !== undefined && (
        <p>
          Interest rates are published through {inCell(publishedThrough)}. The dashed part assumes{" "}
          {percent(assumedRate)} a year.
        </p>
      )}
      <details>
        <summary>Show the figures as a table</summary>
        {SCENARIOS.map((scenario) => (
          <CostCurveTable curve={curve} scenario={scenario} />
        ))}
      </details>
    </figure>
  );
}

/** What waiting costs a client: penalties and interest by date, with and without the extension, as two charts and as tables. */
export function CostCurve({ input }: { readonly input: CostCurveInput }) {
  const key = JSON.stringify(input);
  // The cells of a client are new objects after each change of the workbook, and mostly the same.
  const answer = useMemo(() => costCurve(input), [key]);
  if ("sentence" in answer) return <p class="note">{answer.sentence}</p>;
  return <Drawn key={key} curve={answer.curve} />;
}
