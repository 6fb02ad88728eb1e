import type { KindHelp } from "../functions/arguments/argumentKind";
import { TASKS, type CatalogFunction } from "../functions/catalog";
import type { FunctionForm } from "../functions/worksheetFunction";
import type { FunctionMetadata } from "../host/functionMetadata";
import type { StandInHost } from "../host/standInHost";
import { version } from "../rules/version";
import { rulebook } from "../rules/rulebook";
import { ruleTables, summarize, type RuleTableSummary } from "../rules/ruleTables";
import { answeredExample, type AnsweredExample } from "./answeredExample";

/** An argument as the help explains it. */
export interface HelpArgument {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
  /** Whether it takes a range of cells as a whole. */
  readonly isRange: boolean;
  readonly kind: KindHelp;
}

/** Everything the help says of a function. */
export interface FunctionHelp {
  readonly name: string;
  readonly task: string;
  readonly purpose: string;
  readonly arguments: readonly HelpArgument[];
  readonly form: FunctionForm;
  readonly note: string | undefined;
  readonly examples: readonly AnsweredExample[];
  readonly law: readonly string[];
  /** The rule tables that an answer may depend on. */
  readonly tables: readonly RuleTableSummary[];
}

/** Everything the help says. */
export interface Help {
  readonly version: string;
  /** Every function, in the order of the tasks. */
  readonly functions: readonly FunctionHelp[];
  readonly tables: readonly RuleTableSummary[];
}

function functionHelp(
  task: string,
  definition: CatalogFunction,
  metadata: FunctionMetadata,
  host: StandInHost
): FunctionHelp {
  const kinds = Object.values(definition.arguments);
  return {
    name: metadata.name,
    task,
    purpose: metadata.description ?? "",
    arguments: metadata.parameters.flatMap(({ name, description = "", optional }, index) => {
      const kind = kinds[index];
      if (!kind) return [];
      return [
        { name, description, optional: optional === true, isRange: kind.takes === "range", kind },
      ];
    }),
    form: definition.form,
    note: definition.note,
    examples: definition.examples.map((example) => answeredExample(example, host)),
    law: definition.law,
    tables: [...new Set(definition.tables)].map((key) => summarize(rulebook[key])),
  };
}

/**
 * Gathers the help of every function in the catalog.
 *
 * @param host - A host with the built add-in, which answers the examples.
 * @returns The help, in the order of the tasks.
 */
export function gatherHelp(host: StandInHost): Help {
  const functions = TASKS.flatMap(({ title, functions: ofTask }) =>
    Object.entries(ofTask).map(([name, definition]) => {
      const metadata = host.functions.get(name);
      if (!metadata) throw new RangeError(`functions.json does not list ${name}.`);
      return functionHelp(title, definition, metadata, host);
    })
  );
  return { version, functions, tables: [...ruleTables().values()].map(summarize) };
}

/** The kinds of these arguments, each once. */
export function kindsOf(given: readonly HelpArgument[]): readonly KindHelp[] {
  return [...new Map(given.map(({ kind }) => [kind.id, kind])).values()];
}
