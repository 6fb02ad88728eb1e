import type { Stage } from "../../calculation/season/requestStage";

/** How urgent a status is: it decides the color and the mark beside the words. */
export type Urgency = "good" | "open" | "warning" | "danger";

/** A status in words and how it is marked. */
export interface StatusLook {
  readonly words: string;
  readonly urgency: Urgency;
}

/** The statuses as the pane shows them. */
const STATUS_LOOKS: Readonly<Record<Stage, StatusLook>> = {
  "not requested": { words: "Not requested", urgency: "open" },
  unconfirmed: { words: "Requested, no proof yet", urgency: "warning" },
  rejected: { words: "Rejected, resend", urgency: "danger" },
  extended: { words: "Extended", urgency: "good" },
  filed: { words: "Filed", urgency: "good" },
  "past due": { words: "Past due", urgency: "danger" },
};

/** The status of a row whose record cannot be read. */
const UNREADABLE_LOOK: StatusLook = { words: "Cannot be read", urgency: "danger" };

/** How a status is shown; `undefined` is a record that cannot be read. */
export function statusLook(stage: Stage | undefined): StatusLook {
  return stage === undefined ? UNREADABLE_LOOK : STATUS_LOOKS[stage];
}

/** The statuses from the most urgent one on. */
export const STAGES_BY_URGENCY: readonly Stage[] = [
  "past due",
  "rejected",
  "unconfirmed",
  "not requested",
  "extended",
  "filed",
];

/** Days from the as-of date to a deadline, in words. */
export function daysText(days: number): string {
  const count = Math.abs(days);
  const unit = count === 1 ? "day" : "days";
  if (days === 0) return "today";
  return days > 0 ? `${count} ${unit} left` : `${count} ${unit} ago`;
}

/** A text with a capital first letter. */
export function capitalized(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
