import { useState } from "preact/hooks";
import { parseCalendarDate, written } from "../../calendar/calendarDate";
import { EVENTS, eventEntry, recordedText, type ClientEvent } from "./clientEvents";
import type { ClientRow } from "../list/clientRow";
import { ChoiceField, EntryField } from "../formFields";
import type { PaneSettings } from "../list/rosterAnswers";
import { NotDone, type WorkbookHost } from "../workbook/workbookHost";

/** What {@link RecordEvent} works on. */
interface RecordEventProps {
  readonly client: ClientRow;
  readonly settings: PaneSettings;
  readonly workbook: WorkbookHost;
  readonly run: (work: () => Promise<string>) => void;
  /** Reads the list again. */
  readonly refresh: () => Promise<void>;
}

const FIRST_EVENT: ClientEvent = EVENTS[0];
const EVENT_OPTIONS = EVENTS.map(({ id, label }) => ({ value: id, text: label }));

/** The form that records an event of the client on a date that the user confirms. */
export function RecordEvent({ client, settings, workbook, run, refresh }: RecordEventProps) {
  const [event, setEvent] = useState<ClientEvent>(
    () => EVENTS.find((one) => recordedText(client, one) === "") ?? FIRST_EVENT
  );
  const [entered, setEntered] = useState(() => written(settings.asOf));
  const now = recordedText(client, event);
  const record = async (): Promise<string> => {
    const date = parseCalendarDate(entered);
    if (date === undefined)
      throw new NotDone("The date is not complete. Enter month, day and year.");
    if (!workbook.enterValue)
      throw new NotDone("The pane cannot write into this workbook. Enter the date yourself.");
    const { cell, value, format, sentence } = eventEntry(client, event, date, settings);
    await workbook.enterValue(cell, value, format);
    await refresh();
    return sentence;
  };
  return (
    <form
      class="panel"
      aria-label="Record an event"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        run(record);
      }}
    >
      <div class="fields">
        <ChoiceField
          id="event"
          label="What happened"
          options={EVENT_OPTIONS}
          value={event.id}
          enter={(chosen) => {
            setEvent(EVENTS.find(({ id }) => id === chosen) ?? FIRST_EVENT);
          }}
        />
        <EntryField id="event-date" label="Date" isDate value={entered} enter={setEntered} />
      </div>
      {now !== "" && <p>The list has {now} now. The new date replaces it.</p>}
      {/* A form is sent by the Enter key only if its button is one of the page's own kind. */}
      <button type="submit" class="primary">
        Enter this date in the list
      </button>
    </form>
  );
}

/** The dates that the list has of a client's events, in one line. */
export function RecordedEvents({ client }: { readonly client: ClientRow }) {
  const done = EVENTS.map((event) => ({ ...event, on: recordedText(client, event) }));
  const shown = done.filter(({ on }) => on !== "");
  if (shown.length === 0) return null;
  return <p class="recorded">{shown.map(({ label, on }) => `${label} ${on}`).join(" · ")}</p>;
}
