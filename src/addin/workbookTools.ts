import { version } from "../rules/version";
import { calculationSheet } from "./calculationSheet";
import { clientGrid } from "./clientGrid";
import { element } from "./element";
import { excelErrorSentence } from "./excelErrors";
import { NotDone, type WorkbookHost } from "./workbookHost";

const RECALCULATE = "Recalculate this workbook";

/** Says that the answers in the workbook are those of another version. */
function newVersion(last: string): string {
  return `This workbook was last used with version ${last} of the add-in, and this is version ${version}. Select "${RECALCULATE}" to update its results.`;
}

/** The buttons that change the workbook, and what inserts an example. */
export interface WorkbookTools {
  readonly tools: HTMLElement;
  readonly insert: (formula: string) => void;
}

/**
 * The buttons that change the workbook, with a line that says what was done.
 *
 * @param workbook - The workbook.
 * @param today - The as-of date of a new client list, such as 2026-04-01.
 */
export function workbookTools(workbook: WorkbookHost, today: () => string): WorkbookTools {
  const status = element("p");
  status.setAttribute("role", "status");
  const run = (work: () => Promise<string>): void => {
    status.textContent = "Please wait …";
    work().then(
      (done) => (status.textContent = done),
      (thrown: unknown) => {
        const sentence = thrown instanceof NotDone ? thrown.message : excelErrorSentence(thrown);
        status.textContent = sentence ?? "The change could not be made.";
        if (sentence === undefined) throw thrown;
      }
    );
  };
  const button = (text: string, work: () => Promise<string>): HTMLButtonElement => {
    const made = element("button", text);
    made.type = "button";
    made.addEventListener("click", () => {
      run(work);
    });
    return made;
  };
  const addList = button("Add a client list", async () => {
    const name = await workbook.addSheet(clientGrid(today()));
    return `Added the sheet ${name}. Replace the example row with your clients.`;
  });
  const show = button("Show the calculation for the selected cell", async () => {
    const cell = await workbook.selectedCell();
    const name = await workbook.addSheet(calculationSheet(cell));
    return `Added the sheet ${name}.`;
  });
  const again = button(RECALCULATE, async () => {
    const entered = (await workbook.recalculate?.()) ?? 0;
    return entered === 0
      ? "Recalculated the workbook. No formula had to be entered again."
      : `Entered ${String(entered)} formulas again and recalculated the workbook.`;
  });
  workbook.lastVersion?.().then(
    (last) => {
      if (last !== undefined && last !== version) status.textContent = newVersion(last);
    },
    // A workbook that cannot be read now is read with the next button.
    () => undefined
  );
  return {
    tools: element("div", addList, show, ...(workbook.recalculate ? [again] : []), status),
    insert: (formula) => {
      run(async () => `Inserted the formula in cell ${await workbook.putFormula(formula)}.`);
    },
  };
}
