import { z } from "zod";
import { figure, listTable, text } from "./parts";

/** How a state grants an extension of time to file. */
const grant = z.enum([
  "automatic",
  "automatic if paid",
  "with the federal extension",
  "with the federal extension if paid",
  "own request",
  "no return",
]);

/** Month and day, such as 04-15. */
const dayOfYear = z.string().regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);

/** The table of the states' extensions. */
export const stateTable = {
  "state-extensions": listTable("states", {
    state: z.string().regex(/^[A-Z]{2}$/),
    name: text,
    grant,
    dueDay: z.exactOptional(dayOfYear),
    extendedDay: z.exactOptional(dayOfYear),
    percentPaid: z.exactOptional(figure),
    fromTaxYear: z.exactOptional(z.int()),
    sourceTaxYear: z.exactOptional(z.int()),
    unsettled: z.exactOptional(text),
    requestForm: z.exactOptional(text),
    paymentForm: z.exactOptional(text),
    condition: text,
    additions: z.exactOptional(text),
    interest: z.exactOptional(text),
    note: z.exactOptional(text),
  }),
};
