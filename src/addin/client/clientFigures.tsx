import type { ClientFacts } from "./clientFacts";
import { capitalized, daysText } from "./clientStatus";
import type { PaneAnswer } from "../list/rosterAnswers";
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
  const isSerious = answers.Severity.text === "problem" || answers.Severity.text === "risk";
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
      {isSerious && (
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

/** The extended due date, as far as the record gives the extension. */
function ExtendedDate({ facts, isTyped }: FactsProps & { readonly isTyped: boolean }) {
  const { stage, answers, waiting } = facts;
  const date = answers["Extended due date"];
  if (isTyped) return <Figure label="With an extension" answer={date} />;
  if (waiting.isExtended === false)
    return <Figure label="Extended to" answer={{ ...date, text: "No extension" }} />;
  const isExtended = stage === "extended" || stage === "filed" || stage === "past due";
  return <Figure label={isExtended ? "Extended to" : "With an extension"} answer={date} />;
}

/** The state return's dates, where the state is known. */
function StateDates({ facts }: FactsProps) {
  const due = facts.answers["State due date"];
  const extended = facts.answers["State extended due date"];
  if (due.text === "" && extended.text === "") return null;
  return (
    <p class="state-dates">
      State return: due {due.text === "" ? NONE : due.text}
      {extended.text !== "" &&
        (extended.text === due.text ? ", not extended" : `, extended to ${extended.text}`)}
      .{extended.problem !== "" && ` ${extended.problem}`}
    </p>
  );
}

/** The four figures of a client, or the dates and what follows from the amounts, as far as they are known. */
export function ClientFigures({ facts, isTyped = false }: FactsProps & { isTyped?: boolean }) {
  const { answers } = facts;
  const hasAmounts = !isTyped || answers["Balance due"].text !== "";
  return (
    <>
      <dl class="four">
        <Figure label="Due" answer={answers["Regular due date"]} />
        <ExtendedDate facts={facts} isTyped={isTyped} />
        {isTyped && <Figure label="Pay by" answer={answers["Payment due date"]} />}
        {hasAmounts && <Figure label="Balance due" answer={answers["Balance due"]} />}
        {!isTyped && <Figure label="Pay now" answer={answers["Pay now"]} />}
      </dl>
      <StateDates facts={facts} />
      {answers["Confirm first"].text !== "" && (
        <ConfirmFirst
          why={`${capitalized(answers["Confirm first"].text)}. Check the current official text.`}
        />
      )}
    </>
  );
}

/** The cost of waiting with and without the extension, and which of them counts for a client of the list. */
export function WaitingCosts({ facts, isTyped = false }: FactsProps & { isTyped?: boolean }) {
  const { when, withExtension, without, isExtended } = facts.waiting;
  if (withExtension.text === "" && without.text === "") return null;
  const rows = [
    { label: "With the extension", answer: withExtension, counts: !isTyped && isExtended === true },
    { label: "Without the extension", answer: without, counts: !isTyped && isExtended === false },
  ];
  return (
    <table class="waiting">
      <caption>
        <strong>Cost of waiting</strong> {when}
      </caption>
      <tbody>
        {rows.map(({ label, answer, counts }) => (
          <tr class={counts ? "applies" : undefined}>
            <th scope="row">
              {label}
              {counts && <span class="applies-mark">this client</span>}
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
