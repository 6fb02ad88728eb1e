import { STATE_NAMES } from "../../calculation/state";

/** Abbreviations that are not the postal code with periods, as the Style Manual of the Government Publishing Office has them. */
const ABBREVIATIONS: Readonly<Record<string, string>> = {
  AL: "ala",
  AZ: "ariz",
  AR: "ark",
  CA: "calif",
  CO: "colo",
  CT: "conn",
  DE: "del",
  FL: "fla",
  IL: "ill",
  IN: "ind",
  KS: "kans",
  MA: "mass",
  MI: "mich",
  MN: "minn",
  MS: "miss",
  MT: "mont",
  NE: "nebr",
  NV: "nev",
  NM: "n. mex",
  ND: "n. dak",
  OK: "okla",
  OR: "oreg",
  SD: "s. dak",
  TN: "tenn",
  TX: "tex",
  WA: "wash",
  WV: "w. va",
  WI: "wis",
  WY: "wyo",
};

/** A name in capitals without its periods: `N.Y.` and `N. Mex.` are `NY` and `NMEX`. */
const bare = (name: string): string => name.replace(/\.\s*|,/g, "").toUpperCase();

const CODES: ReadonlyMap<string, string> = new Map([
  ...Object.entries(STATE_NAMES).map(([code, name]) => [bare(name), code] as const),
  ...Object.entries(ABBREVIATIONS).map(([code, short]) => [bare(short), code] as const),
  ["WASHINGTON DC", "DC"] as const,
]);

/** The names of the states as they are compared with a misspelled one, each with its postal code. */
export const CODE_OF_NAME: ReadonlyMap<string, string> = new Map(
  Object.entries(STATE_NAMES).map(([code, name]) => [name.toLowerCase(), code] as const)
);

/**
 * The postal code of a state.
 *
 * @param text - A postal code, a name or an abbreviation, in any case, with or without periods.
 * @returns The code in capitals; a text that is none of these comes back in capitals too.
 *
 * @example
 * postalCode("N.Y.") //=> "NY"
 * postalCode("Calif.") //=> "CA"
 */
export function postalCode(text: string): string {
  const name = bare(text);
  return CODES.get(name) ?? name;
}
