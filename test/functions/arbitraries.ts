import fc from "fast-check";
import { written } from "../../src/calendar/calendarDate";
import { dateFromSerial } from "../../src/calendar/dateSerial";
import type { ArgumentKind } from "../../src/functions/arguments/argumentKind";
import { clientRequest } from "../../src/functions/arguments/clientRequest";
import { CLIENT_LIST_HEADINGS } from "../../src/functions/arguments/clientListHeadings";
import type { CatalogFunction } from "../../src/functions/catalog";
import { BOUNDARY_DAYS } from "./hostileCells";
import { oddCell, oddShape } from "./oddCells";

/** What the arguments of one call have in common, so that they may fit each other. */
interface Story {
  readonly year: number;
  /** First date after the tax year, as a worksheet date. */
  readonly begins: number;
  /** First and last date of a postponement period, or two blanks. */
  readonly postponement: readonly [unknown, unknown];
  /** How likely a cell is anything at all. */
  readonly oddness: number;
  /** Rows of a column. */
  readonly length: number;
}

/** Seldom a column has so many rows. */
const MANY = 200;
const DAYS_TO_1970 = 25_569;

function stories(
  years: readonly [number, number],
  lengths: readonly number[]
): fc.Arbitrary<Story> {
  return fc
    .record({
      year: fc.integer({ min: years[0], max: years[1] }),
      after: fc.nat({ max: 119 }),
      span: fc.nat({ max: 299 }),
      isPostponed: fc.nat({ max: 9 }).map((tenth) => tenth < 3),
      oddness: fc.constantFrom(0, 0, 0.01, 0.05, 0.2, 0.6),
      length: fc.oneof(
        { weight: 2000, arbitrary: fc.constantFrom(...lengths) },
        { weight: lengths.length > 1 ? 1 : 0, arbitrary: fc.constant(MANY) }
      ),
    })
    .map(({ year, after, span, isPostponed, oddness, length }) => {
      const begins = Date.UTC(year + 1, 0, 1) / 86_400_000 + DAYS_TO_1970;
      const first = begins + after;
      const postponement = isPostponed ? ([first, first + span] as const) : ([null, null] as const);
      return { year, begins, postponement, oddness, length };
    });
}

/** One of two, the first with a probability. */
const either = (
  probability: number,
  first: fc.Arbitrary<unknown>,
  second: fc.Arbitrary<unknown>
): fc.Arbitrary<unknown> => {
  const weight = Math.round(probability * 10_000);
  return fc.oneof({ weight: 10_000 - weight, arbitrary: second }, { weight, arbitrary: first });
};

