/**
 * Filer types, so far as they change a date.
 *
 * `resident` is the usual case. `out of country` is a citizen or resident whose home and place of business are outside the United
 * States and Puerto Rico on the due date (Form 4868, line 8). `nonresident` is a nonresident alien without wages subject to
 * withholding (line 9).
 */
export const FILER_TYPES = ["resident", "out of country", "nonresident"] as const;

/** A filer type. */
export type FilerType = (typeof FILER_TYPES)[number];
