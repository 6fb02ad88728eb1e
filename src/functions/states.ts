import { stateDueDate } from "../calculation/stateReturn/stateDueDate";
import {
  stateExtensionGranted,
  type StateExtensionGranted,
} from "../calculation/stateReturn/stateExtensionGranted";
import { stateRule as ruleOf, type StateRule } from "../calculation/stateReturn/stateRule";
import { isFiscalYear, type TaxYear } from "../calculation/taxYear";
import { InputError } from "../inputError";
import { NotInTableError } from "../rules/notInTableError";
import { rulebook } from "../rules/rulebook";
import { taxYear as readTaxYear } from "./dayArguments";
import { optionalShare } from "./moneyArguments";
import { EMPTY, markedDayCell, type AnswerCell, type AnswerTable } from "./results";
import { answerRows, answerTable, singles } from "./rows";
import { stateRuleTable } from "./stateRuleTable";
import { state as readState, yesNo } from "./wordArguments";

interface StateCells {
  readonly taxYear: unknown;
  readonly state: unknown;
  readonly allowUnverified: unknown;
}

interface SituationCells extends StateCells {
  readonly federalExtension: unknown;
  readonly percentPaid: unknown;
  readonly stateRequest: unknown;
}

function askedFor(cells: StateCells): StateRule & { readonly taxYear: TaxYear } {
  const taxYear = readTaxYear("taxYear", cells.taxYear);
  if (isFiscalYear(taxYear))
    throw new InputError(
      "taxYear",
      `${taxYear.lastDay} ends a fiscal year; the states' rules are held for calendar years`
    );
  const state = readState("state", cells.state);
  if (state === undefined) throw new InputError("state", "is empty; give a postal code such as NY");
  const allowUnverified = yesNo("allowUnverified", cells.allowUnverified);
  const found = ruleOf(taxYear, state, rulebook);
  if (found.doubt !== undefined && !allowUnverified)
    throw new NotInTableError(
      rulebook.stateExtensions,
      `${found.rule.name} is not shown because ${found.doubt}. Check the state's current instructions, or set allowUnverified to yes.`
    );
  return { taxYear, ...found };
}

function isGranted(cells: SituationCells, { rule }: StateRule): StateExtensionGranted {
  return stateExtensionGranted(rule, {
    federalExtension: yesNo("federalExtension", cells.federalExtension),
    percentPaid: optionalShare("percentPaid", cells.percentPaid),
    stateRequest: yesNo("stateRequest", cells.stateRequest),
  });
}

function dayOf(
  { taxYear, rule, age }: StateRule & { readonly taxYear: TaxYear },
  monthAndDay: string | undefined
): AnswerCell {
  if (monthAndDay === undefined) return "no return";
  const mark =
    age === "older"
      ? `rule of ${String(rule.sourceTaxYear)}`
      : age === "undated"
        ? "undated rule"
        : "";
  return markedDayCell(stateDueDate(taxYear, monthAndDay), mark);
}

/**
 * Due date of the state's individual income tax return, moved off a weekend; marked with the tax year of the rule where that is older, if the host shows formats.
 *
 * @customfunction STATEDUE
 * @param taxYear Tax year such as 2025; one cell or a column.
 * @param state Postal code of the state.
 * @param [allowUnverified] Yes to answer from memory, or where reports disagree; blank refuses such states.
 * @returns {any[][]} The day, as a worksheet date; no return where the state has no broad income tax.
 * @throws `#VALUE!` for an argument that cannot be read or a fiscal year; `#N/A` for a state whose rule is not held or is refused.
 * @see The state's own text, named by STATERULE; a move off a weekend is common practice, no source
 * @example =EXT.STATEDUE(2025,"VA") is 2026-05-01
 */
export function stateDue(
  taxYear: unknown[][],
  state: unknown[][],
  allowUnverified?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, state, allowUnverified }, (cells) => {
    const asked = askedFor(cells);
    return dayOf(asked, asked.rule.dueDay);
  });
}

