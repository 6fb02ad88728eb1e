import { writtenDollars } from "../../functions/cells/writtenDollars";
import type { CostCurve } from "./costCurveData";
import type { Scenario } from "./costCurveShape";
import { costRows, inCell, PART_NAMES, percent, SCENARIO_NAMES } from "./costCurveWords";
import { COST_PARTS } from "./costOnDate";

/** The figures of one of the two charts as a table: the dates on which something changes. */
export function CostCurveTable({
  curve,
  scenario,
}: {
  readonly curve: CostCurve;
  readonly scenario: Scenario;
}) {
  const caption = `${SCENARIO_NAMES[scenario]}: penalties and interest by date`;
  const { publishedThrough, assumedRate = 0 } = curve;
  return (
    <div class="scroller" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Filed and paid on</th>
            <th scope="col" class="number">
              Total
            </th>
            {COST_PARTS.map((part) => (
              <th scope="col" class="number">
                {PART_NAMES[part]}
              </th>
            ))}
            <th scope="col">What changes</th>
          </tr>
        </thead>
        <tbody>
          {costRows(curve, scenario).map(({ point, remark }) => (
            <tr>
              <th scope="row">
                {inCell(point.date)}
                {point.date > publishedThrough && <small>at {percent(assumedRate)} assumed</small>}
              </th>
              <td class="number">{writtenDollars(point[scenario].total)}</td>
              {COST_PARTS.map((part) => (
                <td class="number">{writtenDollars(point[scenario][part])}</td>
              ))}
              <td>{remark}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
