import { useMemo, useState } from "preact/hooks";
import { yearOf } from "../calendar/calendarDate";
import { FILER_TYPES } from "../calculation/filerType";
import { STATES } from "../calculation/state";
import { rulebook } from "../rules/rulebook";
import { AnswerView } from "./answerView";
import { liveAnswer } from "./liveAnswer";

/** The tax year whose deadlines are shown first: that of the latest Form 4868 in the rule tables. */
const LATEST_YEAR = yearOf(rulebook.mailingAddresses.knownThrough);

interface ChoiceProps {
  readonly id: string;
  readonly label: string;
  readonly words: readonly string[];
  readonly chosen: string;
  readonly choose: (word: string) => void;
}

function Choice({ id, label, words, chosen, choose }: ChoiceProps) {
  return (
    <div>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={chosen}
        onChange={({ currentTarget }) => {
          choose(currentTarget.value);
        }}
      >
        {words.map((word) => (
          <option value={word}>{word === "" ? "any other" : word}</option>
        ))}
      </select>
    </div>
  );
}

/** The deadlines for a tax year, a state of residence and a filer type, as CALENDAR returns them. */
export function Deadlines() {
  const [year, setYear] = useState(String(LATEST_YEAR));
  const [state, setState] = useState("");
  const [filerType, setFilerType] = useState<string>(FILER_TYPES[0]);
  // What is no year is passed as text, so that the function says what to enter.
  const asked = /^\d{1,4}$/.test(year) ? year : `"${year.replaceAll('"', '""')}"`;
  const formula = `=EXT.CALENDAR(${asked},"${state}","${filerType}")`;
  const rows = useMemo(() => liveAnswer(formula), [formula]);
  return (
    <>
      <div class="fields">
        <div>
          <label for="calendar-year">Tax year</label>
          <input
            id="calendar-year"
            type="number"
            defaultValue={year}
            onChange={({ currentTarget }) => {
              setYear(currentTarget.value);
            }}
          />
        </div>
        <Choice
          id="calendar-state"
          label="State of residence"
          words={["", ...STATES]}
          chosen={state}
          choose={setState}
        />
        <Choice
          id="calendar-filer"
          label="Filer type"
          words={FILER_TYPES}
          chosen={filerType}
          choose={setFilerType}
        />
      </div>
      <div aria-live="polite">
        <AnswerView rows={rows} caption={`Deadlines for tax year ${year}`} />
      </div>
    </>
  );
}
