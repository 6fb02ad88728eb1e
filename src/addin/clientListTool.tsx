import { useState } from "preact/hooks";
import { parseCalendarDate } from "../calendar/calendarDate";
import { shortDate } from "../calendar/writtenDate";
import { readDate } from "../functions/arguments/date";
import { estimateSheet } from "./estimateSheet";
import { ListPanel } from "./listPanel";
import { newClientList, usualTaxYear } from "./newClientList";
import type { PaneSettings } from "./rosterAnswers";
import { useUsedList } from "./useUsedList";
import { NotDone, type WorkbookHost } from "./workbookHost";

/** What {@link ClientListTool} works on. */
interface ClientListToolProps {
  readonly workbook: WorkbookHost;
  /** The as-of date to begin with, such as 2026-04-01. */
  readonly today: () => string;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
}

/** The button that reads the selected list. */
export const USE_LIST = "Use my list";
/** The button that adds a sheet for a client list. */
export const BUILD_LIST = "Build a client list";

/** The button that adds a sheet for the estimate of total tax. */
export const LAY_OUT_ESTIMATE = "Lay out an estimate";

/** The settings as they are typed. */
interface TypedSettings {
  readonly taxYear: string;
  readonly asOf: string;
  readonly assumedRate: string;
}

function typedAtFirst(today: string): TypedSettings {
  const date = parseCalendarDate(today);
  if (date === undefined) return { taxYear: "", asOf: "", assumedRate: "" };
  return { taxYear: String(usualTaxYear(date)), asOf: shortDate(date), assumedRate: "" };
}

/** The settings as they are typed, read; a sentence if one cannot be read. */
function readSettings({ taxYear, asOf, assumedRate }: TypedSettings): PaneSettings | string {
  const date = readDate(asOf.trim());
  if (date === undefined)
    return `"${asOf}" is not a date. Enter the as-of date, such as 4/15/2026.`;
  if (!/^\d{4}$/.test(taxYear.trim()))
    return `"${taxYear}" is not a tax year. Enter a year, such as 2025.`;
  return { taxYear: Number(taxYear), asOf: date, assumedRate: assumedRate.trim() };
}

interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  readonly enter: (value: string) => void;
}

function Field({ id, label, value, hint = "", enter }: FieldProps) {
  return (
    <div>
      <label for={id}>{label}</label>
      <input
        id={id}
        size={10}
        value={value}
        placeholder={hint}
        onInput={({ currentTarget }) => {
          enter(currentTarget.value);
        }}
      />
    </div>
  );
}

/** The tool for client lists: works on the user's own list, or builds one. */
export function ClientListTool({ workbook, today, run }: ClientListToolProps) {
  const [typed, setTyped] = useState(() => typedAtFirst(today()));
  const used = useUsedList(workbook);
  const settings = readSettings(typed);
  const needed = (): PaneSettings => {
    if (typeof settings === "string") throw new NotDone(settings);
    return settings;
  };
  const enter =
    (name: keyof TypedSettings) =>
    (value: string): void => {
      setTyped({ ...typed, [name]: value });
    };
  return (
    <div id="client-list">
      <div class="fields">
        <Field id="list-year" label="Tax year" value={typed.taxYear} enter={enter("taxYear")} />
        <Field id="list-date" label="As-of date" value={typed.asOf} enter={enter("asOf")} />
        <Field
          id="list-rate"
          label="Assumed rate"
          hint="none"
          value={typed.assumedRate}
          enter={enter("assumedRate")}
        />
      </div>
      <div class="buttons">
        {workbook.selectedList && workbook.fillColumns && (
          <fluent-button
            appearance="primary"
            onClick={() => {
              run(async () => {
                const before = await used.read();
                if (!before) return "Check how your headings are read, then write the answers.";
                const { taxYear, asOf, assumedRate } = before.settings;
                setTyped({ taxYear: String(taxYear), asOf: shortDate(asOf), assumedRate });
                return "The list has answers from this tool. The settings are those of its formulas.";
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
