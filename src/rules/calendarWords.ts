/** Subjects of a client's calendar: the return itself, and what other law ties to its dates. */
export const CALENDAR_SUBJECTS = ["return", "retirement", "gift", "foreign", "elections"] as const;

/** Subject of a deadline. */
export type CalendarSubject = (typeof CALENDAR_SUBJECTS)[number];

/**
 * What an extension of time to file the return does to a deadline: moves it, or not; `automatic` means that the date needs no request,
 * `separate request` that it needs another one.
 */
export const EXTENSION_EFFECTS = ["moved", "not moved", "automatic", "separate request"] as const;

/** What an extension does to a deadline. */
export type ExtensionEffect = (typeof EXTENSION_EFFECTS)[number];
