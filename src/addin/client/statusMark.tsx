import type { Stage } from "../../calculation/season/requestStage";
import { statusLook, type Urgency } from "./clientStatus";

/** The lines of each mark in a square of 16: a check, a ring, a triangle, a ring with a stroke. */
const MARKS: Readonly<Record<Urgency, string>> = {
  good: "M3 8.5 6.5 12 13 4.5",
  open: "M8 2.5a5.5 5.5 0 1 0 .01 0Z",
  warning: "M8 2 14.5 13.5h-13ZM8 6.5v3M8 11.6v.1",
  danger: "M8 1.5a6.5 6.5 0 1 0 .01 0ZM8 4.5v4.5M8 11.4v.1",
};

/** A mark that says with its shape what its color says. */
function Mark({ urgency }: { readonly urgency: Urgency }) {
  return (
    <svg class="mark" viewBox="0 0 16 16" aria-hidden="true">
      <path d={MARKS[urgency]} />
    </svg>
  );
}

/** A status in words, with its mark and color; `undefined` is a record that cannot be read. */
export function StatusMark({ stage }: { readonly stage: Stage | undefined }) {
  const { words, urgency } = statusLook(stage);
  return (
    <span class={`status ${urgency}`}>
      <Mark urgency={urgency} />
      {words}
    </span>
  );
}

/** The mark beside what is to be confirmed in the official text before it is used. */
export function ConfirmFirst({ why }: { readonly why: string }) {
  return (
    <p class="confirm">
      <span class="status warning">
        <Mark urgency="warning" />
        Confirm first
      </span>{" "}
      {why}
    </p>
  );
}
