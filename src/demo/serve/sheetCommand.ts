import { existsSync } from "node:fs";
import { NotBuilt } from "../../host/builtAddIn";
import { SHEET_FOLDER } from "./builtFiles";
import { freePort } from "./freePort";
import { readServeArguments } from "./portArgument";
import { print, runCommand } from "./runCommand";
import { LOOPBACK, serveSheet } from "./sheetServer";

const USUAL_PORT = 4869;
const USAGE = `npm run sheet                  Open the demo sheet in the browser.
npm run sheet -- --port N      Use port N instead of ${USUAL_PORT}.`;

await runCommand(async () => {
  const { port: wanted, help } = readServeArguments(process.argv.slice(2), USUAL_PORT);
  if (help) {
    print(USAGE);
    return;
  }
  if (!existsSync(new URL("index.html", SHEET_FOLDER))) {
    throw new NotBuilt('dist/sheet does not exist. Run "npx webpack --env sheet" first.');
  }
  const { port, sentence } = await freePort(wanted, LOOPBACK);
  await serveSheet(port);
  if (sentence !== undefined) print(sentence);
  print(`The demo sheet is at http://${LOOPBACK}:${port}/ on this machine only.`);
  print("Open this address in a browser. Press Ctrl+C here to stop.");
});