/**
 * Day the state's return is due in the client's situation: the extended day where the state grants one, else the regular one.
 *
 * @customfunction STATEEXTENDED
 * @param taxYear Tax year such as 2025; one cell or a column.
 * @param state Postal code of the state.
 * @param [federalExtension] Yes if the federal request was made in time; blank is no.
 * @param [percentPaid] Share of the state tax paid by the state's due date, such as 90%; needed where the state looks at it.
 * @param [stateRequest] Yes if the state's own request was made in time; blank is no.
 * @param [allowUnverified] Yes to answer from memory, or where reports disagree; blank refuses such states.
 * @returns {any[][]} The day, as a worksheet date; no return where the state has no broad income tax.
 * @throws `#VALUE!` for an argument that cannot be read or is needed, or a fiscal year; `#N/A` for a state whose rule is not held or is refused.
 * @see The state's own text, named by STATERULE; a move off a weekend is common practice, no source
 * @example =EXT.STATEEXTENDED(2025,"NY","yes") is 2026-04-15: the federal request is not taken; =EXT.STATEEXTENDED(2025,"MA",,85%) is 2026-10-15
 */
export function stateExtended(
  taxYear: unknown[][],
  state: unknown[][],
  federalExtension?: unknown[][],
  percentPaid?: unknown[][],
  stateRequest?: unknown[][],
  allowUnverified?: unknown[][]
): unknown[][] {
  const given = { taxYear, state, federalExtension, percentPaid, stateRequest, allowUnverified };
  return answerRows(given, (cells) => {
    const asked = askedFor(cells);
    const { dueDay, extendedDay } = asked.rule;
    const granted = isGranted(cells, asked);
    if (granted === "percent paid unknown") {
      const percent = String(asked.rule.percentPaid?.times(100));
      throw new InputError(
        "percentPaid",
        `is empty; ${asked.rule.name} grants the extension only when ${percent}% of its tax is paid by the due date, give the share paid`
      );
    }
    return dayOf(asked, granted === "granted" ? extendedDay : dueDay);
  });
}

/**
 * How a state extends the time to file: what it grants and on what condition, its days, its forms, and how old the text behind it is. Spills; put it outside tables.
 *
 * @customfunction STATERULE
 * @param taxYear Tax year such as 2025.
 * @param state Postal code of the state.
 * @param [federalExtension] Yes if the federal request was made in time; blank is no.
 * @param [percentPaid] Share of the state tax paid by the state's due date, such as 90%; without it a state that looks at it leaves the client's case open.
 * @param [stateRequest] Yes if the state's own request was made in time; blank is no.
 * @param [allowUnverified] Yes to answer from memory, or where reports disagree; blank refuses such states.
 * @returns {any[][]} A header row, then rows of what, day, text, source.
 * @throws `#VALUE!` for an argument that cannot be read or a fiscal year; `#N/A` for a state whose rule is not held or is refused.
 * @see The state's own text, named in the answer; a move off a weekend is common practice, no source
 * @example =EXT.STATERULE(2025,"NY") says that the state wants its own request, Form IT-370
 */
export function stateRule(
  taxYear: unknown,
  state: unknown,
  federalExtension?: unknown,
  percentPaid?: unknown,
  stateRequest?: unknown,
  allowUnverified?: unknown
): unknown[][] {
  return answerTable(["What", "Day", "Text", "Source"], (): AnswerTable => {
    const cells = singles({
      taxYear,
      state,
      federalExtension,
      percentPaid,
      stateRequest,
      allowUnverified,
    });
    const asked = askedFor(cells);
    const { rule } = asked;
    const outcome = isGranted(cells, asked);
    const granted = outcome === "percent paid unknown" ? undefined : outcome === "granted";
    const { dueDay, extendedDay } = rule;
    const days = {
      due: dueDay === undefined ? EMPTY : dayOf(asked, dueDay),
      extended: extendedDay === undefined ? EMPTY : dayOf(asked, extendedDay),
    };
    return stateRuleTable(asked, days, granted);
  });
}
