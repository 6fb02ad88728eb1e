import type { MethodForClient } from "../../calculation/request/requestMethods";

/** The best method that is still available, or "too late". Available methods come first in the list. */
export function bestMethod([best]: readonly MethodForClient[]): string {
  return best?.closedBecause === undefined ? (best?.method ?? "too late") : "too late";
}
