import { useMemo, useState } from "preact/hooks";
import { yearOf } from "../../calendar/calendarDate";
import { FILER_TYPES } from "../../calculation/filerType";
import { rulebook } from "../../rules/rulebook";
import { AnswerView } from "../answers/answerView";
import { ChoiceField, FILER_OPTIONS, STATE_OPTIONS } from "../formFields";
import { liveAnswer, type ShownCell } from "../answers/liveAnswer";

/** The tax year whose deadlines are shown first: that of the latest Form 4868 in the rule tables. */
const LATEST_YEAR = yearOf(rulebook.mailingAddresses.knownThrough);

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
        <ChoiceField
          id="calendar-state"
          label="State of residence"
          options={STATE_OPTIONS}
          value={state}
          enter={setState}
        />
        <ChoiceField
          id="calendar-filer"
          label="Filer type"
          options={FILER_OPTIONS}
          value={filerType}
          enter={setFilerType}
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
