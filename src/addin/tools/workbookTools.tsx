import { parseCalendarDate } from "../../calendar/calendarDate";
import { BLANK_CHECK, blankHabit, blankSentence } from "./blankCheck";
import { calculationSheet } from "../calculationSheet/calculationSheet";
import { ClientListTool } from "../list/clientListTool";
import type { Diagnosis } from "./diagnosis";
import type { PaneSettings } from "../list/rosterAnswers";
import type { WorkbookHost } from "../workbook/workbookHost";

/** What {@link WorkbookTools} works on. */
interface WorkbookToolsProps {
  readonly workbook: WorkbookHost;
  /** The date on what is made, such as 2026-04-01. */
  readonly today: () => string;
  /** What applies to every client; `undefined` while the as-of date is not complete. */
  readonly settings: PaneSettings | undefined;
  readonly diagnosis?: Diagnosis | undefined;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
}

/** The button that calculates the workbook again. */
export const RECALCULATE = "Recalculate this workbook";

/** The buttons that change the workbook. */
export function WorkbookTools({ workbook, today, settings, diagnosis, run }: WorkbookToolsProps) {
  return (
    <>
      <ClientListTool workbook={workbook} settings={settings} run={run} />
      <div class="buttons">
        <fluent-button
          onClick={() => {
            run(async () => {
              const cell = await workbook.selectedCell();
              const sheet = calculationSheet(cell, parseCalendarDate(today()));
              return `Added the sheet ${await workbook.addSheet(sheet)}.`;
            });
          }}
        >
          Show the calculation for the selected cell
        </fluent-button>
        {workbook.recalculate && (
          <fluent-button
            onClick={() => {
              run(async () => {
                const entered = (await workbook.recalculate?.()) ?? 0;
                return entered === 0
                  ? "Recalculated the workbook. No formula had to be entered again."
                  : `Entered ${entered} formulas again and recalculated the workbook.`;
              });
            }}
          >
            {RECALCULATE}
          </fluent-button>
        )}
        {workbook.calculateApart && (
          <fluent-button
            onClick={() => {
              run(async () => {
                const habit = blankHabit((await workbook.calculateApart?.(BLANK_CHECK)) ?? []);
                diagnosis?.noteBlanks(habit);
                return blankSentence(habit);
              });
            }}
          >
            Check blank cells
          </fluent-button>
        )}
      </div>
    </>
  );
}
