import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays, type CalendarDate } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { RequestRecord } from "../../../src/calculation/season/requestRecord";
import { requestStage, STAGES, type Stage } from "../../../src/calculation/season/requestStage";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/perfection-period.json";
import { filers, RUNS, states } from "../arbitrary";
import { day } from "../given";
import { givenRequest, type GivenRequest } from "../request/givenRequest";

const standing = (given: GivenRequest) => {
  const { dates, record, asOf } = givenRequest(given);
  return requestStage(dates, record, asOf, rulebook);
};
const stageOf = (asOf: string, record: GivenRequest["record"] = {}): Stage =>
  standing({ asOf, record }).stage;

const asked = { requestedOn: "2026-04-14" };
const accepted = { ...asked, confirmedOn: "2026-04-15" };
const rejected = { ...asked, rejectedOn: "2026-04-15" };

// Sent again and accepted by the due date, it needs no window: that of 2022 is not held.
it.each([
  ["2022-04-12", "2022-04-10"],
  ["2022-04-12", "2022-04-12"],
  ["2022-04-18", "2022-04-10"],
])(
  "does not need the perfection period if it was accepted on %s, on time",
  (confirmedOn, rejectedOn) => {
    const record = { requestedOn: "2022-04-08", rejectedOn, confirmedOn };
    expect(standing({ taxYear: 2021, asOf: "2022-05-01", record }).stage).toBe("extended");
  }
);

// Pub. 1345: five days from the e-file deadline; IR-2025-41, as reported: only paper through the end of the postponement.
describe("a request rejected under a disaster postponement", () => {
  const rejectedThen = { requestedOn: "2025-04-14", rejectedOn: "2025-04-15" };
  const georgia = { taxYear: 2024, postponement: ["2024-09-24", "2025-05-01"] } as const;

  it.each([
    ["2025-04-20", "rejected", "resend the request", "2025-04-20", undefined],
    ["2025-04-21", "rejected", "resend the request", "2025-05-01", undefined],
    ["2025-05-01", "rejected", "resend the request", "2025-05-01", undefined],
    ["2025-05-02", "past due", "file", "2025-05-01", "perfection period over"],
  ])("on %s is %s", (asOf, stage, act, deadline, missed) => {
    const status = standing({ ...georgia, asOf, record: rejectedThen });
    expect(status).toEqual({ stage, act, deadline: day(deadline), ...(missed && { missed }) });
  });

  it.each([
    ["2025-05-01", "extended"],
    ["2025-05-02", "past due"],
  ])("resent on paper on %s is %s", (confirmedOn, stage) => {
    const record = { ...rejectedThen, confirmedOn };
    expect(standing({ ...georgia, asOf: "2025-06-01", record }).stage).toBe(stage);
  });

  it("can be resent by e-file where the postponement ends within the perfection period", () => {
    const given = { taxYear: 2024, postponement: ["2024-09-24", "2025-04-17"] } as const;
    expect(standing({ ...given, asOf: "2025-04-18", record: rejectedThen })).toMatchObject({
      stage: "rejected",
      deadline: day("2025-04-20"),
    });
  });
});

// 26 U.S.C. 6081(a), 7508A(a): the postponement of January 7 to October 15, 2025 (California) moves both due dates to its end.
describe("the status where a postponement leaves a request no more time to give", () => {
  const california = { taxYear: 2024, postponement: ["2025-01-07", "2025-10-15"] } as const;
  const made = { requestedOn: "2025-04-10" };

  it.each([
    ["2025-04-01", {}, "not requested"],
    ["2025-10-15", {}, "not requested"],
    ["2025-04-16", made, "unconfirmed"],
    ["2025-04-16", { ...made, confirmedOn: "2025-04-11" }, "extended"],
    ["2025-04-30", { ...made, rejectedOn: "2025-04-12" }, "rejected"],
    ["2025-04-30", { ...made, rejectedOn: "2025-04-12", confirmedOn: "2025-04-20" }, "extended"],
  ])("on %s with %j is %s, and the return is to be filed", (asOf, record, stage) => {
    expect(standing({ ...california, asOf, record })).toEqual({
      stage,
      act: "file",
      deadline: day("2025-10-15"),
    });
  });

  it.each([{}, made, { ...made, rejectedOn: "2025-04-12" }, { requestedOn: "2025-10-16" }])(
    "is past due after the date with %j",
    (record) => {
      expect(standing({ ...california, asOf: "2025-10-16", record })).toEqual({
        stage: "past due",
        act: "file",
        deadline: day("2025-10-15"),
        missed: "extended date missed",
      });
    }
  );

  it("is the usual one where the postponement ends a day earlier", () => {
    const postponement = ["2025-01-07", "2025-10-14"] as const;
    expect(standing({ taxYear: 2024, postponement, asOf: "2025-10-14" })).toMatchObject({
      stage: "not requested",
      act: "request or file",
      deadline: day("2025-10-14"),
    });
  });
});

