import { z } from "zod";

/** A text that says something. */
export const text = z.string().min(1);

/** The name of a file of rules/, without the ending. */
export const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

/** A date, written YYYY-MM-DD, that exists. */
export const date = z.iso.date();

/** A figure, written as text so that it never passes through binary fractions: "0.07", "10275". */
export const figure = z.string().regex(/^(0|[1-9]\d*)(\.\d+)?$/);

/** The document that says so, a key of rules/sources.json, and the place in it. */
const source = z.strictObject({ document: id, at: text });

/** How well an entry is known: read in the official text, read in a report of it, or known only from memory. */
const confidence = z.enum(["official", "secondary", "memory"]);

/** How well an entry is known. */
export type Confidence = z.infer<typeof confidence>;

/** What each entry of a dated table, each row of a list and each part of a row with a source of its own says of itself. */
export const sourced = { source, confidence };

/** Figures by filing status; `others` is for every status that is not named. */
export const byStatus = {
  /** The four columns of the rate schedules; a qualifying surviving spouse uses the joint one. */
  columns: <Figure extends z.ZodType>(of: Figure) =>
    z.strictObject({ single: of, joint: of, separate: of, head: of }),
  joint: <Figure extends z.ZodType>(of: Figure) => z.strictObject({ joint: of, others: of }),
  separate: <Figure extends z.ZodType>(of: Figure) => z.strictObject({ separate: of, others: of }),
  jointAndSeparate: <Figure extends z.ZodType>(of: Figure) =>
    z.strictObject({ joint: of, separate: of, others: of }),
  jointSurvivorAndSeparate: <Figure extends z.ZodType>(of: Figure) =>
    z.strictObject({ joint: of, survivor: of, separate: of, others: of }),
  unmarried: <Figure extends z.ZodType>(of: Figure) =>
    z.strictObject({ single: of, head: of, others: of }),
};

const rises = (limits: readonly (string | undefined)[]): boolean =>
  limits.every((limit, place) => place === 0 || Number(limit) > Number(limits[place - 1]));

/** Rates of a bracketed tax, the lowest first; the last has no limit. */
export const brackets = z
  .array(z.strictObject({ upTo: z.exactOptional(figure), rate: figure }))
  .min(2)
  .refine((list) => list.at(-1)?.upTo === undefined, "the last bracket has no limit")
  .refine((list) => rises(list.slice(0, -1).map(({ upTo }) => upTo)), "limits rise");

/** Rows of a printed table, the lowest first, each width up to a limit. */
export const tableRows = z
  .array(z.strictObject({ upTo: figure, width: figure }))
  .min(1)
  .refine((list) => rises(list.map(({ upTo }) => upTo)), "limits rise");

const head = { id, title: text, keyedBy: text };

/**
 * A table of figures by effective date.
 *
 * @param figures - The figures of each entry; `units` explains each of them.
 */
export const datedTable = <Figures extends z.ZodRawShape>(figures: Figures) =>
  z.strictObject({
    ...head,
    units: z.strictObject(
      Object.fromEntries(Object.keys(figures).map((name) => [name, text])) as Record<
        keyof Figures & string,
        typeof text
      >
    ),
    knownThrough: date,
    values: z.array(z.strictObject({ from: date, ...figures, ...sourced })).min(1),
  });

/**
 * A table that is a list of cases.
 *
 * @param rows - What the file calls its rows.
 * @param row - One row, without source and confidence.
 */
export const listTable = <Name extends string, Row extends z.ZodRawShape>(rows: Name, row: Row) => {
  const written = z.array(z.strictObject({ ...row, ...sourced })).min(1);
  return z.strictObject({
    ...head,
    units: z.record(z.string(), text),
    knownFrom: date,
    knownThrough: date,
    ...sourced,
    ...({ [rows]: written } as Record<Name, typeof written>),
  });
};
