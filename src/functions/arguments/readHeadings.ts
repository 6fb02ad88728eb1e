import { once } from "../../calendar/once";
import { cellValue, isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainText } from "./argumentKind";
import { CLIENT_LIST_HEADINGS, PAYMENT_PARTS, type ClientListField } from "./clientListHeadings";
import { closestName } from "./closestName";
import { headingKey, namesNumber } from "./headingWords";
import { refuseAbsent, type OwnHeadings } from "./ownHeadings";

/** The columns that a client list must have. */
const NEEDED: readonly ClientListField[] = ["totalTax", "payments"];
const FIELDS = Object.keys(CLIENT_LIST_HEADINGS) as ClientListField[];

type Meaning = ClientListField | "part of payments";

/** No heading above names a year, so any will do. */
const ANY_YEAR = 2000;
const meanings = once<ReadonlyMap<string, Meaning>>(
  () =>
    new Map<string, Meaning>([
      ...FIELDS.flatMap((field) =>
        CLIENT_LIST_HEADINGS[field].map(
          (heading) => [headingKey(heading, ANY_YEAR), field] as const
        )
      ),
      ...PAYMENT_PARTS.map(
        (heading) => [headingKey(heading, ANY_YEAR), "part of payments"] as const
      ),
    ])
);

/** The columns whose cells can be a share of the tax. */
const SHARES: readonly Meaning[] = ["target", "cushion"];

/** What a heading means by itself. A share in percent is no amount: "90% paid" is an answer of ROSTER, and no payment. */
function meaningByItself(heading: string, taxYear: number): Meaning | undefined {
  const meaning = meanings().get(headingKey(heading, taxYear));
  if (meaning === undefined || !/%|\b(percent|pct)\b/i.test(heading)) return meaning;
  return SHARES.includes(meaning) ? meaning : undefined;
}

/** How one heading of a client list is read. */
export interface HeadingReading {
  /** Position of the column, counted from 0. */
  readonly index: number;
  readonly heading: string;
  /** The column that it is read as; `undefined` if it is not used. */
  readonly field?: ClientListField | undefined;
  /** Whether it is added to others to give the payments. */
  readonly isPart: boolean;
}

/** What the user enters for a heading that is not to be used. */
export const NOT_USED = "not used";

function meaningOf(
  name: string,
  heading: string,
  taxYear: number,
  own: OwnHeadings
): Meaning | undefined {
  const given = own.get(plainText(heading))?.means;
  if (given === undefined) return meaningByItself(heading, taxYear);
  const meaning = meanings().get(headingKey(given, taxYear));
  if (meaning !== undefined || plainText(given) === NOT_USED) return meaning;
  throw new InputError(
    name,
    `${shown(given)} is not a heading that is read, so ${shown(heading)} cannot mean it. Enter a heading such as Total tax, or not used.`
  );
}

/**
 * What each heading of a client list means by itself, whatever the others are.
 *
 * @param name - The argument, for the error message.
 * @param headings - The first row of the list.
 * @param listYear - The tax year of the list, by which "2024 total tax" is the tax of the year before. `undefined` if each client
 *   has a year of its own: then it is the latest year in the headings.
 * @param own - The user's own headings.
 * @returns The meanings, in order; blank headings are left out.
 * @throws InputError when the user's own meaning of a heading is not known.
 */
export function meaningsOf(
  name: string,
  headings: readonly unknown[],
  listYear: number | undefined,
  own: OwnHeadings = new Map()
): readonly HeadingReading[] {
  const taxYear = listYear ?? latestYearIn(headings);
  return headings.flatMap((cell, index) => {
    const value = cellValue(cell);
    if (typeof value !== "string" || value.trim() === "") return [];
    const meaning = meaningOf(name, value, taxYear, own);
    const isPart = meaning === "part of payments";
    return [{ index, heading: value, field: isPart ? ("payments" as const) : meaning, isPart }];
  });
}

/**
 * Reads the headings of a client list. The parameters are those of {@link meaningsOf}.
 *
 * @returns How each heading is read, in order; blank ones are left out.
 * @throws InputError when two headings mean the same column, a required one is missing, or the list does not have a heading of the
 *   user's own.
 */
