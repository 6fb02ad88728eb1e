import {
  stateRuleReliability,
  type StateRulePart,
} from "../../calculation/stateReturn/stateRuleReliability";
import type { TaxYear } from "../../calculation/taxYear";
import { shortDate } from "../../calendar/writtenDate";
import { readOn } from "../../rules/source";
import { citation } from "../cells/answerCell";

/** Says that a text bears no tax year. A later edition can differ, so that the preparer needs the date on which it was read. */
function withoutYear({ source }: StateRulePart): string {
  const date = readOn(source);
  return date === undefined
    ? "text without a tax year"
    : `text read on ${shortDate(date)} shows no tax year`;
}

/**
 * What to confirm before a part of a state's rule is used, in short: the age of its text, a report in its place, a doubt.
 *
 * @param taxYear - Calendar tax year of the return.
 * @param part - The dates or one term of a state's rule.
 * @returns The caveats; none for the state's own text, read for the tax year or a later one.
 */
export function stateCaveats(taxYear: TaxYear, part: StateRulePart): readonly string[] {
  const { age, doubt } = stateRuleReliability(taxYear, part);
  const { confidence } = part.source;
  if (confidence === "memory") return ["unverified"];
  const year = String(part.sourceTaxYear);
  const ages = {
    current: [],
    older: [`text for tax year ${year}`],
    undated: [withoutYear(part)],
  };
  return [
    ...(confidence === "secondary" ? ["secondary source"] : []),
    ...ages[age],
    ...(doubt === undefined ? [] : [doubt]),
  ];
}

/** The citation of a part of a state's rule, with what to confirm before it is used. */
export function stateCitation(taxYear: TaxYear, part: StateRulePart): string {
  const { source } = part;
  if (source.confidence === "memory") return citation(source);
  const caveats = stateCaveats(taxYear, part);
  return caveats.length === 0 ? source.citation : `${source.citation} (${caveats.join("; ")})`;
}
