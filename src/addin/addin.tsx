import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { render } from "preact";
import { newDiagnosis } from "./tools/diagnosis";
import { excelWorkbook } from "./excel/excelWorkbook";
import { Guide } from "./guide";
import { HOST_SENTENCES, watchHost, type HostState } from "./hostAnswer";
import { hostFacts } from "./hostFacts";
import { followTheme } from "./theme";

/** Today's date, for the as-of date of a new client list. The functions themselves use no clock. */
function today(): string {
  const now = new Date();
  const month = String(now.getMonth() + 1).padStart(2, "0");
  return `${String(now.getFullYear())}-${month}-${String(now.getDate()).padStart(2, "0")}`;
}

const diagnosis = newDiagnosis(hostFacts);
addEventListener("error", ({ error }) => {
  diagnosis.noteError(error);
});
addEventListener("unhandledrejection", ({ reason }) => {
  diagnosis.noteError(reason);
});

/** Whether the host is dark. Some hosts tell no theme, although the types promise one. */
function themeOfHost(): boolean | undefined {
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  return theme?.isDarkTheme;
}

/** Draws the guide, and draws it again whenever more is known of the host. */
function show(): void {
  const place = document.getElementById("guide");
  if (!place) return;
  const draw = (state: HostState): void => {
    diagnosis.noteState(state);
    const isOpen = state === "excel";
    followTheme(isOpen ? themeOfHost() : undefined);
    const workbook = isOpen ? excelWorkbook : undefined;
    render(
      <Guide
        folder=""
        note={HOST_SENTENCES[state]}
        workbook={workbook}
        today={today}
        diagnosis={diagnosis}
      />,
      place
    );
  };
  watchHost(typeof Office === "undefined" ? undefined : Office, draw);
}

// The scripts are in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") {
  document.addEventListener("DOMContentLoaded", show);
} else show();
