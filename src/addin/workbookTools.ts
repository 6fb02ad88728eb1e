import { calculationSheet } from "./calculationSheet";
import { clientGrid } from "./clientGrid";
import { element } from "./element";
import { NotDone, type WorkbookHost } from "./workbookHost";

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
        status.textContent =
          thrown instanceof NotDone
            ? thrown.message
            : "Excel could not make the change. Finish editing the cell and try again.";
        if (!(thrown instanceof NotDone)) throw thrown;
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
  return {
    tools: element("div", addList, show, status),
    insert: (formula) => {
      run(async () => `Inserted the formula in cell ${await workbook.putFormula(formula)}.`);
    },
  };
}
