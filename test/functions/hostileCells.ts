import dueDates from "../fixtures/published/due-dates.json";
import { rulesFiles } from "../rules/rulesFiles";

/** Longest text that is drawn; a cell of a sheet holds a third of it. */
export const LONGEST_TEXT = 100_000;

/** Thrown by an argument that cannot even be looked at. No host hands such a thing over, and it goes on as it was thrown. */
export class Untouchable extends Error {}

const refuse = (): never => {
  throw new Untouchable("not to be touched");
};

/** Texts in many scripts, and characters that turn, join, hide or cut what stands beside them. */
export const SCRIPTS: readonly string[] = [
  "نعم",
  "مقيم في الخارج",
  "כן",
  "תושב",
  "ใช่",
  "ผู้พำนัก",
  "हाँ",
  "निवासी",
  "是",
  "居民",
  "はい",
  "예",
  "да",
  "ναι",
  "այո",
  "დიახ",
  "አዎ",
  "ஆம்",
  "បាទ",
  "🧾",
  "👩‍👩‍👧‍👦",
  "🏴󠁧󠁢󠁥󠁮󠁧󠁿",
  "a\u0301\u0323\u0335",
  "Z͑ͫ̓ͪ̂ͫ̽͏̴̙̤̞͉͚̯̞̠͍A̴̵̜̰͔ͫ͗͢L̠ͨͧͩ͘G̴̻͈͍͔̹̑͗̎̅͛́Ǫ̵̹̻̝̳͂̌̌͘",
  "\ud83e",
  "\uddfe",
  "ME\ud800",
  "\udfffsingle",
  "\u202eelgnis",
  "\u2066ME\u2069",
  "\u200fME",
  "y\u200bes",
  "yes\u200d",
  "\ufeffsingle",
  "ye\u00ads",
  "single\u0000",
  "\u0007",
  "\u001b[2J",
  "ｙｅｓ",
  "ＭＥ",
  "ⅯⅯⅩⅩⅤ",
  "ſingle",
  "ﬁler",
  "ıncome",
  "İncome",
  "ME\u2028ME",
  "ME\r\n",
  "M\u0415",
  "\u00a0ME\u00a0",
  "\u3000full\u3000",
  "single\u2003",
  "\u1680",
  "\u2800",
  "\u3164",
  "\uffff",
];

/** Numbers, amounts and days as text: in digits of many scripts and in spellings of many lands. */
export const SPELLED_NUMBERS: readonly string[] = [
  "２０２５",
  "٢٠٢٥",
  "۲۰۲۵",
  "२०२५",
  "๒๐๒๕",
  "২০২৫",
  "𝟐𝟎𝟐𝟓",
  "二千二十五",
  "²",
  "½",
  "Ⅳ",
  "①",
  "1.234,50",
  "1 234,50",
  "1'234.50",
  "12,34,567.89",
  "1,23,456",
  "1\u202f234",
  "1\u00a0234.50",
  "+5",
  "−5",
  "–5",
  "5-",
  "5 CR",
  "USD 5",
  "5 USD",
  "£5",
  "$ 5",
  "$-5",
  "-$5",
  "($5)",
  "(5",
  "5)",
  "1e5",
  "1E+05",
  "1d5",
  "0x1F",
  "0b11",
  "0o17",
  "1_000",
  "1n",
  "Infinity",
  "-Infinity",
  "NaN",
  "1e400",
  "1e-400",
  "-0",
  "+0",
  "00",
  "007",
  ".5",
  "5.",
  "0.1.2",
  "1,,000",
  ",",
  "1,000,",
  "5 %",
  "％",
  "5％",
  "%5",
  "5%%",
  "1/2",
  "1 1/2",
  "5/0",
  "46127",
  "46127.5",
  "-46127",
  "2025.0",
  " 2025 ",
  "4/15/26",
  "15-Apr-2026",
  "April 15, 2026",
  "2026/04/15",
  "20260415",
  "2026-4-15",
  "2026-W16-3",
  "2026-04-15Z",
  "2026-04-15T00:00:00Z",
  "2026-13-01",
  "2026-00-00",
  "2024-02-29",
  "2100-02-29",
  "2026–04–15",
  "٢٠٢٦-٠٤-١٥",
  "-2026-04-15",
  "+002026-04-15",
  "1e3-04-15",
  "2026-04-15\u200b",
];

/** Numbers at the edges of what a double, a cent and a count can hold. */
export const EDGE_NUMBERS: readonly number[] = [
  0,
  -0,
  5e-324,
  -5e-324,
  2.2250738585072014e-308,
  1.5e-310,
  1e-7,
  1e-15,
  Number.EPSILON,
  0.005,
  0.004999999999999999,
  1.015,
  9_999_999_999_999.99,
  1e13 - 0.01,
  1e15,
  1e16,
  2 ** 53,
  2 ** 31,
  2 ** 31 - 1,
  2 ** 32,
  -(2 ** 31),
  1e308,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  Number.NaN,
];

function daysIn(content: unknown): string[] {
  if (typeof content === "string") return /^\d{4}-\d{2}-\d{2}$/.test(content) ? [content] : [];
  return typeof content === "object" && content !== null
    ? Object.values(content).flatMap(daysIn)
    : [];
}

