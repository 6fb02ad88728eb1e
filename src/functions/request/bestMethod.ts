import type { MethodForClient } from "../../calculation/request/requestMethods";

/** The best method that is still available, "not needed" or "too late". Available methods come first in the list. */
export function bestMethod([best]: readonly MethodForClient[]): string {
  if (best?.closedBecause === "a request gives no more time") return "not needed";
  return best?.closedBecause === undefined ? (best?.method ?? "too late") : "too late";
}
