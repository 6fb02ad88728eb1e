/**
 * Who files, as far as it moves dates:
 * `resident`, the ordinary case; `abroad`, a citizen or resident living and working outside the country on the due date
 * (line 8 of the request); `nonresident`, Form 1040-NR without wages subject to withholding (line 9).
 */
export const FILER_TYPES = ["resident", "out of country", "nonresident"] as const;

/** Who files, as far as it moves dates. */
export type FilerType = (typeof FILER_TYPES)[number];
