import fc from "fast-check";
import {
  BOUNDARY_DAYS,
  EDGE_NUMBERS,
  LONGEST_TEXT,
  longTexts,
  ODD_SHAPES,
  SCRIPTS,
  SPELLED_NUMBERS,
  STRANGERS,
  TYPED_VALUES,
  UNTOUCHABLES,
} from "./hostileCells";

const NUMBERS = [
  0,
  -0,
  1,
  2,
  3,
  4,
  5,
  -1,
  0.5,
  0.05,
  0.07,
  0.9,
  0.95,
  0.999999,
  1.005,
  2.0000001,
  0.1 + 0.2,
  59,
  60,
  60.5,
  61,
  366,
  999,
  1000,
  1462,
  9999,
  9999.5,
  10000,
  10000.5,
  25569,
  44665,
  109574,
  109575,
  2_958_465,
  2_958_465.5,
  2_958_466,
  4_294_967_296,
  1e12,
  9_999_999_999_999.99,
  1e13,
  1e21,
  1e300,
  -1e300,
  5e-324,
  Number.MAX_VALUE,
  Number.MAX_SAFE_INTEGER,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
];
const BLANKS = [null, undefined, "", " ", "\u00a0", "\t\n"];
const DATES = [
  "4/15",
  "4/15/2026",
  "15/4/2026",
  "2/30/2026",
  "2/29/2025",
  "0/0/0000",
  "4/15/999999",
  "4-15-26",
  "1/1/00",
  "12/31/49",
  "1/1/50",
  "Sept. 31, 2026",
  "Smarch 1 2026",
  "May 1, 26",
  "15.04.2026",
  "2026-02-30",
  "2025-02-29",
  "0000-01-01",
  "0001-01-01",
  "1850-04-15",
  "1899-12-30",
  "1900-02-28",
  "1900-03-01",
  "2199-12-31",
  "9999-12-31",
  "2200-01-01",
  "10000-01-01",
  "-000001-01-01",
  "2026-04-15T24:00",
  "２０２６-04-15",
];
const TEXTS = [
  "$1,234.50",
  "(200)",
  "-5",
  "1e5",
  "1,23",
  "€5",
  "$",
  "()",
  ".",
  "%",
  "5%",
  "100%",
  "1e400%",
  "9".repeat(400),
  "0.".padEnd(400, "3"),
  "x".repeat(2_000),
  " ".repeat(500) + "1",
  "مايو",
  "２０２５",
  "二〇二五",
  "đề nghị",
  "ΜΈ",
  "🧾🧾🧾",
  "me\u0301",
  "\u202e5202",
  "\0",
  "ß",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "[object Object]",
  "#VALUE!",
  "=1+1",
  "next year",
];
const NEAR_MISSES = [
  "non resident",
  "expat",
  "fully",
  "Latest!",
  "maybe",
  "2",
  "ZZ",
  "Mainee",
  "failure to pey",
  "sources",
  "TRUE",
  "yes.",
  "latest rate",
  "reasonable cause 90%",
];
const ERRORS = [
  ...["#DIV/0!", "#N/A", "#REF!", "#NUM!", "#NAME?", "#NULL!", "#VALUE!", "#SPILL!", "#BUSY!"].map(
    (code) => ({ code })
  ),
  { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  { errorType: "Calc" },
];
const OBJECTS = [
  {},
  { basicValue: {} },
  { basicValue: null },
  { code: 7 },
  { type: "Entity", text: "card" },
  { type: "Double", basicValue: 46127, numberFormat: "m/d/yyyy" },
  { type: "FormattedNumber", basicValue: 1234.5, numberFormat: "#,##0.00" },
  { type: "String", basicValue: "ME" },
  { type: "Double", basicValue: Number.NaN },
];
const POOLS = {
  NUMBERS,
  BLANKS,
  DATES,
  TEXTS,
  NEAR_MISSES,
  ERRORS,
  OBJECTS,
  TRUTHS: [true, false],
  EDGE_NUMBERS,
  SCRIPTS,
  SPELLED_NUMBERS,
  BOUNDARY_DAYS,
  TYPED_VALUES,
  STRANGERS,
  ODD_SHAPES,
  LONG_TEXTS: longTexts(LONGEST_TEXT),
  UNTOUCHABLES,
} satisfies Record<string, readonly unknown[]>;
type Pool = keyof typeof POOLS;

/**
 * An odd value by its place in a pool. The values themselves cannot be drawn: fast-check looks at what it draws, and some of them
 * cannot be looked at.
 */
class OddCell {
  constructor(
    private readonly pool: Pool,
    private readonly index: number
  ) {}

  get value(): unknown {
    return POOLS[this.pool][this.index];
  }

  [fc.toStringMethod](): string {
    return `${this.pool}[${String(this.index)}]`;
  }
}

const of = (pool: Pool): fc.Arbitrary<unknown> =>
  fc.nat({ max: POOLS[pool].length - 1 }).map((index) => new OddCell(pool, index));

const OFTEN = (Object.keys(POOLS) as Pool[]).filter(
  (pool) => pool !== "LONG_TEXTS" && pool !== "UNTOUCHABLES"
);

/** Anything at all. Very long texts, and values that cannot be read, are seldom. */
export const oddCell: fc.Arbitrary<unknown> = fc.oneof(
  ...OFTEN.map((pool) => ({ weight: 13, arbitrary: of(pool) })),
  { weight: 1, arbitrary: fc.oneof(of("LONG_TEXTS"), of("UNTOUCHABLES")) }
);

/** What no list of arguments is made of: no cell and no range. */
export const oddShape: fc.Arbitrary<unknown> = fc.oneof(
  ...(["STRANGERS", "UNTOUCHABLES", "ODD_SHAPES"] as const).map(of)
);

/** Arguments as the function gets them, with the odd values in their places. */
export function revealed(drawn: unknown): unknown {
  if (drawn instanceof OddCell) return drawn.value;
  return Array.isArray(drawn) ? drawn.map(revealed) : drawn;
}
