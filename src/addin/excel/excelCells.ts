import { refuseChangedCell } from "../workbook/entryCell";
import { excelErrorSentence } from "./excelErrors";
import { inWorkbook, supports } from "./excelRequest";
import { laterOnce } from "../laterOnce";
import { NotDone, type WorkbookHost } from "../workbook/workbookHost";

const SELECTION_EVENTS = ["ExcelApi", "1.2"] as const;
const CHANGE_EVENTS = ["ExcelApi", "1.9"] as const;
const CONDITIONAL_FORMATS = ["ExcelApi", "1.6"] as const;
/** The condition of the marks, which is always true. It tells them from the conditional formats of the user. */
const MARK = '=N("cannot be read")=0';
const MARK_COLOR = "#FFC7CE";
/** Longer content could be taken for something else than text: a formula, or a number with a sign. */
const STARTS_FORMULA = /^[=+\-@]/;

/** Enters a value in one cell, if the cell still has the content that was read before. */
export const enterValue: NonNullable<WorkbookHost["enterValue"]> = (place, value, format) =>
  inWorkbook(async (context) => {
    const { sheet, address, was } = place;
    const cell = context.workbook.worksheets.getItem(sheet).getRange(address);
    cell.load(["values", "formulas", "numberFormat"]);
    await context.sync();
    const [[now], [formula], [present]] = [cell.values, cell.formulas, cell.numberFormat].map(
      (block) => (block as unknown[][])[0] ?? []
    ) as [unknown[], unknown[], unknown[]];
    const hasFormula = typeof formula === "string" && formula.startsWith("=");
    refuseChangedCell(address, now, was, hasFormula);
    const isLikeFormula = typeof value === "string" && STARTS_FORMULA.test(value);
    if (format !== "" && present === "General") cell.numberFormat = [[format]];
    cell.values = [[isLikeFormula ? `'${value}` : value]];
    try {
      await context.sync();
    } catch (thrown) {
      const sentence = excelErrorSentence(thrown);
      throw sentence === undefined ? thrown : new NotDone(sentence);
    }
  });

/** Selects a cell and shows its sheet. */
export const goTo: NonNullable<WorkbookHost["goTo"]> = ({ sheet, address }) =>
  inWorkbook(async (context) => {
    const target = context.workbook.worksheets.getItem(sheet);
    target.activate();
    target.getRange(address).select();
    await context.sync();
  });

/** Tells of a new selection and of changes. A host that does not know the events leaves the buttons, which read the selection too. */
export const followSelection: NonNullable<WorkbookHost["followSelection"]> = (moved) => {
  const { again, end } = laterOnce(moved);
  const added: OfficeExtension.EventHandlerResult<unknown>[] = [];
  const noted = (): Promise<void> => {
    again();
    return Promise.resolve();
  };
  const started = inWorkbook(async (context) => {
    const { workbook } = context;
    if (supports(SELECTION_EVENTS)) added.push(workbook.onSelectionChanged.add(noted));
    if (supports(CHANGE_EVENTS)) added.push(workbook.worksheets.onChanged.add(noted));
    await context.sync();
  }).catch(() => undefined);
  return () => {
    end();
    void started.then(async () => {
      for (const handler of added) {
        handler.remove();
        await handler.context.sync().catch(() => undefined);
      }
    });
  };
};

/** Takes the marks from a sheet. */
async function removeMarks(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> {
  const formats = sheet.getRange().conditionalFormats;
  formats.load("items/type");
  await context.sync();
  const custom = formats.items.filter(({ type }) => type === "Custom");
  const rules = custom.map((format) => {
    const { rule } = format.custom;
    rule.load("formula");
    return { format, rule };
  });
  await context.sync();
  for (const { format, rule } of rules) if (rule.formula === MARK) format.delete();
}

/**
 * Marks cells with a conditional format, which leaves the fill of the user as it is and can be taken back whole.
 */
export const markCells: NonNullable<WorkbookHost["markCells"]> = (name, addresses) =>
  inWorkbook(async (context) => {
    if (!supports(CONDITIONAL_FORMATS)) return;
    const sheet = context.workbook.worksheets.getItem(name);
    await removeMarks(context, sheet);
    for (const address of addresses) {
      const { custom } = sheet.getRange(address).conditionalFormats.add("Custom");
      custom.rule.formula = MARK;
      custom.format.fill.color = MARK_COLOR;
    }
    await context.sync();
  });
