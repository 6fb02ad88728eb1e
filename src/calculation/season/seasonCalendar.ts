import { addDays, compareDates, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import { clientDates } from "../dueDate/clientDates";
import type { Circumstances, DateMove, DueDate } from "../dueDate/dueDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import { installmentNumbers } from "../dueDate/installmentNumbers";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { FilerType } from "../filerType";
import { yearAfter, type TaxYear } from "../taxYear";

/** A deadline of a client. */
export interface SeasonDate {
  readonly label: string;
  readonly date: CalendarDate;
  /** Moves from the date the law names; empty if it did not move. */
  readonly moves: readonly DateMove[];
  readonly source: Source;
}

const ORDINALS = { 1: "First", 2: "Second", 3: "Third", 4: "Fourth" } as const;

/**
 * Every deadline of a client, in order: to pay, to request the extension, to file, the new year's estimated tax installments, and
 * the dates that follow them.
 *
 * @param taxYear - Calendar or fiscal tax year of the return.
 * @param filerType - Filer type.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Due dates, installments, holidays, postponements, companion dates.
 * @returns The deadlines in order of dates, without the installments of a year that the tables do not cover.
 * @throws NotInTableError for a tax year that the tables do not cover.
 */
export function seasonCalendar(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules & Pick<Rulebook, "installments" | "companionDates" | "failureToFile">
): readonly SeasonDate[] {
  const { payment, regular, extended } = clientDates(taxYear, filerType, circumstances, rules);
  const from = (label: string, { lastDay, moves, source }: DueDate): SeasonDate => ({
    label,
    date: lastDay,
    moves,
    source,
  });
  const followed = {
    payment,
    "regular return": regular,
    "extended return": extended,
  } satisfies Record<Rulebook["companionDates"]["rows"][number]["follows"], DueDate>;

  const newYear = yearAfter(taxYear);
  const isNewYearCovered = newYear.lastDay <= rules.installments.knownThrough;
  const newYearName = String(yearOf(newYear.firstDay));
  const installments = isNewYearCovered
    ? installmentNumbers(filerType).map((number) =>
        from(
          `${ORDINALS[number]} ${newYearName} estimated tax installment`,
          installmentDueDate(newYear, filerType, number, circumstances.postponement, rules)
        )
      )
    : [];
  const { figures, source } = entryOn(rules.failureToFile, regular.countedFrom);
  const lastBeforeMinimum = addDays(extended.countedFrom, figures.minimumAfterDays.toNumber());
  const dates: SeasonDate[] = [
    from("Pay the tax (interest starts after this date)", payment),
    from("File or request an extension", regular),
    ...installments,
    from("File the extended return", extended),
    {
      label: "Last day before the minimum failure-to-file penalty",
      date: lastBeforeMinimum,
      moves: [],
      source,
    },
    ...rules.companionDates.rows.map(({ what, follows, source: law }) => ({
      ...from(what, followed[follows]),
      source: law,
    })),
  ];
  return dates.sort((one, other) => compareDates(one.date, other.date));
}
