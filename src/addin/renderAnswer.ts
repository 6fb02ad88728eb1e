import { element } from "./element";
import type { ShownCell } from "./liveAnswer";

function cellOf(tag: "th" | "td", { text, kind }: ShownCell): HTMLElement {
  const cell = element(tag, text);
  cell.className = kind;
  return cell;
}

/**
 * An answer as the page shows it: one value as a line, several cells as a table with headings.
 *
 * @param rows - The cells.
 * @param caption - The name of the table, for screen readers.
 * @returns An element with the answer.
 */
export function renderAnswer(
  rows: readonly (readonly ShownCell[])[],
  caption: string
): HTMLElement {
  const [first = [], ...others] = rows;
  const [only] = first;
  if (rows.length === 1 && first.length === 1 && only) {
    const answer = element("output", only.text);
    answer.className = only.kind;
    return answer;
  }
  const headings = first.map((cell) => {
    const heading = cellOf("th", cell) as HTMLTableCellElement;
    heading.scope = "col";
    return heading;
  });
  const table = element(
    "table",
    element("caption", caption),
    element("thead", element("tr", ...headings)),
    element(
      "tbody",
      ...others.map((row) => element("tr", ...row.map((cell) => cellOf("td", cell))))
    )
  );
  const scroller = element("div", table);
  scroller.className = "scroller";
  scroller.tabIndex = 0;
  scroller.setAttribute("role", "region");
  scroller.setAttribute("aria-label", caption);
  return scroller;
}
