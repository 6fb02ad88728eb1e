import { copyFileSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { BUILD_FOLDER, hostOfBuiltAddIn } from "../host/builtAddIn";
import { contentsPage } from "./contentsPage";
import { functionPage } from "./functionPage";
import { gatherHelp } from "./helpModel";
import { topicPage } from "./topicPage";
import { topics } from "./topics";

/** Writes the help beside the built add-in. Pages of an earlier build are removed. */
const folder = new URL("help/", BUILD_FOLDER);
const help = gatherHelp(hostOfBuiltAddIn("null"));
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const one of help.functions)
  writeFileSync(new URL(`${one.name}.html`, folder), functionPage(one, help));
for (const topic of topics(help)) writeFileSync(new URL(topic.file, folder), topicPage(topic));
writeFileSync(new URL("index.html", folder), contentsPage(help));
copyFileSync(new URL("help.css", import.meta.url), new URL("help.css", folder));
