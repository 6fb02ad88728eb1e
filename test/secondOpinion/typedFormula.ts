import { civil, written } from "./civilDays";

/** A day among the arguments. */
export interface Day {
  readonly day: number;
}

/** An argument as a person types it; `undefined` is left out between its commas. A block is rows of cells. */
export type Typed =
  number | string | Day | undefined | readonly (readonly (number | string | Day)[])[];

/** A call of a worksheet function by name. */
export interface Call {
  readonly name: string;
  readonly values: readonly Typed[];
}

const SERIAL_OF_1970 = 25_569;

/** A day as a worksheet serial. */
export const serialOfDay = (day: number): number => day + SERIAL_OF_1970;

/** A number of cents in dollars. */
export const dollars = (cents: number): number => cents / 100;

const isDay = (value: Typed): value is Day => typeof value === "object" && "day" in value;

/** Plain digits: a sheet takes no 1e+21. */
const digits = (value: number): string =>
  value.toLocaleString("en-US", { useGrouping: false, maximumFractionDigits: 20 });

/** In an array constant a sheet takes no function, so that a day there is text. */
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

/** The call as a formula that can be typed into a sheet, what is left out at its end dropped. */
export function typedFormula({ name, values }: Call): string {
  return `=EXT.${name}(${withoutLast(values).map(argumentText).join(",")})`;
}

/** The same arguments as cells hold them: a day is its serial. */
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
