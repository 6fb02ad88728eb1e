import { civil } from "./civilDays";
import type { Drawn } from "./randomReturns";
import type { Typed } from "./typedFormula";

/** A tax year as it is typed: a year's number, or the last day of a fiscal year. */
export function yearArgument(yearEnd: number): Typed {
  const { year, month } = civil(yearEnd);
  return month === 12 ? year : { day: yearEnd };
}

/** The rate assumed as it is typed: the word, or hundredths of a percent as a fraction. */
const rateArgument = (assumed: Drawn["assumed"]): Typed =>
  typeof assumed === "number" ? assumed / 10_000 : assumed;

const dayArgument = (day: number | undefined): Typed => (day === undefined ? undefined : { day });

/** What CHARGES and LEDGER are told of a client, from the extension on; words that are the default are left out. */
export function clientArguments(given: Omit<Drawn, "payments">): readonly Typed[] {
  const { extended, state, who, assumed, agreementBegins, postponement } = given;
  return [
    extended ? "yes" : undefined,
    state === "" ? undefined : state,
    who === "resident" ? undefined : who,
    rateArgument(assumed),
    dayArgument(agreementBegins),
    dayArgument(postponement?.begins),
    dayArgument(postponement?.until),
  ];
}
