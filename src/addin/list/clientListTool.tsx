import { useState } from "preact/hooks";
import { shortDate } from "../../calendar/writtenDate";
import { estimateSheet } from "./estimateSheet";
import { ListPanel } from "./listPanel";
import { newClientList } from "./newClientList";
import type { PaneSettings } from "./rosterAnswers";
import { NO_AS_OF_DATE } from "./usePaneSettings";
import { useUsedList } from "./useUsedList";
import { NotDone, type WorkbookHost } from "../workbook/workbookHost";

/** What {@link ClientListTool} works on. */
interface ClientListToolProps {
  readonly workbook: WorkbookHost;
  /** What applies to every client; `undefined` while the as-of date is not complete. */
  readonly settings: PaneSettings | undefined;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
}

/** The button that reads the selected list. */
const USE_LIST = "Use my list";
/** The button that adds a sheet for a client list. */
const BUILD_LIST = "Build a client list";

/** The button that adds a sheet for the estimate of total tax. */
const LAY_OUT_ESTIMATE = "Lay out an estimate";

/** What applies to every client, with the tax year of the tool; a sentence if something is missing. */
function settingsWith(pane: PaneSettings | undefined, taxYear: string): PaneSettings | string {
  if (pane === undefined) return NO_AS_OF_DATE;
  if (!/^\d{4}$/.test(taxYear.trim()))
    return `"${taxYear}" is not a tax year. Enter a year, such as 2025.`;
  return { ...pane, taxYear: Number(taxYear) };
}

/** Says that a list has answers, and that they would be written again with other settings. */
function readAgainText(before: PaneSettings, now: PaneSettings | undefined): string {
  const found = `The list has answers from this tool, as of ${shortDate(before.asOf)}`;
  const rate = before.assumedRate === "" ? "" : ` with an assumed rate of ${before.assumedRate}`;
  const isSame = now?.asOf === before.asOf && now.assumedRate.trim() === before.assumedRate;
  return isSame
    ? `${found}${rate}.`
    : `${found}${rate}. If you write them again, they take the as-of date and the assumed rate at the top of this pane.`;
}

/** The tool for client lists: works on the user's own list, or builds one. */
export function ClientListTool({ workbook, settings: pane, run }: ClientListToolProps) {
  const [typedYear, setTypedYear] = useState<string>();
  const taxYear = typedYear ?? String(pane?.taxYear ?? "");
  const used = useUsedList(workbook);
  const settings = settingsWith(pane, taxYear);
  const needed = (): PaneSettings => {
    if (typeof settings === "string") throw new NotDone(settings);
    return settings;
  };
  return (
    <div id="client-list">
      <div class="fields">
        <div>
          <label for="list-year">Tax year</label>
          <input
            id="list-year"
            size={10}
            value={taxYear}
            onInput={({ currentTarget }) => {
              setTypedYear(currentTarget.value);
            }}
          />
        </div>
      </div>
      {pane && (
        <p class="quiet">
          As-of date {shortDate(pane.asOf)},{" "}
          {pane.assumedRate.trim() === ""
            ? "no assumed rate"
            : `assumed rate ${pane.assumedRate.trim()}`}
          . Both are entered at the top of this pane.
        </p>
      )}
      <div class="buttons">
        {workbook.selectedList && workbook.fillColumns && (
          <fluent-button
            appearance="primary"
            onClick={() => {
              run(async () => {
                const before = await used.read();
                if (!before) return "Check how your headings are read, then write the answers.";
                setTypedYear(String(before.settings.taxYear));
                return readAgainText(before.settings, pane);
              });
            }}
          >
            {USE_LIST}
          </fluent-button>
        )}
        <fluent-button
          onClick={() => {
            run(async () => {
              const name = await workbook.addSheet(newClientList(needed()));
              return `Added the sheet ${name}. Replace the example with your clients.`;
            });
          }}
        >
          {BUILD_LIST}
        </fluent-button>
        <fluent-button
          onClick={() => {
            run(async () => {
              const name = await workbook.addSheet(estimateSheet(needed().taxYear));
              return `Added the sheet ${name}. Enter the amounts of the return.`;
            });
          }}
        >
          {LAY_OUT_ESTIMATE}
        </fluent-button>
      </div>
      {used.list &&
        (typeof settings === "string" ? (
          <p class="error" role="alert">
            {settings}
          </p>
        ) : (
          <ListPanel
            used={used}
            list={used.list}
            settings={settings}
            workbook={workbook}
            run={run}
          />
        ))}
    </div>
  );
}
