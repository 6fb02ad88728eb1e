import { describe, expect, it } from "vitest";
import { lazily, readAll } from "../../../src/functions/arguments/argumentKind";
import { client, datesOf, postponementOf } from "../../../src/functions/arguments/client";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { InputError } from "../../../src/functions/cells/inputError";

const cells: Readonly<Record<string, unknown>> = { taxYear: 2023 };

/** A client as its cells are read. */
const clientOf = (given: Readonly<Record<string, unknown>>) =>
  readAll(
    client,
    lazily(client)((name) => given[name])
  );

describe("a client's dates", () => {
  it("are read from cells that may be blank except the tax year", () => {
    expect(clientOf(cells)).toEqual({
      taxYear: { firstDay: calendarDate("2023-01-01"), lastDay: calendarDate("2023-12-31") },
      state: undefined,
      filerType: "resident",
      postponementBegins: undefined,
      postponementEnds: undefined,
    });
  });

  // 2024-04-15 is Patriots' Day and 2024-04-16 Emancipation Day (Rev. Rul. 2015-13); abroad 2024-06-15 is a Saturday.
  it("are kept apart for clients who differ in one thing only", () => {
    const variations = [
      {},
      { taxYear: 2024 },
      { state: "ME" },
      { filerType: "out of country" },
      { postponementBegins: "2024-01-10", postponementEnds: "2024-06-17" },
      { postponementBegins: "2024-01-10", postponementEnds: "2024-07-15" },
      { postponementBegins: "2024-05-01", postponementEnds: "2024-07-15" },
      { state: "me" },
      {},
    ];
    const due = variations.map(
      (changed) => datesOf(clientOf({ ...cells, ...changed })).regular.lastDay
    );
    expect(due).toEqual([
      calendarDate("2024-04-15"),
      calendarDate("2025-04-15"),
      calendarDate("2024-04-17"),
      calendarDate("2024-06-17"),
      calendarDate("2024-06-17"),
      calendarDate("2024-07-15"),
      calendarDate("2024-04-15"),
      calendarDate("2024-04-17"),
      calendarDate("2024-04-15"),
    ]);
  });

  it("stay right when there are more clients than the memory keeps", () => {
    const first = datesOf(clientOf(cells));
    for (let day = 1; day <= 5_200; day++) {
      const postponementBegins = 36_526 + day;
      datesOf(clientOf({ ...cells, postponementBegins, postponementEnds: postponementBegins + 1 }));
    }
    expect(datesOf(clientOf(cells))).toEqual(first);
  });
});

describe("a row whose cells are read when they are first used", () => {
  it("reads a cell once, and no cell that is not asked for", () => {
    const asked: string[] = [];
    const given = lazily(client)((name) => {
      asked.push(name);
      return cells[name];
    });
    expect(asked).toEqual([]);
    expect([given("filerType"), given("filerType")]).toEqual(["resident", "resident"]);
    expect(asked.filter((name) => name === "filerType")).toHaveLength(1);
    expect(asked).not.toContain("state");
  });
});

describe("a disaster postponement period", () => {
  const period = (postponementBegins: unknown, postponementEnds: unknown) =>
    postponementOf(clientOf({ ...cells, postponementBegins, postponementEnds }));

  it("is read from both its dates", () => {
    expect(period("2026-01-22", 46181)).toEqual({
      begins: calendarDate("2026-01-22"),
      ends: calendarDate("2026-06-08"),
    });
    expect(period("2026-01-22", "2026-01-22")).toBeDefined();
  });

  it("may be left out, its cells blank in any way", () => {
    expect(period(null, 0)).toBeUndefined();
    expect(period("", undefined)).toBeUndefined();
  });

  it.each([
    [
      null,
      "2026-06-08",
      "postponementBegins",
      "The cell is blank, but postponementEnds has a date. Enter both dates, or neither.",
    ],
    [
      "2026-01-22",
      0,
      "postponementEnds",
      "The cell is blank, but postponementBegins has a date. Enter both dates, or neither.",
    ],
    [
      "2026-06-08",
      "2026-06-07",
      "postponementEnds",
      "6/7/2026 is before the postponement begins on 6/8/2026. Correct one of the two dates.",
    ],
  ] as [unknown, unknown, string, string][])(
    "is refused from %j to %j",
    (begins, ends, argument, sentences) => {
      expect(() => period(begins, ends)).toThrow(new InputError(argument, sentences));
    }
  );
});
