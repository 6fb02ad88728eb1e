import { logErrorMessage } from "office-addin-cli";
import { commandSurroundings, INCOMPLETE, tryOut } from "./terminal/tryout";

try {
  process.exitCode = await tryOut(process.argv.slice(2), commandSurroundings(logErrorMessage));
} catch (error) {
  logErrorMessage(error);
  process.exitCode = INCOMPLETE;
}
