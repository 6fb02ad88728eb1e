import { Decimal } from "decimal.js";
import type { EngineFunction, EngineValue } from "./functionBridge";
import { atFifteenDigits, decimal, FunctionError, number } from "./nativeArguments";
import { NEARLY_WHOLE } from "./nativeRounding";
import { dateOfParts, day, month, networkDays, weekday, workday, year } from "./nativeDates";

/** The function of this bridge that gives a number the digits that Excel compares. */
export const FIFTEEN_DIGITS = "FIFTEEN.DIGITS";

function finite(value: number): number {
  if (Number.isFinite(value)) return value;
  throw new FunctionError("#NUM!");
}

/** CEILING and FLOOR: a multiple of the significance; both may be negative, or the number alone. */
function multiple(round: (quotient: Decimal) => Decimal, ifZero: number | undefined) {
  return (values: readonly EngineValue[]): number => {
    const [of, significance] = [number(values[0]), number(values[1])];
    if (of === 0) return 0;
    if (significance === 0) {
      if (ifZero === undefined) throw new FunctionError("#DIV/0!");
      return ifZero;
    }
    if (of > 0 && significance < 0) throw new FunctionError("#NUM!");
    const step = decimal(significance);
    return round(decimal(of).div(step)).times(step).toNumber();
  };
}

function roundedAt(values: readonly EngineValue[]): number {
  const [of, places] = [decimal(number(values[0])), Math.trunc(number(values[1]))];
  const scale = new Decimal(10).pow(places);
  const rounded = of.abs().times(scale).round().div(scale);
  return (of.isNegative() ? rounded.neg() : rounded).toNumber();
}

function futureValue(values: readonly EngineValue[]): number {
  const [rate = 0, periods = 0, payment = 0, present = 0, type = 0] = values.map((value) =>
    number(value)
  );
  if (rate === 0) return -(present + payment * periods);
  const growth = (1 + rate) ** periods;
  return finite(-(present * growth + (payment * (1 + rate * type) * (growth - 1)) / rate));
}

function numberOfPeriods(values: readonly EngineValue[]): number {
  const [rate = 0, payment = 0, present = 0, future = 0, type = 0] = values.map((value) =>
    number(value)
  );
  if (rate === 0) return finite(-(present + future) / payment);
  const due = payment * (1 + rate * type);
  return finite(Math.log((due - future * rate) / (due + present * rate)) / Math.log(1 + rate));
}

type Calculate = (values: readonly EngineValue[]) => number;
type Corrected = [name: string, least: number, most: number, of: Calculate];

const CORRECTED: readonly Corrected[] = [
  ["CEILING", 2, 2, multiple((quotient) => quotient.ceil(), 0)],
  ["DATE", 3, 3, dateOfParts],
  ["DAY", 1, 1, day],
  ["FLOOR", 2, 2, multiple((quotient) => quotient.floor(), undefined)],
  ["FV", 3, 5, futureValue],
  ["MONTH", 1, 1, month],
  ["NETWORKDAYS.INTL", 2, 4, networkDays],
  ["NPER", 3, 5, numberOfPeriods],
  ["ROUND", 2, 2, roundedAt],
  ["VALUE", 1, 1, (values) => number(values[0])],
  ["WEEKDAY", 1, 2, weekday],
  ["WORKDAY.INTL", 2, 4, workday],
  ["YEAR", 1, 1, year],
];

function answered(calculate: () => number): EngineValue {
  try {
    return { kind: 1, value: calculate() };
  } catch (error) {
    if (!(error instanceof FunctionError)) throw error;
    return { kind: 4, code: error.code };
  }
}

const TINY = 1e-9;

/** Versions of functions of the calculating library that return what Excel does, where the library does not. */
export class NativeCorrections {
  /** The formulas in which a number is so nearly whole or 0 that Excel may read it otherwise. */
  readonly doubtful = new Set<number>();

  /** The functions by name. */
  functions(): Map<string, EngineFunction> {
    const functions = new Map<string, EngineFunction>();
    for (const [name, minArity, maxArity, of] of CORRECTED)
      functions.set(name, {
        minArity,
        maxArity,
        invoke: (values) => answered(() => of(values as EngineValue[])),
      });
    for (const [name, { least, most, of }] of Object.entries(NEARLY_WHOLE))
      functions.set(name, {
        minArity: least + 1,
        maxArity: most + 1,
        invoke: ([site, ...values]) =>
          answered(() => {
            const [plain, result] = of(values as EngineValue[]);
            if (Math.abs(plain - result) > TINY) this.#doubt(site as EngineValue);
            return result;
          }),
      });
    const invoke = ([value, site]: unknown[]): EngineValue =>
      this.#fifteenDigits(value as EngineValue, site as EngineValue | undefined);
    return functions.set(FIFTEEN_DIGITS, { minArity: 1, maxArity: 2, invoke });
  }

  #doubt(site: EngineValue): void {
    if (site.kind === 1) this.doubtful.add(site.value);
  }

  /** A value of a comparison; the second argument is the formula, if the value is a sum or difference. */
  #fifteenDigits(value: EngineValue, site: EngineValue | undefined): EngineValue {
    if (value.kind === 5) {
      const rows = value.rows.map((row) => row.map((cell) => this.#fifteenDigits(cell, site)));
      return { ...value, rows };
    }
    if (value.kind !== 1) return value;
    if (site !== undefined && value.value !== 0 && Math.abs(value.value) < TINY) this.#doubt(site);
    return { kind: 1, value: atFifteenDigits(value.value) };
  }
}
