import type { ConditionalFormattingRule, Worksheet } from "@cj-tech-master/excelts";
import { STAGES, type Stage } from "../../calculation/season/requestStage";
import type { Severity } from "../../rules/requestWords";

type Signal = "red" | "amber" | "green" | "gray";

/** Each signal has a dark text on a light fill, so that the text can be read in print as well. */
const COLORS: Readonly<Record<Signal, { readonly fill: string; readonly text: string }>> = {
  red: { fill: "FFF8D7DA", text: "FF8B1A22" },
  amber: { fill: "FFFDEBC3", text: "FF6B4A00" },
  green: { fill: "FFD8EFDF", text: "FF14532D" },
  gray: { fill: "FFE6EAE9", text: "FF3F4A48" },
};

const OF_STAGE: Readonly<Record<Stage, Signal>> = {
  "not requested": "amber",
  unconfirmed: "amber",
  rejected: "red",
  extended: "green",
  filed: "gray",
  "past due": "red",
};

const OF_SEVERITY: Readonly<Record<Severity, Signal>> = {
  problem: "red",
  risk: "amber",
  reminder: "gray",
};

const SIGNALS = ["red", "amber", "green", "gray"] as const;

function rule(signal: Signal, condition: string): ConditionalFormattingRule {
  const { fill, text } = COLORS[signal];
  return {
    type: "expression",
    formulae: [condition],
    style: {
      font: { color: { argb: text }, bold: signal === "red" },
      fill: { type: "pattern", pattern: "solid", bgColor: { argb: fill } },
    },
  };
}

/** Colors cells by the word in a cell of their row, such as a status; with a count, only where it is more than 0. */
function colorByWord(
  sheet: Worksheet,
  ref: string,
  { word, count }: { readonly word: string; readonly count?: string },
  signalOf: Readonly<Record<string, Signal>>
): void {
  const rules = SIGNALS.map((signal) => {
    const words = Object.keys(signalOf).filter((name) => signalOf[name] === signal);
    const isOne = `OR(${words.map((name) => `${word}="${name}"`).join(",")})`;
    return words.length === 0
      ? undefined
      : rule(signal, count === undefined ? isOne : `AND(${count}>0,${isOne})`);
  });
  sheet.addConditionalFormatting({ ref, rules: rules.filter((one) => one !== undefined) });
}

/**
 * Colors cells by a status.
 *
 * @param sheet - The sheet.
 * @param ref - The cells.
 * @param word - The cell of the first row with the status, such as $B2.
 * @param count - The cell of the first row with a number of clients, if the color is for a count.
 */
export function colorByStatus(sheet: Worksheet, ref: string, word: string, count?: string): void {
  colorByWord(sheet, ref, count === undefined ? { word } : { word, count }, OF_STAGE);
}

/** Colors cells by the severity of an issue, as `colorByStatus` does by a status. */
export function colorBySeverity(sheet: Worksheet, ref: string, word: string, count?: string): void {
  colorByWord(sheet, ref, count === undefined ? { word } : { word, count }, OF_SEVERITY);
}

/** Colors the deadlines that have passed, which ROSTER writes as "… now (was due …)". */
export function colorPassed(sheet: Worksheet, ref: string, word: string): void {
  const rules = [rule("red", `ISNUMBER(SEARCH("now (",${word}))`)];
  sheet.addConditionalFormatting({ ref, rules });
}

/** The fill of each status in a chart, in the order of the statuses. */
export const STATUS_CHART_COLORS: readonly string[] = STAGES.map(
  (stage) => ({ red: "C0392B", amber: "D9982B", green: "2E8B67", gray: "8A9794" })[OF_STAGE[stage]]
);
