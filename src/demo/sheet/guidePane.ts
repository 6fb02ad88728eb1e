import { element } from "../../addin/element";
import { fillGuide } from "../../addin/fillGuide";
import type { WorkbookHost } from "../../addin/workbookHost";
import { SAMPLE_DATE } from "../season/assumptionsSheet";

const SECTIONS: readonly (readonly [id: string, title: string])[] = [
  ["tools", "Tools for this workbook"],
  ["functions", "Functions by task"],
  ["calendar", "Deadlines for a tax year"],
  ["tables", "Rule tables"],
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
 * Shows the guide of the add-in beside the grid. Its buttons work on the workbook in the grid. It is in a shadow tree, which the styles
 * of the page of the add-in apply to, and those of the grid do not.
 *
 * @param place - The element to fill.
 * @param workbook - The workbook that the buttons work on.
 */
export async function showGuide(place: HTMLElement, workbook: WorkbookHost): Promise<void> {
  const tree = place.attachShadow({ mode: "open" });
  const style = element("link");
  style.rel = "stylesheet";
  style.href = "addin.css";
  const body = element("div", ...SECTIONS.map(([id, title]) => section(id, title)));
  body.className = "pane";
  tree.append(style, body);
  await fillGuide({
    page: tree,
    folder: "",
    workbook: Promise.resolve(workbook),
    today: () => SAMPLE_DATE,
  });
}
