import type { BlankHabit } from "../../host/argumentMarshalling";
import { hostOfBuiltAddIn, NotBuilt } from "../../host/builtAddIn";
import { recalculateFile } from "../workbook/workbook";
import { NotAWorkbook } from "../workbook/workbookFile";

const [path = "", blankHabit = "null"] = process.argv.slice(2);

try {
  const host = hostOfBuiltAddIn(blankHabit as BlankHabit);
  process.send?.({ outcome: recalculateFile(path, host) });
} catch (error) {
  if (!(error instanceof NotAWorkbook || error instanceof NotBuilt)) throw error;
  process.send?.({ sentence: error.message });
}
