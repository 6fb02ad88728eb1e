import type { ClientFacts } from "./clientFacts";
import { capitalized, daysText } from "./clientStatus";
import type { PaneAnswer } from "./rosterAnswers";
import { ConfirmFirst, StatusMark } from "./statusMark";

interface FactsProps {
  readonly facts: ClientFacts;
}

/** What stands for an answer that cannot be shown. */
const NONE = "–";

/** The status and the next step of a client. */
export function ClientState({ facts }: FactsProps) {
  const { stage, answers } = facts;
  const next = answers["Next deadline"].text;
  const days = answers["Days left"].value;
  const method = answers.Method.text;
  return (
    <>
      <p class="now">
        <StatusMark stage={stage} />
        {days !== undefined && <span class="days">{daysText(days)}</span>}
      </p>
      {next !== "" && (
        <p class="next">
          <strong>Next step:</strong> {capitalized(next)}.
          {method !== "" && method !== "too late" && ` Best method: ${method}.`}
        </p>
      )}
      {stage === "filed" && <p class="next">No deadline is left.</p>}
      {answers["Most serious issue"].text !== "" && (
        <p class="issue">
          {answers["Most serious issue"].text}. {answers["What to do"].text}.
        </p>
      )}
    </>
  );
}

function Figure({ label, answer }: { readonly label: string; readonly answer: PaneAnswer }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{answer.text === "" ? NONE : answer.text}</dd>
    </div>
  );
}

/** The state return's dates, where the state is known. */
function StateDates({ facts }: FactsProps) {
  const due = facts.answers["State due date"];
  const extended = facts.answers["State extended due date"];
  if (due.text === "" && extended.text === "") return null;
  return (
    <p class="state-dates">
      State return: due {due.text === "" ? NONE : due.text}
      {extended.text !== "" && `, extended to ${extended.text}`}.
      {extended.problem !== "" && ` ${extended.problem}`}
    </p>
  );
}

/** The four figures of a client. */
export function ClientFigures({ facts }: FactsProps) {
  const { answers } = facts;
  return (
    <>
      <dl class="figures">
        <Figure label="Due" answer={answers["Regular due date"]} />
        <Figure label="Extended to" answer={answers["Extended due date"]} />
        <Figure label="Balance due" answer={answers["Balance due"]} />
        <Figure label="Pay now" answer={answers["Pay now"]} />
      </dl>
      <StateDates facts={facts} />
      {answers["Confirm first"].text !== "" && (
        <ConfirmFirst why={`${capitalized(answers["Confirm first"].text)}.`} />
      )}
    </>
  );
}

/** The cost of waiting with and without the extension, and which of them counts for this client. */
export function WaitingCosts({ facts }: FactsProps) {
  const { when, withExtension, without, isExtended } = facts.waiting;
  if (withExtension.text === "" && without.text === "") return null;
  const rows = [
    { label: "With the extension", answer: withExtension, counts: isExtended === true },
    { label: "Without the extension", answer: without, counts: isExtended === false },
  ];
  return (
    <table class="waiting">
      <caption>
        <strong>Cost of waiting</strong> {when}
      </caption>
      <tbody>
        {rows.map(({ label, answer, counts }) => (
          <tr class={counts ? "counts" : undefined}>
            <th scope="row">
              {label}
              {counts && <span class="counts-mark">this client</span>}
            </th>
            <td class="number">{answer.text === "" ? NONE : answer.text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Why something is not shown, a sentence each, with the cell to correct. */
export function ClientProblems({ facts }: FactsProps) {
  if (facts.problems.length === 0) return null;
  return (
    <ul class="problems">
      {facts.problems.map((problem) => (
        <li>{problem}</li>
      ))}
    </ul>
  );
}
