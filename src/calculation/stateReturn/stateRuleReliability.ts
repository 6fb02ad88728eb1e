import { yearOf } from "../../calendar/calendarDate";
import type { Source } from "../../rules/source";
import type { TaxYear } from "../taxYear";

/** Age of a state's text: for the tax year or a later one, for an earlier tax year, or without a tax year. */
export type RuleAge = "current" | "older" | "undated";

/** The dates or one term of a state's rule. */
export interface StateRulePart {
  readonly source: Source;
  /** Tax year of the text that was read; `undefined` if it has none. */
  readonly sourceTaxYear?: number;
  /** Why its sources leave it open, and from which tax year on; without a year for every tax year. */
  readonly unsettled?: { readonly fromTaxYear?: number; readonly because: string };
}

/** How far a part of a state's rule can be relied on. */
export interface RuleReliability {
  readonly age: RuleAge;
  /** Why the part is in doubt, whatever its age; `undefined` if it is not. */
  readonly doubt: string | undefined;
  /** Whether it was read in the state's own text, for the tax year or a later one, and is not in doubt. */
  readonly isConfirmed: boolean;
}

/**
 * How far a part of a state's rule can be relied on for a tax year.
 *
 * The rules come from texts of many years. A part is in doubt if nobody has read the state's text, or if its sources disagree.
 *
 * @param taxYear - Calendar tax year.
 * @param part - The dates or one term of a state's rule.
 * @returns Its age, and the reason for doubt, if any.
 *
 * @example
 * // Idaho's percent to pay, in doubt from tax year 2025: no doubt for 2024
 */
export function stateRuleReliability(taxYear: TaxYear, part: StateRulePart): RuleReliability {
  const { sourceTaxYear, unsettled, source } = part;
  const year = yearOf(taxYear.lastDay);
  const isOpen = unsettled !== undefined && (unsettled.fromTaxYear ?? year) <= year;
  const disagreement = isOpen ? unsettled.because : undefined;
  const doubt = source.confidence === "memory" ? "the rule is unverified" : disagreement;
  const age = ageOf(sourceTaxYear, year);
  const isConfirmed = age === "current" && doubt === undefined && source.confidence === "official";
  return { age, doubt, isConfirmed };
}

function ageOf(sourceTaxYear: number | undefined, year: number): RuleAge {
  if (sourceTaxYear === undefined) return "undated";
  return sourceTaxYear < year ? "older" : "current";
}
