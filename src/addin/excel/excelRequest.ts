import { version } from "../../rules/version";
import { freeSheetName } from "../workbook/sheetName";

/** Requests whose changes are one step of Undo. */
const UNDO_GROUPS = ["ExcelApi", "1.20"] as const;
const SETTINGS = ["ExcelApi", "1.4"] as const;
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

/** The name of a new sheet: a number is added if the name is already in use. */
export async function newSheetName(context: Excel.RequestContext, wanted: string): Promise<string> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return freeSheetName(
    wanted,
    worksheets.items.map(({ name }) => name)
  );
}

/** Takes away a sheet that is not needed any more, or that could not be written whole. */
export async function removeSheet(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) return;
  sheet.delete();
  await context.sync();
}
