import { shortDate } from "../../calendar/writtenDate";
import { readDate } from "../../functions/arguments/date";
import {
  DEFAULT_HEADINGS,
  ROSTER_HEADINGS,
  type RosterHeading,
} from "../../functions/season/rosterColumns";
import { columnLetters } from "../../host/cellAddress";
import { answerLook } from "../answers/answerLook";
import { clientRows } from "./clientRow";
import { suggestedHeading } from "../../functions/season/suggestedHeading";
import { argumentsOf } from "../calculationSheet/calculationFormula";
import { ownColumns } from "../workbook/fillPlan";
import { formulaCall } from "../answers/formulaCall";
import { usersOwn } from "./ownList";
import type { OwnHeading, PaneSettings } from "./rosterAnswers";
import type { FormulaColumn, SelectedList } from "../workbook/workbookHost";

/** The answers that can be written beside a list: its own column has the names. */
export const ANSWERS: readonly RosterHeading[] = ROSTER_HEADINGS.filter((one) => one !== "Client");
/** The answers that are chosen at first. */
export const USUAL_ANSWERS: readonly RosterHeading[] = DEFAULT_HEADINGS.filter(
  (one) => one !== "Client"
);

const CALL = "=EXT.ROSTERROWS(";
const LEAST_WIDTH = 12;
const MOST_WIDTH = 30;
/** A client for whom every answer has its number format. */
const EXAMPLE = `{"Client","Total tax","Payments","State","First installment";"A",20000,15000,"IL",100}`;

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** The number format of an answer, and the width of its column in characters. */
export function lookOf(heading: RosterHeading): {
  readonly format: string;
  readonly width: number;
} {
  const { formats, widths } = answerLook(
    `=EXT.ROSTER(${EXAMPLE},2025,"4/10/2026",,${quoted(heading)})`
  );
  const format = formats[1]?.[0] ?? "";
  const width = Math.max(LEAST_WIDTH, Math.min(widths[0] ?? 0, MOST_WIDTH));
  return { format, width: format === "" ? width : LEAST_WIDTH };
}

/** Settings and headings as arguments behind the row of a formula. */
function sharedArguments(
  { taxYear, asOf, assumedRate }: PaneSettings,
  heading: RosterHeading,
  own: readonly OwnHeading[]
): string {
  const rate = assumedRate.trim();
  const rows = own.map(([mine, means]) => `${quoted(mine)},${quoted(means)}`);
  return [
    String(taxYear),
    quoted(shortDate(asOf)),
    rate === "" ? "" : quoted(rate),
    quoted(heading),
    ...(rows.length === 0 ? [] : [`{${rows.join(";")}}`]),
  ].join(",");
}

/** The heading over an answer: that of the suggested payments says why they may differ from the balance due. */
function headingOver(
  heading: RosterHeading,
  list: SelectedList,
  settings: PaneSettings,
  own: readonly OwnHeading[]
): string {
  if (heading !== "Suggested payment") return heading;
  const clients = clientRows(usersOwn(list), settings.taxYear, own);
  return suggestedHeading(
    heading,
    clients.flatMap((client) => (client ? [client.row] : []))
  );
}

/**
 * The columns of formulas that give the chosen answers for each row of a list. Each formula refers to the headings and to its own row,
 * so that an edit recalculates only that row.
 *
 * @param list - The list as the host gives it.
 * @param settings - What applies to every client.
 * @param answers - The headings of the answers.
 * @param own - The meanings that the user has chosen for headings.
 */
export function answerColumnsOf(
  list: SelectedList,
  settings: PaneSettings,
  answers: readonly RosterHeading[],
  own: readonly OwnHeading[]
): readonly FormulaColumn[] {
  const { headingRow, firstColumn, headings, rows } = usersOwn(list);
  const [from, to] = [firstColumn, firstColumn + headings.length - 1].map(columnLetters);
  const first = `$${from ?? ""}$${headingRow}:$${to ?? ""}$${headingRow}`;
  return answers.map((heading) => {
    const shared = sharedArguments(settings, heading, own);
    const formulas = rows.map((_row, index) => {
      const row = headingRow + 1 + index;
      return `${CALL}${first},$${from ?? ""}${row}:$${to ?? ""}${row},${shared})`;
    });
    return { heading: headingOver(heading, list, settings, own), formulas, ...lookOf(heading) };
  });
}

/** What the formulas that were written before say. */
export interface WrittenBefore {
  readonly settings: PaneSettings;
  readonly answers: readonly RosterHeading[];
  readonly own: readonly OwnHeading[];
}

const valueOf = (argument: string | undefined): unknown =>
  argument === undefined || argument.trim() === ""
    ? undefined
    : formulaCall(`=EXT.X(${argument})`).values[0];

/** Settings, answers and meanings from the formulas that this tool wrote before; `undefined` if there are none, or they were changed. */
export function writtenBefore(list: SelectedList): WrittenBefore | undefined {
  const found = ownColumns(list).flatMap((index) => {
    const formula = list.formulas
      .map((row) => row[index] ?? "")
      .find((one) => one.startsWith(CALL));
    return formula === undefined ? [] : [argumentsOf(formula.slice(CALL.length)).parts];
  });
  const [parts] = found;
  if (!parts) return undefined;
  try {
    const [taxYear, asOf, rate, , own] = parts.slice(2).map(valueOf);
    const date = readDate(typeof asOf === "string" ? asOf : null);
    if (typeof taxYear !== "number" || date === undefined) return undefined;
    const assumedRate = typeof rate === "string" ? rate : "";
    const headings = found.map((one) => valueOf(one[5]));
    return {
      settings: { taxYear, asOf: date, assumedRate },
      answers: ANSWERS.filter((heading) => headings.includes(heading)),
      own: (own ?? []) as readonly OwnHeading[],
    };
  } catch (thrown) {
    // A formula that the user has changed, such as one with a reference for the date.
    if (thrown instanceof SyntaxError) return undefined;
    throw thrown;
  }
}
