import { useState } from "preact/hooks";
import { capitalized } from "./clientStatus";
import { StatusMark } from "./statusMark";
import type { PracticeFacts, Trouble } from "./troubles";

/** What {@link TroubleList} shows. */
export interface TroubleListProps {
  readonly practice: PracticeFacts;
  /** Shows the cell of a client; `undefined` where the host cannot. */
  readonly goTo: ((address: string) => void) | undefined;
}

/** How many clients are shown first. */
const FIRST = 6;

function TroubleEntry({
  trouble,
  goTo,
}: {
  readonly trouble: Trouble;
  readonly goTo: TroubleListProps["goTo"];
}) {
  const { name, stage, issue, deadline, whatToDo, address } = trouble;
  return (
    <li class="trouble">
      <p class="now">
        {goTo ? (
          <button
            type="button"
            class="link"
            onClick={() => {
              goTo(address);
            }}
          >
            {name}
          </button>
        ) : (
          <strong>{name}</strong>
        )}
        <StatusMark stage={stage} />
      </p>
      <p>
        {issue}.{deadline !== "" && <strong> {capitalized(deadline)}.</strong>}
      </p>
      <p class="quiet">{whatToDo}.</p>
    </li>
  );
}

/** The whole practice: how many clients have each status, and those with a problem, the worst first. */
export function TroubleList({ practice, goTo }: TroubleListProps) {
  const [isWhole, setIsWhole] = useState(false);
  const { clients, counts, troubles } = practice;
  const shown = isWhole ? troubles : troubles.slice(0, FIRST);
  return (
    <>
      <ul class="counts" aria-label={`${clients} clients by status`}>
        {counts.map(({ stage, count }) => (
          <li>
            <strong>{count}</strong> <StatusMark stage={stage} />
          </li>
        ))}
      </ul>
      {troubles.length === 0 ? (
        <p>No client has a problem or a risk on this date.</p>
      ) : (
        <ol class="troubles">
          {shown.map((trouble) => (
            <TroubleEntry key={trouble.address} trouble={trouble} goTo={goTo} />
          ))}
        </ol>
      )}
      {troubles.length > FIRST && (
        <fluent-button
          size="small"
          role="button"
          aria-expanded={isWhole}
          onClick={() => {
            setIsWhole(!isWhole);
          }}
        >
          {isWhole ? `Show the first ${FIRST}` : `Show all ${troubles.length}`}
        </fluent-button>
      )}
    </>
  );
}
