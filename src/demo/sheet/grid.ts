import { type IWorkbookData, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import {
  CalculationMode,
  FormulaDataModel,
  ILayoutService,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import type { StandInHost } from "../../host/standInHost";
import { CellMarks, showMarks } from "./cellMarks";
import { placeEditorAtCell } from "./editorPlace";
import { showFilledFormats } from "./filledFormats";
import { functionHint } from "./functionHints";
import { keepEntry } from "./keptEntry";
import type { GridAnswers } from "./gridAnswers";
import { gridFunction } from "./gridFunction";
import { UNHARMED_SORTS } from "./unharmedSort";

/** The interface of the grid library. */
export type GridInterface = ReturnType<typeof FUniver.newAPI>;

/** A grid on the page. */
export interface Grid {
  readonly api: GridInterface;
  /** The formulas of the grid: their text, and the cells that each fills. */
  readonly formulas: FormulaDataModel;
  /** The cells that are marked. */
  readonly marks: CellMarks;
  /** Opens a workbook instead of the one that is open, and calculates it. */
  open(snapshot: IWorkbookData): void;
  /** Puts the focus into the selected cell. */
  focus(): void;
}

/**
 * Makes the grid from the complete library, with its own calculation and our functions among the built-in ones.
 *
 * @param container - The id of the element that it fills.
 * @param host - The stand-in host that calls our functions.
 * @param answers - Records the results of our functions.
 * @returns The grid, with no workbook yet.
 */
export function makeGrid(container: string, host: StandInHost, answers: GridAnswers): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    logLevel: LogLevel.ERROR,
  });
  const OurFunction = gridFunction(host, answers);
  const entries = [...host.functions.values()];
  const { plugins } = UniverSheetsCorePreset({
    container,
    ribbonType: "simple",
    // Text in results that looks like a number is meant as text, and gets no mark.
    sheets: { disableForceStringAlert: true, disableForceStringMark: true },
    disableTextFormatAlert: true,
    disableTextFormatMark: true,
    formula: {
      function: [
        ...UNHARMED_SORTS,
        ...entries.map(({ name }): [typeof OurFunction, string] => [
          OurFunction,
          `${host.namespace}.${name}`,
        ]),
      ],
      description: entries.map((entry) => functionHint(entry, host.namespace)),
      initialFormulaComputing: CalculationMode.FORCED,
    },
  });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  const marks = new CellMarks();
  let openId: string | undefined;
  return {
    api,
    marks,
    get formulas() {
      return univer.__getInjector().get(FormulaDataModel);
    },
    open: (snapshot) => {
      if (openId !== undefined) api.disposeUnit(openId);
      answers.clear();
      marks.clear();
      const isFirst = openId === undefined;
      openId = snapshot.id;
      api.createWorkbook(snapshot);
      if (!isFirst) return;
      placeEditorAtCell(univer.__getInjector());
      keepEntry(univer.__getInjector());
      showFilledFormats(univer.__getInjector());
      showMarks(univer.__getInjector(), marks);
    },
    focus: () => {
      univer.__getInjector().get(ILayoutService).focus();
    },
  };
}
