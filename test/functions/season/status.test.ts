import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { due, extended } from "../../../src/functions/dueDate/returnDates";
import { daysLeft, nextDate, stage } from "../../../src/functions/season/status";
import { written, addDays } from "../../../src/calendar/calendarDate";
import { FILER_TYPES } from "../../../src/calculation/filerType";
import { STAGES } from "../../../src/calculation/season/requestStage";
import { RUNS } from "../../calculation/arbitrary";
import { day } from "../../calculation/given";
import { badInput, beforeTable, down, inCell, serial } from "../sheet";

const RELIEF = ["2026-01-22", "2026-06-08"];

/** Tax year, day looked at, day of asking. */
const SENT_AGAIN = [2025, "2026-05-01", "2026-04-14"];
const EARLY = (asOf: string) => [2025, asOf, "2026-04-01"];
/** Sent again a day after the last, rejected on the due date. */
const LATE = ["2026-04-21", "2026-04-15"];

// 26 CFR 1.6081-4(b); Pub. 1345, rejected returns. Arguments: tax year, day, asked, confirmed, rejected, filed, state, filer, relief.
describe("STAGE", () => {
  it.each([
    ["the last day to ask", [2025, "2026-04-15"], "not requested"],
    ["the day after", [2025, "2026-04-16"], "past due"],
    ["a request without proof", [2025, "2026-04-15", "2026-04-10"], "unconfirmed"],
    ["a request with proof", [2025, "2026-05-01", "2026-04-10", "2026-04-10"], "extended"],
    ["a request asked late", [2025, "2026-05-01", "2026-04-16", "2026-04-16"], "past due"],
    ["a rejection", [2025, "2026-04-20", "2026-04-14", "", "2026-04-15"], "rejected"],
    ["a rejection, six days on", [2025, "2026-04-21", "2026-04-14", "", "2026-04-15"], "past due"],
    ["sent again", [2025, "2026-04-21", "2026-04-14", "2026-04-18", "2026-04-15"], "extended"],
    [
      "sent again by the due date, where the days to send again are not held",
      [2021, "2022-05-01", "2022-04-08", "2022-04-12", "2022-04-11"],
      "extended",
    ],
    ["sent again on the fifth day", [...SENT_AGAIN, "2026-04-20", "2026-04-15"], "extended"],
    ["sent again on the sixth day", [...SENT_AGAIN, "2026-04-21", "2026-04-15"], "past due"],
    ["a day still to come", [2025, "2026-04-20", "2026-04-14", ...LATE], "rejected"],
    ["a rejection before the due date", [...EARLY("2026-04-17"), "", "2026-04-12"], "rejected"],
    ["that, six days on", [...EARLY("2026-04-18"), "", "2026-04-12"], "past due"],
    ["that, sent again in time", [...EARLY("2026-05-01"), "2026-04-17", "2026-04-12"], "extended"],
    ["that, sent again late", [...EARLY("2026-05-01"), "2026-04-18", "2026-04-12"], "past due"],
    ["a rejection long before it", [...EARLY("2026-04-15"), "", "2026-04-01"], "rejected"],
    ["that, after the due date", [...EARLY("2026-04-16"), "", "2026-04-01"], "past due"],
    ["the extended date", [2025, "2026-10-15", "2026-04-10", "2026-04-10"], "extended"],
    ["the day after it", [2025, "2026-10-16", "2026-04-10", "2026-04-10"], "past due"],
    ["a return filed", [2025, "2026-03-02", "", "", "", "2026-03-02"], "filed"],
    ["a return filed tomorrow", [2025, "2026-03-01", "", "", "", "2026-03-02"], "not requested"],
    ["a state with a holiday", [2023, "2024-04-17", "", "", "", "", "ME"], "not requested"],
    ["out of country", [2025, "2026-06-15", "", "", "", "", "", "out of country"], "not requested"],
    ["postponement", [2025, "2026-06-08", "", "", "", "", "", "", ...RELIEF], "not requested"],
    ["relief, too late", [2025, "2026-06-09", "", "", "", "", "", "", ...RELIEF], "past due"],
    ["a fiscal year", ["2025-06-30", "2025-10-15"], "not requested"],
  ])("knows %s", (_what, values, standing) => {
    expect(inCell(stage, ...values)).toBe(standing);
  });

  it("answers a client list", () => {
    const asOf = [[serial("2026-04-16")]];
    expect(stage(down(2025, 2025, 0), asOf, down("2026-04-10", "", 0))).toEqual([
      ["unconfirmed"],
      ["past due"],
      [""],
    ]);
  });
});

