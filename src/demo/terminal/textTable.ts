/** A column of a table for the terminal. */
export interface TextColumn {
  readonly heading: string;
  readonly align: "left" | "right";
}

const GAP = "  ";

// A workbook may contain any text; characters that control a terminal are not printed.
const CONTROL = /[\p{Cc}\p{Cf}\u2028\u2029]/gu;

/** Replaces the characters of a text that would control the terminal. */
export function printable(text: string): string {
  return text.replaceAll(CONTROL, "?");
}

function columnWidth(column: TextColumn, cells: readonly string[]): number {
  return Math.max(column.heading.length, ...cells.map((cell) => cell.length));
}

function pad(text: string, width: number, align: "left" | "right"): string {
  return align === "right" ? text.padStart(width) : text.padEnd(width);
}

function splitByWidth(widths: readonly number[], width: number): number[][] {
  const [first = 0] = widths;
  const blocks: number[][] = [];
  let block: number[] = [];
  let used = first;
  for (let column = 1; column < widths.length; column += 1) {
    const needed = GAP.length + (widths[column] ?? 0);
    if (block.length > 0 && used + needed > width) {
      blocks.push(block);
      block = [];
      used = first;
    }
    block.push(column);
    used += needed;
  }
  return [...blocks, block];
}

/**
 * A table as lines of text. Columns beyond the width follow in further blocks, each of which repeats the first column.
 *
 * @param columns - The columns from left to right.
 * @param rows - The texts of the cells, row by row.
 * @param width - The most characters of a line; only a column that is wider than this exceeds it.
 */
export function textTable(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
  width: number
): string[] {
  const cells = rows.map((row) => row.map(printable));
  const widths = columns.map((column, index) =>
    columnWidth(
      column,
      cells.map((row) => row[index] ?? "")
    )
  );
  const line = (block: readonly number[], text: (column: number) => string) =>
    [0, ...block]
      .map((column) => pad(text(column), widths[column] ?? 0, columns[column]?.align ?? "left"))
      .join(GAP)
      .trimEnd();
  return splitByWidth(widths, width).flatMap((block, index) => {
    const rule = [0, ...block].map((column) => "-".repeat(widths[column] ?? 0)).join(GAP);
    return [
      ...(index > 0 ? [""] : []),
      line(block, (column) => columns[column]?.heading ?? ""),
      rule,
      ...cells.map((row) => line(block, (column) => row[column] ?? "")),
    ];
  });
}
