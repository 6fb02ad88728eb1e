/** Rows of a sheet in which the headings of a client list are looked for. */
export const TOP_ROWS = 20;
/** Columns in which they are looked for. */
export const TOP_COLUMNS = 60;

/** The first cells of a sheet, up to {@link TOP_ROWS} and {@link TOP_COLUMNS}. */
export interface SheetTop {
  readonly sheet: string;
  /** Rows from A1 on. */
  readonly values: readonly (readonly unknown[])[];
}
