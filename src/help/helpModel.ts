import { functionGuide } from "../addin/functionGuide";
import { version } from "../rules/version";
import { rulebook } from "../rules/rulebook";
import { ruleTables, summarize, type RuleTableSummary } from "../rules/ruleTables";
import type { FunctionMetadata } from "../host/functionMetadata";
import type { StandInHost } from "../host/standInHost";
import { kindOf, type KindName } from "./argumentKinds";
import { examplesOf, type Example } from "./example";
import type { FunctionDoc } from "./functionDocs";
import { refusalsOf, type Refusal } from "./refusals";
import { tablesReached } from "./tablesReached";

/** An argument as its page explains it. */
export interface HelpArgument {
  readonly name: string;
  readonly meaning: string;
  readonly optional: boolean;
  /** Whether the host hands it over as a block of cells. */
  readonly isRange: boolean;
  readonly kind: KindName | undefined;
}

/** What kind of answer a function gives: one for each row of its arguments, a table, or one cell. */
export type AnswerShape = "row" | "table" | "cell";

/** All that the page of a function says. */
export interface FunctionHelp {
  readonly name: string;
  readonly task: string;
  readonly purpose: string;
  readonly arguments: readonly HelpArgument[];
  readonly shape: AnswerShape;
  readonly answer: string;
  readonly refusals: readonly Refusal[];
  readonly examples: readonly Example[];
  readonly law: readonly string[];
  readonly tables: readonly RuleTableSummary[];
  /** Whether it looks up any table by name. */
  readonly everyTable: boolean;
}

/** All that the pages say. */
export interface Help {
  readonly version: string;
  readonly functions: readonly FunctionHelp[];
  readonly tables: readonly RuleTableSummary[];
}

function shapeOf({ parameters, result }: FunctionMetadata): AnswerShape {
  if (result.dimensionality !== "matrix") return "cell";
  const areRanges = parameters.map(({ dimensionality }) => dimensionality === "matrix");
  return areRanges.length > 0 && areRanges.every(Boolean) ? "row" : "table";
}

function helpOf(told: FunctionMetadata, doc: FunctionDoc, host: StandInHost): FunctionHelp {
  const { keys, everyTable } = tablesReached(doc.file, doc.declaredAs);
  return {
    name: told.name,
    task: functionGuide.find(({ name }) => name === told.name)?.task ?? "More functions",
    purpose: told.description ?? "",
    arguments: told.parameters.map(({ name, description, optional, dimensionality }) => ({
      name,
      meaning: description ?? "",
      optional: optional === true,
      isRange: dimensionality === "matrix",
      kind: kindOf(told.name, name),
    })),
    shape: shapeOf(told),
    answer: doc.returns,
    refusals: refusalsOf(doc.throws),
    examples: examplesOf(doc.example, host),
    law: doc.see.split(/;\s+/).filter(Boolean),
    tables: Object.entries(rulebook)
      .filter(([key]) => keys.has(key))
      .map(([, table]) => summarize(table)),
    everyTable,
  };
}

/**
 * Gathers what the pages say of every function the host is told of, in the order of the guide.
 *
 * @param host - The built add-in in a host, which answers the examples.
 * @param docs - The comments of the functions, by id.
 * @returns The whole of the help.
 */
export function gatherHelp(host: StandInHost, docs: ReadonlyMap<string, FunctionDoc>): Help {
  const order = functionGuide.map(({ name }) => name);
  const place = (name: string): number =>
    order.includes(name) ? order.indexOf(name) : order.length;
  const functions = [...host.functions.values()]
    .flatMap((told) => {
      const doc = docs.get(told.id);
      return doc ? [helpOf(told, doc, host)] : [];
    })
    .toSorted((one, other) => place(one.name) - place(other.name));
  return { version, functions, tables: [...ruleTables.values()].map(summarize) };
}
