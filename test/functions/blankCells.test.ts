import { describe, expect, it } from "vitest";
import { formulaCall } from "../../src/addin/answers/formulaCall";
import { catalog } from "../../src/functions/catalog";
import { fromCatalog } from "./fromCatalog";
import { inCell } from "./sheet";

/** An argument of an example. */
interface Place {
  readonly about: string;
  /** The answer with this value in the one cell of the argument. */
  readonly answerWith: (value: unknown) => unknown;
}

/** Every argument of every example of every function. */
const PLACES: readonly Place[] = Object.entries(catalog).flatMap(([id, { examples, ...one }]) =>
  examples.flatMap(({ formula }) => {
    const { values } = formulaCall(formula);
    return Object.keys(one.arguments).map((name, index): Place => {
      const length = Math.max(values.length, index + 1);
      const answerWith = (value: unknown): unknown => {
        const changed = Array.from({ length }, (_one, at) =>
          at === index ? [[value]] : values[at]
        );
        return inCell(fromCatalog(id), ...changed);
      };
      return { about: `${name} of ${formula}`, answerWith };
    });
  })
);

/** Where a blank cell and 0 are answered differently, and why neither misleads. */
const DIFFERENT: readonly (readonly [about: RegExp, reason: string])[] = [
  [/^totalTax of =EXT\.ISSUES\(/, "blank is a problem and 0 is a risk: both are pointed out"],
  [
    /^firstInstallment of =EXT\.ISSUES\(/,
    "0 says that no installment is required; without it there is one more reminder",
  ],
];

const isRefused = (answer: unknown): boolean =>
  typeof answer === "object" && answer !== null && "code" in answer;

// Some versions of Excel send a blank cell as 0 and others as null or empty text (OfficeDev/office-js, issues 4702, 1951 and 5262).
describe("a blank cell", () => {
  it("is the same as null and as empty text, in the place of every argument", () => {
    const differing = PLACES.filter(
      ({ answerWith }) => JSON.stringify(answerWith(null)) !== JSON.stringify(answerWith(""))
    );
    // The sentence quotes what was entered; both are refused.
    const isAnswered = ({ answerWith }: Place): boolean =>
      !isRefused(answerWith(null)) || !isRefused(answerWith(""));
    expect(differing.filter(isAnswered).map(({ about }) => about)).toEqual([]);
  });

  it("that arrives as 0 gets the answer of a blank cell, or a blank cell is refused", () => {
    const differing = PLACES.filter(({ answerWith }) => {
      const blank = answerWith(null);
      return !isRefused(blank) && JSON.stringify(blank) !== JSON.stringify(answerWith(0));
    }).map(({ about }) => about);
    const isListed = (about: string): boolean => DIFFERENT.some(([place]) => place.test(about));
    expect(differing.filter((about) => !isListed(about))).toEqual([]);
    for (const [place, reason] of DIFFERENT)
      expect(
        differing.some((about) => place.test(about)),
        reason
      ).toBe(true);
  });

  it("that arrives as 0 for the total tax is pointed out as a blank one is", () => {
    for (const totalTax of [null, 0])
      expect(
        inCell(fromCatalog("ISSUECOUNT"), 2025, totalTax ?? "", 15_000, 1000, "4/10/2026")
      ).toBe(1);
    const rows = inCell(fromCatalog("ISSUES"), 2025, 0, 15_000, 1000, "4/10/2026") as unknown[][];
    expect(rows.map(([, what]) => what)).toContain("The estimated total tax is 0");
  });
});