// 26 CFR 1.6081-4(b): a request made by the due date of the return.
describe("the status of a request", () => {
  it.each([
    ["2026-04-15", {}, "not requested", "request or file", "2026-04-15", undefined],
    ["2026-04-16", {}, "past due", "file", "2026-04-15", "not requested on time"],
    ["2026-04-14", asked, "unconfirmed", "file", "2026-10-15", undefined],
    ["2026-04-15", accepted, "extended", "file", "2026-10-15", undefined],
    ["2026-10-15", accepted, "extended", "file", "2026-10-15", undefined],
    ["2026-10-16", accepted, "past due", "file", "2026-10-15", "extended date missed"],
    ["2026-10-16", asked, "past due", "file", "2026-10-15", "extended date missed"],
    ["2026-04-14", rejected, "unconfirmed", "file", "2026-10-15", undefined],
    ["2026-04-15", rejected, "rejected", "resend the request", "2026-04-20", undefined],
    ["2026-04-16", rejected, "rejected", "resend the request", "2026-04-20", undefined],
    ["2026-04-20", rejected, "rejected", "resend the request", "2026-04-20", undefined],
    ["2026-04-21", rejected, "past due", "file", "2026-04-20", "perfection period over"],
    [
      "2026-04-16",
      { requestedOn: "2026-04-16" },
      "past due",
      "file",
      "2026-04-15",
      "requested late",
    ],
    ["2026-10-20", { filedOn: "2026-10-20" }, "filed", undefined, undefined, undefined],
  ])("on %s with %j is %s", (asOf, record, stage, act, lastDay, missed) => {
    const found = standing({ asOf, record });
    expect([found.stage, found.act, found.deadline, found.missed]).toEqual([
      stage,
      act,
      lastDay === undefined ? undefined : day(lastDay),
      missed,
    ]);
  });

  it("is extended by a request made on the last day, and not by one a day later", () => {
    const proven = (requestedOn: string) => ({ requestedOn, confirmedOn: "2026-04-17" });
    expect(stageOf("2026-04-17", proven("2026-04-15"))).toBe("extended");
    expect(stageOf("2026-04-17", proven("2026-04-16"))).toBe("past due");
  });

  it("is filed from the filing date on, with or without a request", () => {
    for (const record of [{}, asked, rejected, { requestedOn: "2026-04-16" }]) {
      expect(stageOf("2026-11-02", { ...record, filedOn: "2026-11-02" })).toBe("filed");
      expect(stageOf("2026-11-01", { ...record, filedOn: "2026-11-02" })).toBe("past due");
    }
  });
});

