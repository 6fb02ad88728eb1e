import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ErrorCell } from "../../../src/functions/cells/hostError";
import { InputError } from "../../../src/functions/cells/inputError";
import { readRows } from "../../../src/functions/cells/readRows";
import { sentenceOf } from "../arguments/reading";

/** Reads rows of numbers; a negative one is bad, and its place is the row. */
const read = (rows: readonly number[]): number[] =>
  readRows(
    "items",
    rows.map((value, index) => ({ value, place: `items row ${String(index + 1)}` })),
    ({ value, place }) => {
      if (value < 0) throw new InputError(place, `${String(value)} is bad. Enter a good one.`);
      return value;
    }
  );

describe("rows that are read together", () => {
  it("come back in order", () => {
    expect(read([3, 1, 2])).toEqual([3, 1, 2]);
    expect(read([])).toEqual([]);
  });

  it("are refused with the one that cannot be read", () => {
    expect(sentenceOf(() => read([1, -2, 3]))).toBe("items row 2: -2 is bad. Enter a good one.");
  });

  it("are refused with all that cannot be read: three in full, the rows of the others", () => {
    expect(sentenceOf(() => read([-1, 2, -3]))).toBe(
      "items: 2 entries must be corrected. Row 1: -1 is bad. Enter a good one. Row 3: -3 is bad. Enter a good one."
    );
    expect(sentenceOf(() => read([-1, 2, -3, -4, -5, 6, -7]))).toBe(
      "items: 5 entries must be corrected. Row 1: -1 is bad. Enter a good one. Row 3: -3 is bad. Enter a good one. Row 4: -4 is bad. Enter a good one. And 2 more: row 5; row 7."
    );
  });

  it("of which thousands cannot be read are refused in a sentence of limited length", () => {
    const sentence = sentenceOf(() => read(Array.from({ length: 5_000 }, () => -1)));
    expect(sentence).toMatch(/^items: 5,000 entries .* And 4,997 more: row 4; .*; row 7 …\.$/);
    expect(sentence.length).toBeLessThanOrEqual(250);
  });

  it("are explained as far as the sentence stays short, first without what to enter", () => {
    const long = (index: number) =>
      new InputError(
        `items row ${String(index)}`,
        `"${"x".repeat(40)}" is not a recognized label. Enter a label such as "wages", or one of the others.`
      );
    const sentence = sentenceOf(() =>
      readRows("items", [1, 2, 3, 4], (index) => {
        throw long(index);
      })
    );
    const quoted = `"${"x".repeat(40)}"`;
    expect(sentence).toBe(
      `items: 4 entries must be corrected. Row 1: ${quoted} is not a recognized label. Enter a label such as "wages", or one of the others. And 3 more: row 2; row 3; row 4.`
    );
  });

  it("pass an error cell through, and a bug stays one", () => {
    const throwing = (thrown: Error) => () =>
      readRows("items", [1], () => {
        throw thrown;
      });
    expect(throwing(new ErrorCell("#REF!"))).toThrow(ErrorCell);
    expect(throwing(new RangeError("a bug"))).toThrow(RangeError);
  });

  it("name every row that is bad, if they are few", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -5, max: 5 }), { maxLength: 7 }), (rows) => {
        const bad = rows.flatMap((value, index) => (value < 0 ? [index + 1] : []));
        if (bad.length === 0) return;
        const sentence = sentenceOf(() => read(rows));
        const named = [...sentence.matchAll(/\brow (\d+)/gi)].map(([, row]) => Number(row));
        expect(named).toEqual(bad);
      }),
      { seed: 4868 }
    );
  });
});
