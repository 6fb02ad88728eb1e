const LONGEST_WRITTEN = 20;
const DEEPEST = 6;

function writtenText(text: string): string {
  const plain = JSON.stringify(text.slice(0, LONGEST_WRITTEN)).replace(
    /[\p{Cf}\u007f-\u00a0\u2028\u2029]/gu,
    (character) => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`
  );
  return text.length > LONGEST_WRITTEN
    ? `{"$text":${plain},"$length":${String(text.length)}}`
    : plain;
}

function writtenList(list: readonly unknown[], depth: number): string {
  const same = list.length > 3 && list.every((entry) => Object.is(entry, list[0]));
  if (same) return `{"$times":${String(list.length)},"$of":${write(list[0], depth + 1)}}`;
  const entries = Array.from({ length: list.length }, (_entry, index) =>
    index in list ? write(list[index], depth + 1) : '{"$":"hole"}'
  );
  return `[${entries.join(",")}]`;
}

function write(value: unknown, depth: number): string {
  if (typeof value === "string") return writtenText(value);
  if (value === null || value === undefined || typeof value === "boolean")
    return value === undefined ? '{"$":"undefined"}' : String(value);
  if (typeof value === "number" && Number.isFinite(value) && !Object.is(value, -0))
    return String(value);
  if (typeof value !== "object")
    return `{"$":${JSON.stringify(Object.is(value, -0) ? "-0" : `${typeof value} ${String(value)}`)}}`;
  if (depth > DEEPEST) return '{"$":"deeper"}';
  try {
    if (Array.isArray(value)) return writtenList(value as readonly unknown[], depth);
    const kind = Object.prototype.toString.call(value);
    if (kind !== "[object Object]") return `{"$":${JSON.stringify(kind)}}`;
    const entries = Object.entries(value).map(
      ([key, entry]) => `${JSON.stringify(key)}:${write(entry, depth + 1)}`
    );
    return `{${entries.join(",")}}`;
  } catch {
    return '{"$":"cannot be read"}';
  }
}

/**
 * Arguments as JSON that a person can type again, whatever they are: what JSON has no word for is written as an object with the key
 * `$`, a long text by its beginning and length, a missing last argument not at all.
 *
 * @param given - The arguments.
 * @returns Plain characters on one line.
 */
export function written(given: readonly unknown[]): string {
  let length = given.length;
  while (length > 0 && (given[length - 1] ?? null) === null) length -= 1;
  return `[${Array.from({ length }, (_argument, index) => write(given[index], 0)).join(",")}]`;
}
