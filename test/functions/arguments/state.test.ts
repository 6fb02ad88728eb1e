import { describe, expect, it } from "vitest";
import { state } from "../../../src/functions/arguments/state";
import { STATE_NAMES, STATES } from "../../../src/calculation/state";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const stateOf = reading(state, "word");
const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("a state", () => {
  it.each(STATES.map((code) => [code]))("%s is read in any case", (code) => {
    expect(stateOf(code)).toBe(code);
    expect(stateOf(` ${code.toLowerCase()} `)).toBe(code);
    expect(stateOf(code.toUpperCase())).toBe(code);
  });

  it.each([[null], [undefined], [""], [0]])("%j is no state given", (cell) => {
    expect(stateOf(cell)).toBeUndefined();
  });

  it.each([
    ["ZZ", '"ZZ"'],
    ["New England", '"New England"'],
    ["M E", '"M E"'],
    [23, "23"],
    [true, "TRUE"],
  ])("%j is refused", (cell, quoted) => {
    expect(() => stateOf(cell)).toThrow(
      refused(
        `${quoted} is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.`
      )
    );
  });
});

describe("a state that is written otherwise", () => {
  // Style Manual of the Government Publishing Office, abbreviations of States (memory).
  it.each([
    ["N.Y.", "NY"],
    ["D.C.", "DC"],
    ["Washington, D.C.", "DC"],
    ["Calif.", "CA"],
    ["mass", "MA"],
    ["N. Mex.", "NM"],
    ["W. Va.", "WV"],
    ["N. Y.", "NY"],
    ["Vt.", "VT"],
  ])("%s is %s", (cell, code) => {
    expect(stateOf(cell)).toBe(code);
  });

  it.each([
    ["Mainee", "Maine"],
    ["Texass", "Texas"],
    ["pensylvania", "Pennsylvania"],
  ])("%s is refused with the closest name, %s", (cell, closest) => {
    expect(() => stateOf(cell)).toThrow(
      refused(
        `"${cell}" is not a state. The closest is ${closest}. Enter a postal code or a name, such as ME or Maine, or foreign.`
      )
    );
  });
});

/**
 * Postal codes and names of the 50 states and the District of Columbia.
 *
 * Source: United States Postal Service, Publication 28, Postal Addressing Standards, appendix B.
 */
const POSTAL = `
AL Alabama, AK Alaska, AZ Arizona, AR Arkansas, CA California,
CO Colorado, CT Connecticut, DE Delaware, DC District of Columbia, FL Florida,
GA Georgia, HI Hawaii, ID Idaho, IL Illinois, IN Indiana,
IA Iowa, KS Kansas, KY Kentucky, LA Louisiana, ME Maine,
MD Maryland, MA Massachusetts, MI Michigan, MN Minnesota, MS Mississippi,
MO Missouri, MT Montana, NE Nebraska, NV Nevada, NH New Hampshire,
NJ New Jersey, NM New Mexico, NY New York, NC North Carolina, ND North Dakota,
OH Ohio, OK Oklahoma, OR Oregon, PA Pennsylvania, RI Rhode Island,
SC South Carolina, SD South Dakota, TN Tennessee, TX Texas, UT Utah,
VT Vermont, VA Virginia, WA Washington, WV West Virginia, WI Wisconsin,
WY Wyoming
`
  .trim()
  .split(/,\s*/)
  .map((entry) => [entry.slice(3), entry.slice(0, 2)] as const);

describe("the name of a state", () => {
  it("is there for 50 states and the District of Columbia", () => {
    expect(new Set(POSTAL.map(([, code]) => code)).size).toBe(51);
  });

  it.each(POSTAL)("%s is read as %s, in any case and spacing", (name, code) => {
    expect(stateOf(name)).toBe(code);
    expect(stateOf(` ${name.toUpperCase().replaceAll(" ", "  ")} `)).toBe(code);
    expect(stateOf(name.toLowerCase())).toBe(code);
  });

  it("is read for every place with a postal code, each name once", () => {
    const names = Object.values(STATE_NAMES).map((name) => name.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
    for (const [code, name] of Object.entries(STATE_NAMES)) expect(stateOf(name)).toBe(code);
    expect(Object.keys(STATE_NAMES).toSorted()).toEqual(
      STATES.filter((code) => code !== "foreign").toSorted()
    );
  });
});
