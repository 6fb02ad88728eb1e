/**
 * Wraps a function so that it keeps its results. A client list needs the same few dates and growth factors for every row.
 *
 * @param work - A function whose result depends on its arguments alone.
 * @param keyOf - What tells one call from another: a text, a number, or an object that never changes.
 * @param most - Results to keep. One more and all of them are dropped, so that memory stays bounded.
 * @returns The same function. A call that throws is not kept.
 *
 * @example
 * const holidaysOf = remembered((year: number) => calculate(year), (year) => year, 500);
 */
export function remembered<Given extends readonly unknown[], Result extends NonNullable<unknown>>(
  work: (...given: Given) => Result,
  keyOf: (...given: Given) => unknown,
  most: number
): (...given: Given) => Result {
  const results = new Map<unknown, Result>();
  return (...given) => {
    const key = keyOf(...given);
    const known = results.get(key);
    if (known !== undefined) return known;
    const result = work(...given);
    if (results.size >= most) results.clear();
    results.set(key, result);
    return result;
  };
}
