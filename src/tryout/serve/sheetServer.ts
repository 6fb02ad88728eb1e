import type { Server } from "node:http";
import { HOST_PAGE_SOURCE } from "../host/hostPage";
import { BUILD_FOLDER } from "../host/builtAddIn";
import { folderServer } from "./folderServer";

/** The host's part of that page as a script: its text is an expression, kept here under a name. */
const HOST_PAGE_SCRIPT = HOST_PAGE_SOURCE.replace(
  /^"use strict";\s*/,
  '"use strict";\nglobalThis.standInPage = '
).concat(";\nstandInPage.offerFormattedNumbers();\n");

/** A server of the try-out sheet: its own files, the built add-in, and the page that the functions run in. */
export function sheetServer(): Server {
  return folderServer({
    folders: [new URL("sheet/", BUILD_FOLDER), BUILD_FOLDER],
    texts: { "hostPage.js": HOST_PAGE_SCRIPT },
  });
}
