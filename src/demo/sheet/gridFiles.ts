import type { StandInHost } from "../../host/standInHost";
import { OwnFunctionNames } from "../workbook/ownFunctionNames";
import clientsText from "../season/clients.csv?raw";
import { readClients } from "../season/clients";
import { seasonWorkbook } from "../season/seasonWorkbook";
import { patchedFile } from "../workbook/patchedFile";
import { type OpenedFile, openWorkbookFile } from "../workbook/workbookFile";
import { contentWorkbook, type OpenedWorkbook } from "./contentWorkbook";
import type { Grid } from "./grid";
import { libraryWorkbook } from "./libraryWorkbook";
import { lossSentence } from "./lossSentence";
import type { Ask } from "./question";
import { gridChanges } from "./gridChanges";
import { gridContent } from "./gridContent";
import { finishEntry, UnsavedWork } from "./unsavedWork";
import { workbookSnapshot } from "./workbookSnapshot";

const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** After one of these, what the grid does not show of a file would no longer be in the right cells. */
const MOVES_CELLS =
  /^sheet\.mutation\.(insert-(row|col)|remove-(rows|col)|move-(rows|columns|range)|reorder-range)$/;
const CHART = /^\/?xl\/charts\/chart(Ex)?\d*\.xml$/i;

/** A file made from the content of the grid. */
export interface SavedFile {
  readonly blob: Blob;
  readonly isNew: boolean;
}

function blobOf(bytes: Uint8Array): Blob {
  return new Blob([bytes as BlobPart], { type: KIND });
}

/** Opens files in the grid, and makes files from its content. Nothing leaves the page. */
export class GridFiles {
  /** Whether there are changes that are in no file. */
  readonly unsaved: UnsavedWork;
  readonly #grid: Grid;
  readonly #names: OwnFunctionNames;
  #opened: OpenedWorkbook | undefined;
  #file: OpenedFile | undefined;
  #count = 0;

  constructor(grid: Grid, host: StandInHost) {
    this.#grid = grid;
    this.unsaved = new UnsavedWork(grid);
    this.#names = new OwnFunctionNames(host.namespace, host.functions.keys());
    grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id }) => {
      if (MOVES_CELLS.test(id)) this.#opened = undefined;
    });
  }

  /** Opens the sample workbook. */
  openSample(): void {
    this.#open(seasonWorkbook(readClients(clientsText)));
  }

  /**
   * Opens a file from disk.
   *
   * @param file - The file from the browser.
   * @throws NotAWorkbook for a file that is not a workbook; the grid then does not change.
   */
  async openFile(file: File): Promise<void> {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const found = openWorkbookFile(file.name, bytes, this.#names);
    this.#open(await libraryWorkbook(file.name, found.parts), found);
  }

  /**
   * The content of the grid as a file. Changed values, formulas and number formats are put into the file that was opened. After other
   * changes the file is made anew.
   *
   * @param ask - Asks whether the file may lose what the question lists.
   * @returns The file, and whether it was made anew, so that it is an ordinary workbook without macros; undefined if it may not.
   */
  async content(ask: Ask): Promise<SavedFile | undefined> {
    await finishEntry(this.#grid);
    const content = gridContent(this.#grid);
    const [file, opened] = [this.#file, this.#opened];
    const changed =
      file && opened && gridChanges(content, opened.snapshot, file.loaded, this.#names);
    if (changed) {
      const { bytes } = patchedFile(file.parts, changed.changes, changed.formulasChange);
      // A file that could not be opened again is not offered.
      openWorkbookFile("The copy", bytes, this.#names);
      return { blob: blobOf(bytes), isNew: false };
    }
    const loss = file && lossSentence(file.parts);
    if (loss !== undefined && !(await ask(loss, "Save anyway"))) return undefined;
    const workbook = contentWorkbook(content, this.#names, opened);
    return { blob: blobOf(new Uint8Array(await workbook.xlsx.writeBuffer())), isNew: true };
  }

  /** The number of charts in the open workbook. The grid does not show them. */
  get chartCount(): number {
    if (this.#file) return [...this.#file.parts.keys()].filter((name) => CHART.test(name)).length;
    const sheets = this.#opened?.workbook.worksheets ?? [];
    return sheets.reduce((sum, sheet) => sum + sheet.getCharts().length, 0);
  }

  #open(workbook: OpenedWorkbook["workbook"], file?: OpenedFile): void {
    this.#count += 1;
    const snapshot = workbookSnapshot(workbook, `workbook-${this.#count}`, this.#names);
    // The grid changes the data it receives, and a saved file is compared with the original data.
    this.#grid.open(structuredClone(snapshot));
    this.#opened = { workbook, snapshot };
    this.#file = file;
    this.unsaved.clear();
  }
}
