import { civil, written } from "./civilDays";

/** A date among the arguments. */
export interface Day {
  readonly day: number;
}

/** An argument as a user types it. `undefined` is omitted between its commas. A range is rows of cells. */
export type Typed =
  number | string | Day | undefined | readonly (readonly (number | string | Day)[])[];

/** A call of a worksheet function by name. */
export interface Call {
  readonly name: string;
  readonly values: readonly Typed[];
}

const SERIAL_OF_1970 = 25_569;

/** A date as a worksheet serial number. */
export const serialOfDay = (day: number): number => day + SERIAL_OF_1970;

/** Dollars from cents. */
export const dollars = (cents: number): number => cents / 100;

const isDay = (value: Typed): value is Day => typeof value === "object" && "day" in value;

/** Plain digits, because a sheet does not read 1e+21. */
const digits = (value: number): string =>
  value.toLocaleString("en-US", { useGrouping: false, maximumFractionDigits: 20 });

/** An array constant cannot contain a function, so that a date in it is text. */
function cellText(value: number | string | Day): string {
  if (typeof value === "number") return digits(value);
  return `"${isDay(value) ? written(value.day) : value.replaceAll('"', '""')}"`;
}

function argumentText(value: Typed): string {
  if (value === undefined) return "";
  if (typeof value === "number" || typeof value === "string") return cellText(value);
  if (!isDay(value)) return `{${value.map((row) => row.map(cellText).join(",")).join(";")}}`;
  const { year, month, date } = civil(value.day);
  return `DATE(${String(year)},${String(month)},${String(date)})`;
}

function withoutLast(values: readonly Typed[]): readonly Typed[] {
  const kept = values.findLastIndex((value) => value !== undefined);
  return values.slice(0, kept + 1);
}

/** The call as a formula for a sheet, without omitted arguments at the end. */
export function typedFormula({ name, values }: Call): string {
  return `=EXT.${name}(${withoutLast(values).map(argumentText).join(",")})`;
}

/** The same arguments as cell values: a date is its serial number. */
export function cellsOf({ values }: Call): readonly unknown[] {
  const cell = (value: number | string | Day): unknown =>
    isDay(value) ? serialOfDay(value.day) : value;
  return withoutLast(values).map((value) =>
    Array.isArray(value)
      ? (value as readonly (readonly (number | string | Day)[])[]).map((row) => row.map(cell))
      : value === undefined
        ? undefined
        : cell(value as number | string | Day)
  );
}
