/** Compares METHOD with the methods that are open by the words of the release and the publication (openMethods.ts). */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalog } from "../../src/functions/catalog";
import { runLength, tell } from "../soak/runLength";
import { dayNumber, dayWritten, daysInMonth } from "./civilDays";
import { openMethod, type RequestDay } from "./openMethods";
import { yearArgument } from "./returnArguments";
import { calendarYearEnd, statuteDates, type Who } from "./statuteDates";
import { cellsOf, typedFormula, type Call, type Day } from "./typedFormula";

const CASES = runLength(1_000, 30_000);

const fiscalEnd = (year: number, month: number): number =>
  dayNumber(year, month, daysInMonth(year, month));

const anyRequest: fc.Arbitrary<RequestDay> = fc
  .record({
    // The methods are covered for tax years that begin in 2016 or later, the perfection period from 2023.
    year: fc.integer({ min: 2016, max: 2025 }),
    fiscalMonth: fc.option(fc.integer({ min: 1, max: 11 }), { freq: 5, nil: undefined }),
    who: fc.constantFrom<Who>("resident", "out of country", "nonresident"),
    state: fc.constantFrom("", "TX", "ME", "MA", "foreign"),
    isPaying: fc.boolean(),
    period: fc.option(
      fc.record({
        before: fc.integer({ min: -2, max: 60 }),
        after: fc.oneof(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 150 })),
      }),
      { freq: 3, nil: undefined }
    ),
    fromEnd: fc.boolean(),
    days: fc.oneof(fc.integer({ min: -3, max: 7 }), fc.integer({ min: -40, max: 120 })),
    rejected: fc.option(fc.integer({ min: -12, max: 20 }), { nil: undefined }),
  })
  .map(({ year, fiscalMonth, who, state, isPaying, period, fromEnd, days, rejected }) => {
    const yearEnd =
      fiscalMonth === undefined
        ? calendarYearEnd(year)
        : fiscalEnd(Math.max(2017, year), fiscalMonth);
    const plain = { yearEnd, who, state };
    const due = statuteDates(plain).filing.last;
    const postponement = period && {
      begins: due - Math.max(-2, period.before),
      until: Math.max(due - period.before, due + period.after),
    };
    const whose = { ...plain, postponement };
    const on = (fromEnd ? statuteDates(whose).filing.last : due) + days;
    return {
      whose,
      isFiscal: fiscalMonth !== undefined,
      isPaying,
      on,
      rejected:
        year >= 2022 && fiscalMonth === undefined && rejected !== undefined
          ? due + rejected
          : undefined,
    };
  });

function methodCall({ whose, isPaying, on, rejected }: RequestDay): Call {
  const date = (day: number | undefined): Day | undefined =>
    day === undefined ? undefined : { day };
  const { postponement } = whose;
  return {
    name: "METHOD",
    values: [
      yearArgument(whose.yearEnd),
      isPaying ? 100 : 0,
      { day: on },
      date(rejected),
      whose.state === "" ? undefined : whose.state,
      whose.who,
      date(postponement?.begins),
      date(postponement?.until),
    ],
  };
}

const answerOf = (call: Call): unknown => {
  const [row] = catalog[call.name]?.answer(
    cellsOf(call).map((cell) => cell ?? null)
  ) as unknown[][];
  return row?.[0];
};

describe("METHOD against the words of the release", () => {
  it(`is the same for ${String(CASES)} random requests`, () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(anyRequest, (given) => {
        const opinion = openMethod(given);
        const isClosed = openMethod({
          ...given,
          whose: { ...given.whose, postponement: undefined },
        });
        const kind = `${opinion}${isClosed === opinion ? "" : ", postponed"}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
        const call = methodCall(given);
        expect(answerOf(call), typedFormula(call)).toBe(opinion);
      }),
      { numRuns: CASES, seed: 4868 }
    );
    for (const [kind, count] of seen) tell(`METHOD ${kind}: ${String(count)}`);
    expect([...seen.keys()].toSorted()).toEqual([
      "e-file",
      "electronic payment",
      "not needed, postponed",
      "paper",
      "paper, postponed",
      "too late",
    ]);
  });

  // IR-2025-41, as reported.
  it.each([
    ["2025-04-15", false, "e-file"],
    ["2025-04-16", false, "paper"],
    ["2025-05-01", true, "paper"],
    ["2025-05-02", true, "too late"],
  ])("agrees with the release: %s, paying %s, %s", (on, isPaying, method) => {
    const postponement = { begins: dayWritten("2024-09-24"), until: dayWritten("2025-05-01") };
    const whose = { yearEnd: calendarYearEnd(2024), who: "resident", state: "GA", postponement };
    const given = { whose, isFiscal: false, isPaying, on: dayWritten(on), rejected: undefined };
    expect(openMethod(given as RequestDay)).toBe(method);
  });
});
