import type { StateRule } from "../calculation/stateReturn/stateRule";
import { citation, EMPTY, type AnswerCell, type AnswerTable } from "./results";

const AGES = {
  current: "read for this tax year or a later one",
  older: "read for an earlier tax year: check the state's current text",
  undated: "the text read bears no year: check the state's current text",
} satisfies Record<StateRule["age"], string>;

/**
 * A state's rule as cells: a row a point of it, those that the state has.
 *
 * @param asked - The rule and its age.
 * @param days - Due and extended day as cells.
 * @param days.due - The regular day.
 * @param days.extended - The extended day.
 * @param granted - Whether the state extends in the client's case; nothing where that stays open.
 * @returns Rows of what, day, text, source.
 */
export function stateRuleTable(
  asked: StateRule,
  days: { readonly due: AnswerCell; readonly extended: AnswerCell },
  granted: boolean | undefined
): AnswerTable {
  const { rule, age } = asked;
  const source = citation(rule.source);
  const texts = (what: string, text: string | undefined): AnswerTable =>
    text === undefined ? [] : [[what, EMPTY, text, source]];
  if (rule.grant === "no return")
    return [
      ["Extension", EMPTY, `${rule.name}: no return to extend`, source],
      ...texts("Condition", rule.condition),
    ];
  const inThisCase =
    granted === undefined
      ? "open: give the share of the state tax paid by the due date"
      : granted
        ? "granted"
        : "not granted: the regular day stands";
  const openDay = granted ? days.extended : days.due;
  return [
    ["Extension", EMPTY, `${rule.name}: ${rule.grant}`, source],
    ["Regular due date", days.due, "moved off a weekend only", source],
    ["Extended due date", days.extended, "moved off a weekend only", source],
    ["In this case", granted === undefined ? EMPTY : openDay, inThisCase, source],
    ...texts("Condition", rule.condition),
    ...texts("Form to ask", rule.requestForm ?? "none"),
    ...texts("Form to pay", rule.paymentForm),
    ...texts("Additions", rule.additions),
    ...texts("Interest", rule.interest),
    ...texts("Note", rule.note),
    [
      "Tax year of the text read",
      EMPTY,
      `${rule.sourceTaxYear === undefined ? "none" : String(rule.sourceTaxYear)}; ${AGES[age]}`,
      source,
    ],
  ];
}
