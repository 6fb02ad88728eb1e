import { expect, it } from "vitest";
import { recordAsOf } from "../../../src/calculation/season/recordAsOf";
import { day } from "../given";
import { givenRecord } from "../request/givenRequest";

it("keeps what happened through the as-of date and drops what came later", () => {
  const record = givenRecord({
    requestedOn: "2026-04-10",
    confirmedOn: "2026-04-11",
    rejectedOn: "2026-04-12",
    filedOn: "2026-09-01",
    paidOn: "2026-09-02",
  });
  expect(recordAsOf(record, day("2026-04-11"))).toEqual({
    requestedOn: day("2026-04-10"),
    confirmedOn: day("2026-04-11"),
  });
  expect(recordAsOf(record, day("2026-09-02"))).toEqual(record);
  expect(recordAsOf(record, day("2026-04-09"))).toEqual({});
});
