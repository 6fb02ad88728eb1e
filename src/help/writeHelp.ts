import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { BUILD_FOLDER, hostOfBuiltAddIn } from "../host/builtAddIn";
import { contentsPage } from "./contentsPage";
import { readFunctionDocs } from "./functionDocs";
import { functionPage } from "./functionPage";
import { gatherHelp } from "./helpModel";

const folder = new URL("help/", BUILD_FOLDER);
const functions = fileURLToPath(new URL("../functions", import.meta.url));

const help = gatherHelp(hostOfBuiltAddIn("null"), readFunctionDocs(functions));
mkdirSync(folder, { recursive: true });
for (const one of help.functions)
  writeFileSync(new URL(`${one.name}.html`, folder), functionPage(one, help));
writeFileSync(new URL("index.html", folder), contentsPage(help));
/** The guide on the add-in's page answers these formulas itself. */
const examples = help.functions.map(({ name, examples: of }) => [
  name,
  of.map(({ formula, words }) => ({ formula, says: words })),
]);
writeFileSync(new URL("examples.json", folder), JSON.stringify(Object.fromEntries(examples)));
copyFileSync(new URL("help.css", import.meta.url), new URL("help.css", folder));
