import { describe, expect, it } from "vitest";
import {
  figure,
  filerType,
  installmentNumber,
  state,
  yesNo,
} from "../../src/functions/wordArguments";
import { FILER_TYPES } from "../../src/calculation/filerType";
import { STATES } from "../../src/calculation/state";
import { InputError } from "../../src/inputError";
import { ruleTables } from "../../src/rules/ruleTables";

const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("who files", () => {
  it.each([...FILER_TYPES])("%s is read as written", (word) => {
    expect(filerType("word", word)).toBe(word);
  });

  it.each([
    ["ABROAD", "out of country"],
    [" Nonresident ", "nonresident"],
    [null, "resident"],
    [undefined, "resident"],
    ["", "resident"],
    [0, "resident"],
  ])("%j is %s", (cell, read) => {
    expect(filerType("word", cell)).toBe(read);
  });

  it.each([
    ["overseas", '"overseas"'],
    ["non resident", '"non resident"'],
    [1, "1"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => filerType("word", cell)).toThrow(
      refused(`${quoted} is none of resident, abroad, nonresident`)
    );
  });
});

describe("a state", () => {
  it.each(STATES.map((code) => [code]))("%s is read in any case", (code) => {
    expect(state("word", code)).toBe(code);
    expect(state("word", ` ${code.toLowerCase()} `)).toBe(code);
    expect(state("word", code.toUpperCase())).toBe(code);
  });

  it.each([[null], [undefined], [""], [0]])("%j is no state given", (cell) => {
    expect(state("word", cell)).toBeUndefined();
  });

  it.each([
    ["ZZ", '"ZZ"'],
    ["Maine", '"Maine"'],
    ["M E", '"M E"'],
    [23, "23"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => state("word", cell)).toThrow(
      refused(`${quoted} is no state; give a postal code such as ME, or foreign`)
    );
  });
});

describe("yes or no", () => {
  it.each([[true], [1], ["yes"], ["Y"], ["x"], [" X "], ["TRUE"], ["1"]])("%j is yes", (cell) => {
    expect(yesNo("word", cell)).toBe(true);
  });

  it.each([[false], [0], ["no"], ["N"], ["false"], ["0"], [null], [undefined], [""], [" "]])(
    "%j is no",
    (cell) => {
      expect(yesNo("word", cell)).toBe(false);
    }
  );

  it.each([
    ["maybe", '"maybe"'],
    ["yes.", '"yes."'],
    [2, "2"],
    [-1, "-1"],
    [Number.NaN, "NaN"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => yesNo("word", cell)).toThrow(
      refused(`${quoted} is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0`)
    );
  });
});

describe("the number of an installment", () => {
  it.each([
    [1, 1],
    [2, 2],
    ["3", 3],
    [" 4 ", 4],
  ])("%j is %i", (cell, number) => {
    expect(installmentNumber("word", cell)).toBe(number);
  });

  it.each([
    [0, "0"],
    [5, "5"],
    [1.5, "1.5"],
    [-1, "-1"],
    ["first", '"first"'],
    ["", '""'],
    [null, "nothing"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => installmentNumber("word", cell)).toThrow(
      refused(`${quoted} is no installment; give 1, 2, 3 or 4`)
    );
  });
});

describe("a figure of the rules", () => {
  it.each([...ruleTables.keys()])("is known by its id, with hyphens or spaces: %s", (id) => {
    expect(figure("word", id).id).toBe(id);
    expect(figure("word", ` ${id.replaceAll("-", "  ").toUpperCase()} `).id).toBe(id);
  });

  it.each([...ruleTables.values()].map(({ title, id }) => [title, id]))(
    "is known by its title: %s",
    (title, id) => {
      expect(figure("word", title.toUpperCase()).id).toBe(id);
    }
  );

  it.each([
    ["underpayment rates", '"underpayment rates"', "underpayment-rate"],
    ["failure to pey", '"failure to pey"', "failure-to-pay"],
    ["holidays", '"holidays"', "legal-holidays"],
  ])("%j is refused, naming the nearest", (cell, quoted, nearest) => {
    expect(() => figure("word", cell)).toThrow(
      refused(
        `${quoted} is no figure of the rules; the nearest is ${nearest}, EXT.RULETABLES lists them all`
      )
    );
  });

  it.each([[7], [true], ["x".repeat(5_000)]])("%j is refused, naming some figure", (cell) => {
    expect(() => figure("word", cell)).toThrow(
      / is no figure of the rules; the nearest is [a-z-]+,/
    );
  });

  it.each([[null], [""], [0]])("is missing in %j, so it is said where all are named", (cell) => {
    expect(() => figure("word", cell)).toThrow(
      refused(
        "is empty; give the name of a table such as underpayment rate, EXT.RULETABLES lists them all"
      )
    );
  });
});
