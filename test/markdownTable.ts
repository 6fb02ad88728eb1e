/** A row of a Markdown table, cell by cell. */
export type TableRow = readonly string[];

/**
 * Rows of the Markdown tables of a text, headings and rules left out.
 *
 * @param text - Markdown.
 * @param firstHeading - Text of the first heading cell of the tables wanted.
 */
export function markdownRows(text: string, firstHeading: string): readonly TableRow[] {
  const rows: TableRow[] = [];
  let wanted = false;
  let above = "";
  for (const line of text.split("\n")) {
    if (!line.startsWith("|")) wanted = false;
    else if (/^\|[\s|:-]+\|$/.test(line)) wanted = above === firstHeading;
    else if (wanted) rows.push(cellsOf(line));
    above = cellsOf(line)[0] ?? "";
  }
  return rows;
}

function cellsOf(line: string): TableRow {
  return line
    .split("|")
    .slice(1, -1)
    .map((cell) => cell.trim());
}
