import { type IWorkbookData, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FunctionType, IFunctionService } from "@univerjs/engine-formula";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import type { FunctionMetadata } from "../host/functionMetadata";
import type { StandInHost } from "../host/standInHost";
import type { GridAnswers } from "./gridAnswers";
import { GridFunction } from "./gridFunction";

/** The grid's own interface, with everything the presets add to it. */
export type Grid = ReturnType<typeof FUniver.newAPI>;

/** How the grid explains a function while its formula is typed. */
function describe(entry: FunctionMetadata, namespace: string) {
  return {
    functionName: `${namespace}.${entry.name}`,
    functionType: FunctionType.User,
    description: entry.description ?? "",
    abstract: entry.description ?? "",
    functionParameter: entry.parameters.map(({ name, optional, repeating, description }) => ({
      name,
      detail: description ?? "",
      example: "",
      require: optional ? 0 : 1,
      repeat: repeating ? 1 : 0,
    })),
  };
}

/** Opens a workbook in the grid, in the stead of the one that is open. */
export type OpenInGrid = (snapshot: IWorkbookData) => void;

/**
 * Makes the grid in its place on the page.
 *
 * @param container - Identifier of the element it fills.
 * @param host - The stand-in host that calls our functions.
 * @param answers - Where their answers are noted.
 * @returns The grid's interface, and what opens a workbook in it.
 */
export function makeGrid(
  container: string,
  host: StandInHost,
  answers: GridAnswers
): { readonly grid: Grid; readonly open: OpenInGrid } {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    logLevel: LogLevel.ERROR,
  });
  for (const plugin of UniverSheetsCorePreset({ container }).plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const grid = FUniver.newAPI(univer);
  let isKnown = false;
  let openId: string | undefined;
  const open: OpenInGrid = (snapshot) => {
    if (openId !== undefined) grid.disposeUnit(openId);
    answers.clear();
    openId = snapshot.id;
    grid.createWorkbook(snapshot);
    if (isKnown) return;
    // The grid takes functions only once a workbook is there; it calculates again when they come.
    isKnown = true;
    const service = univer.__getInjector().get(IFunctionService);
    for (const entry of host.functions.values()) {
      grid.registerFunction({
        calculate: [[() => null, `${host.namespace}.${entry.name}`, entry.description ?? ""]],
        description: [describe(entry, host.namespace)],
      } as unknown as Parameters<Grid["registerFunction"]>[0]);
      service.registerExecutors(new GridFunction(entry.name, host, answers));
    }
  };
  return { grid, open };
}
