import type { Decimal } from "decimal.js";
import { decimal, FunctionError, number } from "./nativeArguments";
import type { EngineValue } from "./functionBridge";

type Two = readonly [plain: number, atFifteenDigits: number];

/** A number and the places to which it is rounded. */
function scaled(values: readonly EngineValue[]): readonly [of: number, scale: number] {
  return [number(values[0]), 10 ** Math.trunc(number(values[1]))];
}

function inward(values: readonly EngineValue[]): Two {
  const [of, scale] = scaled(values);
  return [Math.trunc(of * scale) / scale, decimal(of).times(scale).trunc().div(scale).toNumber()];
}

function outward(values: readonly EngineValue[]): Two {
  const [of, scale] = scaled(values);
  const away = (exact: Decimal): Decimal => (exact.isNegative() ? exact.floor() : exact.ceil());
  const plain = (Math.sign(of) * Math.ceil(Math.abs(of) * scale)) / scale;
  return [plain, away(decimal(of).times(scale)).div(scale).toNumber()];
}

function remainder([first, second]: readonly EngineValue[]): Two {
  const [of, by] = [number(first), number(second)];
  if (by === 0) throw new FunctionError("#DIV/0!");
  const [exact, divisor] = [decimal(of), decimal(by)];
  const whole = exact.div(divisor).floor();
  return [of - by * Math.floor(of / by), exact.minus(divisor.times(whole)).toNumber()];
}

/**
 * Functions whose result depends on whether a number that is nearly whole counts as whole: it is not known when Excel reads fifteen digits.
 * Each calculates both ways.
 */
export const NEARLY_WHOLE: Readonly<
  Record<string, { least: number; most: number; of: (values: readonly EngineValue[]) => Two }>
> = {
  INT: {
    least: 1,
    most: 1,
    of: ([value]) => [Math.floor(number(value)), decimal(number(value)).floor().toNumber()],
  },
  MOD: { least: 2, most: 2, of: remainder },
  ROUNDDOWN: { least: 2, most: 2, of: inward },
  ROUNDUP: { least: 2, most: 2, of: outward },
  TRUNC: { least: 1, most: 2, of: inward },
};