// 26 U.S.C. 6151(a): the tax is due when the return is, without any extension.
describe("DAYSLEFT and NEXTDATE", () => {
  it.each([
    [[2025, "2026-04-01"], 14, "request or file, and pay, by 4/15/2026"],
    [[2025, "2026-04-15"], 0, "request or file, and pay, by 4/15/2026"],
    [[2025, "2026-04-16"], -1, "file now (was due 4/15/2026)"],
    [[2025, "2026-04-12", "2026-04-10"], 3, "pay by 4/15/2026"],
    [[2025, "2026-10-01", "2026-04-10", "2026-04-10"], 14, "file by 10/15/2026"],
    [[2025, "2026-10-16", "2026-04-10"], -1, "file now (was due 10/15/2026)"],
    [[2025, "2026-04-17", "2026-04-14", "", "2026-04-15"], 3, "resend the request by 4/20/2026"],
    [[2025, "2026-04-15", "2026-04-14", "", "2026-04-15"], 0, "pay by 4/15/2026"],
    [
      [2025, "2026-04-15", "2026-04-14", "", "2026-04-15", "", "2026-04-15"],
      5,
      "resend the request by 4/20/2026",
    ],
    [
      [2025, "2026-04-12", "2026-04-10", "", "2026-04-10"],
      3,
      "resend the request, and pay, by 4/15/2026",
    ],
    [[2025, "2026-04-12", "2026-04-10", "", "2026-04-11"], 3, "pay by 4/15/2026"],
    [[2025, "2026-04-16", "2026-04-10", "", "2026-04-11"], 0, "resend the request by 4/16/2026"],
    [[2025, "2026-04-17", "2026-04-10", "", "2026-04-11"], -1, "file now (was due 4/16/2026)"],
    [[2025, "2026-05-01", "2026-04-14", ...LATE], -11, "file now (was due 4/20/2026)"],
    [[2025, "2026-10-01", "2026-04-14", "2026-04-20", "2026-04-15"], 14, "file by 10/15/2026"],
    [[2025, "2026-04-21", "2026-04-14", "", "2026-04-15"], -1, "file now (was due 4/20/2026)"],
    [[2025, "2026-04-01", "", "", "", "", "2026-03-30"], 14, "request or file by 4/15/2026"],
    [[2025, "2026-04-01", "", "", "", "2026-04-01"], "", ""],
  ])("%j: %j, %j", (values, days, text) => {
    expect(inCell(daysLeft, ...values)).toBe(days);
    expect(inCell(nextDate, ...values)).toBe(text);
  });

  // 26 CFR 1.6081-5(a), 26 U.S.C. 6601(b)(1).
  it.each([
    ["2026-04-01", "", "pay by 4/15/2026"],
    ["2026-04-15", "", "pay by 4/15/2026"],
    ["2026-04-16", "", "request or file by 6/15/2026"],
    ["2026-04-01", "2026-03-30", "request or file by 6/15/2026"],
    ["2026-06-16", "", "file now (was due 6/15/2026)"],
  ])(
    "out of the country on %s, paid on %j, is to pay in April and request by June",
    (asOf, paidOn, text) => {
      const values = [2025, asOf, "", "", "", "", paidOn, "", "out of country"];
      expect(inCell(nextDate, ...values)).toBe(text);
    }
  );

  it("follow a postponement and the state", () => {
    const relieved = [2025, "2026-06-01", "", "", "", "", "", "", "", ...RELIEF];
    expect(inCell(nextDate, ...relieved)).toBe("request or file, and pay, by 6/8/2026");
    const inMaine = [2023, "2024-04-16", "", "", "", "", "", "ME"];
    expect(inCell(daysLeft, ...inMaine)).toBe(1);
  });

  const anyDay = fc
    .integer({ min: 0, max: 260 })
    .map((days) => written(addDays(day("2026-03-01"), days)));
  const cell = (days: fc.Arbitrary<string>) => fc.oneof(days, fc.constant(""));
  const season = fc
    .record({
      filerType: fc.constantFrom(...FILER_TYPES),
      asOf: anyDay,
      requestedOn: cell(anyDay),
      confirmedOn: cell(anyDay),
      rejectedOn: cell(anyDay),
      filedOn: cell(anyDay),
      paidOn: cell(anyDay),
    })
    .map(({ confirmedOn, rejectedOn, ...rest }) => ({
      ...rest,
      confirmedOn: rest.requestedOn !== "" && confirmedOn >= rest.requestedOn ? confirmedOn : "",
      rejectedOn: rest.requestedOn !== "" && rejectedOn >= rest.requestedOn ? rejectedOn : "",
    }));

  it("name the same date, and agree with STAGE", () => {
    fc.assert(
      fc.property(
        season,
        ({ filerType, asOf, requestedOn, confirmedOn, rejectedOn, filedOn, paidOn }) => {
          const record = [requestedOn, confirmedOn, rejectedOn, filedOn];
          const left = inCell(daysLeft, 2025, asOf, ...record, paidOn, "", filerType);
          const text = String(inCell(nextDate, 2025, asOf, ...record, paidOn, "", filerType));
          const standing = inCell(stage, 2025, asOf, ...record, "", filerType);
          expect(STAGES).toContain(standing);
          expect(left === "").toBe(standing === "filed");
          if (left === "") {
            expect(text).toBe("");
            return;
          }
          const [, month = "", date = "", year = ""] = /(\d+)\/(\d+)\/(\d{4})/.exec(text) ?? [];
          const named = [year, month.padStart(2, "0"), date.padStart(2, "0")].join("-");
          expect(serial(named) - serial(asOf)).toBe(left);
          expect(text.includes("was due")).toBe(Number(left) < 0);
          if (Number(left) < 0) expect(standing).toBe("past due");
          if (standing === "not requested") {
            expect(text).toMatch(/request or file|^pay by/);
            expect(serial(named)).toBeLessThanOrEqual(Number(inCell(due, 2025, "", filerType)));
          }
          if (standing === "extended" || standing === "unconfirmed")
            expect(serial(named)).toBeLessThanOrEqual(
              Number(inCell(extended, 2025, "", filerType))
            );
        }
      ),
      RUNS
    );
  });
});

