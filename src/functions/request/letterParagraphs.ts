import type { Decimal } from "../../money/dollars";
import { costSentences } from "./letterCost";
import { writtenDollars } from "../cells/writtenDollars";
import type { LetterFacts } from "./letterFacts";
import { paymentSentences } from "./letterPayment";
import { returnSentences } from "./letterReturn";

/** What a paragraph of the letter is about. */
export type LetterTopic =
  "return" | "payment" | "cost" | "documents" | "other deadlines" | "estimates";

/** A paragraph of the letter, sentence by sentence. */
export interface LetterParagraph {
  readonly topic: LetterTopic;
  readonly sentences: readonly string[];
}

/** What the preparer chooses for the letter, beside the facts. */
export interface LetterChoices {
  /** Dollars and cents of penalties and interest; given for the full letter only. */
  readonly cost: Decimal | undefined;
  /** What the client still has to send; empty if nothing. */
  readonly stillNeeded: string;
}

/**
 * The paragraphs of a letter to the client: the return and its extension, what to pay and by when, the cost that follows from the
 * record and the plan, what is still needed, and that the amounts are estimates.
 *
 * @returns The paragraphs in order, without empty ones.
 */
export function letterParagraphs(
  facts: LetterFacts,
  { cost, stillNeeded }: LetterChoices
): readonly LetterParagraph[] {
  const { totalTax, payments, record, request, givesTime, plan } = facts;
  const isFiled = record.filedOn !== undefined;
  const isLate = !isFiled && request.missed !== undefined;
  const isExtending = !isFiled && !isLate && givesTime;
  const isFull = cost !== undefined;
  const costGrows = isLate && plan.balance.greaterThan(0) && record.paidOn === undefined;
  const paragraphs: readonly LetterParagraph[] = [
    { topic: "return", sentences: returnSentences(facts) },
    {
      topic: "payment",
      sentences: [
        ...(isExtending
          ? ["An extension of time to file is not an extension of time to pay."]
          : []),
        ...(isFull
          ? [
              `We estimate your total tax at ${writtenDollars(totalTax)} and your payments so far at ${writtenDollars(payments)}.`,
            ]
          : []),
        ...paymentSentences(facts),
      ],
    },
    {
      topic: "cost",
      sentences: [
        ...(costGrows
          ? ["Penalties and interest increase until the return is filed and the tax is paid."]
          : []),
        ...(isFull ? costSentences(facts, cost) : []),
      ],
    },
    {
      topic: "documents",
      sentences:
        stillNeeded === "" ? [] : [`We still need the following from you: ${stillNeeded}.`],
    },
    {
      topic: "other deadlines",
      sentences:
        isFull && isExtending
          ? [
              "Estimated tax payments and IRA contributions have their own deadlines, and an extension does not change them.",
              "Your state return has its own rules.",
            ]
          : [],
    },
    {
      topic: "estimates",
      sentences: [
        "These amounts are estimates based on the information we have now.",
        isFiled
          ? "They are not a bill, and the IRS may calculate different amounts."
          : "They are not a bill, and the return may show different amounts.",
      ],
    },
  ];
  return paragraphs.filter(({ sentences }) => sentences.length > 0);
}
