import { ruleTables } from "../rules/ruleTables";
import { useFormattedNumbers } from "../functions/cells/numberFormats";
import { calendarForm } from "./calendarForm";
import { guideTexts } from "./guideTexts";
import { renderFunctions } from "./renderFunctions";
import { renderTables } from "./renderTables";
import { searchBox } from "./searchBox";
import type { WorkbookHost } from "./workbookHost";
import { workbookTools } from "./workbookTools";

/** The tax year whose deadlines are shown first: that of the latest Form 4868 in the rule tables. */
const LATEST_YEAR = Number(ruleTables.get("mailing-addresses")?.knownThrough.slice(0, 4));

/** The page that shows the guide, and the workbook that it works on. */
export interface GuidePlace {
  readonly page: NonElementParentNode;
  /** The folder of functions.json and the help, with a slash at the end; empty if they are beside the page. */
  readonly folder: string;
  /** The open workbook. It may come late, and outside a workbook it never comes. */
  readonly workbook: Promise<WorkbookHost>;
  /** The as-of date of a new client list, such as 2026-04-01. */
  readonly today: () => string;
}

/**
 * Fills the sections of the guide: functions, deadlines, rule tables, and the tools as soon as a workbook is open.
 *
 * @param place - The page and the workbook.
 */
export async function fillGuide(place: GuidePlace): Promise<void> {
  const { page, folder, workbook, today } = place;
  useFormattedNumbers("double");
  page.getElementById("calendar")?.append(calendarForm(LATEST_YEAR));
  page.getElementById("tables")?.append(renderTables([...ruleTables.values()]));
  const texts = await guideTexts(folder);
  const tools = workbook.then((opened) => workbookTools(opened, today));
  void tools.then((made) => page.getElementById("tools")?.replaceChildren(made.tools));
  const insert = tools.then((made) => made.insert);
  const groups = renderFunctions(texts, folder, insert);
  page.getElementById("functions")?.append(searchBox(texts, groups), ...groups);
}