describe("STAGE, DAYSLEFT and NEXTDATE", () => {
  it.each([
    [
      [2025, "2026-05-01", "", "2026-04-10"],
      badInput(
        "requestedOn: The cell is blank, but confirmedOn is 4/10/2026. Enter the date the request was made."
      ),
    ],
    [
      [2025, "2026-05-01", "", "", "2026-04-10"],
      badInput(
        "requestedOn: The cell is blank, but rejectedOn is 4/10/2026. Enter the date the request was made."
      ),
    ],
    [
      [2025, "2026-05-01", "2026-04-10", "2026-04-09"],
      badInput(
        "confirmedOn: 4/9/2026 is before the request date, 4/10/2026. Correct one of the two dates."
      ),
    ],
    [
      [2025, "2026-05-01", "2026-04-10", "", "2026-04-09"],
      badInput(
        "rejectedOn: 4/9/2026 is before the request date, 4/10/2026. Correct one of the two dates."
      ),
    ],
    [
      [2025, "2026-05-01", "2025-12-31"],
      badInput(
        "requestedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      ),
    ],
    [
      [2025, "2026-05-01", "", "", "", "2025-12-31"],
      badInput(
        "filedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      ),
    ],
    [[2025, ""], badInput("asOf: The cell is blank. Enter a date such as 4/15/2026.")],
    [
      [2021, "2022-04-15", "2022-04-14", "", "2022-04-15"],
      beforeTable("perfection-period", "4/18/2022", "1/1/2023"),
    ],
    [[2025, { code: "#N/A" }], { code: "#N/A" }],
  ])("refuse %j", (values, refusal) => {
    for (const answers of [stage, daysLeft, nextDate])
      expect(inCell(answers, ...values)).toEqual(refusal);
  });

  it("take a day of proof or rejection equal to the day of asking, and the first day of the year", () => {
    expect(inCell(stage, 2025, "2026-05-01", "2026-01-01", "2026-01-01")).toBe("extended");
    expect(inCell(stage, 2025, "2026-01-02", "2026-01-01", "", "2026-01-01")).toBe("rejected");
    expect(inCell(stage, 2025, "2026-01-02", "", "", "", "2026-01-01")).toBe("filed");
  });

  it("take a later rejection where the perfection period is not in the table", () => {
    const values = [2021, "2022-04-14", "2022-04-14", "", "2022-04-15"];
    expect(inCell(stage, ...values)).toBe("unconfirmed");
    expect(inCell(nextDate, ...values)).toBe("pay by 4/18/2022");
  });
});
