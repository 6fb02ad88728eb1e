import { NotAWorkbook } from "../workbook/workbookFile";
import type { GridFiles } from "./gridFiles";
import type { Ask } from "./question";

/** The parts of the page for opening and saving files. */
export interface FileControls {
  readonly open: HTMLElement;
  readonly file: HTMLInputElement;
  readonly save: HTMLElement;
  readonly sample: HTMLElement;
  readonly status: HTMLElement;
}

const SAMPLE = "season.xlsx";

function download(content: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** The name of a copy. A file that was made anew has no macros and is no template, so it has the ordinary ending. */
function copyName(name: string, isNew: boolean): string {
  return name.replace(/(\.xls[xm]|\.xlt[xm])?$/i, (ending) =>
    isNew || ending === "" ? ".copy.xlsx" : `.copy${ending}`
  );
}

/** Says that a workbook is open, and what the grid does not show of it. */
function openedSentence(sentence: string, chartCount: number): string {
  if (chartCount === 0) return sentence;
  const charts = chartCount === 1 ? "1 chart" : `${chartCount} charts`;
  return `${sentence} It has ${charts}, which the demo sheet does not show.`;
}

/**
 * Lets the user open a file by choosing it or by dropping it on the page, save a copy, and open the sample again. Before unsaved changes
 * are lost, the user is asked.
 *
 * @param files - The files of the grid.
 * @param controls - The parts of the page.
 * @param ask - Asks the user.
 * @returns The name of the open file.
 */
export function offerFiles(files: GridFiles, controls: FileControls, ask: Ask): () => string {
  const { open, file: chooser, save, sample, status } = controls;
  let name = SAMPLE;
  const say = (text: string): void => {
    status.textContent = text;
  };
  const doing = (work: () => Promise<string>): void => {
    work().then(say, (thrown: unknown) => {
      say(
        thrown instanceof NotAWorkbook ? thrown.message : "That did not work. Nothing was changed."
      );
      if (!(thrown instanceof NotAWorkbook)) throw thrown;
    });
  };
  const mayReplace = async (next: string): Promise<boolean> =>
    !files.unsaved.exists ||
    (await ask(
      `Your changes to ${name} are not saved. If you open ${next}, they are lost.`,
      "Open without saving"
    ));
  const read = (file: File | undefined): void => {
    if (!file) return;
    doing(async () => {
      if (!(await mayReplace(file.name))) return "Nothing was opened.";
      await files.openFile(file);
      name = file.name;
      return openedSentence(`${file.name} is open.`, files.chartCount);
    });
  };
  open.addEventListener("click", () => {
    chooser.click();
  });
  chooser.addEventListener("change", () => {
    read(chooser.files?.[0]);
    chooser.value = "";
  });
  save.addEventListener("click", () => {
    doing(async () => {
      const saved = await files.content(ask);
      if (saved === undefined) return "Nothing was saved.";
      const copy = copyName(name, saved.isNew);
      download(saved.blob, copy);
      files.unsaved.clear();
      return `Saved as ${copy} in the downloads of the browser.`;
    });
  });
  sample.addEventListener("click", () => {
    doing(async () => {
      if (!(await mayReplace("the sample"))) return "Nothing was opened.";
      files.openSample();
      name = SAMPLE;
      return openedSentence("The sample is open again.", files.chartCount);
    });
  });
  takeDrops(read);
  warnBeforeLeaving(files);
  say(openedSentence("The sample is open.", files.chartCount));
  return () => name;
}

/** Lets the browser ask before the page is closed with unsaved changes. */
function warnBeforeLeaving(files: GridFiles): void {
  window.addEventListener("beforeunload", (event) => {
    if (files.unsaved.exists) event.preventDefault();
  });
}

/** Opens a file that is dropped anywhere on the page. */
function takeDrops(read: (file: File | undefined) => void): void {
  const page = document.documentElement;
  const isFile = ({ dataTransfer }: DragEvent): boolean =>
    dataTransfer?.types.includes("Files") === true;
  const over = (event: DragEvent): void => {
    if (!isFile(event)) return;
    event.preventDefault();
    page.classList.add("dropping");
  };
  page.addEventListener("dragover", over, { capture: true });
  page.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) page.classList.remove("dropping");
  });
  page.addEventListener(
    "drop",
    (event) => {
      page.classList.remove("dropping");
      if (!isFile(event)) return;
      event.preventDefault();
      event.stopPropagation();
      read(event.dataTransfer?.files[0]);
    },
    { capture: true }
  );
}
