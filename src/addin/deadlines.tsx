import { useMemo, useState } from "preact/hooks";
import { yearOf } from "../calendar/calendarDate";
import { FILER_TYPES, type FilerType } from "../calculation/filerType";
import { STATE_NAMES, STATES } from "../calculation/state";
import { rulebook } from "../rules/rulebook";
import { AnswerView } from "./answerView";
import { liveAnswer, type ShownCell } from "./liveAnswer";

/** The tax year whose deadlines are shown first: that of the latest Form 4868 in the rule tables. */
const LATEST_YEAR = yearOf(rulebook.mailingAddresses.knownThrough);

interface Option {
  readonly value: string;
  readonly text: string;
}

interface ChoiceProps {
  readonly id: string;
  readonly label: string;
  readonly options: readonly Option[];
  readonly chosen: string;
  readonly choose: (value: string) => void;
}

const STATE_OPTIONS: readonly Option[] = [
  { value: "", text: "any other" },
  ...STATES.map((value) => ({ value, text: STATE_NAMES[value] ?? "outside the United States" })),
];
const FILER_TEXTS: Readonly<Record<FilerType, string>> = {
  resident: "resident",
  "out of country": "out of the country (line 8)",
  nonresident: "nonresident without wages (line 9)",
};
const FILER_OPTIONS: readonly Option[] = FILER_TYPES.map((value) => ({
  value,
  text: FILER_TEXTS[value],
}));

function Choice({ id, label, options, chosen, choose }: ChoiceProps) {
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
        {options.map(({ value, text }) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </div>
  );
}

/** The deadlines in two columns, so that the dates are in sight in a narrow pane. What else CALENDAR says is below each deadline. */
export function DeadlineTable({
  rows,
  caption,
}: {
  readonly rows: readonly (readonly ShownCell[])[];
  readonly caption: string;
}) {
  const [headings = [], ...body] = rows;
  return (
    <table class="deadlines">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Deadline</th>
          <th scope="col">Date</th>
        </tr>
      </thead>
      <tbody>
        {body.map((row) => {
          const cell = (heading: string): string =>
            row[headings.findIndex(({ text }) => text === heading)]?.text ?? "";
          const [moved, without] = [cell("Reason moved"), cell("Without extension")];
          return (
            <tr>
              <th scope="row">
                {cell("Deadline")}
                {moved !== "" && <small>{`Moved from ${cell("Original date")}: ${moved}.`}</small>}
                {without !== "" && without !== cell("Date") && (
                  <small>{`Without the extension: ${without}.`}</small>
                )}
                <small>{cell("Source")}</small>
              </th>
              <td>
                {cell("Date")}
                <small>{cell("Weekday")}</small>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
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
  const caption = `Deadlines for tax year ${year}`;
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
          options={STATE_OPTIONS}
          chosen={state}
          choose={setState}
        />
        <Choice
          id="calendar-filer"
          label="Filer type"
          options={FILER_OPTIONS}
          chosen={filerType}
          choose={setFilerType}
        />
      </div>
      <div aria-live="polite">
        {rows.length > 1 ? (
          <DeadlineTable rows={rows} caption={caption} />
        ) : (
          <AnswerView rows={rows} caption={caption} />
        )}
      </div>
    </>
  );
}
