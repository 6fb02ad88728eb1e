/** Sentences for the help on points that the law leaves open, for every function whose answer depends on them. */

/** A postponement that begins in the days by which a weekend or holiday moves a due date (sections 7503, 7508A). */
export const POSTPONEMENT_IN_WEEKEND =
  "A postponement that begins after the date in the law, but by the workday to which a weekend or holiday moves it, also counts; the law leaves this open, and it is the reading in the taxpayer's favor.";

/** Interest of a taxpayer out of the country whose postponement covers the June date, but not the April date (section 6601(b)(1)). */
export const INTEREST_OUT_OF_COUNTRY =
  "Out of the country, interest accrues from April without a break even if a postponement covers the June date but not the April date; the law leaves this open, and it is the cautious reading.";
