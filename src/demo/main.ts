import { logErrorMessage } from "office-addin-cli";
import { commandSurroundings, demoCommand } from "./terminal/demoCommand";
import { INCOMPLETE } from "./terminal/exitCode";

try {
  process.exitCode = await demoCommand(process.argv.slice(2), commandSurroundings(logErrorMessage));
} catch (error) {
  logErrorMessage(error);
  process.exitCode = INCOMPLETE;
}