// Pub. 1345, rejected returns.
describe("after a rejection", () => {
  it.each(published.cases)(
    "the days to send again end with $expected.sendAgainBy: $case",
    (one) => {
      const { taxYear, filerType, rejectedOn } = one.inputs;
      const given = {
        taxYear,
        filerType:
          filerType === "out of country" ? ("out of country" as const) : ("resident" as const),
        state: one.inputs.state ?? undefined,
        record: { requestedOn: rejectedOn, rejectedOn },
      };
      const { sendAgainBy } = one.expected;
      expect(standing({ ...given, asOf: sendAgainBy }).stage).toBe("rejected");
      const dayAfter: string = written(addDays(day(sendAgainBy), 1));
      expect(standing({ ...given, asOf: dayAfter }).stage).toBe("past due");
      const sentAgain = (confirmedOn: string) =>
        standing({ ...given, asOf: dayAfter, record: { ...given.record, confirmedOn } });
      expect(sentAgain(sendAgainBy).stage).toBe("extended");
      expect(sentAgain(dayAfter)).toEqual({
        stage: "past due",
        act: "file",
        deadline: day(sendAgainBy),
        missed: "perfection period over",
      });
    }
  );

  it.each([
    ["2026-04-01", "2026-04-14", "rejected", "2026-04-15"],
    ["2026-04-01", "2026-04-15", "rejected", "2026-04-15"],
    ["2026-04-01", "2026-04-16", "past due", "2026-04-15"],
    ["2026-04-10", "2026-04-15", "rejected", "2026-04-15"],
    ["2026-04-10", "2026-04-16", "past due", "2026-04-15"],
    ["2026-04-11", "2026-04-16", "rejected", "2026-04-16"],
    ["2026-04-11", "2026-04-17", "past due", "2026-04-16"],
    ["2026-04-12", "2026-04-15", "rejected", "2026-04-17"],
    ["2026-04-12", "2026-04-17", "rejected", "2026-04-17"],
    ["2026-04-12", "2026-04-18", "past due", "2026-04-17"],
    ["2026-04-16", "2026-04-20", "rejected", "2026-04-20"],
    ["2026-04-16", "2026-04-21", "past due", "2026-04-20"],
    ["2026-04-21", "2026-04-21", "past due", "2026-04-20"],
  ])("on %s a request is on %s %s, its last day %s", (rejectedOn, asOf, stage, lastDay) => {
    const found = standing({ asOf, record: { requestedOn: "2026-04-01", rejectedOn } });
    expect([found.stage, found.deadline]).toEqual([stage, day(lastDay)]);
    expect(found.missed).toBe(stage === "past due" ? "perfection period over" : undefined);
  });

  it("the request counts as made once it is resent and accepted, on the same day or later", () => {
    expect(stageOf("2026-04-18", { ...rejected, confirmedOn: "2026-04-17" })).toBe("extended");
    expect(stageOf("2026-04-16", { ...rejected, confirmedOn: "2026-04-17" })).toBe("rejected");
    expect(stageOf("2026-04-18", { ...rejected, confirmedOn: "2026-04-15" })).toBe("extended");
    expect(stageOf("2026-04-18", { ...rejected, confirmedOn: "2026-04-14" })).toBe("rejected");
  });

  it.each([
    ["2026-04-20", "2026-04-20", "extended", "2026-10-15", undefined],
    ["2026-04-20", "2026-10-16", "past due", "2026-10-15", "extended date missed"],
    ["2026-04-21", "2026-04-20", "rejected", "2026-04-20", undefined],
    ["2026-04-21", "2026-04-21", "past due", "2026-04-20", "perfection period over"],
    ["2026-04-21", "2026-10-15", "past due", "2026-04-20", "perfection period over"],
    ["2026-04-21", "2026-10-16", "past due", "2026-04-20", "perfection period over"],
  ])("resent on %s it is on %s %s", (confirmedOn, asOf, stage, lastDay, missed) => {
    const found = standing({ asOf, record: { ...rejected, confirmedOn } });
    expect([found.stage, found.act, found.deadline, found.missed]).toEqual([
      stage,
      stage === "rejected" ? "resend the request" : "file",
      day(lastDay),
      missed,
    ]);
  });

  it("resent too late it is filed all the same once the return is in", () => {
    const late = { ...rejected, confirmedOn: "2026-04-21", filedOn: "2026-05-01" };
    expect(stageOf("2026-04-30", late)).toBe("past due");
    expect(standing({ asOf: "2026-05-01", record: late })).toEqual({ stage: "filed" });
  });

  it("the extended date binds as ever", () => {
    const again = { ...rejected, confirmedOn: "2026-04-17" };
    expect(standing({ asOf: "2026-10-15", record: again }).deadline).toBe(day("2026-10-15"));
    expect(standing({ asOf: "2026-10-16", record: again }).missed).toBe("extended date missed");
  });

  it("is refused from the day of the rejection if the perfection period is not in the table", () => {
    const record = { requestedOn: "2022-04-14", rejectedOn: "2022-04-15" };
    expect(standing({ taxYear: 2021, asOf: "2022-04-14", record }).stage).toBe("unconfirmed");
    for (const asOf of ["2022-04-15", "2022-04-18", "2022-04-19"])
      expect(() => standing({ taxYear: 2021, asOf, record })).toThrow(NotInTableError);
    const sentAgain = { ...record, confirmedOn: "2022-04-20" };
    expect(() => standing({ taxYear: 2021, asOf: "2022-04-20", record: sentAgain })).toThrow(
      NotInTableError
    );
  });
});

