import { catalog } from "../../functions/catalog";
import { version } from "../../rules/version";
import type { BlankHabit } from "./blankCheck";
import type { HostState } from "../hostAnswer";

/** The requirement sets that decide what the add-in can do. */
const SETS = ["ExcelApi", "CustomFunctionsRuntime", "SharedRuntime", "AddinCommands"];
const MOST_MINOR = 40;

/** What is known of Excel; `undefined` where Excel does not say it. */
export interface HostFacts {
  readonly host?: string | undefined;
  readonly platform?: string | undefined;
  readonly build?: string | undefined;
  /** Such as ExcelApi 1.20. */
  readonly sets: readonly string[];
  /** The addresses of Microsoft's scripts in the page. */
  readonly scripts: readonly string[];
  readonly functions?: number | undefined;
}

/** What the page notes for whoever helps with a problem. It never has the content of a cell. */
export interface Diagnosis {
  noteState(state: HostState): void;
  noteBlanks(habit: BlankHabit): void;
  noteError(thrown: unknown): void;
  /** The lines to send. */
  text(): string;
}

/**
 * The highest version of each requirement set.
 *
 * @param isSupported - Asks the host.
 */
export function highestSets(
  isSupported: (name: string, minimum: string) => boolean
): readonly string[] {
  return SETS.map((name) => {
    let minor = 0;
    while (minor < MOST_MINOR && isSupported(name, `1.${String(minor + 1)}`)) minor++;
    return `${name} ${minor === 0 ? "none" : `1.${String(minor)}`}`;
  });
}

function member(holder: unknown, name: string): string {
  if (typeof holder !== "object" || holder === null || !(name in holder)) return "";
  const value = (holder as Readonly<Record<string, unknown>>)[name];
  return typeof value === "string" ? value : "";
}

/** The name of an error, its code and the call that failed. Its message could have the content of a cell. */
export function errorKind(thrown: unknown): string {
  const debugInfo = (thrown as { readonly debugInfo?: unknown } | null | undefined)?.debugInfo;
  const parts = [
    member(thrown, "name"),
    member(thrown, "code"),
    member(debugInfo, "errorLocation"),
  ];
  return parts.filter(Boolean).join(", ") || "unknown";
}

/**
 * A diagnosis to which findings are noted while the page is open.
 *
 * @param facts - Reads what is known of Excel, when the text is asked for.
 */
export function newDiagnosis(facts: () => HostFacts): Diagnosis {
  let state: HostState = "waiting";
  let blanks = "not checked";
  let lastError = "none";
  return {
    noteState: (given) => {
      state = given;
    },
    noteBlanks: (habit) => {
      blanks = habit === undefined ? "not known" : `sent as ${habit}`;
    },
    noteError: (thrown) => {
      lastError = errorKind(thrown);
    },
    text: () => {
      const { host, platform, build, sets, scripts, functions } = facts();
      const known = functions === undefined ? "not known" : String(functions);
      return [
        `Extension Season ${version}`,
        `Page: ${state}`,
        `Host: ${host ?? "none"}, ${platform ?? "platform not known"}, build ${build ?? "not known"}`,
        `Requirement sets: ${sets.join(", ") || "none"}`,
        `Scripts of Microsoft: ${scripts.join(" ") || "none"}`,
        `Functions registered: ${known} of ${String(Object.keys(catalog).length)}`,
        `Blank cells: ${blanks}`,
        `Last error: ${lastError}`,
      ].join("\n");
    },
  };
}
