import { ruleTables } from "../rules/ruleTables";
import { useFormattedNumbers } from "../functions/numberFormats";
import { calendarForm } from "./calendarForm";
import { functionGuide } from "./functionGuide";
import { guideContent } from "./guideContent";
import { renderFunctions } from "./renderFunctions";
import { renderTables } from "./renderTables";
import { searchBox } from "./searchBox";
import type { WorkbookHost } from "./workbookHost";
import { workbookTools } from "./workbookTools";

/** Tax year whose dates are shown first: that of the latest form held. */
const LATEST_YEAR = Number(ruleTables.get("mailing-addresses")?.knownThrough.slice(0, 4));

/** Where the guide is to stand and what it may work on. */
export interface GuidePlace {
  readonly page: NonElementParentNode;
  /** Where functions.json and the help lie, with a closing slash; empty for beside the page. */
  readonly folder: string;
  /** Nothing where no workbook is open. */
  readonly workbook?: WorkbookHost | undefined;
  /** The day a new client list is looked at. */
  readonly today: () => string;
}

/**
 * Fills the sections of a page that holds the guide: functions, calendar, rules, and the buttons for the workbook if there is one.
 *
 * @param place - The page and the workbook.
 */
export async function fillGuide(place: GuidePlace): Promise<void> {
  const { page, folder, workbook, today } = place;
  useFormattedNumbers("double");
  page.getElementById("calendar")?.append(calendarForm(LATEST_YEAR));
  page.getElementById("tables")?.append(renderTables([...ruleTables.values()]));
  const content = await guideContent(folder);
  const tools = workbook ? workbookTools(workbook, today) : undefined;
  if (tools) page.getElementById("tools")?.replaceChildren(tools.tools);
  const groups = renderFunctions(functionGuide, content, tools?.put);
  page.getElementById("functions")?.append(searchBox(content.texts, groups), ...groups);
}
