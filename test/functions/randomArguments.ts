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

/** A source of chance that tells the same story each time: numbers from 0 up to, not including, 1 (mulberry32, public domain). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const NUMBERS = [
  ...[0, -0, 1, 2, 3, 4, 5, -1, 0.5, 0.05, 0.07, 0.9, 0.95, 0.999999, 1.005, 2.0000001, 0.1 + 0.2],
  ...[59, 60, 60.5, 61, 366, 999, 1000, 1462, 9999, 9999.5, 10000, 10000.5, 25569, 44665, 109574],
  ...[109575, 2_958_465, 2_958_465.5, 2_958_466, 4_294_967_296, 1e12, 9_999_999_999_999.99, 1e13],
  ...[1e21, 1e300, -1e300, 5e-324, Number.MAX_VALUE, Number.MAX_SAFE_INTEGER],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
];
const BLANKS = [null, undefined, "", " ", "\u00a0", "\t\n"];
const TEXTS = [
  ...["next year", "4/15", "4/15/2026", "15.04.2026", "2026-02-30", "2025-02-29", "0000-01-01"],
  ...[
    "0001-01-01",
    "1850-04-15",
    "1899-12-30",
    "1900-02-28",
    "1900-03-01",
    "2199-12-31",
    "9999-12-31",
  ],
  ...["2200-01-01", "10000-01-01", "-000001-01-01", "2026-04-15T24:00", "２０２６-04-15"],
  ...["$1,234.50", "(200)", "-5", "1e5", "1,23", "€5", "$", "()", ".", "%", "5%", "100%", "1e400%"],
  ...["9".repeat(400), "0.".padEnd(400, "3"), "x".repeat(2_000), " ".repeat(500) + "1"],
  ...[
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
  ],
  ...[
    "__proto__",
    "constructor",
    "toString",
    "hasOwnProperty",
    "[object Object]",
    "#VALUE!",
    "=1+1",
  ],
];
const WORDS = {
  filerType: ["resident", "out of country", "NONRESIDENT", " Abroad ", null, 0, ""],
  state: ["ME", "ma", "CA", "NY", "tx", "Va", "oh", "foreign", "DC", "pr", null, ""],
  extended: ["yes", "no", "Y", "x", true, false, 1, 0, null, ""],
  target: ["full", "reasonable cause", 0.95, "110%", null, 0],
  assumedRate: ["latest", 0.07, "8%", 0.999999, "latest"],
  status: ["single", "MFJ", "separate", "head of household", "QSS"],
  farmerOrFisherman: ["yes", "", null],
  specifiedService: ["no", "x", null],
  additions: [0, 1, 4, null],
  children: [0, 2, "3"],
  otherDependents: [0, 1, null],
  carrier: [null, "", "yes", "UPS Next Day Air", "fedex 2 day", "UPS Ground"],
  service: ["UPS 2nd Day Air", "FedEx Priority Overnight", "DHL Express 12:00", "pigeon"],
  method: ["paper", "E-File", "electronic payment", null, ""],
  line8Checked: ["yes", "no", null, ""],
  counted: ["problem", "Reminder", null],
  asLines: ["yes", "", null],
  allowUnverified: ["yes", "x", ""],
  federalExtension: ["yes", "no", ""],
  stateRequest: ["yes", "", null],
  percentPaid: ["90%", 1, 0.8, 0, 1],
  length: ["short", "FULL", null],
  missing: ["K-1", "1099-B; W-2", "", null],
  figure: ["underpayment rate", "legal-holidays", "failure to pay", "Combat Zone", "request-lines"],
} as const;
const LABELS = {
  items: [
    ...[
      "wages",
      "Interest",
      "business profit",
      "long-term gain",
      "K-1",
      "SALT",
      "children under 17",
    ],
    ...["social security benefits", "65 or older", "withholding", "1040-ES", "qualified tips"],
  ],
  changes: ["wages", "business profit", "long-term gain", "deductions", "children under 17"],
} as const;
const NEAR_MISSES = [
  ...["non resident", "expat", "fully", "Latest!", "maybe", "2", "ZZ", "Maine", "failure to pey"],
  ...["sources", "TRUE", "yes.", "latest rate", "protect 90%"],
];
const ERRORS = [
  ...["#DIV/0!", "#N/A", "#REF!", "#NUM!", "#NAME?", "#NULL!", "#VALUE!", "#SPILL!", "#BUSY!"].map(
    (code) => ({ code })
  ),
  { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  { errorType: "Calc" },
];
const OBJECTS = [
  ...[{}, { basicValue: {} }, { basicValue: null }, { code: 7 }, { type: "Entity", text: "card" }],
  { type: "Double", basicValue: 46127, numberFormat: "yyyy-mm-dd" },
  { type: "FormattedNumber", basicValue: 1234.5, numberFormat: "#,##0.00" },
  { type: "String", basicValue: "ME" },
  { type: "Double", basicValue: Number.NaN },
];
const LONG_TEXTS = longTexts(LONGEST_TEXT);
/** How seldom an odd cell is a very long text, or one that cannot be read. */
const SELDOM = 1 / 200;
/** How seldom a call has a column of MANY rows. */
const MANY_SELDOM = 1 / 2000;
const MANY = 200;

