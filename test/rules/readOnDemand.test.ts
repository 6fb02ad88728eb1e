import { describe, expect, it } from "vitest";
import { readOnDemand } from "../../src/rules/readOnDemand";

describe("tables read on demand", () => {
  const reads: string[] = [];
  const reading = (id: string) => () => {
    reads.push(id);
    return { id };
  };
  const tables = readOnDemand({ rates: reading("rates"), dates: reading("dates") });

  it("reads a table when it is first asked for, and only that one", () => {
    expect(reads).toEqual([]);
    expect(tables.rates).toBe(tables.rates);
    expect(reads).toEqual(["rates"]);
  });

  it("has every table in a spread", () => {
    expect({ ...tables }).toEqual({ rates: { id: "rates" }, dates: { id: "dates" } });
    expect(reads).toEqual(["rates", "dates"]);
  });
});
