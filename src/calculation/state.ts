/**
 * Postal codes of the states, the District of Columbia, the possessions and the military mail areas, and `foreign`.
 *
 * Source: United States Postal Service, Publication 28, appendix B.
 */
export const STATES = [
  ..."AL AK AZ AR CA CO CT DE FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO".split(" "),
  ..."MT NE NV NH NJ NM NY NC ND OH OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY".split(" "),
  ..."DC AS GU MP PR VI AA AE AP".split(" "),
  "foreign",
] as const;

/** Postal code of a state, or `foreign`: one of `STATES`. */
export type State = string & { readonly state: unique symbol };

const known: ReadonlySet<string> = new Set(STATES);

/** Whether a text is one of `STATES`, as written there. */
export function isState(text: string): text is State {
  return known.has(text);
}
