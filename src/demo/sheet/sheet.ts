import "@univerjs/preset-sheets-core/lib/index.css";
import "./sheet.css";
import { followSelection } from "./cellStatus";
import { offerFiles } from "./fileActions";
import { framedHost } from "./framedHost";
import { makeGrid } from "./grid";
import { GridAnswers } from "./gridAnswers";
import { GridFiles } from "./gridFiles";
import { gridWorkbook } from "./gridWorkbook";
import { showGuide } from "./guidePane";

function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no element ${id}.`);
  return found;
}

function partOf<Kind extends HTMLElement>(kind: new () => Kind, id: string): Kind {
  const found = part(id);
  if (!(found instanceof kind)) throw new Error(`The element ${id} is not of the kind expected.`);
  return found;
}

/** Below this width, in pixels, the guide is hidden until the user opens it. */
const LEAST_FOR_BOTH = 960;

function letGuideBeHidden(): void {
  const [toggle, guide] = [part("toggle"), part("guide")];
  const show = (isShown: boolean): void => {
    guide.hidden = !isShown;
    toggle.setAttribute("aria-expanded", String(isShown));
  };
  show(window.innerWidth >= LEAST_FOR_BOTH);
  toggle.addEventListener("click", () => {
    show(Boolean(guide.hidden));
  });
}

async function start(): Promise<void> {
  const metadata = await fetch("functions.json").then((answer) => answer.text());
  const host = framedHost(partOf(HTMLIFrameElement, "functions-frame"), metadata);
  const answers = new GridAnswers();
  part("grid").replaceChildren();
  const grid = makeGrid("grid", host, answers);
  const files = new GridFiles(grid, host);
  // The grid has formulas and selections only after a workbook is opened.
  files.openSample();
  followSelection(grid, answers, part("cell-status"));
  offerFiles(files, {
    open: part("open"),
    file: partOf(HTMLInputElement, "file"),
    save: part("save"),
    sample: part("sample"),
    status: part("file-status"),
  });
  letGuideBeHidden();
  showGuide(part("guide"), gridWorkbook(grid));
  // The grid draws its cells on a canvas; the tests in a browser read them here.
  Object.assign(window, { demoSheet: { grid, host } });
  document.body.dataset["ready"] = "yes";
}

window.addEventListener("load", () => {
  start().catch((thrown: unknown) => {
    part("file-status").textContent = "The sheet could not be loaded. Reload the page.";
    throw thrown;
  });
});
