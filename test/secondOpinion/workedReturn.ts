import { failureToFile, failureToPayMonths, monthByMonth, outcomeOf } from "./monthByMonth";
import type { FilingAddition, LateReturn, Outcome, Parts, PayMonth } from "./monthByMonth";
import { NoFigure } from "./noFigure";
import { statuteDates, type ActDate, type StatuteDates } from "./statuteDates";

/** A return with the intermediate results of the independent calculation. */
export interface Worked {
  readonly given: LateReturn;
  readonly dates: StatuteDates;
  /** The due date that applies to the filing. */
  readonly due: ActDate;
  readonly outcome: Outcome;
  readonly months: readonly PayMonth[];
  /** Undefined where the minimum penalty is not published. */
  readonly filed: FilingAddition | undefined;
  /** Undefined where a figure is not published. */
  readonly parts: Parts | undefined;
}

/** The result of a function, or undefined where a figure is not published. */
export function orNothing<Answer>(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NoFigure) return undefined;
    throw thrown;
  }
}

/** Calculates a return. */
export function worked(given: LateReturn): Worked {
  const dates = statuteDates(given);
  const due = given.extended ? dates.extended : dates.filing;
  const outcome = outcomeOf(given);
  const months = outcome.presumed ? [] : failureToPayMonths(given, dates.filing, outcome.timely);
  const filed = orNothing(() => failureToFile(given, due, dates.filing, months));
  const parts = orNothing(() => monthByMonth(given, outcome));
  return { given, dates, due, outcome, months, filed, parts };
}

/** The total of the parts in cents. */
export const totalOf = (parts: Parts): number =>
  Object.values(parts as Readonly<Record<keyof Parts, number>>).reduce(
    (sum, part) => sum + part,
    0
  );
