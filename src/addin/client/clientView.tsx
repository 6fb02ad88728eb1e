import { useEffect, useRef, useState } from "preact/hooks";
import { AddressView } from "./addressView";
import { ClientCurve } from "./clientCurve";
import type { ClientFacts } from "./clientFacts";
import { ClientFigures, ClientProblems, ClientState, WaitingCosts } from "./clientFigures";
import { clientCalculation, clientSheet } from "./clientFormulas";
import type { ClientRow } from "../list/clientRow";
import { LetterView } from "./letterView";
import { RecordedEvents, RecordEvent } from "./recordEvent";
import type { PaneSettings } from "../list/rosterAnswers";
import type { NewSheet } from "../workbook/newSheet";
import type { WorkbookHost } from "../workbook/workbookHost";

/** What {@link ClientView} shows and works on. */
export interface ClientViewProps {
  readonly client: ClientRow;
  readonly facts: ClientFacts;
  readonly settings: PaneSettings;
  readonly workbook: WorkbookHost;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
  /** Reads the list again. */
  readonly refresh: () => Promise<void>;
}

/** The parts that a button opens. */
const PANELS = [
  { id: "record", label: "Record an event" },
  { id: "letter", label: "Letter" },
  { id: "address", label: "Mailing address" },
] as const;
type Panel = (typeof PANELS)[number]["id"];

/** A client of the list: status, next step, figures, cost of waiting, and what can be done. */
export function ClientView({ client, facts, settings, workbook, run, refresh }: ClientViewProps) {
  const [panel, setPanel] = useState<Panel>();
  const opened = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (panel) opened.current?.scrollIntoView({ block: "nearest" });
  }, [panel]);
  const { list, index } = client;
  const add = (make: () => NewSheet): void => {
    run(async () => `Added the sheet ${await workbook.addSheet(make())}.`);
  };
  // The forms begin anew with another client or another date.
  const key = `${list.sheet} ${index} ${String(settings.asOf)}`;
  return (
    <>
      <h2 id="client-title">{facts.name}</h2>
      <p class="place">
        {list.sheet}, row {list.headingRow + 1 + index}
        {facts.about !== "" && ` · ${facts.about}`}
      </p>
      <ClientState facts={facts} />
      <ClientFigures facts={facts} />
      <ClientProblems facts={facts} />
      <WaitingCosts facts={facts} />
      <RecordedEvents client={client} />
      <div class="buttons">
        {PANELS.map(({ id, label }) => (
          <fluent-button
            role="button"
            aria-expanded={panel === id}
            onClick={() => {
              setPanel(panel === id ? undefined : id);
            }}
          >
            {label}
          </fluent-button>
        ))}
        <fluent-button
          onClick={() => {
            add(() => clientCalculation(client, facts, settings));
          }}
        >
          Calculation
        </fluent-button>
        <fluent-button
          onClick={() => {
            add(() => clientSheet(client, facts, settings));
          }}
        >
          Put into a sheet
        </fluent-button>
      </div>
      <div ref={opened}>
        {panel === "record" && (
          <RecordEvent
            key={key}
            client={client}
            settings={settings}
            workbook={workbook}
            run={run}
            refresh={refresh}
          />
        )}
        {panel === "letter" && (
          <LetterView
            key={key}
            client={client}
            name={facts.name}
            settings={settings}
            workbook={workbook}
            run={run}
          />
        )}
        {panel === "address" && (
          <AddressView key={key} client={client} settings={settings} run={run} />
        )}
      </div>
      <ClientCurve client={client} settings={settings} />
    </>
  );
}
