import { stateDueDate } from "../../calculation/stateReturn/stateDueDate";
import type { StateExtensionGranted } from "../../calculation/stateReturn/stateExtensionGranted";
import type { StateRulePart } from "../../calculation/stateReturn/stateRuleReliability";
import type { TaxYear } from "../../calculation/taxYear";
import type { StateExtension, StateTerm } from "../../rules/stateTable";
import {
  BLANK,
  cellOrBlank,
  dateCell,
  type AnswerCell,
  type AnswerTable,
} from "../cells/answerCell";
import { stateCitation } from "./stateCaveats";

const HEADINGS = ["Item", "Date", "Text", "Source"];
const MOVED = "moved from weekends only";

/** In which order the terms are shown; terms of one kind stay in the order of the rule. */
const ORDER: readonly StateTerm["effect"][] = [
  "grants the extension",
  "limits the extension",
  "avoids a penalty",
  "electronic due date",
  "out of the country",
  "with the return",
  "request form",
  "payment form",
  "penalty",
  "interest",
  "note",
];

const WAYS: Readonly<Record<NonNullable<StateTerm["by"]>, string>> = {
  automatic: "automatic",
  "federal extension": "with the federal extension",
  "state request": "on the state's own request",
};

const capitalized = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** The ways to the extension in short: "with the federal extension if 90% is paid; on the state's own request". */
function waysOf(terms: readonly StateTerm[]): string {
  return terms
    .flatMap(({ by, percentPaid }) => {
      if (by === undefined) return [];
      const condition = percentPaid ? ` if ${percentPaid.times(100).toString()}% is paid` : "";
      return [WAYS[by] + condition];
    })
    .join("; ");
}

function inThisCase(granted: StateExtensionGranted): string {
  if (granted === "granted") return "granted";
  if (granted === "not granted") return "not granted; the regular due date applies";
  return "unknown: enter the percent of state tax paid by the due date";
}

/**
 * The rule of a state as a table: its dates, and one row for each term.
 *
 * @param taxYear - Calendar tax year.
 * @param rule - The state's rule.
 * @param terms - Its terms for the tax year.
 * @param granted - Whether the extension is granted in this case.
 */
export function stateRuleTable(
  taxYear: TaxYear,
  rule: StateExtension,
  terms: readonly StateTerm[],
  granted: StateExtensionGranted
): AnswerTable {
  const { name, dueDay, extendedDay } = rule;
  const sourceOf = (part: StateRulePart): string => stateCitation(taxYear, part);
  const onDay = (day: string | undefined): AnswerCell =>
    cellOrBlank(day, (given) => dateCell(stateDueDate(taxYear, given)));
  const ofTerms = ORDER.flatMap((effect) =>
    terms
      .filter((term) => term.effect === effect)
      .map((term) => [capitalized(effect), onDay(term.day), term.text, sourceOf(term)])
  );
  const source = sourceOf(rule);
  if (dueDay === undefined)
    return [HEADINGS, ["Extension", BLANK, `${name}: no return to extend`, source], ...ofTerms];
  const hasForm = terms.some(({ effect }) => effect === "request form");
  const decided = granted === "granted" ? extendedDay : dueDay;
  return [
    HEADINGS,
    ["Extension", BLANK, `${name}: ${waysOf(terms)}`, source],
    ["Regular due date", onDay(dueDay), MOVED, source],
    ["Extended due date", onDay(extendedDay), MOVED, source],
    [
      "In this case",
      typeof granted === "object" ? BLANK : onDay(decided),
      inThisCase(granted),
      source,
    ],
    ...ofTerms,
    ...(hasForm ? [] : [["Request form", BLANK, "none", source]]),
  ];
}
