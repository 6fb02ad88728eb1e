import { version } from "../rules/version";
import { NotDone } from "./workbookHost";

/** Requests whose changes are one step of Undo. */
const UNDO_GROUPS = ["ExcelApi", "1.20"] as const;
const SETTINGS = ["ExcelApi", "1.4"] as const;
const MOST_SHEETS_OF_A_NAME = 99;
/** The setting of the workbook with the version of the add-in that last changed it. */
const VERSION_SETTING = "extensionSeasonVersion";

/** Whether this Excel has a requirement set. */
export const supports = ([name, minimum]: readonly [string, string]): boolean =>
  Office.context.requirements.isSetSupported(name, minimum);

/** Works on the workbook as soon as no cell is being edited. */
export function inWorkbook<Result>(
  work: (context: Excel.RequestContext) => Promise<Result>
): Promise<Result> {
  return Excel.run({ delayForCellEdit: true }, work);
}

/**
 * Changes the workbook in one step of Undo, where Excel can.
 *
 * @param work - The changes; `isOneStep` tells whether one Undo takes them back.
 */
export async function inOneStep<Result>(
  work: (context: Excel.RequestContext, isOneStep: boolean) => Promise<Result>
): Promise<Result> {
  const apart = (): Promise<Result> => inWorkbook((context) => work(context, false));
  if (!supports(UNDO_GROUPS)) return apart();
  try {
    return await Excel.run({ delayForCellEdit: true, mergeUndoGroup: true }, (context) =>
      work(context, true)
    );
  } catch (thrown) {
    const isRefused = thrown instanceof OfficeExtension.Error && thrown.code === "UndoNotSupported";
    if (!isRefused) throw thrown;
    return apart();
  }
}

/** Notes in the workbook the version of the add-in, when a button has changed the workbook. */
export function noteVersion({ workbook }: Excel.RequestContext): void {
  if (supports(SETTINGS)) workbook.settings.add(VERSION_SETTING, version);
}

/** The version that was noted last; `undefined` if none was. */
export async function notedVersion(context: Excel.RequestContext): Promise<string | undefined> {
  if (!supports(SETTINGS)) return undefined;
  const setting = context.workbook.settings.getItemOrNullObject(VERSION_SETTING);
  setting.load("value");
  await context.sync();
  return setting.isNullObject ? undefined : String(setting.value);
}

/**
 * A name for a new sheet.
 *
 * @param context - The request.
 * @param wanted - The name, to which a number is added if it is already in use.
 * @throws NotDone when too many names are in use.
 */
export async function freeName(context: Excel.RequestContext, wanted: string): Promise<string> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const taken = new Set(worksheets.items.map(({ name }) => name.toLowerCase()));
  const names = [
    wanted,
    ...Array.from(
      { length: MOST_SHEETS_OF_A_NAME },
      (_n, index) => `${wanted} ${String(index + 2)}`
    ),
  ];
  const free = names.find((name) => !taken.has(name.toLowerCase()));
  if (free === undefined)
    throw new NotDone(`There are too many sheets named ${wanted}. Delete or rename some.`);
  return free;
}

/** Takes away a sheet that is not needed any more, or that could not be written whole. */
export async function removeSheet(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) return;
  sheet.delete();
  await context.sync();
}
