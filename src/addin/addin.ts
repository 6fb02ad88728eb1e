import "./addin.css";
import "./icons/icon-16.png";
import "./icons/icon-32.png";
import "./icons/icon-64.png";
import "./icons/icon-80.png";
import "./icons/icon-128.png";
import { ruleTables } from "../rules/ruleTables";
import { functionGuide } from "./functionGuide";
import { functionTexts } from "./functionText";
import { whenInHost } from "./hostAnswer";
import { renderFunctions } from "./renderFunctions";
import { renderTables } from "./renderTables";

async function showFunctions(): Promise<void> {
  const answer = await fetch("functions.json");
  const metadata = (await answer.json()) as Parameters<typeof functionTexts>[0];
  const entries = renderFunctions(functionGuide, functionTexts(metadata));
  document.getElementById("functions")?.append(...entries);
}

function show(): void {
  void showFunctions();
  document.getElementById("tables")?.append(renderTables([...ruleTables.values()]));
  whenInHost(typeof Office === "undefined" ? undefined : Office, () => {
    document.getElementById("outside")?.remove();
  });
}

// The scripts stand in the head, so that the host knows the functions before the page is drawn.
if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", show);
else show();
