import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { excelWorkbook } from "./excelWorkbook";
import { fillGuide } from "./fillGuide";
import { hostOf } from "./hostAnswer";

/** Today's date, for the as-of date of a new client list. The functions themselves use no clock. */
function today(): string {
  const now = new Date();
  const month = String(now.getMonth() + 1).padStart(2, "0");
  return `${String(now.getFullYear())}-${month}-${String(now.getDate()).padStart(2, "0")}`;
}

async function show(): Promise<void> {
  const isInHost = await hostOf(typeof Office === "undefined" ? undefined : Office);
  if (isInHost) document.getElementById("outside")?.remove();
  const workbook = isInHost ? excelWorkbook : undefined;
  await fillGuide({ page: document, folder: "", workbook, today });
}

// The scripts are in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") {
  document.addEventListener("DOMContentLoaded", () => {
    void show();
  });
} else void show();
