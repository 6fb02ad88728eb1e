import { z } from "zod";
import { CALENDAR_SUBJECTS, EXTENSION_EFFECTS } from "../calendarWords";
import { date, datedTable, figure, listTable, text } from "./parts";

/** An act whose due date a postponement may move. A report goes to another office than the return, or has its own rules of relief. */
export const act = z.enum([
  "return",
  "extended return",
  "payment",
  "installment",
  "gift return",
  "report",
]);

/** An act whose due date a postponement may move. */
export type Act = z.infer<typeof act>;

/** A holiday has a fixed day of the month, or the occurrence of a weekday, never both. */
function isFixedOrOnWeekday(holiday: {
  readonly day?: number;
  readonly weekday?: number;
  readonly occurrence?: number;
}): boolean {
  const isFixed = holiday.day !== undefined;
  return (
    (holiday.weekday === undefined) === isFixed && (holiday.occurrence === undefined) === isFixed
  );
}

/** Tables of dates, by id. */
export const dateTables = {
  "return-due-date": datedTable({
    dayOfMonth: figure,
    regularMonth: figure,
    outOfCountryMonth: figure,
    nonresidentMonth: figure,
  }),
  "extension-of-time": datedTable({ months: figure }),
  "form-2350": datedTable({ months: figure, days: figure }),
  "like-kind-exchange": datedTable({ days: figure }),
  "refund-claims": listTable("claims", {
    claimedFrom: date,
    years: z.int().min(1),
    postponementsCounted: z.enum(["none", "nationwide", "all"]),
  }),
  "combat-zone": datedTable({ daysAfterLeaving: figure }),
  "legal-holidays": listTable("holidays", {
    name: text,
    month: z.int().min(1).max(12),
    day: z.exactOptional(z.int().min(1).max(31)),
    weekday: z.exactOptional(z.int().min(0).max(6)),
    occurrence: z.exactOptional(z.union([z.int().min(1).max(5), z.literal(-1)])),
    observed: z.enum(["nearest weekday", "Monday after a Sunday", "never on a weekend"]),
    fromYear: z.int(),
    throughYear: z.exactOptional(z.int()),
    everyYears: z.exactOptional(z.int().min(2)),
    states: z.exactOptional(z.array(z.string().regex(/^[A-Z]{2}$/)).min(1)),
  }).refine(
    ({ holidays }) => holidays.every(isFixedOrOnWeekday),
    "a holiday has a day, or a weekday with its occurrence"
  ),
  "nationwide-postponements": listTable("postponements", {
    dueFrom: date,
    dueThrough: date,
    postponementEnds: date,
    acts: z.array(act).min(1),
    periodDisregarded: z.boolean(),
  }),
  "companion-dates": listTable("dates", {
    what: text,
    subjects: z.array(z.enum(CALENDAR_SUBJECTS)).min(1),
    follows: z.enum(["payment", "regular return", "extended return", "tax year"]),
    month: z.exactOptional(z.int().min(1)),
    day: z.exactOptional(z.int().min(0).max(31)),
    monthWithoutExtension: z.exactOptional(z.int().min(1)),
    monthsAfter: z.exactOptional(z.int().min(1)),
    act: z.exactOptional(act),
    filerTypes: z.exactOptional(
      z.array(z.enum(["resident", "out of country", "nonresident"])).min(1)
    ),
    calendarYear: z.exactOptional(z.boolean()),
    fromTaxYear: z.exactOptional(z.int()),
    extension: z.enum(EXTENSION_EFFECTS),
  }).refine(
    ({ dates }) =>
      dates.every(
        ({ follows, month, day }) =>
          (month !== undefined) === (follows === "tax year") && (day === undefined) === !month
      ),
    "a date counted from the tax year has a month and a day, and no other has"
  ),
};