const maybe = (arbitrary: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.option(arbitrary, { freq: 2 });

/** Ways to write a worksheet date: as a number, with a time of day, as US text, as ISO text. */
function writings(serial: number): unknown[] {
  const date = dateFromSerial(serial);
  const iso = date === undefined ? "" : written(date);
  const [year = "", month = "", dayOfMonth = ""] = iso.split("-");
  const parts = [month, dayOfMonth, year];
  return [serial, serial + 0.25, iso, parts.join("/"), parts.join("-")];
}

const dates = (from: number, span: number): fc.Arbitrary<unknown> =>
  either(
    0.05,
    fc.constantFrom(...BOUNDARY_DAYS),
    fc
      .tuple(fc.nat({ max: span - 1 }), fc.nat({ max: 4 }))
      .map(([days, way]) => writings(from + days)[way])
  );

const cents = fc.nat({ max: 10_000_000 }).map((amount) => amount / 100);
const amounts = fc.oneof(
  cents,
  fc.nat({ max: 50_000 }),
  cents.map((amount) => `$${amount.toFixed(2)}`),
  fc.constant(0)
);

const words =
  (...values: readonly unknown[]) =>
  (): fc.Arbitrary<unknown> =>
    fc.constantFrom(...values);

/** Rows of two cells, now and then one of them odd. */
const rows = (
  { oddness, length }: Story,
  likely: fc.Arbitrary<readonly unknown[]>
): fc.Arbitrary<unknown> =>
  fc.array(
    fc.oneof(
      { weight: 9, arbitrary: either(oddness, fc.tuple(oddCell, oddCell), likely) },
      { weight: 1, arbitrary: fc.constant(["", null]) }
    ),
    { minLength: length === MANY ? MANY : 1, maxLength: Math.max(length, 5) }
  );

/** Rows of label and amount; a number of persons is small. */
const labeled = (story: Story, ...labels: readonly string[]): fc.Arbitrary<unknown> =>
  rows(
    story,
    fc
      .constantFrom(...labels)
      .chain((label) =>
        fc.tuple(fc.constant(label), /children|older/.test(label) ? fc.nat({ max: 2 }) : amounts)
      )
  );

/** The columns of the client lists that are drawn. */
export const LIST_COLUMNS = Object.entries(CLIENT_LIST_HEADINGS).flatMap(([field, [heading]]) =>
  field in clientRequest
    ? [{ field, heading, kind: clientRequest[field as keyof typeof clientRequest] }]
    : []
);

const PERIODS = ["January–March", "Jan-May", "1/1–8/31", "December"];

/** Headings of four periods and labeled rows, as ANNUALIZED takes them. */
function periodBlocks(story: Story): fc.Arbitrary<unknown> {
  const headings = PERIODS.map((heading) =>
    either(story.oddness / 20, oddCell, fc.constant(heading))
  );
  const rising = fc
    .array(fc.nat({ max: 90_000 }), { minLength: PERIODS.length, maxLength: PERIODS.length })
    .map((parts) => parts.map((_, index) => parts.slice(0, index + 1).reduce((a, b) => a + b)));
  const labels = fc.constantFrom(
    "itemized deductions",
    "QBI deduction",
    "other taxes",
    "Credits",
    "net self-employment earnings",
    "Wages",
    "standard deduction",
    "tax on the annualized income"
  );
  const row = (label: fc.Arbitrary<unknown>): fc.Arbitrary<unknown[]> =>
    fc
      .tuple(label, rising, either(story.oddness / 5, fc.nat({ max: 3 }), fc.constant(-1)), oddCell)
      .map(([first, cells, at, odd]) => [
        first,
        ...cells.map((cell, index) => (index === at ? odd : cell)),
      ]);
  return fc
    .tuple(
      fc.tuple(fc.constant(""), ...headings),
      row(fc.constant("AGI")),
      fc.array(row(labels), { maxLength: 3 })
    )
    .map(([first, income, others]) => [first, income, ...others]);
}

/** A client list with headings, as ROSTER takes it. */
function clientLists(story: Story): fc.Arbitrary<unknown> {
  const headings = LIST_COLUMNS.map(({ heading }) =>
    either(story.oddness / 20, oddCell, fc.constant(heading))
  );
  const row = LIST_COLUMNS.map(({ field, kind }) => cells(field, kind, story));
  return fc
    .tuple(fc.tuple(...headings), fc.array(fc.tuple(...row), { minLength: 1, maxLength: 4 }))
    .map(([first, clients]) => [first, ...clients]);
}

/** The headings of such a list, and rows of it. */
const headingRows = (): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 9, arbitrary: fc.constant([LIST_COLUMNS.map(({ heading }) => heading)]) },
    { weight: 1, arbitrary: fc.constant([["Client", "Remarks"]]) }
  );
function listRows(story: Story): fc.Arbitrary<unknown> {
  const row = LIST_COLUMNS.map(({ field, kind }) => cells(field, kind, story));
  return fc.array(fc.tuple(...row), { minLength: 1, maxLength: 4 });
}

/** Tax years around the year of a story, as numbers or as text. */
const yearsNear = ({ year }: Story, first: number, last: number): fc.Arbitrary<unknown> =>
  fc
    .integer({ min: year + first, max: year + last })
    .chain((near) => fc.constantFrom<unknown>(near, String(near)));

const PENALTY_KINDS = fc.constantFrom(
  "penalty",
  "Estimated tax penalty",
  "reversed",
  "clean-history relief",
  "",
  null
);
const RATES = words("latest", 0.07, "8%", 0.999999, "latest");
const STATES = ["ME", "ma", "CA", "new york", "tx", "Va", "oh", "DC", "pr"];
const CARRIERS = [null, "", "yes", "UPS Next Day Air", "fedex 2 day"];

