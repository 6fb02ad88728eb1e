import { NotAWorkbook } from "../workbook/workbookFile";
import type { GridFiles } from "./gridFiles";

/** The parts of the page for opening and saving files. */
export interface FileControls {
  readonly open: HTMLElement;
  readonly file: HTMLInputElement;
  readonly save: HTMLElement;
  readonly sample: HTMLElement;
  readonly status: HTMLElement;
}

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

/**
 * Lets the user open a file by choosing it or by dropping it on the page, save a copy, and open the sample again.
 *
 * @param files - The files of the grid.
 * @param controls - The parts of the page.
 */
export function offerFiles(files: GridFiles, controls: FileControls): void {
  const { open, file: chooser, save, sample, status } = controls;
  let name = "season.xlsx";
  const say = (text: string): void => {
    status.textContent = text;
  };
  const doing = (work: () => Promise<string> | string): void => {
    Promise.resolve()
      .then(work)
      .then(say, (thrown: unknown) => {
        say(
          thrown instanceof NotAWorkbook
            ? thrown.message
            : "That did not work. Nothing was changed."
        );
        if (!(thrown instanceof NotAWorkbook)) throw thrown;
      });
  };
  const read = (file: File | undefined): void => {
    if (!file) return;
    doing(async () => {
      await files.openFile(file);
      name = file.name;
      return `${file.name} is open.`;
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
      const saved = await files.content((sentence) => window.confirm(sentence));
      if (saved === undefined) return "Nothing was saved.";
      const copy = copyName(name, saved.isNew);
      download(saved.blob, copy);
      return `Saved as ${copy} in the downloads of the browser.`;
    });
  });
  sample.addEventListener("click", () => {
    doing(() => {
      files.openSample();
      name = "season.xlsx";
      return "The sample is open again.";
    });
  });
  takeDrops(read);
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
