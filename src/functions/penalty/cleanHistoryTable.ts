import { yearOf } from "../../calendar/calendarDate";
import type { CleanHistory } from "../../calculation/penalty/cleanHistory";
import type { HistoryFinding, HistoryYear } from "../../calculation/penalty/historyYears";
import { isFiscalYear, type TaxYear } from "../../calculation/taxYear";
import type { Source } from "../../rules/source";
import { BLANK, citation, dateCell, type AnswerCell, type AnswerTable } from "../cells/answerCell";

const HEADINGS = ["Item", "Tax year", "Result", "Reason", "Source"];

const REASONS: Readonly<Record<HistoryFinding, string>> = {
  "no penalty": "No penalty entered",
  "unreversed penalty":
    "The penalty was not reversed. A small one may be disregarded, but the amount is not public",
  "estimated tax penalty": "The estimated tax penalty does not count",
  "reversed penalty": "The penalty was reversed in full",
  "clean-history relief": "The client had relief for a clean history in this year",
  "late and takes the relief": "Relief covers one year: the earliest late year takes it",
  "late as well": "The return of this year was late as well",
  "late in a later year": "A later year does not count",
  "before the years looked at": "The year is before the look-back years",
};

/** A calendar year by its number, a fiscal year by its last date. */
const yearCell = (taxYear: TaxYear): AnswerCell =>
  isFiscalYear(taxYear) ? dateCell(taxYear.lastDay) : yearOf(taxYear.lastDay);

function conclusion({ isLikely, years }: CleanHistory): string {
  if (isLikely) return "No year counts against relief. Relief is likely, but not certain";
  return years.some(({ finding, counts }) => counts && finding === "late and takes the relief")
    ? "An earlier late year takes the relief"
    : "A year counts against relief. The IRS may deny it";
}

/** Whether relief for a clean history is likely: headings, the result, how to get the relief, then one row per year. */
export function cleanHistoryTable(
  taxYear: TaxYear,
  history: CleanHistory,
  ofYears: Source
): AnswerTable {
  const { isLikely, rule, years } = history;
  const source = citation(rule.source);
  const year = yearCell(taxYear);
  const yearRow = ({ taxYear: other, isLookedAt, finding, counts }: HistoryYear): AnswerCell[] => [
    isLookedAt ? "Look-back year" : "Other year",
    yearCell(other),
    counts ? "counts" : "does not count",
    REASONS[finding],
    citation(ofYears),
  ];
  return [
    HEADINGS,
    ["Relief", year, isLikely ? "likely" : "not likely", conclusion(history), citation(ofYears)],
    ["Name of the relief", year, BLANK, rule.name, source],
    ["How to get it", year, BLANK, rule.how, source],
    ["Confirm first", year, BLANK, rule.confirm, source],
    ...years.map(yearRow),
  ];
}
