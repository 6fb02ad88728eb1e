import { writeFileSync } from "node:fs";
import { hostOfBuiltAddIn } from "../host/builtAddIn";
import { functionReference } from "./functionReference";
import { gatherHelp } from "./helpModel";

/** Writes the reference of all functions beside this file, answered by the built add-in. */
const text = await functionReference(gatherHelp(hostOfBuiltAddIn("null")));
writeFileSync(new URL("functions.md", import.meta.url), text);
