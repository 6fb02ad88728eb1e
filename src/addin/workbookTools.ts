import { clientGrid } from "./clientGrid";
import { element } from "./element";
import { NotDone, type WorkbookHost } from "./workbookHost";
import { workingSheet } from "./workingSheet";

/** The buttons that work on the workbook, and what a formula from the guide does in it. */
export interface WorkbookTools {
  readonly tools: HTMLElement;
  readonly put: (formula: string) => void;
}

/**
 * The buttons that work on the workbook, with the line that says what came of them.
 *
 * @param workbook - The workbook.
 * @param today - The day a new client list is looked at, such as 2026-04-01.
 * @returns The buttons, and what a formula from the guide does.
 */
export function workbookTools(workbook: WorkbookHost, today: () => string): WorkbookTools {
  const status = element("p");
  status.setAttribute("role", "status");
  const doing = (work: () => Promise<string>): void => {
    status.textContent = "Working …";
    work().then(
      (said) => (status.textContent = said),
      (thrown: unknown) => {
        status.textContent =
          thrown instanceof NotDone
            ? thrown.message
            : "The workbook did not take it. End any cell editing and try again.";
        if (!(thrown instanceof NotDone)) throw thrown;
      }
    );
  };
  const button = (text: string, work: () => Promise<string>): HTMLButtonElement => {
    const made = element("button", text);
    made.type = "button";
    made.addEventListener("click", () => {
      doing(work);
    });
    return made;
  };
  const build = button("Build a client list", async () => {
    const name = await workbook.addSheet(clientGrid(today()));
    return `Added the sheet ${name}. Type over its example row.`;
  });
  const show = button("Show the working of the selected cell", async () => {
    const cell = await workbook.selectedCell();
    const name = await workbook.addSheet(workingSheet(cell));
    return `Added the sheet ${name}.`;
  });
  return {
    tools: element("div", build, show, status),
    put: (formula) => {
      doing(async () => `Put it in ${await workbook.putFormula(formula)}.`);
    },
  };
}