export function readHeadings(
  name: string,
  headings: readonly unknown[],
  listYear: number | undefined,
  own: OwnHeadings = new Map()
): readonly HeadingReading[] {
  refuseAbsent(headings, own);
  const withTotal = dropCounted(name, meaningsOf(name, headings, listYear, own));
  const found = dropNumbers(withTotal);
  for (const [position, { field, heading, isPart }] of found.entries()) {
    const same = found.slice(0, position).find((one) => one.field === field);
    if (field !== undefined && same && !isPart)
      throw new InputError(
        name,
        `The headings ${shown(same.heading)} and ${shown(heading)} mean the same column. Keep one of them.`
      );
  }
  requireHeadings(name, headings, found);
  checkNeeded(name, found);
  return found;
}

/** Refuses a first row that is a client, or a title above the headings. */
function requireHeadings(
  name: string,
  cells: readonly unknown[],
  read: readonly HeadingReading[]
): void {
  const values = cells.map((cell) => cellValue(cell)).filter((value) => !isBlankOrZero(value));
  const [first] = values;
  if (cells.length > 1 && values.length === 1 && typeof first === "string")
    throw new InputError(
      name,
      `The first row has only ${shown(first)}, and the cells beside it are blank. Select the list from the row of its headings.`
    );
  const isKnown = read.some(({ field }) => field !== undefined && field !== "client");
  if (!isKnown && values.some((value) => typeof value === "number"))
    throw new InputError(
      name,
      "The first row looks like a client, not like headings. Add a row of headings above the clients, and select it with them."
    );
}

function latestYearIn(headings: readonly unknown[]): number {
  const years = headings.flatMap((cell) => String(cellValue(cell)).match(/\b20\d\d\b/g) ?? []);
  return Math.max(ANY_YEAR, ...years.map(Number));
}

/** How many cells of a row are headings of a client list, by which the row of the headings is found. */
export function headingsRead(cells: readonly unknown[]): number {
  return cells.filter(
    (cell) => typeof cell === "string" && meaningByItself(cell, ANY_YEAR) !== undefined
  ).length;
}

/** Parts of the payments are not added to a column that has their total. */
function dropCounted(name: string, read: readonly HeadingReading[]): readonly HeadingReading[] {
  const whole = read.find(({ field, isPart }) => field === "payments" && !isPart);
  const part = read.find(({ isPart }) => isPart);
  if (!whole || !part) return read;
  if (!/\b(tot|total)\b|\bline 5\b/i.test(whole.heading))
    throw new InputError(
      name,
      `${shown(whole.heading)} may include ${shown(part.heading)}. Change the first heading to "Total payments" or to "Other payments".`
    );
  return read.map((one) => (one.isPart ? { ...one, field: undefined, isPart: false } : one));
}

/** A column with the clients' numbers names the clients only if no other does. */
function dropNumbers(read: readonly HeadingReading[]): readonly HeadingReading[] {
  const isNumber = ({ heading }: HeadingReading): boolean => namesNumber(heading);
  const isNamed = read.some((one) => one.field === "client" && !isNumber(one));
  return read.map((one) =>
    isNamed && one.field === "client" && isNumber(one) ? { ...one, field: undefined } : one
  );
}

function checkNeeded(name: string, read: readonly HeadingReading[]): void {
  const missing = NEEDED.filter((needed) => !read.some(({ field }) => field === needed));
  if (missing.length === 0) return;
  const wanted = missing.map((field) => CLIENT_LIST_HEADINGS[field][0].toLowerCase());
  const unused = read.filter(({ field }) => field === undefined).map(({ heading }) => heading);
  const nearest =
    unused.length === 0 ? "" : ` The nearest is ${shown(closestName(wanted[0] ?? "", unused))}.`;
  const column = missing.length > 1 ? "those columns" : "that column";
  throw new InputError(
    name,
    `The first row has no heading for ${wanted.join(" and ")}.${nearest} Add ${column}.`
  );
}
