/**
 * Compares CHARGES, called as a sheet calls it, with the month-by-month calculation (monthByMonth.ts): dates, penalties and interest by
 * sections 6072, 6081, 6151, 6601, 6621, 6622, 6651, 7503 and 7508A, without code from src.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { answerOfCall } from "./answerOfCall";
import { Corners } from "./corners";
import { returnsPaidAtOnce } from "./randomReturns";
import { PAID_AT_ONCE_CORNERS } from "./returnCorners";
import { clientArguments, yearArgument } from "./returnArguments";
import { dollars, typedFormula, type Call } from "./typedFormula";
import { totalOf, worked, type Worked } from "./workedReturn";

const CASES = runLength(300, 20_000);

function callOf({ given }: Worked, paidOn: number): Call {
  const { taxCents, paidOnTimeCents, filed } = given;
  const values = [
    yearArgument(given.yearEnd),
    dollars(taxCents),
    dollars(paidOnTimeCents),
    { day: paidOn },
    { day: filed },
    ...clientArguments(given),
  ];
  return { name: "CHARGES", values };
}

describe("CHARGES against the statute", () => {
  it(`is the same to the cent for ${String(CASES)} random returns`, () => {
    const corners = new Corners(PAID_AT_ONCE_CORNERS);
    fc.assert(
      fc.property(returnsPaidAtOnce, ({ paidOn, ...drawn }) => {
        const one = worked({ ...drawn, through: Math.max(paidOn, drawn.filed) });
        corners.look(one);
        const call = callOf(one, paidOn);
        const opinion = one.parts ? dollars(totalOf(one.parts)) : "#N/A";
        const answer = answerOfCall(call);
        if (answer !== opinion)
          throw new Error(
            `${typedFormula(call)} is ${String(answer)}, by the words of the statute ${String(opinion)}`
          );
      }),
      { numRuns: CASES, seed: 4868 }
    );
    tell(`CHARGES: ${String(CASES)} returns the same to the cent; cases of each kind:`);
    corners.lines().forEach(tell);
    expect(isLongRun ? corners.missed() : []).toEqual([]);
  });
});