/** A season of a client: dates, and a record in an order that can have been. */
const seasons = fc
  .record({
    taxYear: fc.integer({ min: 2022, max: 2025 }),
    filerType: filers,
    state: states,
    askedAfter: fc.option(fc.integer({ min: -20, max: 4 }), { nil: undefined }),
    confirmedAfter: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
    rejectedAfter: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
    filedAfter: fc.option(fc.integer({ min: -60, max: 300 }), { nil: undefined }),
  })
  .map(({ taxYear, filerType, state, askedAfter, ...after }) => {
    const dates = clientDates(calendarTaxYear(taxYear), filerType, { state }, rulebook);
    const { lastDay } = dates.regular;
    const from = (first: CalendarDate | undefined, days: number | undefined) =>
      first === undefined || days === undefined ? undefined : addDays(first, days);
    const requestedOn = from(lastDay, askedAfter);
    const record: RequestRecord = {
      requestedOn,
      confirmedOn: from(requestedOn, after.confirmedAfter),
      rejectedOn: from(requestedOn, after.rejectedAfter),
      filedOn: from(lastDay, after.filedAfter),
    };
    return { dates, record };
  });

/** Where a client can come to from each stage as days go by. */
const NEXT: Readonly<Record<Stage, readonly Stage[]>> = {
  "not requested": ["unconfirmed", "rejected", "extended", "past due", "filed"],
  unconfirmed: ["rejected", "extended", "past due", "filed"],
  rejected: ["extended", "past due", "filed"],
  extended: ["rejected", "past due", "filed"],
  "past due": ["filed"],
  filed: [],
};

describe("a season, date by date", () => {
  it("can be looked at again as it was: what comes later does not count", () => {
    fc.assert(
      fc.property(seasons, fc.integer({ min: -30, max: 320 }), ({ dates, record }, days) => {
        const asOf = addDays(dates.regular.lastDay, days);
        const known = Object.entries(record) as [string, CalendarDate | undefined][];
        const then: RequestRecord = Object.fromEntries(
          known.filter(([, when]) => when !== undefined && when <= asOf)
        );
        expect(requestStage(dates, then, asOf, rulebook)).toEqual(
          requestStage(dates, record, asOf, rulebook)
        );
      }),
      RUNS
    );
  });

  it("stays past due until the return is filed, and then stays filed", () => {
    fc.assert(
      fc.property(seasons, ({ dates, record }) => {
        const seen: Stage[] = [];
        for (let days = -30; days <= 320; days++) {
          const asOf = addDays(dates.regular.lastDay, days);
          const { stage } = requestStage(dates, record, asOf, rulebook);
          if (seen.at(-1) !== stage) seen.push(stage);
        }
        seen.slice(1).forEach((stage, index) => {
          expect(NEXT[seen[index] ?? "filed"], seen.join(", ")).toContain(stage);
        });
      }),
      RUNS
    );
  });

  it("is extended by a request resent exactly where that was on time", () => {
    const inYear = fc.integer({ min: 2022, max: 2025 }).map(calendarTaxYear);
    const fromDue = fc.integer({ min: -12, max: 12 });
    const later = fc.integer({ min: 0, max: 12 });
    fc.assert(
      fc.property(
        inYear,
        filers,
        states,
        fromDue,
        later,
        (year, filerType, state, rejected, more) => {
          const dates = clientDates(year, filerType, { state }, rulebook);
          const due = dates.regular.lastDay;
          const rejectedOn = addDays(due, rejected);
          const record = {
            requestedOn: addDays(due, Math.min(0, rejected)),
            rejectedOn,
            confirmedOn: addDays(rejectedOn, more),
          };
          const isInTime = rejected + more <= 0 || (rejected + more <= 5 && more <= 5);
          const { stage } = requestStage(dates, record, record.confirmedOn, rulebook);
          expect(stage).toBe(isInTime ? "extended" : "past due");
        }
      ),
      RUNS
    );
  });

  it("shows a deadline that has passed only if it was missed, and none once filed", () => {
    fc.assert(
      fc.property(seasons, fc.integer({ min: -30, max: 320 }), ({ dates, record }, days) => {
        const asOf = addDays(dates.regular.lastDay, days);
        const {
          stage,
          act,
          deadline: lastDay,
          missed,
        } = requestStage(dates, record, asOf, rulebook);
        expect(STAGES).toContain(stage);
        expect(missed !== undefined).toBe(stage === "past due");
        expect(act === undefined).toBe(stage === "filed");
        expect(lastDay === undefined).toBe(stage === "filed");
        if (lastDay !== undefined) {
          if (stage !== "past due") expect(lastDay >= asOf).toBe(true);
          else if (missed !== "requested late") expect(lastDay < asOf).toBe(true);
        }
      }),
      RUNS
    );
  });
});
