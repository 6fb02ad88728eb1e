/** The five filing statuses. */
export const FILING_STATUSES = ["single", "joint", "separate", "head", "survivor"] as const;

/** A filing status. */
export type FilingStatus = (typeof FILING_STATUSES)[number];
