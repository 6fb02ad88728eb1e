import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, weekdayOf } from "../../../src/calendar/calendarDate";
import { legalHolidayOn } from "../../../src/calendar/legalHoliday";
import { dueDate } from "../../../src/calculation/dueDate/dueDate";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { act as acts, type Act } from "../../../src/rules/schema/dateTables";
import { daysFrom, RUNS, states } from "../arbitrary";
import { day, MADE_UP, state } from "../given";

const due = (act: Act, statutory: string, code?: string): ReturnType<typeof dueDate> =>
  dueDate(act, day(statutory), MADE_UP, code === undefined ? {} : { state: state(code) }, rulebook);

describe("moving a due date", () => {
  // 26 U.S.C. 7503 and 26 CFR 301.6651-1(b)(3): the weekend decides timeliness, the count keeps the date the law names.
  it("moves the last day over a weekend, not the date from which lateness counts", () => {
    const moved = due("return", "2023-04-15");
    expect(written(moved.lastDay)).toBe("2023-04-18");
    expect(written(moved.countedFrom)).toBe("2023-04-15");
    expect(moved.moves).toHaveLength(1);
    expect(moved.moves[0]).toMatchObject({
      from: day("2023-04-15"),
      to: day("2023-04-18"),
      because: "Saturday, Sunday, Emancipation Day",
    });
  });

  it("does not move a workday and gives the law that named it", () => {
    const stands = due("return", "2026-04-15");
    expect(stands).toEqual({
      act: "return",
      statutory: day("2026-04-15"),
      countedFrom: day("2026-04-15"),
      lastDay: day("2026-04-15"),
      moves: [],
      source: MADE_UP,
    });
  });

  // Rev. Rul. 2015-13: returns and the tax payable with them, not estimates.
  it.each([
    ["return", "2019-04-17"],
    ["payment", "2019-04-17"],
    ["installment", "2019-04-15"],
    ["gift return", "2019-04-15"],
    ["report", "2019-04-15"],
  ] as const)("Patriots' Day moves a %s of Massachusetts to %s", (act, lastDay) => {
    expect(written(due(act, "2019-04-15", "MA").lastDay)).toBe(lastDay);
  });

  // IR-2018-100 (from memory): one more day after an outage; no time was disregarded by it.
  it("2018: one more day to act, lateness still counts from April 15", () => {
    const moved = due("payment", "2018-04-15");
    expect(written(moved.lastDay)).toBe("2018-04-18");
    expect(written(moved.countedFrom)).toBe("2018-04-15");
  });

  // Notice 2020-23, section III: acts due April 1 to July 14, 2020; the period is disregarded.
  it.each([
    ["2020-03-31", "2020-03-31"],
    ["2020-04-01", "2020-07-15"],
    ["2020-07-14", "2020-07-15"],
    ["2020-07-15", "2020-07-15"],
    ["2020-07-16", "2020-07-16"],
  ])("2020: what is due %s may be done through %s", (statutory, lastDay) => {
    for (const act of acts.options.filter((one) => one !== "report")) {
      expect(due(act, statutory)).toMatchObject({
        lastDay: day(lastDay),
        countedFrom: day(lastDay),
      });
    }
  });

  // FinCEN did not follow Notice 2020-23: the FBAR kept its automatic date.
  it("2020: a report is not postponed with the returns", () => {
    expect(written(due("report", "2020-04-15").lastDay)).toBe("2020-04-15");
  });

  // Notice 2021-21, section III: the April 15 return and payment only; the first estimate and the gift tax return stand.
  it.each([
    ["gift return", "2021-04-15", "2021-04-15"],
    ["return", "2021-04-15", "2021-05-17"],
    ["payment", "2021-04-15", "2021-05-17"],
    ["installment", "2021-04-15", "2021-04-15"],
    ["return", "2021-06-15", "2021-06-15"],
  ] as const)("2021: a %s due %s may be done through %s", (act, statutory, lastDay) => {
    expect(due(act, statutory)).toMatchObject({ lastDay: day(lastDay), countedFrom: day(lastDay) });
  });

  // 26 U.S.C. 7508A(a): the relieved period is disregarded, so lateness counts from its end.
  it("a postponement moves both the last day and the date from which lateness counts", () => {
    const postponement = { begins: day("2023-01-08"), ends: day("2023-11-16") };
    const moved = dueDate("payment", day("2023-04-15"), MADE_UP, { postponement }, rulebook);
    expect(moved).toMatchObject({ lastDay: day("2023-11-16"), countedFrom: day("2023-11-16") });
    expect(moved.moves.map((move) => move.because)).toEqual([
      "Saturday, Sunday, Emancipation Day",
      "disaster postponement",
    ]);
  });

  // the same for every last day of the postponement: invented periods, April 15 and 16, 2023 a weekend, 17 Emancipation Day
  it.each([
    ["2023-04-17", "2023-04-18", "2023-04-15"],
    ["2023-04-18", "2023-04-18", "2023-04-18"],
    ["2023-04-19", "2023-04-19", "2023-04-19"],
  ])(
    "a postponement through %s leaves %s to act, lateness counts from %s",
    (end, lastDay, countedFrom) => {
      const postponement = { begins: day("2023-04-01"), ends: day(end) };
      const moved = dueDate("payment", day("2023-04-15"), MADE_UP, { postponement }, rulebook);
      expect(moved).toMatchObject({ lastDay: day(lastDay), countedFrom: day(countedFrom) });
      expect(moved.moves.at(-1)?.to).toBe(day(lastDay));
    }
  );

  // 26 U.S.C. 7503: New Year's Day on a Thursday; a Sunday, then New Year's Day.
  it("reaches from the first day whose holidays are in the table through the last", () => {
    expect(written(due("return", "2009-01-01").lastDay)).toBe("2009-01-02");
    expect(written(due("return", "2028-12-31").lastDay)).toBe("2029-01-02");
  });

  it.each(["2008-12-31", "2029-01-01"])("does not cover %s", (statutory) => {
    expect(() => due("return", statutory)).toThrow(NotInTableError);
  });

  it("ends on a workday, never before the date the law names, by moves that join", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...acts.options),
        daysFrom("2009-01-01", "2028-12-20"),
        states,
        (act, statutory, where) => {
          const moved = dueDate(act, statutory, MADE_UP, { state: where }, rulebook);
          const { lastDay, countedFrom, moves } = moved;
          expect(weekdayOf(lastDay) % 6).not.toBe(0);
          expect(legalHolidayOn(lastDay, rulebook.legalHolidays.rows)).toBeUndefined();
          expect(lastDay >= statutory && countedFrom <= lastDay).toBe(true);
          expect(moves[0]?.from ?? lastDay).toBe(statutory);
          expect(moves.at(-1)?.to ?? statutory).toBe(lastDay);
          expect(moves.slice(1).map((move) => move.from)).toEqual(
            moves.slice(0, -1).map((move) => move.to)
          );
        }
      ),
      RUNS
    );
  });

  it("with a postponement is never earlier than without", () => {
    fc.assert(
      fc.property(
        daysFrom("2022-01-01", "2027-12-31"),
        daysFrom("2022-01-01", "2027-12-31"),
        fc.integer({ min: 0, max: 365 }),
        (statutory, begins, length) => {
          const postponement = { begins, ends: addDays(begins, length) };
          const without = dueDate("return", statutory, MADE_UP, {}, rulebook);
          const relieved = dueDate("return", statutory, MADE_UP, { postponement }, rulebook);
          expect(relieved.lastDay >= without.lastDay).toBe(true);
          expect(relieved.countedFrom >= without.countedFrom).toBe(true);
        }
      ),
      RUNS
    );
  });
});
