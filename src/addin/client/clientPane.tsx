import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { meaningsOf } from "../../functions/arguments/readHeadings";
import { clientFacts } from "./clientFacts";
import { addressIn, clientRow, clientRows } from "../list/clientRow";
import { ClientView } from "./clientView";
import { EntryField } from "../formFields";
import { GoToClients } from "./goToClients";
import { useNoticePlace, type Notices } from "../notice";
import { ownMeanings } from "../list/ownList";
import { paneList, type PaneList } from "../list/paneList";
import type { PaneSettings } from "../list/rosterAnswers";
import { TroubleList } from "./troubleList";
import { TypedClientView } from "./typedClient";
import { NO_AS_OF_DATE, type TypedPaneSettings } from "../list/usePaneSettings";
import { useFollowedList } from "./useFollowedList";
import { usePractice } from "./usePractice";
import { NotDone, type SelectedList, type WorkbookHost } from "../workbook/workbookHost";

/** What {@link ClientPane} works on. */
interface ClientPaneProps {
  /** `undefined` if no workbook is open. */
  readonly workbook: WorkbookHost | undefined;
  /** The as-of date and the assumed rate. */
  readonly pane: TypedPaneSettings;
  readonly notices: Notices;
}

/** The client whom the pane showed last. */
interface LastClient {
  readonly sheet: string;
  readonly name: string;
  readonly address: string;
}

/** The selected row, by which a notice is told to be about it; empty outside a list. */
function placeOf(list: SelectedList | undefined): string {
  return list === undefined ? "" : `${list.sheet} ${list.headingRow} ${list.selectedRow ?? ""}`;
}

/** What to select, for a sheet that has no client list, which is no fault. */
const SELECT_A_CLIENT =
  "To see a client, select a cell in the client's row. A client list has headings such as Client, Total tax and Total payments.";

/** Whether a list has tax or payments, and so is probably meant as a client list. */
function hasAmounts({ headings, own }: PaneList, { taxYear }: PaneSettings): boolean {
  const meanings = ownMeanings(own ?? []);
  return meaningsOf("clientList", headings, taxYear, meanings).some(
    ({ field }) => field === "totalTax" || field === "payments"
  );
}

/** Why a list is not read as a client list; empty if it is. */
function listProblem(list: PaneList, settings: PaneSettings): string {
  try {
    clientRows({ ...list, rows: [[]] }, settings.taxYear);
    return "";
  } catch (thrown) {
    if (!(thrown instanceof NotDone)) throw thrown;
    if (!hasAmounts(list, settings)) return SELECT_A_CLIENT;
    return `The selected list is not a client list. ${thrown.message}`;
  }
}

/** The client of the selected row with what the pane shows, or why there is none. */
export function selectedClient(list: PaneList | undefined, settings: PaneSettings) {
  if (!list) return undefined;
  const problem = listProblem(list, settings);
  if (problem !== "") return problem;
  if (list.selectedRow === undefined) return "Select the row of a client.";
  const client = clientRow(list, list.selectedRow, settings.taxYear);
  if (!client) return "The selected row has no client.";
  return { client, facts: clientFacts(client, settings) };
}

/** The first part of the pane: as-of date, the selected client or one that is typed, and the troubles of the practice. */
export function ClientPane({ workbook, pane, notices }: ClientPaneProps) {
  const { run } = notices;
  const { asOf, assumedRate, settings } = pane;
  const element = useRef<HTMLDivElement>(null);
  const followed = useFollowedList(workbook, element);
  const { problem, read } = followed;
  const list = useMemo(() => followed.list && paneList(followed.list), [followed.list]);
  const found = useMemo(() => settings && selectedClient(list, settings), [list, settings]);
  const [last, setLast] = useState<LastClient>();
  const [clients, setClients] = useState<PaneList>();
  useEffect(() => {
    if (list && settings && listProblem(list, settings) === "") setClients(list);
    if (typeof found !== "object") return;
    const { client, facts } = found;
    const address = addressIn(client.list, client.index, 0);
    setLast({ sheet: client.list.sheet, name: facts.name, address });
  }, [list, settings, found]);
  useNoticePlace(notices, placeOf(followed.list), workbook?.followSelection && read);
  const practice = usePractice(clients, settings);
  const why = typeof found === "string" ? found : problem;
  const goTo =
    workbook?.goTo && clients
      ? (address: string, sheet = clients.sheet): void => {
          run(async () => {
            await workbook.goTo?.({ sheet, address });
            return "";
          });
        }
      : undefined;
  return (
    <div ref={element} class="client-pane">
      <div class="fields as-of">
        <EntryField id="as-of" label="As-of date" isDate value={asOf} enter={pane.setAsOf} />
      </div>
      {workbook?.selectedList && !workbook.followSelection && (
        <fluent-button
          onClick={() => {
            run(async () => {
              await read();
              return "";
            });
          }}
        >
          Show the selected client
        </fluent-button>
      )}
      <section id="client" aria-labelledby="client-title">
        {settings === undefined && (
          <>
            <h2 id="client-title">Client</h2>
            <p class="error">{NO_AS_OF_DATE}</p>
          </>
        )}
        {settings && workbook && typeof found === "object" && (
          <ClientView {...found} settings={settings} workbook={workbook} run={run} refresh={read} />
        )}
        {settings && typeof found !== "object" && (
          <>
            <h2 id="client-title">Look up due dates</h2>
            {why !== "" && <p class="why">{why}</p>}
            {goTo && last && (
              <p>
                <fluent-button
                  size="small"
                  onClick={() => {
                    goTo(last.address, last.sheet);
                  }}
                >
                  Back to {last.name}
                </fluent-button>
              </p>
            )}
            {workbook && !last && (
              <GoToClients workbook={workbook} taxYear={settings.taxYear} run={run} />
            )}
            <TypedClientView settings={settings} />
          </>
        )}
        <details class="more">
          <summary>Interest after the last published quarter</summary>
          <EntryField
            id="assumed-rate"
            label="Assumed annual rate, such as 7%, or latest (optional)"
            value={assumedRate}
            enter={pane.setAssumedRate}
          />
        </details>
      </section>
      {practice && (
        <section id="troubles" aria-labelledby="troubles-title">
          <h2 id="troubles-title">Clients that need attention</h2>
          <TroubleList practice={practice} goTo={goTo} />
        </section>
      )}
    </div>
  );
}