/** What an argument might well be, by the id of its kind. */
const LIKELY: Readonly<Record<string, (story: Story) => fc.Arbitrary<unknown>>> = {
  "tax-year": ({ year }) =>
    fc.constantFrom(year, String(year), `12/31/${String(year)}`, `${String(year)}-06-30`),
  "calendar-year": ({ year }) => fc.constantFrom(year, String(year), `12/31/${String(year)}`),
  date: ({ begins }) => dates(begins + 105, 1200),
  dollars: () => amounts,
  "signed-dollars": () =>
    fc.oneof(
      amounts,
      cents.map((amount) => -amount)
    ),
  "dollars-or-yes-no": () => fc.oneof(amounts, fc.constantFrom("yes", "no", "")),
  "yes-no": words("yes", "no", "Y", "x", true, false, 1, 0, null, ""),
  state: words(...STATES, "foreign", null, ""),
  "state-of-return": words(...STATES),
  "mailing-residence": words(...STATES, "foreign", "estate", "nonresident"),
  "filer-type": words("resident", "out of country", "NONRESIDENT", " Out Of  Country ", null, 0),
  "filing-status": words("single", "MFJ", "separate", "head of household", "QSS"),
  "assumed-rate": RATES,
  "percent-paid": words("90%", 1, 0.8, 0, 1),
  target: words("full", "reasonable cause", 0.95, "110%", null, 0),
  cushion: () => fc.oneof(amounts, fc.constantFrom(0.05, "5%", null)),
  "installment-number": words(1, 2, "3", 4),
  count: words(0, 1, "2", 2, null),
  carrier: words(...CARRIERS, "UPS Ground"),
  "designated-carrier": words(...CARRIERS),
  service: words("UPS 2nd Day Air", "FedEx Priority Overnight", "DHL Express 12:00", "pigeon"),
  method: words("paper", "E-File", "electronic payment", null, ""),
  "calendar-subject": words("retirement", "Gift", "foreign", "elections", "ALL", "return", null),
  "qualifying-test": words("physical presence", "Bona fide residence"),
  "minimum-severity": words("problem", "Reminder", null),
  length: words("short", "FULL", null),
  text: words("K-1", "1099-B; W-2", "", null),
  "table-name": words(
    "underpayment rate",
    "legal-holidays",
    "failure to pay",
    "Combat Zone",
    "request-lines"
  ),
  "payment-rows": (story) => rows(story, fc.tuple(dates(story.begins - 200, 600), amounts)),
  "item-rows": (story) =>
    labeled(
      story,
      "wages",
      "Interest",
      "business profit",
      "long-term gain",
      "K-1 ordinary income (Smith)",
      "SALT",
      "withholding",
      "children under 17",
      "social security benefits",
      "65 or older",
      "1040-ES",
      "qualified tips"
    ),
  "payment-item-rows": (story) =>
    labeled(story, "withholding", "W-2 box 2 (Ana)", "1040-ES", "overpayment applied", "wages"),
  "change-rows": (story) =>
    rows(
      story,
      fc.oneof(
        fc.tuple(
          fc.constantFrom("wages", "business profit", "Long-term gain", "withholding"),
          fc.oneof(
            amounts,
            cents.map((amount) => -amount),
            fc.constantFrom("5%", "-10%", " +2.5 % ", "-100%")
          )
        ),
        fc.tuple(fc.constant("children under 17"), fc.constantFrom(1, 2, -1, "1"))
      )
    ),
  "penalty-years": (story) => rows(story, fc.tuple(yearsNear(story, -6, -1), PENALTY_KINDS)),
  "late-years": (story) => ranges(story, yearsNear(story, -5, 3)),
  "dollar-range": (story) => ranges(story, amounts),
  "date-range": (story) => ranges(story, dates(story.begins + 105, 300)),
  "client-list": clientLists,
  "list-headings": headingRows,
  "list-rows": listRows,
  "answer-columns": (story) =>
    ranges(story, fc.constantFrom("Client", "balance due", "Status", "Unreadable", "Letter")),
  "own-headings": () =>
    fc.constantFrom<unknown>(
      [["State", "not used"]],
      [
        [" estimated  total TAX", "Total tax"],
        ["", ""],
      ],
      [["Remarks", "not used"]],
      [["Liab"]]
    ),
  "period-rows": periodBlocks,
};

/** Dates that must fit others of the same call, by the argument. */
const FITTING: Readonly<Record<string, (story: Story) => fc.Arbitrary<unknown>>> = {
  postponementBegins: ({ postponement: [first] }) => fc.constant(first),
  postponementEnds: ({ postponement: [, last] }) => fc.constant(last),
  requestedOn: ({ begins }) => maybe(dates(begins + 60, 60)),
  confirmedOn: ({ begins }) => fc.option(dates(begins + 120, 60), { freq: 1 }),
  rejectedOn: ({ begins }) => fc.option(dates(begins + 120, 60), { freq: 1 }),
  // Mostly more than the tax in it.
  owed: () => fc.nat({ max: 300_000 }),
  noticeOn: ({ begins }) => maybe(dates(begins + 900, 300)),
  levyNoticeOn: ({ begins }) => maybe(dates(begins + 1200, 400)),
  dueOn: ({ begins }) => dates(begins - 100, 200),
  soldOn: ({ begins }) => dates(begins - 380, 400),
  // Mostly yes, because many older rules were not read in an official text.
  allowUnverified: words("yes", "x", true, "no", ""),
  enteredZoneOn: ({ begins }) => dates(begins - 100, 200),
};

