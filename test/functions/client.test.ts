import { describe, expect, it } from "vitest";
import { client, datesOf } from "../../src/functions/client";

const cells = {
  taxYear: 2023,
  state: null,
  filerType: null,
  postponementBegins: null,
  postponementEnds: null,
};

describe("a client's dates", () => {
  it("are read from cells of which all but the year may be empty", () => {
    expect(client(cells)).toEqual({
      taxYear: { firstDay: "2023-01-01", lastDay: "2023-12-31" },
      filerType: "resident",
      circumstances: { state: undefined, postponement: undefined },
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
      (changed) => datesOf(client({ ...cells, ...changed })).regular.lastDay
    );
    expect(due).toEqual([
      "2024-04-15",
      "2025-04-15",
      "2024-04-17",
      "2024-06-17",
      "2024-06-17",
      "2024-07-15",
      "2024-04-15",
      "2024-04-17",
      "2024-04-15",
    ]);
  });

  it("stay right when more clients are asked for than are remembered", () => {
    const first = datesOf(client(cells));
    for (let day = 1; day <= 5_200; day++) {
      const postponementBegins = 36_526 + day;
      datesOf(client({ ...cells, postponementBegins, postponementEnds: postponementBegins + 1 }));
    }
    expect(datesOf(client(cells))).toEqual(first);
  });
});
