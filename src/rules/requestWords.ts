/** Methods to request the extension. */
export const METHODS = ["electronic payment", "e-file", "paper"] as const;

/** A method to request the extension. */
export type RequestMethod = (typeof METHODS)[number];

/** Severities of an issue: the request fails as it is, it may cost money, or there is something to remember. */
export const SEVERITIES = ["problem", "risk", "reminder"] as const;

/** Severity of an issue. */
export type Severity = (typeof SEVERITIES)[number];
