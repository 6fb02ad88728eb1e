import { ROSTER_HEADINGS } from "../functions/rosterHeadings";
import type { ArgumentKind } from "./argumentKind";

const knownHeadings = Object.values(ROSTER_HEADINGS)
  .map((headings) => headings.join(", "))
  .join("; ");

/** Kinds of arguments that are a block of cells, for one client as a whole. */
export const blockKinds = {
  "payment-rows": {
    title: "Rows of day and amount",
    told: "A block two columns wide, a day and dollars in each row, in any order. Empty rows are passed over; a row that cannot be read is named by its number. Leave the argument out if nothing was paid. No payment lies before the tax year begins.",
    taken: ['{"2026-04-15",15000;46310,"$5,000"}'],
    refused: ['{"2026-04-15";"2026-10-15"}', '{"2026-04-15",-5}'],
  },
  "item-rows": {
    title: "Rows of label and amount",
    told: "A block two columns wide, a label and dollars in each row, in any order. Repeated labels add up, empty rows are passed over, capitals and punctuation do not matter. A label nobody knows is refused with its row, and the nearest is named. Gains, profits, rents, partnerships and other income may be losses.",
    taken: ['{"wages",75750}', '{"Schedule C",-2000;"K-1","$1,500";"children under 17",2}'],
    refused: ['{"wagse",100}', '{"wages"}'],
  },
  "change-rows": {
    title: "Rows of label and difference",
    told: "A block two columns wide, a label and the difference from last year in dollars, falls negative; empty rows are passed over. Only what a projection knows is taken. Left out, nothing changed.",
    taken: ['{"wages",-5000}', '{"business profit",12000;"children under 17",1}'],
    refused: ['{"withholding",100}'],
  },
  "money-range": {
    title: "Range of dollars",
    told: "One cell or a range of amounts to try, US dollars, zero or more; empty cells are passed over.",
    taken: ["{0;3000}", "500"],
    refused: ["-1"],
  },
  "day-range": {
    title: "Range of days",
    told: "One cell or a range of days to try, each a worksheet date or text written year-month-day, all after the tax year has ended; empty cells are passed over.",
    taken: ['{"2026-04-15","2026-10-15"}', "46127"],
    refused: ['"4/15/2026"', '"2025-06-30"'],
  },
  "client-list": {
    title: "Client list",
    told: `A block of cells: a row of headings, then a row a client. Columns may stand in any order, and columns whose headings are unknown are left alone. The headings that are known, each column by any of its names: ${knownHeadings}.`,
    taken: [],
    refused: [],
  },
} as const satisfies Readonly<Record<string, ArgumentKind>>;
