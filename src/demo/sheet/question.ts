/** The parts of the page that ask a question. */
export interface QuestionControls {
  readonly dialog: HTMLDialogElement;
  readonly text: HTMLElement;
  readonly yes: HTMLElement;
  readonly no: HTMLElement;
}

/** Asks before something is lost: the question, and the words of the button that goes on. */
export type Ask = (question: string, goOn: string) => Promise<boolean>;

/**
 * A dialog that asks a question. The button that changes nothing has the focus, and the Escape key chooses it.
 *
 * @param controls - The parts of the page.
 * @returns Asks; true if the user wants to go on.
 */
export function questionDialog(controls: QuestionControls): Ask {
  const { dialog, text, yes, no } = controls;
  yes.addEventListener("click", () => {
    dialog.close("yes");
  });
  no.addEventListener("click", () => {
    dialog.close("no");
  });
  return (question, goOn) =>
    new Promise((resolve) => {
      text.textContent = question;
      yes.textContent = goOn;
      dialog.returnValue = "no";
      dialog.addEventListener(
        "close",
        () => {
          resolve(dialog.returnValue === "yes");
        },
        { once: true }
      );
      dialog.showModal();
      no.focus();
    });
}
