import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { excelWorkbook } from "./excelWorkbook";
import { fillGuide } from "./fillGuide";
import { HOST_SENTENCES, watchHost } from "./hostAnswer";
import type { WorkbookHost } from "./workbookHost";

/** Today's date, for the as-of date of a new client list. The functions themselves use no clock. */
function today(): string {
  const now = new Date();
  const month = String(now.getMonth() + 1).padStart(2, "0");
  return `${String(now.getFullYear())}-${month}-${String(now.getDate()).padStart(2, "0")}`;
}

/** The workbook, once Excel answers. Until then, and outside Excel, the note says how matters are. */
function openWorkbook(): Promise<WorkbookHost> {
  return new Promise((resolve) => {
    watchHost(typeof Office === "undefined" ? undefined : Office, (state) => {
      const note = document.getElementById("outside");
      if (note) {
        note.textContent = HOST_SENTENCES[state];
        note.hidden = state === "excel";
      }
      if (state === "excel") resolve(excelWorkbook);
    });
  });
}

async function show(): Promise<void> {
  await fillGuide({ page: document, folder: "", workbook: openWorkbook(), today });
}

// The scripts are in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") {
  document.addEventListener("DOMContentLoaded", () => {
    void show();
  });
} else void show();
