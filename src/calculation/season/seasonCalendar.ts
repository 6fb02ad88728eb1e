import { addDays, compareDates, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import { clientDates } from "../dueDate/clientDates";
import type { Circumstances, DateMove, DueDate } from "../dueDate/dueDate";
import { installmentDueDate, type InstallmentNumber } from "../dueDate/installmentDueDate";
import type { ReturnDateRules } from "../dueDate/returnDueDate";
import type { FilerType } from "../filerType";
import { yearAfter, type TaxYear } from "../taxYear";

/** A date of the client's season. */
export interface SeasonDate {
  readonly what: string;
  readonly day: CalendarDate;
  /** The day the law names, and the steps by which it moved; empty where it stands. */
  readonly moves: readonly DateMove[];
  readonly source: Source;
}

const ESTIMATES: readonly (readonly [InstallmentNumber, string])[] = [
  [1, "First estimate of the new year"],
  [2, "Second estimate of the new year"],
  [3, "Third estimate of the new year"],
  [4, "Fourth estimate of the new year"],
];

/**
 * Every date of a client's season, in order: paying, asking, filing, the new year's estimates and what else hangs on them.
 *
 * @param taxYear - Calendar or fiscal tax year of the return.
 * @param filerType - Who files.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Due dates, installments, holidays, postponements, companion dates.
 * @returns The dates, rising by day. Estimates of a year whose dates are not held yet are left out.
 * @throws NotInTableError for a tax year whose dates are not held.
 */
export function seasonCalendar(
  taxYear: TaxYear,
  filerType: FilerType,
  circumstances: Circumstances,
  rules: ReturnDateRules & Pick<Rulebook, "installments" | "companionDates" | "failureToFile">
): readonly SeasonDate[] {
  const { payment, regular, extended } = clientDates(taxYear, filerType, circumstances, rules);
  const from = (what: string, { lastDay, moves, source }: DueDate): SeasonDate => ({
    what,
    day: lastDay,
    moves,
    source,
  });
  const followed = {
    payment,
    "regular return": regular,
    "extended return": extended,
  } satisfies Record<Rulebook["companionDates"]["rows"][number]["follows"], DueDate>;

  const newYear = yearAfter(taxYear);
  const newYearHeld = newYear.lastDay <= rules.installments.knownThrough;
  const estimates = newYearHeld
    ? ESTIMATES.map(([number, what]) =>
        from(what, installmentDueDate(newYear, number, circumstances.postponement, rules))
      )
    : [];
  const { figures, source } = entryOn(rules.failureToFile, regular.countedFrom);
  const lastBeforeMinimum = addDays(extended.countedFrom, figures.minimumAfterDays.toNumber());
  const dates: SeasonDate[] = [
    from("Pay the tax: interest runs from here", payment),
    from("File, or ask for the extension", regular),
    ...estimates,
    from("File with the extension", extended),
    {
      what: "Last day before the minimum addition for a late extended return",
      day: lastBeforeMinimum,
      moves: [],
      source,
    },
    ...rules.companionDates.rows.map(({ what, follows, source: law }) => ({
      ...from(what, followed[follows]),
      source: law,
    })),
  ];
  return dates.sort((one, other) => compareDates(one.day, other.day));
}
