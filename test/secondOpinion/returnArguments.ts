import { civil } from "./civilDays";
import type { Drawn } from "./randomReturns";
import type { Typed } from "./typedFormula";

/** A tax year as a user types it: a year, or the last day of a fiscal year. */
export function yearArgument(yearEnd: number): Typed {
  const { year, month } = civil(yearEnd);
  return month === 12 ? year : { day: yearEnd };
}

/** The assumed rate as a user types it: the word, or a number such as 0.07 from hundredths of a percent. */
const rateArgument = (assumed: Drawn["assumed"]): Typed =>
  typeof assumed === "number" ? assumed / 10_000 : assumed;

const dayArgument = (day: number | undefined): Typed => (day === undefined ? undefined : { day });

/** The client arguments of CHARGES and LEDGER from the extension on. Default words are omitted. */
export function clientArguments(given: Omit<Drawn, "payments">): readonly Typed[] {
  const { extended, state, who, assumed, agreementOn, postponement } = given;
  return [
    extended ? "yes" : undefined,
    state === "" ? undefined : state,
    who === "resident" ? undefined : who,
    rateArgument(assumed),
    dayArgument(agreementOn),
    dayArgument(postponement?.begins),
    dayArgument(postponement?.until),
  ];
}
