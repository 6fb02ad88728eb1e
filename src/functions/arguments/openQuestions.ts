/** Sentences for the help on points that the law leaves open, for every function whose answer depends on them. */

/** A postponement that begins in the days by which a weekend or holiday moves a due date (sections 7503, 7508A). */
export const POSTPONEMENT_IN_WEEKEND =
  "If a weekend or holiday moves a due date, a postponement that begins by the date to which it moves also counts. The law does not settle this; the reading favors the taxpayer.";

/** Interest of a taxpayer out of the country whose postponement covers the June date, but not the April date (section 6601(b)(1)). */
export const INTEREST_OUT_OF_COUNTRY =
  "For a taxpayer out of the country, interest accrues from April without a break even if a postponement covers the June date but not the April date. The law does not settle this; the reading is the cautious one.";
