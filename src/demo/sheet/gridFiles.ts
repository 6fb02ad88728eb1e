import type { StandInHost } from "../../host/standInHost";
import { OwnFunctionNames } from "../workbook/ownFunctionNames";
import clientsText from "../season/clients.csv?raw";
import { readClients } from "../season/clients";
import { seasonWorkbook } from "../season/seasonWorkbook";
import { openWorkbookFile } from "../workbook/workbookFile";
import { contentWorkbook, type OpenedWorkbook } from "./contentWorkbook";
import type { Grid } from "./grid";
import { libraryWorkbook } from "./libraryWorkbook";
import { gridContent } from "./gridContent";
import { workbookSnapshot } from "./workbookSnapshot";

const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** After one of these, what the grid does not show of a file would no longer be in the right cells. */
const MOVES_CELLS =
  /^sheet\.mutation\.(insert-(row|col)|remove-(rows|col)|move-(rows|columns|range)|reorder-range)$/;

/** Opens files in the grid, and makes files from its content. Nothing leaves the page. */
export class GridFiles {
  readonly #grid: Grid;
  readonly #names: OwnFunctionNames;
  #opened: OpenedWorkbook | undefined;
  #count = 0;

  constructor(grid: Grid, host: StandInHost) {
    this.#grid = grid;
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
    const { parts } = openWorkbookFile(file.name, bytes, this.#names);
    this.#open(await libraryWorkbook(file.name, parts));
  }

  /** The content of the grid as an .xlsx file. */
  async content(): Promise<Blob> {
    const workbook = contentWorkbook(gridContent(this.#grid), this.#names, this.#opened);
    const bytes = await workbook.xlsx.writeBuffer();
    return new Blob([bytes as BlobPart], { type: KIND });
  }

  #open(workbook: OpenedWorkbook["workbook"]): void {
    this.#count += 1;
    const snapshot = workbookSnapshot(workbook, `workbook-${this.#count}`, this.#names);
    // The grid changes the data it receives, and a saved file is compared with the original data.
    this.#grid.open(structuredClone(snapshot));
    this.#opened = { workbook, snapshot };
  }
}
