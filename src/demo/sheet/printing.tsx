import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
  VerticalAlign,
} from "@univerjs/core";
import { type CSSProperties, render } from "preact";
import type { Grid } from "./grid";
import { openWorkbook } from "./gridCells";
import { printableSheet } from "./printableSheet";
import { PAGE_WIDTH, type PrintedCell, printedTables } from "./printedTables";

const ACROSS: Partial<Record<HorizontalAlign, "left" | "center" | "right">> = {
  [HorizontalAlign.LEFT]: "left",
  [HorizontalAlign.CENTER]: "center",
  [HorizontalAlign.RIGHT]: "right",
};
const DOWN: Partial<Record<VerticalAlign, "top" | "middle" | "bottom">> = {
  [VerticalAlign.TOP]: "top",
  [VerticalAlign.MIDDLE]: "middle",
  [VerticalAlign.BOTTOM]: "bottom",
};

function lineStyle(line: Nullable<IBorderStyleData>): string | undefined {
  if (!line || line.s === BorderStyleTypes.NONE) return undefined;
  const color = line.cl.rgb ?? "#000";
  if (line.s === BorderStyleTypes.DOUBLE) return `3px double ${color}`;
  const isThick = line.s >= BorderStyleTypes.MEDIUM;
  return `${isThick ? 2 : 1}px solid ${color}`;
}

function linesOf(lines: IStyleData["bd"]): Readonly<Record<string, string>> {
  const sides = { Top: lines?.t, Right: lines?.r, Bottom: lines?.b, Left: lines?.l };
  return Object.fromEntries(
    Object.entries(sides).flatMap(([side, line]) => {
      const drawn = lineStyle(line);
      return drawn === undefined ? [] : [[`border${side}`, drawn]];
    })
  );
}

function styleOf({ style, isNumber }: PrintedCell): CSSProperties {
  const { bl, it, ul, st, fs, cl, bg, ht, vt, bd } = style ?? {};
  const decoration = [
    ...(ul?.s === BooleanNumber.TRUE ? ["underline"] : []),
    ...(st?.s === BooleanNumber.TRUE ? ["line-through"] : []),
  ];
  return {
    ...(bl === BooleanNumber.TRUE ? { fontWeight: "bold" } : {}),
    ...(it === BooleanNumber.TRUE ? { fontStyle: "italic" } : {}),
    ...(decoration.length > 0 ? { textDecoration: decoration.join(" ") } : {}),
    ...(fs === undefined ? {} : { fontSize: `${fs}pt` }),
    ...(cl?.rgb ? { color: cl.rgb } : {}),
    ...(bg?.rgb ? { backgroundColor: bg.rgb } : {}),
    textAlign: ACROSS[ht ?? HorizontalAlign.UNSPECIFIED] ?? (isNumber ? "right" : "left"),
    verticalAlign: DOWN[vt ?? VerticalAlign.UNSPECIFIED] ?? "bottom",
    ...linesOf(bd),
  };
}

function Row({ cells, isHeading }: { cells: readonly PrintedCell[]; isHeading: boolean }) {
  const Cell = isHeading ? "th" : "td";
  return (
    <tr>
      {cells.map((cell) => (
        <Cell colSpan={cell.columns} rowSpan={cell.rows} style={styleOf(cell)}>
          {cell.text}
        </Cell>
      ))}
    </tr>
  );
}

/** The sheet in view as tables for a printer, each as wide as a page at most. */
function PrintedSheet({ grid, file }: { grid: Grid; file: string }) {
  const tables = printedTables(printableSheet(grid));
  const widths = tables.map((table) => table.widths.reduce((sum, width) => sum + width, 0));
  return (
    <>
      <h1>{openWorkbook(grid).getActiveSheet().getSheetName()}</h1>
      <p>{file}. Estimates only, not tax advice.</p>
      {tables.map((table, index) => (
        <table
          style={{
            width: `${widths[index]}px`,
            zoom: Math.min(1, PAGE_WIDTH / Math.max(...widths)),
          }}
        >
          <colgroup>
            {table.widths.map((width) => (
              <col style={{ width: `${width}px` }} />
            ))}
          </colgroup>
          <thead>
            {table.headings.map((cells) => (
              <Row cells={cells} isHeading />
            ))}
          </thead>
          <tbody>
            {table.rows.map((cells) => (
              <Row cells={cells} isHeading={false} />
            ))}
          </tbody>
        </table>
      ))}
    </>
  );
}

/**
 * Prints the sheet in view instead of the page, whatever starts the print: the grid draws its cells where no printer sees them.
 *
 * @param grid - The grid.
 * @param place - The element that only a printer sees.
 * @param fileName - The name of the open file.
 */
export function printSheetInView(grid: Grid, place: HTMLElement, fileName: () => string): void {
  const { title } = document;
  window.addEventListener("beforeprint", () => {
    const file = fileName();
    // The title is the proposed name of a PDF file.
    document.title = `${openWorkbook(grid).getActiveSheet().getSheetName()} - ${file}`;
    render(<PrintedSheet grid={grid} file={file} />, place);
  });
  window.addEventListener("afterprint", () => {
    document.title = title;
    render(null, place);
  });
}
