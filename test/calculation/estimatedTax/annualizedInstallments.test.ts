import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { annualizedInstallments } from "../../../src/calculation/estimatedTax/annualizedInstallments";
import { ZERO } from "../../../src/money/dollars";
import { dollarsUpTo, RUNS, usd } from "./givenEstimates";

const of = (due: readonly number[], regular: readonly number[]) =>
  annualizedInstallments(due.map(usd), regular.map(usd)).map((one) =>
    [one.earlier, one.annualized, one.regular, one.saved, one.regularAndSaved, one.required].join(
      " "
    )
  );

// 26 U.S.C. 6654(d)(2)(A), (B); Form 2210, Schedule AI, lines 22 to 27. The published schedules are in annualizedColumns.test.ts.
describe("annualized installments", () => {
  it("recapture in the next installment what an earlier one has saved", () => {
    expect(of([100, 2_900, 3_000, 4_000], [1_000, 1_000, 1_000, 1_000])).toEqual([
      "0 100 1000 0 1000 100",
      "100 2800 1000 900 1900 1900",
      "2000 1000 1000 0 1000 1000",
      "3000 1000 1000 0 1000 1000",
    ]);
  });

  it("go on saving what is not recaptured yet", () => {
    expect(of([0, 500, 900, 9_000], [1_000, 1_000, 1_000, 1_000])).toEqual([
      "0 0 1000 0 1000 0",
      "0 500 1000 1000 2000 500",
      "500 400 1000 1500 2500 400",
      "900 8100 1000 2100 3100 3100",
    ]);
  });

  it("are zero where less is due through one than through those before it", () => {
    expect(of([1_000, 600], [1_000, 1_000])).toEqual([
      "0 1000 1000 0 1000 1000",
      "1000 0 1000 0 1000 0",
    ]);
  });

  it("of a nonresident begin with half", () => {
    expect(of([3_000, 4_000, 5_000], [2_000, 1_000, 1_000])).toEqual([
      "0 3000 2000 0 2000 2000",
      "2000 2000 1000 0 1000 1000",
      "3000 2000 1000 0 1000 1000",
    ]);
  });

  const fourOf = fc.tuple(...([0, 1, 2, 3] as const).map(() => dollarsUpTo(20_000)));

  it("are through each date no more than the regular ones nor than what is due by then", () => {
    fc.assert(
      fc.property(fourOf, dollarsUpTo(10_000), (due, quarter) => {
        let sum = ZERO;
        annualizedInstallments(due, [quarter, quarter, quarter, quarter]).forEach((one, index) => {
          expect(one.required.isNegative()).toBe(false);
          expect(one.earlier.toString()).toBe(sum.toString());
          const before = sum;
          sum = sum.plus(one.required);
          const regularSoFar = quarter.times(index + 1);
          expect(sum.lessThanOrEqualTo(regularSoFar)).toBe(true);
          const most = due[index]?.greaterThan(before) === true ? due[index] : before;
          expect(sum.toString()).toBe(
            (most.lessThan(regularSoFar) ? most : regularSoFar).toString()
          );
        });
      }),
      RUNS
    );
  });

  it("are the regular ones where the income is even and the tax reaches the payment", () => {
    const quarter = usd(1_000);
    const due = [1, 2, 3, 4].map((number) => quarter.times(number));
    const found = annualizedInstallments(due, [quarter, quarter, quarter, quarter]);
    expect(found.map(({ required }) => required.toString())).toEqual([
      "1000",
      "1000",
      "1000",
      "1000",
    ]);
  });
});
