import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { ruleTables } from "../rules/ruleTables";
import { functionGuide } from "./functionGuide";
import { whenInHost } from "./hostAnswer";
import { renderFunctions } from "./renderFunctions";
import { renderTables } from "./renderTables";

function show(): void {
  document.getElementById("functions")?.append(...renderFunctions(functionGuide));
  document.getElementById("tables")?.append(renderTables([...ruleTables.values()]));
  whenInHost(typeof Office === "undefined" ? undefined : Office, () => {
    document.getElementById("outside")?.remove();
  });
}

// The scripts stand in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", show);
else show();
