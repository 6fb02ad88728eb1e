import { describe, expect, it } from "vitest";
import { dateText } from "../given";
import { closedMethodIssues } from "../../../src/calculation/request/closedMethodIssues";
import { rulebook } from "../../../src/rules/rulebook";
import { givenRequest, type GivenRecord, type GivenRequest } from "./givenRequest";

const found = (given: GivenRequest) =>
  closedMethodIssues(givenRequest(given), rulebook).map(({ check, date }) => [
    check,
    dateText(date),
  ]);

const PERIOD = ["2024-09-24", "2025-05-01"] as const;
const georgia = (
  asOf: string,
  method?: "electronic payment" | "e-file" | "paper"
): GivenRequest => ({
  taxYear: 2024,
  postponement: PERIOD,
  asOf,
  ...(method && { method }),
});

// IR-2025-41 (April 4, 2025), as reported: from April 15 to May 1, 2025, only on paper Form 4868.
describe("an electronic request under a disaster postponement", () => {
  it.each([
    ["e-file", "2025-04-15", []],
    ["e-file", "2025-04-16", [["e-file closed", "2025-04-15"]]],
    ["e-file", "2025-05-01", [["e-file closed", "2025-04-15"]]],
    ["e-file", "2025-05-02", []],
    ["electronic payment", "2025-04-15", []],
    ["electronic payment", "2025-04-16", [["electronic payment closed", "2025-04-15"]]],
    ["electronic payment", "2025-05-02", []],
    ["paper", "2025-05-01", []],
    [undefined, "2025-05-01", []],
  ] as const)("planned by %s on %s", (method, asOf, issues) => {
    expect(found(georgia(asOf, method))).toEqual(issues);
  });

  it.each([
    ["e-file", "2025-04-15", []],
    ["e-file", "2025-04-16", [["e-file closed", "2025-04-15"]]],
    ["e-file", "2025-05-01", [["e-file closed", "2025-04-15"]]],
    ["e-file", "2025-05-02", []],
    ["electronic payment", "2025-04-20", [["electronic payment closed", "2025-04-15"]]],
    ["paper", "2025-04-20", []],
  ] as const)(
    "made by %s on %s is reported after the period too",
    (method, requestedOn, issues) => {
      expect(found({ ...georgia("2025-06-01", method), record: { requestedOn } })).toEqual(issues);
    }
  );

  it("is not reported before it was made", () => {
    const record = { requestedOn: "2025-04-20" };
    expect(found({ ...georgia("2025-04-15", "e-file"), record })).toEqual([]);
  });

  it("is not reported where paper closes on the same date", () => {
    for (const asOf of ["2026-04-15", "2026-04-16", "2026-06-01"])
      expect(found({ method: "e-file", asOf })).toEqual([]);
  });

  // Form 4868 (2025), when to file: fiscal-year filers use paper, which is an issue of its own.
  it("is not reported of a fiscal year", () => {
    const postponement = ["2025-10-01", "2026-02-02"] as const;
    const given = { taxYear: "2025-06-30", postponement, asOf: "2025-12-01" };
    expect(found({ ...given, method: "e-file" })).toEqual([]);
  });
});

// Pub. 1345: five days from the due date or the rejection; IR-2025-41: the e-file deadline does not move.
describe("a rejected e-file request under a disaster postponement", () => {
  const rejected: GivenRecord = { requestedOn: "2025-04-14", rejectedOn: "2025-04-15" };

  it.each([
    ["e-file", "2025-04-20", []],
    ["e-file", "2025-04-21", [["e-file closed", "2025-04-20"]]],
    [undefined, "2025-04-20", []],
    [undefined, "2025-04-21", [["e-file closed", "2025-04-20"]]],
    ["paper", "2025-04-21", []],
  ] as const)("not yet resent, recorded by %s, on %s", (method, asOf, issues) => {
    expect(found({ ...georgia(asOf, method), record: rejected })).toEqual(issues);
  });

  it.each([
    ["e-file", "2025-04-20", []],
    ["e-file", "2025-04-21", [["e-file closed", "2025-04-20"]]],
    ["e-file", "2025-05-02", []],
    [undefined, "2025-04-21", []],
    ["paper", "2025-05-01", []],
  ] as const)("resent by %s on %s", (method, confirmedOn, issues) => {
    const record = { ...rejected, confirmedOn };
    expect(found({ ...georgia("2025-06-01", method), record })).toEqual(issues);
  });

  it("is not resent by a proof from before the rejection", () => {
    const record = {
      requestedOn: "2025-04-10",
      confirmedOn: "2025-04-11",
      rejectedOn: "2025-04-15",
    };
    expect(found({ ...georgia("2025-04-25"), record })).toEqual([["e-file closed", "2025-04-20"]]);
  });

  it("made after e-file closed has no perfection period", () => {
    const record = { requestedOn: "2025-04-28", rejectedOn: "2025-04-29" };
    expect(found({ ...georgia("2025-04-29"), record })).toEqual([["e-file closed", "2025-04-20"]]);
  });
});
