import { statuteDates, type Whose } from "./statuteDates";

/**
 * How a request can still be made, from the words of the release and the publication, without code from src.
 *
 * IR-2025-41 (April 4, 2025), as reported: under the disaster postponement to May 1, 2025, requests after April 15 only on paper Form
 * 4868. So an electronic request is possible through the date on which the return would be due without the client's postponement, and
 * paper through the date with it. Pub. 1345: a rejected e-filed request, five calendar days from that date or from the rejection, the
 * earlier, but not before that date. Form 4868: an electronic payment is a request; fiscal-year filers use paper. A request is for time
 * after the due date (section 6081(a)): where the postponement reaches the extended due date there is none to request.
 */
export interface RequestDay {
  readonly whose: Whose;
  readonly isFiscal: boolean;
  readonly isPaying: boolean;
  readonly on: number;
  /** The date of the rejection, if it happened. */
  readonly rejected: number | undefined;
}

/** The method to use, the first of the form that is possible. */
export function openMethod({ whose, isFiscal, isPaying, on, rejected }: RequestDay): string {
  const { filing, extended } = statuteDates(whose);
  const paperThrough = filing.last;
  if (on <= paperThrough && extended.last <= paperThrough) return "not needed";
  if (isFiscal) return on <= paperThrough ? "paper" : "too late";
  const electronicThrough = statuteDates({ ...whose, postponement: undefined }).filing.last;
  const again =
    rejected === undefined || rejected > on
      ? electronicThrough
      : Math.max(electronicThrough, Math.min(electronicThrough, rejected) + 5);
  if (isPaying && on <= electronicThrough) return "electronic payment";
  if (on <= again) return "e-file";
  return on <= paperThrough ? "paper" : "too late";
}
