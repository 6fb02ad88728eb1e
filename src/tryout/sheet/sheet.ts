import "@univerjs/preset-sheets-core/lib/index.css";
import "../../addin/addin.css";
import "./sheet.css";
import { fillGuide } from "../../addin/fillGuide";
import { SEASON_DAY } from "../season/seasonLog";
import { seasonWorkbook } from "../season/seasonWorkbook";
import { OwnFunctionNames } from "../workbook/ownFunctionNames";
import { NotAWorkbook } from "../workbook/workbookBytes";
import { followSelection } from "./answerLine";
import { framedHost } from "./framedHost";
import { makeGrid } from "./grid";
import { GridAnswers } from "./gridAnswers";
import { download, fileOfGrid, readForGrid } from "./gridFiles";
import { gridWorkbook } from "./gridWorkbook";
import { workbookSnapshot } from "./workbookSnapshot";

function part<Kind extends HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no ${id}`);
  return found as Kind;
}

async function start(): Promise<void> {
  const metadata = await (await fetch("functions.json")).text();
  const host = framedHost(part<HTMLIFrameElement>("functions-frame"), metadata);
  const answers = new GridAnswers();
  const { grid, open } = makeGrid("grid", host, answers);
  const names = new OwnFunctionNames(host.namespace, host.functions.keys());
  const said = part("said");
  const say = (text: string): void => {
    said.textContent = text;
  };

  open(workbookSnapshot(seasonWorkbook(), "season", names));
  followSelection(grid, answers, part("answer"));

  const read = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    try {
      open(await readForGrid(file, host));
      say(
        `${file.name} is open. Charts, conditional formats and validation of the file are not shown.`
      );
    } catch (thrown) {
      if (!(thrown instanceof NotAWorkbook)) throw thrown;
      say(thrown.message);
    }
  };
  const chooser = part<HTMLInputElement>("file");
  chooser.addEventListener("change", () => {
    void read(chooser.files?.[0]).then(() => {
      chooser.value = "";
    });
  });
  document.addEventListener("dragover", (event) => {
    event.preventDefault();
  });
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    void read(event.dataTransfer?.files[0]);
  });
  part("save").addEventListener("click", () => {
    void fileOfGrid(grid, host).then((content) => {
      download(content, "try-out.xlsx");
      say("Saved as try-out.xlsx. Open it in a spreadsheet with the add-in.");
    });
  });
  part("sample").addEventListener("click", () => {
    open(workbookSnapshot(seasonWorkbook(), `season ${String(answers.opened)}`, names));
    say("The sample season is open.");
  });
  const guide = part("guide");
  const toggle = part<HTMLButtonElement>("toggle");
  toggle.addEventListener("click", () => {
    guide.hidden = !guide.hidden;
    toggle.setAttribute("aria-expanded", String(!guide.hidden));
    window.dispatchEvent(new Event("resize"));
  });

  await fillGuide({
    page: document,
    folder: "",
    workbook: gridWorkbook(grid),
    today: () => SEASON_DAY,
  });
  // For whoever drives the page from outside: the grid draws on a canvas, so its cells are read here.
  Object.assign(window, { tryoutGrid: grid });
  document.body.dataset["ready"] = "yes";
}

window.addEventListener("load", () => {
  start().catch((thrown: unknown) => {
    part("said").textContent = thrown instanceof Error ? thrown.message : String(thrown);
    throw thrown;
  });
});
