import "@univerjs/preset-sheets-core/lib/index.css";
import "./sheet.css";
import { showCellStatus } from "./cellStatus";
import { offerFiles } from "./fileActions";
import { framedHost } from "./framedHost";
import { type Grid, makeGrid } from "./grid";
import { GridAnswers } from "./gridAnswers";
import { GridFiles } from "./gridFiles";
import { gridWorkbook } from "./gridWorkbook";
import { showGuide } from "./guidePane";
import { moveWithF6 } from "./pageKeys";
import { printSheetInView } from "./printing";
import { questionDialog } from "./question";
import { SidePane } from "./sidePane";
import { finishEntry } from "./unsavedWork";

const DARK = matchMedia("(prefers-color-scheme: dark)");
/** The page has room for the whole notice and for the grid. */
const ROOMY = matchMedia("(min-width: 900px) and (min-height: 700px)");

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

/** Gives the grid the light or dark colors of the computer's settings. */
function followDark(grid: Grid): void {
  const follow = (): void => {
    grid.api.toggleDarkMode(DARK.matches);
  };
  DARK.addEventListener("change", follow);
  follow();
}

/** Shows the pane, and lets F6 move between it, the grid and the buttons. */
function connectParts(grid: Grid): void {
  const [pane, bar] = [part("guide"), part("actions")];
  const controls = { pane, grid: part("grid"), toggle: part("toggle"), back: part("back") };
  const side = new SidePane(controls, () => {
    grid.focus();
  });
  part("skip").addEventListener("click", (event) => {
    event.preventDefault();
    side.open();
    pane.focus();
  });
  moveWithF6(
    [
      {
        element: controls.grid,
        isReachable: () => true,
        enter: () => {
          side.showGrid();
        },
      },
      {
        element: pane,
        isReachable: () => side.isReachable,
        enter: (last) => {
          side.open();
          (last ?? pane).focus();
        },
      },
      {
        element: bar,
        isReachable: () => true,
        enter: (last) => {
          (last ?? part("open")).focus();
        },
      },
    ],
    () => finishEntry(grid)
  );
}

/** The notice is folded on a small page; its first line remains. */
function letNoticeFold(): void {
  const notice = partOf(HTMLDetailsElement, "note");
  notice.open = ROOMY.matches;
  ROOMY.addEventListener("change", () => {
    if (!ROOMY.matches) notice.open = false;
  });
}

/** Puts the focus at the start of the page, from where the first Tab finds the first link. */
function focusPage(): void {
  document.body.tabIndex = -1;
  document.body.focus();
  document.body.removeAttribute("tabindex");
}

/** The grid takes the focus by itself some time after it opens the first workbook. Gives it back, until the user enters the grid. */
function beginAtPageStart(): void {
  const grid = part("grid");
  const giveBack = ({ target, relatedTarget }: FocusEvent): void => {
    if (!(target instanceof HTMLElement) || target.dataset["uComp"] !== "editor") return;
    if (relatedTarget instanceof HTMLElement && relatedTarget !== document.body)
      relatedTarget.focus();
    else focusPage();
  };
  const end = (): void => {
    grid.removeEventListener("focusin", giveBack);
  };
  grid.addEventListener("focusin", giveBack);
  grid.addEventListener("pointerdown", end, { capture: true, once: true });
  window.addEventListener(
    "keydown",
    ({ key }) => {
      if (key === "F6") end();
    },
    { capture: true }
  );
  focusPage();
}

async function start(): Promise<void> {
  letNoticeFold();
  const metadata = await fetch("functions.json").then((answer) => answer.text());
  const host = framedHost(partOf(HTMLIFrameElement, "functions-frame"), metadata);
  const answers = new GridAnswers();
  part("grid").replaceChildren();
  const grid = makeGrid("grid", host, answers);
  followDark(grid);
  const files = new GridFiles(grid, host);
  // The grid has formulas and selections only after a workbook is opened.
  files.openSample();
  showCellStatus(grid, answers, host, {
    underGrid: part("cell-status"),
    inPane: part("cell-error"),
  });
  const ask = questionDialog({
    dialog: partOf(HTMLDialogElement, "question"),
    text: part("question-text"),
    yes: part("question-yes"),
    no: part("question-no"),
  });
  const fileName = offerFiles(
    files,
    {
      open: part("open"),
      file: partOf(HTMLInputElement, "file"),
      save: part("save"),
      sample: part("sample"),
      status: part("file-status"),
    },
    ask
  );
  printSheetInView(grid, part("print"), fileName);
  part("print-sheet").addEventListener("click", () => {
    void finishEntry(grid).then(() => {
      window.print();
    });
  });
  showGuide(part("guide-content"), gridWorkbook(grid));
  beginAtPageStart();
  connectParts(grid);
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