/** What the arguments of one call have in common, so that they may fit together. */
interface Story {
  readonly year: number;
  /** First day after the tax year, as a worksheet date. */
  readonly begins: number;
  readonly postponement: readonly [unknown, unknown];
  /** How likely a cell is anything at all. */
  readonly oddness: number;
}

const DAYS_TO_1970 = 25_569;

/** Draws arguments for worksheet functions: what an argument might well be, and among it, anything at all. */
export class RandomArguments {
  constructor(private readonly next: () => number) {}

  private below(count: number): number {
    return Math.floor(this.next() * count);
  }

  private of<Value>(values: readonly Value[]): Value {
    return values[this.below(values.length)] as Value;
  }

  private day(from: number, span: number): unknown {
    const serial = from + this.below(span);
    const month = String(1 + this.below(12)).padStart(2, "0");
    const dayOfMonth = String(1 + this.below(30)).padStart(2, "0");
    const year = 1900 + Math.floor(serial / 365.25);
    const written = `${String(year)}-${month}-${dayOfMonth}`;
    return this.next() < 0.05
      ? this.of(BOUNDARY_DAYS)
      : this.of([serial, serial + this.next(), written]);
  }

  private money(): unknown {
    const amount = this.below(10_000_000) / 100;
    return this.of([amount, this.below(50_000), `$${amount.toFixed(2)}`, this.next() * 1e6, 0]);
  }

  private likely(name: string, { year, begins, postponement }: Story): unknown {
    if (name in WORDS) return this.of<unknown>(WORDS[name as keyof typeof WORDS]);
    switch (name) {
      case "taxYear":
        return this.of([year, String(year), `${String(year)}-12-31`, `${String(year)}-06-30`]);
      case "number":
        return 1 + this.below(4);
      case "postponementBegins":
        return postponement[0];
      case "postponementEnds":
        return postponement[1];
      case "requestedOn":
        return this.of([null, begins + 60 + this.below(60)]);
      case "confirmedOn":
      case "rejectedOn":
        return this.of([null, null, null, begins + 120 + this.below(60)]);
      case "agreementBegins":
        return this.of([null, this.day(begins, 700)]);
      case "from":
      case "entered":
        return this.day(begins - 100, 200);
      case "cushion":
      case "firstInstallment":
        return this.of([this.money(), 0.05, null]);
      default:
        return /^(days?|to|left|asOf|.*On)$/.test(name)
          ? this.day(begins + 105, 1200)
          : this.money();
    }
  }

  /** A client list with headings, as ROSTER takes it. */
  private clientList(story: Story, length: number): unknown[][] {
    const fields = [
      "totalTax",
      "payments",
      "state",
      "filerType",
      "requestedOn",
      "plannedFilingDate",
      "carrier",
    ];
    const headings = [
      "Total tax",
      "Payments",
      "State",
      "FilerType",
      "Asked on",
      "Planned",
      "Carrier",
    ];
    const rows = Array.from({ length }, () =>
      fields.map((field) =>
        this.next() < story.oddness ? this.anything() : this.likely(field, story)
      )
    );
    return [
      headings.map((text) => (this.next() < story.oddness / 20 ? this.anything() : text)),
      ...rows,
    ];
  }

