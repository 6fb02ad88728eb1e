import { element } from "../../addin/element";
import { fillGuide } from "../../addin/fillGuide";
import type { WorkbookHost } from "../../addin/workbookHost";
import { SAMPLE_DATE } from "../season/assumptionsSheet";

const SECTIONS: readonly (readonly [id: string, title: string])[] = [
  ["tools", "In the sheet"],
  ["functions", "Functions by task"],
  ["calendar", "The dates of a season"],
  ["tables", "Rules in force"],
];

function section(id: string, title: string): HTMLElement {
  const heading = element("h2", title);
  heading.id = `${id}-title`;
  const content = element("section", heading);
  content.setAttribute("aria-labelledby", heading.id);
  if (id === "tools") {
    const tools = element("div");
    tools.id = id;
    content.append(tools);
  } else content.id = id;
  return content;
}

/**
 * Shows the add-in's guide beside the grid, its buttons working on the grid's workbook. It stands in a tree of its own, where the
 * style of the add-in's page reaches it and nothing of the grid.
 *
 * @param place - The element that holds it.
 * @param workbook - The workbook its buttons work on.
 */
export async function showGuide(place: HTMLElement, workbook: WorkbookHost): Promise<void> {
  const tree = place.attachShadow({ mode: "open" });
  const style = element("link");
  style.rel = "stylesheet";
  style.href = "addin.css";
  const body = element("div", ...SECTIONS.map(([id, title]) => section(id, title)));
  body.className = "pane";
  tree.append(style, body);
  await fillGuide({ page: tree, folder: "", workbook, today: () => SAMPLE_DATE });
}
