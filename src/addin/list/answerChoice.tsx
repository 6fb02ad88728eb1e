import type { RosterHeading } from "../../functions/season/rosterColumns";
import { ANSWERS } from "./listColumns";

interface AnswerChoiceProps {
  readonly chosen: readonly RosterHeading[];
  readonly choose: (answers: readonly RosterHeading[]) => void;
}

/** The answers that can be written beside a list, as boxes to check. */
export function AnswerChoice({ chosen, choose }: AnswerChoiceProps) {
  return (
    <details>
      <summary>
        Answers to write ({chosen.length} of {ANSWERS.length})
      </summary>
      <fieldset aria-label="Answers to write">
        {ANSWERS.map((heading) => (
          <label class="choice">
            <input
              type="checkbox"
              checked={chosen.includes(heading)}
              onChange={({ currentTarget }) => {
                choose(
                  ANSWERS.filter((one) =>
                    one === heading ? currentTarget.checked : chosen.includes(one)
                  )
                );
              }}
            />
            {heading}
          </label>
        ))}
      </fieldset>
    </details>
  );
}
