import { z } from "zod";
import { figure, listTable, sourced, text } from "./parts";

/** What a term of a state's rule does. The worksheet shows these words. */
const effect = z.enum([
  "grants the extension",
  "limits the extension",
  "avoids a penalty",
  "electronic due date",
  "out of the country",
  "with the return",
  "request form",
  "payment form",
  "penalty",
  "interest",
  "note",
]);

/** What a term that grants the extension starts from. */
const grantedBy = z.enum(["automatic", "federal extension", "state request"]);

/** Month and day, such as 04-15. */
const dayOfYear = z.string().regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);

/** Why a term is in doubt, and from which tax year on; without a year it always is. */
const unsettled = z.strictObject({ fromTaxYear: z.exactOptional(z.int()), because: text });

/** One term of a state's rule. Any one term that grants the extension is enough. */
const term = z
  .strictObject({
    effect,
    by: z.exactOptional(grantedBy),
    percentPaid: z.exactOptional(figure),
    day: z.exactOptional(dayOfYear),
    fromTaxYear: z.exactOptional(z.int()),
    sourceTaxYear: z.exactOptional(z.int()),
    unsettled: z.exactOptional(unsettled),
    text,
    ...sourced,
  })
  .refine(
    ({ effect: does, by }) => (does === "grants the extension") === (by !== undefined),
    "a term that grants the extension, and no other, says by what"
  )
  .refine(
    ({ by, percentPaid, unsettled: doubt }) =>
      by !== undefined || (percentPaid === undefined && doubt === undefined),
    "only a term that grants the extension has a percent to pay or a doubt"
  );

/** The table of the states' extensions. A row without dates has no return to extend. */
export const stateTable = {
  "state-extensions": listTable("states", {
    state: z.string().regex(/^[A-Z]{2}$/),
    name: text,
    dueDay: z.exactOptional(dayOfYear),
    extendedDay: z.exactOptional(dayOfYear),
    fromTaxYear: z.exactOptional(z.int()),
    sourceTaxYear: z.exactOptional(z.int()),
    terms: z.array(term).min(1),
  }),
};
