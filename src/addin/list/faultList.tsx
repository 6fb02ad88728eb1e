import { MONEY_FORMAT } from "../../functions/cells/answerCell";
import { formattedNumber } from "../answers/liveAnswer";
import type { ListFault, ListTotals } from "./listFaults";

/** Faults that are shown; a list with more has a cause that the first ones show. */
const MOST_SHOWN = 50;

const dollars = (amount: number): string => `$${formattedNumber(amount, MONEY_FORMAT)}`;

interface FaultListProps {
  readonly faults: readonly ListFault[];
  /** Selects a cell. */
  readonly goTo: (address: string) => void;
}

/** The cells of a list that cannot be read, each with a button that selects it. */
export function FaultList({ faults, goTo }: FaultListProps) {
  if (faults.length === 0) return <p>Every cell can be read.</p>;
  return (
    <>
      <h3>
        {faults.length === 1
          ? "1 cell cannot be read"
          : `${faults.length.toLocaleString("en-US")} cells cannot be read`}
      </h3>
      <ul class="faults">
        {faults.slice(0, MOST_SHOWN).map(({ address, client, heading, sentence }) => (
          <li>
            <fluent-button
              size="small"
              onClick={() => {
                goTo(address);
              }}
            >
              {address}
            </fluent-button>{" "}
            <strong>{client}</strong>, {heading}: {sentence}
          </li>
        ))}
      </ul>
      {faults.length > MOST_SHOWN && <p>The first {MOST_SHOWN} are shown.</p>}
    </>
  );
}

/** What the clients of a list owe, and what is left out. */
export function TotalsLine({ totals }: { readonly totals: ListTotals }) {
  const { clients, balanceDue, suggestedPayment, leftOut, totalRows } = totals;
  const isAre = leftOut === 1 ? "row is" : "rows are";
  return (
    <>
      <dl class="totals">
        <dt>Clients</dt>
        <dd>{clients.toLocaleString("en-US")}</dd>
        <dt>Total balance due</dt>
        <dd>{dollars(balanceDue)}</dd>
        <dt>Total suggested payment</dt>
        <dd>{dollars(suggestedPayment)}</dd>
      </dl>
      {leftOut > 0 && (
        <p class="error">
          {leftOut.toLocaleString("en-US")} {isAre} left out of the totals because an amount cannot
          be read.
        </p>
      )}
      {totalRows > 0 && <p>A row whose name begins with Total is not counted as a client.</p>}
    </>
  );
}