const serialOf = (day: string): number => Date.parse(day) / 86_400_000 + 25_569;
const SHEET_EDGES = [0, 1, 59, 60, 61, 9_999, 10_000, 73_050, 109_575, 2_958_465, 2_958_466];

/** Worksheet dates around every published due date, every day named in a table of the rules and the edges of the sheet's own dates. */
export const BOUNDARY_DAYS: readonly number[] = [
  ...new Set(
    [
      ...SHEET_EDGES,
      ...daysIn([dueDates, rulesFiles.map(({ content }) => content)]).map(serialOf),
    ].flatMap((day) => [day, day + 1, day - 1, day + 0.5, day - 0.5, -day])
  ),
];

/** Texts of any length that are hard on a pattern, a number or a screen. */
export const longTexts = (length: number): readonly string[] => [
  ...["x", "9", ".", " ", "(", "%", ",", "-", "\u0301", "\ud83e", "名", "\n"].map((text) =>
    text.repeat(length)
  ),
  "0.".padEnd(length, "3"),
  `0.${"0".repeat(length)}7%`,
  "1e".padEnd(length, "9"),
  `1${",000".repeat(length / 4)}`,
  `${". ".repeat(length / 2)}x`,
  `${" ".repeat(length)}2025`,
  `$${" ".repeat(length)}x`,
  "a ".repeat(length / 2),
  "🧾".repeat(length / 2),
  "=".padEnd(length, "A"),
  "#".padEnd(length, "!"),
  "2026-04-15".padEnd(length, "0"),
];

/** Cell values with types as the host passes them, whole and broken. */
export const TYPED_VALUES: readonly object[] = [
  { type: "Entity", text: "card", basicType: "Error", basicValue: "#VALUE!", properties: {} },
  {
    type: "LinkedEntity",
    text: "card",
    basicType: "Error",
    basicValue: "#VALUE!",
    id: { id: "1" },
  },
  {
    type: "WebImage",
    address: "https://example.invalid/",
    basicType: "Error",
    basicValue: "#VALUE!",
  },
  { type: "Array", elements: [[{ type: "Double", basicValue: 1 }]], basicValue: "#VALUE!" },
  { type: "Array", elements: [[1, 2]], basicType: "Double", basicValue: 1 },
  { type: "Boolean", basicType: "Boolean", basicValue: true },
  { type: "Empty", basicType: "Empty", basicValue: "" },
  { type: "String", basicType: "String", basicValue: "" },
  { type: "FormattedNumber", basicValue: Number.POSITIVE_INFINITY, numberFormat: "0" },
  { type: "Double", basicValue: "46127" },
  { type: "Double" },
  { type: "Function", basicType: "Error", basicValue: "#CALC!" },
  {
    type: "Error",
    basicType: "Error",
    basicValue: "#BLOCKED!",
    errorType: "Blocked",
    errorSubType: 1,
  },
  { type: "Error", basicValue: 7, errorType: null },
  { code: "#N/A", message: "of another add-in" },
  { basicValue: "#".padEnd(LONGEST_TEXT, "!") },
  { code: `#${"\u202e".repeat(9)}` },
  { type: "String", basicValue: "x".repeat(LONGEST_TEXT) },
];

const own = (properties: string): object => JSON.parse(properties) as object;

/** What no cell can hold. */
export const STRANGERS: readonly unknown[] = [
  () => 1,
  Symbol("cell"),
  2025n,
  -5n,
  10n ** 400n,
  Reflect.construct(Date, [0]),
  Reflect.construct(Date, [Number.NaN]),
  /x/,
  new Map([["basicValue", 1]]),
  new Uint8Array(3),
  Object.freeze({ basicValue: 5 }),
  Object.freeze([Object.freeze([5])]),
  Object.create(null),
  { toString: refuse },
  { valueOf: refuse, toString: refuse, [Symbol.toPrimitive]: refuse },
  own('{"__proto__":{"basicValue":5}}'),
  own('{"constructor":{"prototype":5},"length":-1}'),
  { then: refuse },
  { length: 3, 0: 5 },
  Object.create({ basicValue: 5 }),
  new Proxy({}, {}),
];

/** What throws as soon as it is read. */
export const UNTOUCHABLES: readonly unknown[] = [
  new Proxy({}, { get: refuse, has: refuse, ownKeys: refuse, getPrototypeOf: refuse }),
  new Proxy([], { get: refuse, has: refuse, ownKeys: refuse }),
  Object.defineProperty({}, "basicValue", { enumerable: true, get: refuse }),
];

const sparse = (length: number, at: number, value: unknown): unknown[] => {
  const cells = new Array<unknown>(length);
  cells[at] = value;
  return cells;
};

/** Arguments of odd shapes. */
export const ODD_SHAPES: readonly unknown[] = [
  [],
  [[]],
  [[], []],
  [[[]]],
  [[1], []],
  [[], [1]],
  [[1, 2], [3]],
  [[1], [2, 3]],
  [[[1]], [[2]]],
  [[[[1]]]],
  [[[[2025]], 5]],
  [1, [2], [[3]]],
  sparse(3, 1, [5]),
  [sparse(3, 2, 5)],
  sparse(2, 1, 5),
  new Array<unknown>(4),
  Array.from({ length: 200 }, () => [5]),
  [Array.from({ length: 200 }, () => 5)],
  Array.from({ length: 200 }, (_row, index) => Array.from({ length: index % 3 }, () => 5)),
];