  /** Rows of label or day and amount, as the functions that take a block want them. */
  private rows(name: string, story: Story, length: number): unknown[][] {
    return Array.from({ length }, () => {
      if (this.next() < story.oddness) return [this.anything(), this.anything()];
      if (this.next() < 0.1) return ["", null];
      if (name === "payments") return [this.day(story.begins - 200, 600), this.money()];
      const labels = LABELS[name as keyof typeof LABELS];
      const label = this.of<string>(labels);
      return [label, /children|older/.test(label) ? this.below(3) : this.money()];
    });
  }

  private anything(): unknown {
    if (this.next() < SELDOM) return this.of<unknown>([...LONG_TEXTS, ...UNTOUCHABLES]);
    const pools = [
      ...[NUMBERS, BLANKS, TEXTS, NEAR_MISSES, ERRORS, OBJECTS, [true, false], EDGE_NUMBERS],
      ...[SCRIPTS, SPELLED_NUMBERS, BOUNDARY_DAYS, TYPED_VALUES, STRANGERS, ODD_SHAPES],
    ];
    return this.of<unknown>(this.of<readonly unknown[]>(pools));
  }

  /** One argument: a block of one cell mostly, as the host sends it, or a column, a row, a bare value, an odd shape. */
  private argument(name: string, length: number, story: Story): unknown {
    const cells = Array.from({ length }, () =>
      this.next() < story.oddness ? this.anything() : this.likely(name, story)
    );
    if (this.next() < story.oddness / 3) {
      const uneven = cells.map((cell) => [cell, this.anything()]);
      const bare = [STRANGERS, UNTOUCHABLES, ODD_SHAPES];
      return this.of<unknown>([uneven, cells, null, this.of<unknown>(this.of(bare))]);
    }
    const shape = this.next();
    if (shape < 0.6) return [[cells[0]]];
    if (shape < 0.7) return cells[0];
    return shape < 0.97 ? cells.map((cell) => [cell]) : [cells];
  }

  private story(reach: "long" | "recent" | "held"): Story {
    const [first, span] = { long: [2007, 22], recent: [2021, 7], held: [2022, 4] }[reach] as [
      number,
      number,
    ];
    const year = first + this.below(span);
    const begins = Date.parse(`${String(year + 1)}-01-01`) / 86_400_000 + DAYS_TO_1970;
    const postponementBegins = begins + this.below(120);
    const postponement = [postponementBegins, postponementBegins + this.below(300)] as const;
    const oddness = this.of([0, 0, 0.01, 0.05, 0.2, 0.6]);
    return { year, begins, postponement: this.next() < 0.7 ? [null, null] : postponement, oddness };
  }

  /** A list of arguments for parameters of these names; the last ones may be missing, and one too many may come. */
  list(names: readonly string[]): unknown[] {
    const isHeld = ["allowUnverified", "carrier", "rejectedOn"].some((name) =>
      names.includes(name)
    );
    const isRecent = names.includes("status") || names.includes("profit");
    const story = this.story(isHeld ? "held" : isRecent ? "recent" : "long");
    const takesBlock = names.some((name) =>
      /^(items|changes|extraPayments|requiredPayment|grid)$/.test(name)
    );
    const ledger =
      names.includes("payments") && names.includes("filedOn") && !names.includes("asOf");
    const usual = isHeld ? [1, 1, 1, 1, 1, 3] : [1, 1, 1, 2, 3, 7];
    const isLong = this.next() < MANY_SELDOM;
    const length = takesBlock || ledger ? 1 : isLong ? MANY : this.of(usual);
    const all = names.map((name) => {
      const isRows = name in LABELS || (name === "payments" && (takesBlock || ledger));
      const rows = isLong ? MANY : undefined;
      if (isRows) return this.rows(name, story, rows ?? 1 + this.below(5));
      if (name === "grid") return this.clientList(story, rows ?? 1 + this.below(4));
      const fits = this.next() >= story.oddness / 5;
      return this.argument(name, fits ? length : 1 + this.below(4), story);
    });
    const given = this.next() < 0.95 ? all : all.slice(0, this.below(names.length + 1));
    return this.next() < 0.95 ? given : [...given, { functionName: "EXT" }];
  }
}
