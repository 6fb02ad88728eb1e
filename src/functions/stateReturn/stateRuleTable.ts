import type { StateExtensionGranted } from "../../calculation/stateReturn/stateExtensionGranted";
import type { StateRule } from "../../calculation/stateReturn/stateRule";
import { BLANK, citation, type AnswerCell, type AnswerTable } from "../cells/answerCell";

const HEADINGS = ["Item", "Date", "Text", "Source"];

const AGES = {
  current: "read for this tax year or a later one",
  older: "read for an earlier tax year; check the state's current text",
  undated: "the text has no year; check the state's current text",
} satisfies Record<StateRule["age"], string>;

const IN_THIS_CASE: Readonly<Record<StateExtensionGranted, string>> = {
  granted: "granted",
  "not granted": "not granted; the regular due date applies",
  "percent paid unknown": "unknown: enter the percent of state tax paid by the due date",
};

const MOVED = "moved from weekends only";

/**
 * The rule of a state as a table: one row for each point that the state has.
 *
 * @param asked - The rule.
 * @param dates - Regular and extended due date, as cells.
 * @param granted - Whether the extension is granted in this case.
 */
export function stateRuleTable(
  { rule, age }: StateRule,
  dates: { readonly due: AnswerCell; readonly extended: AnswerCell },
  granted: StateExtensionGranted
): AnswerTable {
  const source = citation(rule.source);
  const texts = (item: string, text: string | undefined): AnswerTable =>
    text === undefined ? [] : [[item, BLANK, text, source]];
  if (rule.grant === "no return")
    return [
      HEADINGS,
      ["Extension", BLANK, `${rule.name}: no return to extend`, source],
      ...texts("Condition", rule.condition),
    ];
  const isUnknown = granted === "percent paid unknown";
  const dueInThisCase = granted === "granted" ? dates.extended : dates.due;
  const year = rule.sourceTaxYear === undefined ? "none" : String(rule.sourceTaxYear);
  return [
    HEADINGS,
    ["Extension", BLANK, `${rule.name}: ${rule.grant}`, source],
    ["Regular due date", dates.due, MOVED, source],
    ["Extended due date", dates.extended, MOVED, source],
    ["In this case", isUnknown ? BLANK : dueInThisCase, IN_THIS_CASE[granted], source],
    ...texts("Condition", rule.condition),
    ...texts("Request form", rule.requestForm ?? "none"),
    ...texts("Payment form", rule.paymentForm),
    ...texts("Penalties", rule.additions),
    ...texts("Interest", rule.interest),
    ...texts("Note", rule.note),
    ["Tax year of the text", BLANK, `${year}; ${AGES[age]}`, source],
  ];
}
