import { listenOnFreePort } from "./folderServer";
import { portArgument, WrongCommand } from "./portArgument";
import { sheetServer } from "./sheetServer";

const USUAL_PORT = 4869;
const WRONG = 2;

try {
  const wished = portArgument(process.argv.slice(2), USUAL_PORT);
  const port = await listenOnFreePort(sheetServer(), wished);
  if (port !== wished)
    console.log(`Port ${String(wished)} is taken; port ${String(port)} is used.`);
  console.log(`The try-out sheet is at http://localhost:${String(port)}/sheet.html`);
  console.log(
    "It is served to this machine alone, and your data stays in the page. Stop it with Ctrl+C."
  );
} catch (thrown) {
  if (!(thrown instanceof WrongCommand)) throw thrown;
  console.error(thrown.message);
  process.exitCode = WRONG;
}
