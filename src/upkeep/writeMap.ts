import { readFileSync, writeFileSync } from "node:fs";
import { withMap } from "./functionMap";

const document = new URL("../../DEVELOPERS.md", import.meta.url);
writeFileSync(document, withMap(readFileSync(document, "utf8")));
