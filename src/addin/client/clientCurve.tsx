import { useEffect, useState } from "preact/hooks";
import { cellOfClient } from "../../functions/season/cellOfClient";
import { ifReadable, rosterClientOf } from "../list/clientReading";
import { CostCurve } from "../costCurve/costCurve";
import type { ClientRow } from "../list/clientRow";
import type { CostCurveInput } from "../costCurve/costOnDate";
import { settingCells, type PaneSettings } from "../list/rosterAnswers";

/**
 * A client as the cost curve takes it. The payment with the request counts as far as the plan counts it; what was paid later does not.
 *
 * @param client - The client's row.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @returns The cells; `undefined` if one of them cannot be read.
 */
function curveInput(client: ClientRow, settings: PaneSettings): CostCurveInput | undefined {
  const shared = settingCells(settings);
  const cell = cellOfClient(client.row, { ...shared });
  return ifReadable(() => ({
    taxYear: cell("taxYear"),
    totalTax: cell("totalTax"),
    payments: rosterClientOf(client, settings).plan().paidOnTime.toNumber(),
    state: cell("state"),
    filerType: cell("filerType"),
    postponementBegins: cell("postponementBegins"),
    postponementEnds: cell("postponementEnds"),
    assumedRate: shared.assumedRate ?? "",
    asOf: shared.asOf,
  }));
}

interface ClientCurveProps {
  readonly client: ClientRow;
  readonly settings: PaneSettings;
}

/** How long the selection rests before the curve is drawn, in milliseconds. */
const REST = 250;

/** The cost of waiting of a client by date, drawn once the selection rests; nothing if a cell cannot be read. */
export function ClientCurve({ client, settings }: ClientCurveProps) {
  const input = curveInput(client, settings);
  const key = JSON.stringify(input);
  const [drawn, setDrawn] = useState<{ readonly key: string; readonly input: CostCurveInput }>();
  useEffect(() => {
    const waiting = setTimeout(() => {
      setDrawn(input && { key, input });
    }, REST);
    return () => {
      clearTimeout(waiting);
    };
  }, [key]);
  // The curve of the client before keeps its place, unseen.
  return drawn && input ? (
    <div class={drawn.key === key ? undefined : "unseen"}>
      <CostCurve input={drawn.input} />
    </div>
  ) : null;
}
