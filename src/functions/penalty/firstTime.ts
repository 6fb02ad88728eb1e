import { cleanHistory } from "../../calculation/penalty/cleanHistory";
import { lateYears, penaltyYears } from "../arguments/penaltyYears";
import { taxYear } from "../arguments/taxYear";
import { tableFunction } from "../worksheetFunction";
import { cleanHistoryTable } from "./cleanHistoryTable";

const FIRSTTIME = tableFunction({
  arguments: { taxYear, penaltyYears, otherLateYears: lateYears },
  tables: ["cleanHistoryRelief"],
  law: ["Internal Revenue Manual, section 20.1.1.3.3.2.1"],
  examples: [
    { formula: "=EXT.FIRSTTIME(2025,2021)", answer: "likely" },
    {
      formula: '=EXT.FIRSTTIME(2025,{2023,"estimated tax penalty";2024,"penalty"})',
      answer: "not likely",
      remark: "the penalty of 2024 counts, the estimated tax penalty does not",
    },
  ],
  note: "Relief is never certain. It covers the failure-to-file and failure-to-pay penalties of one income tax return and the interest on them. It does not cover the estimated tax penalty or interest on the tax. The IRS may disregard a small penalty, but the amount is not public, so every penalty counts here. Of several late years, the earliest that qualifies takes first-time abatement. The relief is used up even if the client also had reasonable cause. It does not cover a gift tax return (Form 709) or Form 3520. CHARGELINES shows the amounts.",
  calculate: (given, rules) =>
    cleanHistoryTable(
      given.taxYear,
      cleanHistory({ ...given, penalties: given.penaltyYears }, rules),
      rules.cleanHistoryRelief.source
    ),
});

/**
 * Table that shows, year by year, whether first-time abatement or the automatic exemption is likely to remove late penalties.
 *
 * @customfunction FIRSTTIME
 * @param taxYear Tax year of the late return, such as 2025, or the last date of a fiscal year.
 * @param penaltyYears Earlier tax years with a penalty, and in a second column, if you like, the kind of penalty. Blank is none.
 * @param [otherLateYears] Other late tax years for which you want relief. The earliest one takes it. Blank is none.
 * @returns {any[][]} A row of headings, the result, then one row per year. Fills several cells; not for use inside an Excel table.
 */
export function firstTime(
  taxYear: unknown,
  penaltyYears: unknown[][],
  otherLateYears?: unknown[][]
): unknown[][];
export function firstTime(...cells: unknown[]): unknown[][] {
  return FIRSTTIME.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const firstTimeFunctions = { FIRSTTIME };
