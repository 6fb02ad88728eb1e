import { describe, expect, it } from "vitest";
import { rulebook } from "../../src/rules/rulebook";
import { written } from "../../src/calendar/calendarDate";
import published from "../fixtures/published/underpayment-rates.json";

const quarters = (from: string, through: string): string[] => {
  const all: string[] = [];
  for (let year = Number(from.slice(0, 4)); `${String(year)}-01-01` <= through; year++) {
    for (const month of ["01", "04", "07", "10"]) all.push(`${String(year)}-${month}-01`);
  }
  return all.filter((day) => day >= from && day <= through);
};

describe("the underpayment rates", () => {
  const { entries, knownThrough } = rulebook.underpaymentRate;

  // Source: Rev. Rul. 2024-18 and the later rulings, as the fixture says.
  it("are those published, quarter by quarter", () => {
    const held = entries.map(({ from, figures }) => ({
      from: written(from),
      rate: figures.rate.toNumber(),
    }));
    expect(held).toEqual(published.values);
  });

  // 26 U.S.C. 6621(b): the rates are set for each calendar quarter.
  it("miss no quarter through the last one known", () => {
    const begins = entries.map(({ from }) => written(from));
    expect(begins).toEqual(quarters(begins[0] ?? "", written(knownThrough)));
  });

  // 26 U.S.C. 6621(a)(2): a whole per cent plus three.
  it("are whole per cents", () => {
    expect(entries.filter(({ figures }) => !figures.rate.times(100).isInteger())).toEqual([]);
  });
});
