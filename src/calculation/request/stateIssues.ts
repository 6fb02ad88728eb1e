import { yearOf } from "../../calendar/calendarDate";
import { extensionParts } from "../stateReturn/extensionParts";
import { stateExtensionGranted } from "../stateReturn/stateExtensionGranted";
import { stateRuleReliability } from "../stateReturn/stateRuleReliability";
import { stateTerms } from "../stateReturn/stateTerms";
import { isFiscalYear } from "../taxYear";
import type { ClientRequest, Issue, IssueRules } from "./clientRequest";

/**
 * Issues with the state return: the federal extension alone may not extend it, and its rule may need to be confirmed first.
 *
 * The state rules cover calendar years only, so that a fiscal year has none of these issues.
 *
 * @param request - The request; its return is not filed.
 * @param rules - State rules.
 * @returns The issues, in no order. Nothing for a state without a return or without a rule.
 * @see The state's own text, named in rules/state-extensions.json
 */
export function stateIssues(
  { taxYear, circumstances }: ClientRequest,
  rules: Pick<IssueRules, "stateExtensions">
): readonly Issue[] {
  const rule = rules.stateExtensions.rows.find(({ state }) => state === circumstances.state);
  if (!rule || isFiscalYear(taxYear)) return [];
  const { name, dueDay, fromTaxYear = 0 } = rule;
  const unverified: Issue = { check: "state rule unverified", details: name };
  if (yearOf(taxYear.lastDay) < fromTaxYear) return [unverified];
  if (dueDay === undefined) return [];
  const terms = stateTerms(taxYear, rule);
  const granted = stateExtensionGranted(terms, { federalExtension: true, stateRequest: false });
  const conditions = terms.filter(({ by }) => by !== undefined).map(({ text }) => text);
  const isConfirmed = extensionParts(taxYear, rule).every(
    (part) => stateRuleReliability(taxYear, part).isConfirmed
  );
  return [
    ...(granted === "granted"
      ? []
      : [
          {
            check: "state asks for its own request" as const,
            details: `${name}: ${conditions.join("; ")}`,
          },
        ]),
    ...(isConfirmed ? [] : [unverified]),
  ];
}