function likely(name: string, kind: ArgumentKind<unknown>, story: Story): fc.Arbitrary<unknown> {
  const fitting = FITTING[name];
  if (fitting) return fitting(story);
  const ofKind = LIKELY[kind.id];
  if (!ofKind) throw new RangeError(`The kind ${kind.id} has no arbitrary.`);
  return "means" in kind.whenBlank ? maybe(ofKind(story)) : ofKind(story);
}

const cells = (name: string, kind: ArgumentKind<unknown>, story: Story): fc.Arbitrary<unknown> =>
  either(story.oddness, oddCell, likely(name, kind, story));

/** A column, a row or a rectangle of cells. */
const ranges = ({ oddness }: Story, cell: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof(
    ...[
      [1, 1],
      [3, 1],
      [1, 3],
      [2, 2],
    ].map(([height = 1, width = 1]) =>
      fc.array(fc.array(either(oddness, oddCell, cell), { minLength: width, maxLength: width }), {
        minLength: height,
        maxLength: height,
      })
    )
  );

/** One argument: mostly one cell in a range, as the host passes it; a column, a row, a bare value, or an odd shape. */
function argument(name: string, kind: ArgumentKind<unknown>, story: Story): fc.Arbitrary<unknown> {
  const { oddness, length } = story;
  if (kind.takes === "range") return either(oddness / 3, oddShape, likely(name, kind, story));
  const cell = cells(name, kind, story);
  const column = (rowsOf: number) => fc.array(cell, { minLength: rowsOf, maxLength: rowsOf });
  const odd = fc.oneof(
    fc.array(fc.tuple(cell, oddCell), { minLength: length, maxLength: length }),
    column(length),
    fc.constant(null),
    oddShape,
    oddShape,
    column(length + 1).map((uneven) => uneven.map((one) => [one]))
  );
  const usual = fc.oneof(
    { weight: 60, arbitrary: cell.map((one) => [[one]]) },
    { weight: 10, arbitrary: cell },
    { weight: 27, arbitrary: column(length).map((down) => down.map((one) => [one])) },
    { weight: 3, arbitrary: column(length).map((across) => [across]) }
  );
  return either(oddness / 2, odd, usual);
}

const KINDS_OF_FEW_YEARS = ["carrier", "designated-carrier", "state-of-return"];
const KINDS_OF_RECENT_YEARS = ["filing-status", "signed-dollars"];

/** Years for which the rule tables of a function have figures, and some around them. */
function yearsOf(list: CatalogFunction["arguments"]): readonly [number, number] {
  const ids = Object.values(list).map(({ id }) => id);
  if ("rejectedOn" in list || KINDS_OF_FEW_YEARS.some((id) => ids.includes(id)))
    return [2022, 2025];
  if ("owed" in list) return [2017, 2022];
  return KINDS_OF_RECENT_YEARS.some((id) => ids.includes(id)) ? [2021, 2027] : [2007, 2028];
}

/**
 * Lists of arguments for a worksheet function: what each argument might well be, and among it anything at all. The last ones may be
 * missing, and one too many may come.
 *
 * @param form - The form of the function.
 * @param list - Its arguments.
 * @returns Lists whose odd values are still hidden; see `revealed`.
 */
export function argumentsOf({
  form,
  arguments: list,
}: Pick<CatalogFunction, "form" | "arguments">): fc.Arbitrary<readonly unknown[]> {
  const lengths = form === "row" ? [1, 1, 1, 2, 3, 7] : [1];
  return stories(yearsOf(list), lengths).chain((story) => {
    const all = fc.tuple(
      ...Object.entries(list).map(([name, kind]) => argument(name, kind, story))
    );
    return fc.oneof(
      { weight: 18, arbitrary: all },
      {
        weight: 1,
        arbitrary: fc
          .tuple(all, fc.nat())
          .map(([given, many]) => given.slice(0, many % (given.length + 1))),
      },
      { weight: 1, arbitrary: all.map((given) => [...given, { functionName: "EXT" }]) }
    );
  });
}
