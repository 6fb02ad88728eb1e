import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { render } from "preact";
import { excelWorkbook } from "./excelWorkbook";
import { Guide } from "./guide";
import { hostOf } from "./hostAnswer";
import { followTheme } from "./theme";

/** Today's date, for the as-of date of a new client list. The functions themselves use no clock. */
function today(): string {
  const now = new Date();
  const month = String(now.getMonth() + 1).padStart(2, "0");
  return `${String(now.getFullYear())}-${month}-${String(now.getDate()).padStart(2, "0")}`;
}

async function show(): Promise<void> {
  const place = document.getElementById("guide");
  if (!place) return;
  followTheme(undefined);
  render(<Guide folder="" today={today} />, place);
  if (!(await hostOf(typeof Office === "undefined" ? undefined : Office))) return;
  document.getElementById("outside")?.remove();
  followTheme(Office.context.officeTheme?.isDarkTheme);
  render(<Guide folder="" workbook={excelWorkbook} today={today} />, place);
}

// The scripts are in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") {
  document.addEventListener("DOMContentLoaded", () => {
    void show();
  });
} else void show();
