import type { StandInHost } from "../../host/standInHost";
import { OwnFunctionNames } from "../workbook/ownFunctionNames";
import clientsText from "../season/clients.csv?raw";
import { readClients } from "../season/clients";
import { seasonWorkbook } from "../season/seasonWorkbook";
import { workbookOfBytes } from "../workbook/workbookBytes";
import { contentWorkbook, type OpenedWorkbook } from "./contentWorkbook";
import type { Grid } from "./grid";
import { gridContent } from "./gridContent";
import { workbookSnapshot } from "./workbookSnapshot";

const KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
/** After one of these, what the grid does not show of a file would no longer lie where it belongs. */
const MOVES_CELLS =
  /^sheet\.mutation\.(insert-(row|col)|remove-(rows|col)|move-(rows|columns|range)|reorder-range)$/;

/** Opens files in the grid and makes files of it; nothing leaves the page. */
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
   * @param file - The file as the browser hands it over.
   * @throws NotAWorkbook in one sentence for a file that is none; the sheet then stays as it is.
   */
  async openFile(file: File): Promise<void> {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const { workbook } = await workbookOfBytes(file.name, bytes);
    this.#open(workbook);
  }

  /** What is in the grid as the content of an .xlsx file. */
  async content(): Promise<Blob> {
    const workbook = contentWorkbook(gridContent(this.#grid), this.#names, this.#opened);
    const bytes = await workbook.xlsx.writeBuffer();
    return new Blob([bytes as BlobPart], { type: KIND });
  }

  #open(workbook: OpenedWorkbook["workbook"]): void {
    this.#count += 1;
    const snapshot = workbookSnapshot(workbook, `workbook-${this.#count}`, this.#names);
    // The grid changes the data it is given; the file is compared with them as they were.
    this.#grid.open(structuredClone(snapshot));
    this.#opened = { workbook, snapshot };
  }
}
